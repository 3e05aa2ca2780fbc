package project

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"grainwise/model/book"
	"grainwise/model/measure"
)

func itoa(n int) string { return strconv.Itoa(n) }

func TestOpenWhatWasSaved(t *testing.T) {
	file := filepath.Join(t.TempDir(), "Low Water.json")
	for _, p := range []Project{Demo(), New(measure.Imperial)} {
		if err := Save(file, p); err != nil {
			t.Fatal(err)
		}
		again, err := Open(file)
		if err != nil || !again.Equal(p) {
			t.Errorf("%v: %+v", err, again)
		}
	}
}

func TestOpenWhatCannotBeRead(t *testing.T) {
	folder := t.TempDir()
	large := filepath.Join(folder, "large.json")
	if err := os.WriteFile(large, make([]byte, largest+1), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		path, says string
		is         error
	}{
		{filepath.Join(folder, "none.json"), "no such file", fs.ErrNotExist},
		{folder, "not a file", nil},
		{large, "too large", nil},
		{os.DevNull, "not a file", nil},
	} {
		_, err := Open(c.path)
		var problem *Problem
		if !errors.As(err, &problem) || problem.Kind != Unreadable || problem.File != c.path ||
			!strings.Contains(err.Error(), c.says) || c.is != nil && !errors.Is(err, c.is) {
			t.Errorf("%s: %v", c.path, err)
		}
	}
}

// What no file can hold is not saved over one that is there.
func TestSaveRefusesWhatWouldNotOpen(t *testing.T) {
	file := filepath.Join(t.TempDir(), "book.json")
	if err := Save(file, Demo()); err != nil {
		t.Fatal(err)
	}
	for name, spoil := range map[string]func(*Project){
		"size":     func(p *Project) { p.Decisions.Design.Page.Width = measure.MM(9000) },
		"count":    func(p *Project) { p.Decisions.Design.Sections.Count = 0 },
		"material": func(p *Project) { p.Decisions.Design.Paper.Material = "gone" },
		"word":     func(p *Project) { p.Decisions.Design.Spine.Kind = "cord" },
		"name":     func(p *Project) { p.Name = "two\nlines" },
		"letters":  func(p *Project) { p.Notes = "\xff" },
		"notes":    func(p *Project) { p.Notes = strings.Repeat("x", longestNotes+1) },
		"shelf":    func(p *Project) { p.Shelf.Materials[0].Thickness = -1 },
		"choice":   func(p *Project) { p.Decisions.Design.Board.Width = book.Typed(measure.MM(1)) },
	} {
		p := Demo()
		spoil(&p)
		var problem *Problem
		if err := Save(file, p); !errors.As(err, &problem) || problem.Kind != Unwritable || problem.File != file {
			t.Errorf("%s: %v", name, err)
		}
		if again, err := Open(file); err != nil || !again.Equal(Demo()) {
			t.Errorf("%s: the old file has changed: %v", name, err)
		}
	}
}

func TestSaveIntoNowhere(t *testing.T) {
	folder := t.TempDir()
	for _, path := range []string{filepath.Join(folder, "no", "book.json"), folder} {
		var problem *Problem
		if err := Save(path, Demo()); !errors.As(err, &problem) || problem.Kind != Unwritable || problem.File != path {
			t.Errorf("%s: %v", path, err)
		}
	}
}
