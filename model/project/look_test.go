package project

import (
	"errors"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"grainwise/model/measure"
)

// newerText is a project as a later version might write it: what we know, and
// things that we do not at every depth.
func newerText(t testing.TB) []byte {
	t.Helper()
	data, err := Demo().Encode()
	if err != nil {
		t.Fatal(err)
	}
	text := string(data)
	for _, c := range [][2]string{
		{`"version": 1`, `"version": 2, "batches": [{"size": 4}]`},
		{`"page.width": 150`, `"page.width": 163, "page.deckle": "left"`},
		{`"paper": "Ebbwhite Drawing 170"`, `"paper": "Moonlit 300"`},
		{`"measured": {`, `"measured": {"block.weight": 12`},
		{`"shelf": [`, `"shelf": [{"kind": "ribbon", "width": 6},`},
	} {
		if !strings.Contains(text, c[0]) {
			t.Fatalf("the demo has no %s", c[0])
		}
		text = strings.Replace(text, c[0], c[1], 1)
	}
	return []byte(text)
}

func TestAFileOfANewerVersionCanBeLookedAt(t *testing.T) {
	file := filepath.Join(t.TempDir(), "newer.grainwise")
	if err := os.WriteFile(file, newerText(t), 0o600); err != nil {
		t.Fatal(err)
	}
	var problem *Problem
	if _, err := Open(file); !errors.As(err, &problem) || problem.Kind != Newer {
		t.Fatalf("opened as any other: %v", err)
	}
	l, err := LookAt(file)
	if err != nil {
		t.Fatal(err)
	}
	demo := Demo()
	if l.Project.Name != demo.Name || l.Project.Decisions.Design.Page.Width != measure.MM(163) ||
		l.Project.Decisions.Design.Page.Height != demo.Decisions.Design.Page.Height || len(l.Project.Shelf.Materials) != len(demo.Shelf.Materials) {
		t.Errorf("%+v", l.Project.Decisions.Design)
	}
	for _, want := range []string{"batches", "page.deckle", "paper", "block.weight"} {
		if !slices.Contains(l.LeftOut, want) {
			t.Errorf("%s is not among what is left out: %q", want, l.LeftOut)
		}
	}
	if len(l.LeftOut) != 5 {
		t.Errorf("left out: %q", l.LeftOut)
	}
	if _, err := l.Project.encodeWhole(""); err != nil {
		t.Errorf("what is shown could not be saved elsewhere: %v", err)
	}
}

// Nothing is made up of what no version of ours has written, and what is
// damaged is said as ever.
func TestWhatCannotBeLookedAt(t *testing.T) {
	folder := t.TempDir()
	for text, kind := range map[string]ProblemKind{
		`{"format":"grainwise-project","version":9,"pages":[]}`: Newer,
		`{"format":"grainwise-project","version":9,`:            Damaged,
		`{"format":"grainwise-project","version":1,"design":7}`: Damaged,
		`{"format":"other","version":9}`:                        Foreign,
	} {
		file := filepath.Join(folder, "file")
		if err := os.WriteFile(file, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
		var problem *Problem
		if _, err := LookAt(file); !errors.As(err, &problem) || problem.Kind != kind {
			t.Errorf("%s: %v", text, err)
		}
	}
	if _, err := LookAt(filepath.Join(folder, "none")); err == nil {
		t.Error("a file that is not there")
	}
}

// Of a file of this version's own, with only the number changed, nothing is lost.
func TestLookingSeesAllThatIsKnown(t *testing.T) {
	p := version(12)
	data, err := p.Encode()
	if err != nil {
		t.Fatal(err)
	}
	file := filepath.Join(t.TempDir(), "newer.grainwise")
	if err := os.WriteFile(file, []byte(strings.Replace(string(data), `"version": 1`, `"version": 3`, 1)), 0o600); err != nil {
		t.Fatal(err)
	}
	if l, err := LookAt(file); err != nil || !l.Project.Equal(p) || l.LeftOut != nil {
		t.Errorf("%v, left out %q", err, l.LeftOut)
	}
}
