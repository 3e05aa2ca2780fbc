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
