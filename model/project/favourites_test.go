package project

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/measure"
)

func named(name string, width float64) Format {
	d := book.Defaults(measure.Metric).Design
	d.Page.Width = measure.MM(width)
	return FromDesign(name, d)
}

func names(t *testing.T, f Favourites) string {
	t.Helper()
	all, err := f.List()
	if err != nil {
		t.Fatal(err)
	}
	var list []string
	for _, one := range all {
		if !one.Yours {
			t.Errorf("%s is not the user's", one.Name)
		}
		list = append(list, one.Name)
	}
	return strings.Join(list, ", ")
}

func TestFavourites(t *testing.T) {
	f := FavouritesIn(filepath.Join(t.TempDir(), "not", "yet"))
	if got := names(t, f); got != "" {
		t.Errorf("a new list holds %s", got)
	}
	for _, step := range []struct {
		do   func() error
		want string
		err  error
	}{
		{func() error { return f.Save(named("Gift", 100), false) }, "Gift", nil},
		{func() error { return f.Save(named("Travel", 120), false) }, "Gift, Travel", nil},
		{func() error { return f.Save(named("gift", 130), false) }, "Gift, Travel", ErrTaken},
		{func() error { return f.Save(named("Gift", 140), true) }, "Gift, Travel", nil},
		{func() error { return f.Rename("Gift", "Travel") }, "Gift, Travel", ErrTaken},
		{func() error { return f.Rename("Gift", "GIFT") }, "GIFT, Travel", nil},
		{func() error { return f.Rename("GIFT", "Presents") }, "Presents, Travel", nil},
		{func() error { return f.Delete("Travel") }, "Presents", nil},
	} {
		if err := step.do(); !errors.Is(err, step.err) {
			t.Errorf("%v, want %v", err, step.err)
		}
		if got := names(t, f); got != step.want {
			t.Errorf("the list is %s, want %s", got, step.want)
		}
	}
	all, _ := f.List()
	if diff := cmp.Diff(named("Presents", 140).Settings, all[0].Settings); diff != "" {
		t.Errorf("what was replaced: %s", diff)
	}
}

func TestFavouritesRefuse(t *testing.T) {
	f := FavouritesIn(t.TempDir())
	if err := f.Save(named("Gift", 100), false); err != nil {
		t.Fatal(err)
	}
	for what, err := range map[string]error{
		"no name":      f.Save(named("", 100), false),
		"space":        f.Save(named(" Gift", 100), false),
		"two lines":    f.Save(named("Gi\nft", 100), false),
		"long":         f.Save(named(strings.Repeat("x", 61), 100), false),
		"built-in id":  f.Save(named("pocket", 100), false),
		"built-in":     f.Save(named("Square", 100), true),
		"not there":    f.Rename("Gone", "Found"),
		"delete":       f.Delete("Gone"),
		"rename empty": f.Rename("Gift", ""),
		"no format":    f.Save(Format{Name: "Odd", Settings: []Setting{{"paper", book.WordValue("Kelp")}}}, false),
	} {
		if err == nil || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s: %v", what, err)
		}
	}
	if got := names(t, f); got != "Gift" {
		t.Errorf("the list is %s", got)
	}
}

func TestAnyDesignCanBeAFavourite(t *testing.T) {
	f := FavouritesIn(t.TempDir())
	schema := compiled(t, FormatsSchema)
	rapid.Check(t, func(r *rapid.T) {
		format := FromDesign("mine", booktest.Decisions().Draw(r, "design").Design)
		if err := f.Save(format, true); err != nil {
			r.Fatal(err)
		}
		all, err := f.List()
		if err != nil || len(all) != 1 || !sameFormat(all[0], format) {
			r.Fatalf("%v: %+v", err, all)
		}
		if err := validate(t, schema, encodeFormats(all)); err != nil {
			r.Fatal(err)
		}
	})
}

// A damaged list is kept under another name, and said; nothing is written over it.
func TestDamagedFavouritesAreKeptAside(t *testing.T) {
	for name, touch := range map[string]func(Favourites) error{
		"list":   func(f Favourites) error { _, err := f.List(); return err },
		"save":   func(f Favourites) error { return f.Save(named("New", 100), false) },
		"rename": func(f Favourites) error { return f.Rename("Gift", "New") },
		"delete": func(f Favourites) error { return f.Delete("Gift") },
	} {
		folder := t.TempDir()
		f := FavouritesIn(folder)
		file, first := filepath.Join(folder, "favourites.json"), filepath.Join(folder, "favourites.damaged-1.json")
		const harm = `{"format": "grainwise-formats", "version": 1, "formats": [{"name": "Gift", "sett`
		for _, path := range []string{file, first} {
			if err := os.WriteFile(path, []byte(harm), 0o600); err != nil {
				t.Fatal(err)
			}
		}
		err := touch(f)
		var problem *Problem
		if !errors.As(err, &problem) || problem.Kind != Damaged || !strings.Contains(err.Error(), "favourites.damaged-2.json") {
			t.Errorf("%s: %v", name, err)
		}
		kept, err := os.ReadFile(filepath.Join(folder, "favourites.damaged-2.json"))
		if err != nil || string(kept) != harm {
			t.Errorf("%s: %v, kept %q", name, err, kept)
		}
		if err := f.Save(named("New", 100), false); err != nil || names(t, f) != "New" {
			t.Errorf("%s, afterwards: %v", name, err)
		}
	}
}

// A list of a later version is whole: it stays where it is.
func TestNewerFavouritesStay(t *testing.T) {
	folder := t.TempDir()
	file := filepath.Join(folder, "favourites.json")
	const text = `{"format": "grainwise-formats", "version": 2, "shelves": []}`
	if err := os.WriteFile(file, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	f := FavouritesIn(folder)
	var problem *Problem
	if _, err := f.List(); !errors.As(err, &problem) || problem.Kind != Newer {
		t.Errorf("list: %v", err)
	}
	if err := f.Save(named("New", 100), true); !errors.As(err, &problem) || problem.Kind != Newer {
		t.Errorf("save: %v", err)
	}
	if kept, err := os.ReadFile(file); err != nil || string(kept) != text {
		t.Errorf("%v: %q", err, kept)
	}
}

func TestDamagedFormatsAreRefused(t *testing.T) {
	for _, c := range []struct{ formats, says string }{
		{`{}`, "["},
		{`[3]`, "{"},
		{`[{"name": "A"}]`, "settings"},
		{`[{"settings": {}}]`, "name"},
		{`[{"name": "A", "settings": {}}, {"name": "a", "settings": {}}]`, "already"},
		{`[{"name": "A", "settings": {"paper": "Kelp"}}]`, "paper"},
		{`[{"name": "A", "settings": {"page.width": 9000}}]`, "60 to 420 mm"},
		{`[{"name": "A", "settings": {}, "grain": 1}]`, "grain"},
	} {
		text := `{"format": "grainwise-formats", "version": 1, "formats": ` + c.formats + `}`
		_, problem := decodeFormats([]byte(text), "formats.json")
		if problem == nil || !strings.Contains(problem.Error(), c.says) || !strings.HasPrefix(problem.Error(), "formats.json: ") {
			t.Errorf("%s: %v", c.formats, problem)
		}
	}
}
