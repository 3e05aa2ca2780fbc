package making

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
)

// Source: published-facts, "Drying, safety": 12 h or more in the press (Bailey),
// boards and covers 12 to 24 h, 48 h after paste; and the check dry-short: 12 h
// after case making, 24 h after casing in, 48 h with paste.
func TestWaits(t *testing.T) {
	for _, c := range []struct {
		adhesive         string
		caseDry, bookDry int
	}{{"PVA", 12, 24}, {"Wheat paste", 48, 48}, {"Half and half", 48, 48}} {
		b := made(t, "adhesive", c.adhesive)
		if got := stepOf(t, b, "press-case").Wait; got != (Wait{Drying, c.caseDry}) {
			t.Errorf("%s, case: %+v", c.adhesive, got)
		}
		if got := stepOf(t, b, "press-book").Wait; got != (Wait{Drying, c.bookDry}) {
			t.Errorf("%s, book: %+v", c.adhesive, got)
		}
	}
	hasty := made(t, "adhesive", "Wheat paste")
	hasty.Resolved.Stock.Adhesive.Adhesive.DryHours = 6
	if got := stepOf(t, hasty, "press-book").Wait.Hours; got != 48 {
		t.Errorf("a paste that says 6 h: %d, want 48 all the same", got)
	}
	slow := made(t)
	slow.Resolved.Stock.Adhesive.Adhesive.DryHours = 30
	if got := stepOf(t, slow, "press-case").Wait.Hours; got != 30 {
		t.Errorf("an adhesive that says 30 h: %d", got)
	}
	slow.Resolved.Stock.Adhesive.Adhesive = nil
	if got := stepOf(t, slow, "press-book").Wait.Hours; got != 24 {
		t.Errorf("an adhesive that says nothing: %d", got)
	}
}

// Source: the demo project: 195 min of set-up and 84 min a book; 24 books.
func TestTimingOfTheDemo(t *testing.T) {
	setUp, each, all, rest := 0, 0, 0, 0
	for _, s := range Timing(made(t), 24) {
		setUp, each, all, rest = setUp+s.SetUp, each+s.Further, all+s.Minutes, rest+s.Rest
		if s.First != s.SetUp+s.Further {
			t.Errorf("%s: first %d", s.Stage, s.First)
		}
	}
	if setUp != 195 || each != 84 || all != 195+24*84 {
		t.Errorf("set-up %d, each %d, all %d; want 195, 84, %d", setUp, each, all, 195+24*84)
	}
	if rest != 1+1+12+24 { // sections, block, case, book
		t.Errorf("rest %d h", rest)
	}
}

func TestTimingHasTheStagesOfTheSteps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := booktest.Books().Draw(t, "book")
		n := rapid.IntRange(0, 30).Draw(t, "books")
		var stages, timed []Stage
		for _, s := range Steps(b) {
			stages = append(stages, s.Stage)
		}
		for _, s := range Timing(b, n) {
			timed = append(timed, s.Stage)
			if s.SetUp <= 0 || s.Further <= 0 || s.Minutes != s.SetUp+s.Further*max(n, 1) {
				t.Errorf("%+v", s)
			}
		}
		if stages = slices.Compact(stages); !slices.Equal(stages, timed) {
			t.Errorf("steps have %q, times %q", stages, timed)
		}
	})
}

// Source: by hand from the arithmetic for the demo's white book, in metres and
// grams: 150 g/m² on the covering, less four corners of 30.34 mm legs, and on
// two leaves of 150 × 210; thread 6 × (340 × (1 + 1.91/4.5) + 600) mm.
func TestDemoSupplies(t *testing.T) {
	var grams, thread float64
	for _, s := range Supplies(made(t)) {
		grams += s.Grams
		if s.ID == "thread" {
			thread = s.Length.MM()
		}
	}
	leg := 0.036 - 0.004*math.Sqrt2
	if want := 150 * (0.368*0.252 - 2*leg*leg + 2*0.150*0.210); math.Abs(grams-want) > 0.01 {
		t.Errorf("adhesive %.3f g, want %.3f", grams, want)
	}
	if math.Abs(thread-6505.867) > 0.01 {
		t.Errorf("thread %.3f mm", thread)
	}
}

// Every part is among the supplies, and what is bought by its length tells it.
func TestSuppliesHoldEveryPart(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := booktest.Books().Draw(t, "book")
		all := Supplies(b)
		if len(all) != len(b.Parts)+2 {
			t.Fatalf("%d supplies of %d parts", len(all), len(b.Parts))
		}
		for i, p := range b.Parts {
			m, _, _ := b.Source(p)
			if s := all[i]; s.Part != p.ID || s.Count != p.Count || (s.Length > 0) != m.Kind.ByLength() {
				t.Errorf("%+v for %+v", s, p)
			}
		}
	})
}

// The kit takes every piece and the closed book, by the book's own sizes.
func TestKitTakesThePieces(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := booktest.Books().Draw(t, "book")
		kit := map[string]Tool{}
		for _, tool := range Kit(b) {
			kit[tool.ID] = tool
		}
		for _, p := range b.Parts {
			m, _, _ := b.Source(p)
			if m.Kind.ByLength() {
				continue
			}
			long, short := max(p.Height, p.Width), min(p.Height, p.Width)
			if mat := kit["mat"].Needed; kit["cutter"].Needed.Width < long || mat.Width < long || mat.Height < short {
				t.Errorf("cutter %v, mat %v for %v", kit["cutter"].Needed, mat, p)
			}
		}
		if press := kit["press"].Needed; press != (Size{b.Closed.Width, b.Closed.Height}) {
			t.Errorf("press %v", press)
		}
		machine := b.Resolved.Sewing.Method == book.Machine
		_, has := kit["machine"]
		_, awl := kit["awl"]
		if has != machine || awl == machine {
			t.Errorf("machine %v, awl %v for %s", has, awl, b.Resolved.Sewing.Method)
		}
	})
}
