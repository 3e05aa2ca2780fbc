package project

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func contents(t *testing.T, path string) string {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// A folder that is missing is made; no file of a set takes another's place, not
// even where capitals or the way letters are composed make no difference.
func TestASetOfFiles(t *testing.T) {
	folder := filepath.Join(t.TempDir(), "papers", "Low Water")
	s := FilesIn(folder)
	want := map[string]string{
		"Bench sheet": "Bench sheet.pdf", "BENCH SHEET": "BENCH SHEET 2.pdf", "bench/sheet": "bench-sheet.pdf", "Bench?sheet": "Bench-sheet 2.pdf",
		"Zoe\u0308": "Zoë.pdf", "ZOË": "ZOË 2.pdf",
	}
	for _, text := range []string{"Bench sheet", "BENCH SHEET", "bench/sheet", "Bench?sheet", "Zoe\u0308", "ZOË"} {
		path, err := s.Write(text, ".pdf", []byte(text))
		if err != nil || path != filepath.Join(folder, want[text]) {
			t.Errorf("%q is at %q, want %q: %v", text, path, want[text], err)
		}
	}
	if err := s.Done(); err != nil {
		t.Fatal(err)
	}
	for text, name := range want {
		if got := contents(t, filepath.Join(folder, name)); got != text {
			t.Errorf("%s holds %q, want %q", name, got, text)
		}
	}
	if entries, err := os.ReadDir(folder); err != nil || len(entries) != len(want) {
		t.Errorf("%v, %v", entries, err)
	}
	// Names cut short stay apart as well.
	long := strings.Repeat("n", 300)
	one, err1 := s.Write(long, ".pdf", nil)
	two, err2 := s.Write(long, ".pdf", nil)
	if err1 != nil || err2 != nil || one == two || len(filepath.Base(two)) > LongestFileName {
		t.Errorf("%q, %q: %v, %v", one, two, err1, err2)
	}
}

// Another day's set takes the place of the old one.
func TestASetAgain(t *testing.T) {
	folder := t.TempDir()
	for _, day := range []string{"Monday", "Tuesday"} {
		s := FilesIn(folder)
		path, err := s.Write("Parts", ".csv", []byte(day))
		if err = errors.Join(err, s.Done()); err != nil || contents(t, path) != day || filepath.Base(path) != "Parts.csv" {
			t.Errorf("%s: %q, %v", day, path, err)
		}
	}
}

// One file that cannot be written keeps the whole set from its place.
func TestASetIsWrittenWhollyOrNotAtAll(t *testing.T) {
	folder := t.TempDir()
	old := filepath.Join(folder, "A.csv")
	if err := errors.Join(os.WriteFile(old, []byte("old"), 0o600), os.Mkdir(filepath.Join(folder, "C.csv"), 0o700)); err != nil {
		t.Fatal(err)
	}
	s := FilesIn(folder)
	_, err1 := s.Write("A", ".csv", []byte("new"))
	_, err2 := s.Write("B", ".csv", []byte("new"))
	if err1 != nil || err2 != nil {
		t.Fatal(err1, err2)
	}
	_, err := s.Write("C", ".csv", []byte("new"))
	refusal(t, err, "C.csv", "not a file")
	s.Discard()
	if contents(t, old) != "old" {
		t.Error("the old file has changed")
	}
	if entries, err := os.ReadDir(folder); err != nil || len(entries) != 2 {
		t.Errorf("%v, %v", entries, err)
	}
}

// refusal is a problem that names the file and what is in the way.
func refusal(t *testing.T, err error, parts ...string) {
	t.Helper()
	var problem *Problem
	if !errors.As(err, &problem) || problem.Kind != Unwritable || strings.Contains(err.Error(), "\n") {
		t.Fatalf("%v", err)
	}
	for _, part := range parts {
		if !strings.Contains(err.Error(), part) {
			t.Errorf("%q does not say %q", err, part)
		}
	}
}

// A folder that is a file, or lies in one, stays the file it is.
func TestAFolderThatIsAFile(t *testing.T) {
	file := filepath.Join(t.TempDir(), "notes.txt")
	if err := os.WriteFile(file, []byte("mine"), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, folder := range []string{file, filepath.Join(file, "papers")} {
		_, err := FilesIn(folder).Write("Parts", ".csv", []byte("x"))
		refusal(t, err, "Parts.csv", file+" is a file; expected a folder")
	}
	if contents(t, file) != "mine" {
		t.Error("the file has changed")
	}
}

// A folder that has the file's name stays as well.
func TestAFileThatIsAFolder(t *testing.T) {
	folder := t.TempDir()
	if err := os.Mkdir(filepath.Join(folder, "Parts.csv"), 0o700); err != nil {
		t.Fatal(err)
	}
	_, err := FilesIn(folder).Write("Parts", ".csv", []byte("x"))
	refusal(t, err, "Parts.csv", "not a file")
}
