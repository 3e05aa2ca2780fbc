package project

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/measure"
	"grainwise/model/stock"
	"grainwise/model/stock/stocktest"
)

func shelfIn(t *testing.T) (ShelfFile, string) {
	t.Helper()
	folder := filepath.Join(t.TempDir(), "own", "grainwise")
	return ShelfIn(folder), filepath.Join(folder, "materials.json")
}

func aThread(name string) stock.Material {
	return stock.Material{Kind: stock.Thread, Name: name, Thickness: measure.MM(0.4), Colour: "#0A0B0C"}
}

func TestTheShelfIsKept(t *testing.T) {
	file, _ := shelfIn(t)
	shelf, err := file.Read()
	if err != nil || !shelf.Equal(stock.Default()) {
		t.Fatalf("before the first save: %v", err)
	}
	with, err := file.Change(shelf, shelf.With(aThread("Dulse")))
	if err != nil {
		t.Fatal(err)
	}
	back, err := file.Read()
	if err != nil || !back.Equal(with) || len(back.Materials) != len(shelf.Materials)+1 {
		t.Errorf("%d materials, %v", len(back.Materials), err)
	}
	if _, err := file.Change(back, stock.Shelf{}); err != nil {
		t.Fatal(err)
	}
	if empty, err := file.Read(); err != nil || len(empty.Materials) != 0 {
		t.Errorf("an empty shelf comes back with %d, %v", len(empty.Materials), err)
	}
}

func TestAnyShelfComesBack(t *testing.T) {
	file := ShelfAt(filepath.Join(t.TempDir(), "shelf.json"))
	last := stock.Default()
	rapid.Check(t, func(t *rapid.T) {
		next := stocktest.Shelf().Draw(t, "shelf")
		got, err := file.Change(last, next)
		if err != nil || !got.Equal(next) {
			t.Fatal(err)
		}
		if back, err := file.Open(); err != nil || !back.Equal(next) {
			t.Fatalf("%v", err)
		}
		last = next
	})
}

// Two windows, many changes at once: none is lost.
func TestWritersTakeTurns(t *testing.T) {
	file, _ := shelfIn(t)
	var all sync.WaitGroup
	for i := range 12 {
		all.Go(func() {
			from, err := file.Read()
			if err != nil {
				t.Error(err)
				return
			}
			if _, err := file.Change(from, from.With(aThread("Dulse "+string(rune('A'+i))))); err != nil {
				t.Error(err)
			}
		})
	}
	all.Wait()
	got, err := file.Read()
	if want := len(stock.Default().Materials) + 12; err != nil || len(got.Materials) != want {
		t.Errorf("%d materials, want %d: %v", len(got.Materials), want, err)
	}
}

func TestADamagedShelfIsSetAside(t *testing.T) {
	file, path := shelfIn(t)
	good := stock.Default()
	if _, err := file.Change(good, good.With(aThread("Dulse"))); err != nil {
		t.Fatal(err)
	}
	whole, _ := os.ReadFile(path)
	for _, c := range []struct{ spoilt, says string }{
		{string(whole[:len(whole)/2]), "Nothing is lost"},
		{strings.Replace(string(whole), `"thickness":0.22`, `"thickness":"thin"`, 1), "“Ebbwhite Drawing 170”"},
		{strings.Replace(string(whole), `"materials"`, `"stuff"`, 1), "stuff"},
		{`{"format":"grainwise-shelf","version":1}`, "materials"},
	} {
		os.WriteFile(path, []byte(c.spoilt), 0o644)
		_, err := file.Read()
		var problem *Problem
		if !errors.As(err, &problem) || !strings.Contains(err.Error(), c.says) || !strings.Contains(err.Error(), "materials.damaged-") {
			t.Errorf("%.40q: %v", c.spoilt, err)
		}
		if again, err := file.Read(); err != nil || !again.Equal(stock.Default()) {
			t.Errorf("afterwards: %v", err)
		}
	}
	aside, _ := filepath.Glob(filepath.Join(filepath.Dir(path), "materials.damaged-*.json"))
	if len(aside) != 4 {
		t.Errorf("set aside: %v", aside)
	}
	newer := strings.Replace(string(whole), `"version": 1`, `"version": 9`, 1)
	os.WriteFile(path, []byte(newer), 0o644)
	if _, err := file.Change(good, good.With(aThread("Wrack"))); err == nil {
		t.Error("a newer shelf is written over")
	}
	if data, _ := os.ReadFile(path); string(data) != newer {
		t.Error("a newer shelf is changed")
	}
}

func TestPicturesAreKeptOnce(t *testing.T) {
	file, path := shelfIn(t)
	name, err := file.KeepPhoto([]byte("a picture"))
	if err != nil || !stock.PhotoName(name) {
		t.Fatalf("%q: %v", name, err)
	}
	again, err := file.KeepPhoto([]byte("a picture"))
	other, _ := file.KeepPhoto([]byte("another"))
	if err != nil || again != name || other == name {
		t.Errorf("%s, %s, %s: %v", name, again, other, err)
	}
	if data, err := os.ReadFile(file.Photo(name)); err != nil || string(data) != "a picture" {
		t.Errorf("%q, %v", data, err)
	}
	pictures, _ := os.ReadDir(filepath.Join(filepath.Dir(path), "photographs"))
	if len(pictures) != 2 {
		t.Errorf("%d pictures", len(pictures))
	}
}

func TestATableIsTakenInWhollyOrNot(t *testing.T) {
	path := filepath.Join(t.TempDir(), "table.csv")
	os.WriteFile(path, []byte("kind,name,thickness\nthread,Dulse,0.4\nthread,Wrack,thick\n"), 0o644)
	all, err := ImportMaterials(path)
	var problem *Problem
	if !errors.As(err, &problem) || all != nil || problem.File != path || !strings.Contains(problem.Place, "line 3, column 3") {
		t.Errorf("%v, %+v", all, problem)
	}
	os.WriteFile(path, []byte("kind,name,thickness\nthread,Dulse,0.4\n"), 0o644)
	if all, err := ImportMaterials(path); err != nil || len(all) != 1 || all[0].Thickness != measure.MM(0.4) {
		t.Errorf("%v, %v", all, err)
	}
	if _, err := ImportMaterials(filepath.Dir(path)); err == nil {
		t.Error("a folder is read")
	}
}

// A new project carries what its design names, as it lies on the maker's shelf,
// and opens without that shelf.
func TestANewProjectCarriesWhatItNames(t *testing.T) {
	own := stock.Default().Without(stock.Board, "Groynes 2.5")
	paper, _ := own.Find(stock.Paper, "Ebbwhite Drawing 170")
	paper.Thickness = measure.MM(0.25)
	p := New(measure.Metric).Carrying(own.With(paper))
	data, err := p.Encode()
	if err != nil {
		t.Fatal(err)
	}
	again, err := Decode(data, "new")
	if err != nil || !again.Equal(p) || again.Book().Resolved.Stock.Paper.Thickness != measure.MM(0.25) {
		t.Errorf("%v", err)
	}
	if len(p.Shelf.Materials) > 14 || len(again.Book().Resolved.Unknown) > 0 {
		t.Errorf("%d materials, unknown %v", len(p.Shelf.Materials), again.Book().Resolved.Unknown)
	}
}
