package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"grainwise/model/stock"
)

func TestMaterialsGoOutAndIn(t *testing.T) {
	folder := t.TempDir()
	t.Setenv("XDG_CONFIG_HOME", folder)
	t.Setenv("AppData", folder)
	t.Setenv("HOME", folder)
	table := filepath.Join(folder, "out.csv")
	var shelf stock.Shelf
	if err := json.Unmarshal([]byte(done(t, "materials", "--export", table)), &shelf); err != nil || !shelf.Equal(stock.Default()) {
		t.Fatal(err)
	}
	own := filepath.Join(folder, "own.json")
	again := done(t, "materials", "--shelf", own, "--import", table)
	if err := json.Unmarshal([]byte(again), &shelf); err != nil || !shelf.Equal(stock.Default()) {
		t.Errorf("not the same out of the table: %v", err)
	}
	if listed := done(t, "materials", "--shelf", own); listed != again {
		t.Error("the file holds another shelf")
	}
	bad := filepath.Join(folder, "bad.csv")
	os.WriteFile(bad, []byte("kind,name,thickness (mm)\nthread,Dulse,0.4\nthread,Wrack,thick\n"), 0o644)
	before, _ := os.ReadFile(own)
	exit, out, message := gw("materials", "--shelf", own, "--import", bad)
	if exit != exitInput || out != "" || !strings.Contains(message, "line 3, column 3") || strings.Count(message, "\n") != 1 {
		t.Errorf("%d, %q", exit, message)
	}
	if after, _ := os.ReadFile(own); string(after) != string(before) {
		t.Error("half of a bad table is on the shelf")
	}
	os.WriteFile(bad, []byte("{"), 0o644)
	if exit, out, _ := gw("materials", "--shelf", bad); exit != exitInput || out != "" {
		t.Error("a damaged shelf is listed")
	}
	if data, _ := os.ReadFile(bad); string(data) != "{" {
		t.Error("a damaged shelf that was named is set aside")
	}
	if exit, out, _ := gw("materials", "--shelf", filepath.Join(folder, "none.json")); exit != exitInput || out != "" {
		t.Error("no shelf is listed")
	}
}
