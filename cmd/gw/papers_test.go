package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// Source: checks.md, measure-first: a note for one book, in papers a stop for 5 or
// more. The papers are written all the same.
func TestPapersSayThatABatchIsEstimated(t *testing.T) {
	folder := t.TempDir()
	file := filepath.Join(folder, "book.grainwise")
	for copies, want := range map[string]bool{"4": false, "5": true} {
		var out, messages bytes.Buffer
		if exit := run([]string{"new", "--set", "copies=" + copies, "--out", file}, &out, &messages); exit != exitDone {
			t.Fatal(messages.String())
		}
		out.Reset()
		if exit := run([]string{"papers", file, "--only", "shopping-list", "--out", folder}, &out, &messages); exit != exitDone {
			t.Fatalf("exit %d: %s", exit, messages.String())
		}
		if said := strings.Contains(out.String(), `"id":"measure-first","level":"stop"`); said != want {
			t.Errorf("%s copies: %s", copies, out.String())
		}
		if _, err := os.Stat(filepath.Join(folder, "shopping-list.pdf")); err != nil {
			t.Error(err)
		}
	}
}

// Letters that the printed faces lack are named in one line; the papers are made.
func TestPapersNameLettersTheyLack(t *testing.T) {
	file := made(t)
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	named := bytes.Replace(data, []byte(`"name": "`), []byte(`"name": "كتاب `), 1)
	if err := os.WriteFile(file, named, 0o666); err != nil {
		t.Fatal(err)
	}
	exit, _, said := gw("papers", file, "--only", "shopping-list", "--out", t.TempDir())
	if exit != exitDone || strings.Count(said, "\n") != 1 || !strings.Contains(said, "كتاب") {
		t.Errorf("exit %d: %q", exit, said)
	}
}
