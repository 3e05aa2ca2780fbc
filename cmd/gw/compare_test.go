package main

import (
	"encoding/json"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// Source: the demo's story: 198 high, ten folios a sheet instead of eight.
func TestCompare(t *testing.T) {
	demo, lower := made(t, "--format", "demo"), made(t, "--format", "demo", "--set", "page.height=198")
	var c comparison
	if err := json.Unmarshal([]byte(done(t, "compare", demo, "--with", lower)), &c); err != nil {
		t.Fatal(err)
	}
	i := slices.IndexFunc(c.Rows, func(r comparedRow) bool { return r.Name == "Folios a sheet" })
	if i < 0 || !slices.Equal(c.Rows[i].Values, []string{"8", "10"}) || !c.Rows[i].Differs || len(c.Designs) != 2 {
		t.Errorf("%+v", c)
	}
	folder := t.TempDir()
	done(t, "papers", demo, "--with", lower, "--only", "comparison", "--out", folder)
	if files, _ := filepath.Glob(filepath.Join(folder, "comparison.pdf")); len(files) != 1 {
		t.Error("no comparison is printed")
	}
}

// What cannot be compared is said in a line, and nothing is written.
func TestBadComparisons(t *testing.T) {
	demo := made(t, "--format", "demo")
	for says, args := range map[string][]string{
		"--with":              {"compare", demo},
		"there is no such":    {"compare", demo, "--with", "missing.gw"},
		"3 designs at most":   {"compare", demo, "--with", demo, "--with", demo, "--with", demo, "--with", demo},
		"--with: given twice": {"draw", demo, "--view", "end-on", "--out", filepath.Join(t.TempDir(), "x.png"), "--with", demo, "--with", demo},
	} {
		exit, out, complaints := gw(args...)
		if exit != exitInput || out != "" || !strings.Contains(complaints, says) {
			t.Errorf("%v: exit %d, %q, want %q", args, exit, complaints, says)
		}
	}
}
