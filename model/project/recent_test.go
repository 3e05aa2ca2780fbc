package project

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"testing"
)

func TestRecent(t *testing.T) {
	folder := t.TempDir()
	r := RecentIn(filepath.Join(folder, "config"))
	if got := r.List(); len(got) != 0 {
		t.Errorf("a new list holds %q", got)
	}
	var files []string
	for i := range 10 {
		file := filepath.Join(folder, fmt.Sprintf("%d.json", i))
		if err := os.WriteFile(file, nil, 0o600); err != nil {
			t.Fatal(err)
		}
		files = append(files, file)
		if err := r.Add(file); err != nil {
			t.Fatal(err)
		}
	}
	slices.Reverse(files)
	if got := r.List(); !slices.Equal(got, files[:8]) {
		t.Errorf("got %q, want the last eight, the latest first", got)
	}
	if err := r.Add(files[3]); err != nil {
		t.Fatal(err)
	}
	want := slices.Concat(files[3:4], files[:3], files[4:8])
	if got := r.List(); !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
	if err := r.Remove(files[0]); err != nil {
		t.Fatal(err)
	}
	if err := os.Remove(files[1]); err != nil {
		t.Fatal(err)
	}
	want = slices.Concat(files[3:4], files[2:3], files[4:8])
	if got := r.List(); !slices.Equal(got, want) {
		t.Errorf("got %q, want %q without what is gone", got, want)
	}
}

func TestDamagedRecentIsEmpty(t *testing.T) {
	folder := t.TempDir()
	r := RecentIn(folder)
	if err := os.WriteFile(filepath.Join(folder, "recent.json"), []byte(`["half`), 0o600); err != nil {
		t.Fatal(err)
	}
	if got := r.List(); len(got) != 0 {
		t.Errorf("got %q", got)
	}
	file := filepath.Join(folder, "book.json")
	if err := os.WriteFile(file, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	if err := r.Add(file); err != nil || !slices.Equal(r.List(), []string{file}) {
		t.Errorf("%v: %q", err, r.List())
	}
}

func TestRecentTakesRelativeNames(t *testing.T) {
	t.Chdir(t.TempDir())
	if err := os.WriteFile("book.json", nil, 0o600); err != nil {
		t.Fatal(err)
	}
	r := RecentIn("config")
	if err := r.Add("book.json"); err != nil {
		t.Fatal(err)
	}
	if got := r.List(); len(got) != 1 || !filepath.IsAbs(got[0]) {
		t.Errorf("got %q, want one full path", got)
	}
}
