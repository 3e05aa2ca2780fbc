package project

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

const fixtures = "../../testdata/projects"

// Each broken file beside its whole message: what a maker reads.
func TestBrokenFiles(t *testing.T) {
	expected, err := os.ReadFile(filepath.Join(fixtures, "messages.txt"))
	if err != nil {
		t.Fatal(err)
	}
	said := map[string]string{}
	for _, line := range strings.Split(strings.TrimSpace(string(expected)), "\n") {
		name, message, _ := strings.Cut(line, ": ")
		said[name] = message
	}
	files, err := filepath.Glob(filepath.Join(fixtures, "*.json"))
	if err != nil || len(files) != len(said) {
		t.Fatalf("%d files for %d messages: %v", len(files), len(said), err)
	}
	for _, file := range files {
		_, err := Open(file)
		var problem *Problem
		if !errors.As(err, &problem) {
			t.Errorf("%s: %v", file, err)
			continue
		}
		problem.File = filepath.Base(file)
		if want := problem.File + ": " + said[problem.File]; problem.Error() != want {
			t.Errorf("got  %s\nwant %s", problem, want)
		}
	}
}
