package project

import (
	"flag"
	"os"
	"path/filepath"
	"testing"
)

var update = flag.Bool("update", false, "write the embedded files anew")

const assetsFolder = "../../assets"

// golden holds a file of assets equal to what the code makes.
func golden(t *testing.T, name string, made []byte) {
	t.Helper()
	path := filepath.Join(assetsFolder, name)
	if *update {
		if err := os.WriteFile(path, made, 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	kept, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if string(kept) != string(made) {
		t.Errorf("assets/%s is not what the parameter table gives: go test ./model/project -run Schema -update", name)
	}
}
