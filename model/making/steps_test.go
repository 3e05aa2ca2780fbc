package making

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
)

// Source: geometry, by hand. A folio is cut with its trims (arithmetic, "Text
// block"), the liner with its overhangs ("Structures"), and seam and stations are
// measured on the finished page.
func TestHeadsThatAreTrimmed(t *testing.T) {
	for _, c := range []struct{ trim, over, place, seam string }{
		{"0", "0", "heads level", "stop 190 mm from the head;"},
		{"2", "0", "its head 2 mm above the liner's", "stop 190 mm from the finished head;"},
		{"2", "5", "its head 3 mm below the liner's", "stop 190 mm from the finished head;"},
		{"0", "5", "its head 5 mm below the liner's", "stop 190 mm from the head;"},
	} {
		s := stepOf(t, made(t, "trim.head", c.trim, "liner.overhangHead", c.over), "sew-machine")
		if how := s.How(styles[0]); !strings.Contains(how, "in the valley, "+c.place+",") {
			t.Errorf("trim %s, overhang %s: %q", c.trim, c.over, how)
		}
		if cut := strings.Contains(s.How(styles[0]), "which lies "+c.trim+" mm below the uncut one"); cut != (c.trim != "0") {
			t.Errorf("trim %s: %q", c.trim, s.How(styles[0]))
		}
		if short := s.Short(styles[0]); !strings.Contains(short, c.seam) {
			t.Errorf("trim %s, overhang %s: %q", c.trim, c.over, short)
		}
	}
}

// The strips and folios that the text speaks of lie on the sheet within its lost
// edges, and they are as many as the plan says.
func TestStripsLieOnTheSheet(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := booktest.Books().Draw(t, "book")
		yield := folioYield(b)
		if (yield.key == "making.yield.none") != (b.Use.FoliosASheet == 0) {
			t.Fatalf("%s with %d folios a sheet", yield.key, b.Use.FoliosASheet)
		}
		if b.Use.FoliosASheet == 0 {
			return
		}
		p, _ := b.Part(book.PartFolio)
		usable := b.Resolved.PaperSheet().Usable()
		strips, each, strip := yield.blanks["strips"].(int), yield.blanks["each"].(int), yield.blanks["strip"].(Length)
		along := p.Height + p.Width - strip // of a folio along its strip
		if Length(strips)*strip > usable.Length || Length(each)*along > usable.Width || strips*each != b.Use.FoliosASheet {
			t.Errorf("%d strips %v wide, %d folios %v long, on %v", strips, strip, each, along, usable)
		}
	})
}

// Source: the check covering-untested (an unbacked cloth that no glue test is
// noted of).
func TestUntestedCovering(t *testing.T) {
	b := made(t)
	for _, c := range []struct{ backed, tested, warned bool }{{true, true, false}, {true, false, false}, {false, true, false}, {false, false, true}} {
		b.Resolved.Stock.Covering.Backed, b.Resolved.Stock.Covering.GlueTested = c.backed, c.tested
		if how := stepOf(t, b, "glue-case").How(styles[0]); strings.Contains(how, "glue a scrap first") != c.warned {
			t.Errorf("%+v: %q", c, how)
		}
	}
}

// What must be there exactly when something of the book is.
func presence(b book.Book) map[string]bool {
	r := b.Resolved
	has := func(id book.PartID) bool { _, is := b.Part(id); return is }
	lost := r.Paper.Lost.Edges()
	linked, full := r.Structure == book.LinkStitched, r.Covering.Kind == book.FullCovering
	machine, pamphlet := r.Sewing.Method == book.Machine, r.Sewing.Method == book.Pamphlet
	tapes, pleats := has(book.PartTape), r.Liner.PleatDepth > 0 && r.Sections.Count > 1
	return map[string]bool{
		"grain": true, "lost-edges": lost.Left > 0 || lost.Right > 0 || lost.Top > 0 || lost.Bottom > 0,
		"cut-folios": has(book.PartFolio), "fold-folios": has(book.PartFolio),
		"cut-guards": has(book.PartInterleaf), "fold-guards": has(book.PartInterleaf),
		"gather": has(book.PartInterleaf) || r.Sections.Folios > 1, "press-sections": true,
		"cut-liner": has(book.PartLiner), "tear-liner": !linked && r.Liner.Torn.String() != "none",
		"mark-pleats": !linked && pleats, "fold-pleats": !linked && pleats,
		"mark-creases": !linked && !pleats, "fold-creases": !linked && !pleats,
		"cut-endpapers": has(book.PartEndpaper), "fold-endpapers": linked, "tip-endpapers": linked,
		"try-seam": machine, "sew-machine": machine, "knot-seams": machine,
		"pierce-liner": pamphlet, "sew-pamphlet": pamphlet,
		"pierce-sections": linked, "set-tapes": tapes, "sew-tapes": tapes, "sew-link": linked && !tapes,
		"knock-up": true, "press-block": true, "trim": r.Page.TrimFore+r.Page.TrimHead+r.Page.TrimTail > 0,
		"ribbon": has(book.PartRibbon), "tape-ends": tapes, "line-back": has(book.PartMull),
		"measure": true, "cut-boards": has(book.PartBoard), "cut-spine": has(book.PartSpine), "bands": has(book.PartBand),
		"cut-covering": full, "lay-out": full, "glue-case": full,
		"cut-cloth": !full, "cut-sides": has(book.PartSide), "lay-out-cloth": !full, "glue-cloth": !full, "turn-in-cloth": !full, "glue-sides": !full,
		"cut-corners": true, "turn-in": true, "press-case": true, "elastic": has(book.PartElastic),
		"try-case": true, "mark-casing": true, "guard-leaves": true, "case-in-first": true, "case-in-second": true,
		"groove": r.Groove() > 0, "press-book": true,
		"open-first": true, "label": has(book.PartLabel), "look-over": true,
	}
}

func TestStepIsThereExactlyWhenItsPartIs(t *testing.T) {
	books(t, func(errorf func(string, ...any), b book.Book) {
		got, want := ids(b), presence(b)
		for id, wanted := range want {
			if slices.Contains(got, id) != wanted {
				errorf("%s: there %v, wanted %v", id, !wanted, wanted)
			}
		}
		for i, id := range got {
			if _, known := want[id]; !known || slices.Contains(got[:i], id) {
				errorf("%s is unknown or twice there", id)
			}
		}
	})
}

func TestRichBooksHaveEveryStep(t *testing.T) {
	met := map[string]bool{}
	for _, b := range rich(t) {
		for _, id := range ids(b) {
			met[id] = true
		}
	}
	for id := range presence(made(t)) {
		if !met[id] {
			t.Errorf("no book has the step %s", id)
		}
	}
}

// Stages follow one another, and what must come before something else does.
func TestOrder(t *testing.T) {
	before := [][2]string{
		{"grain", "cut-folios"}, {"lost-edges", "cut-folios"}, {"cut-folios", "fold-folios"}, {"fold-guards", "gather"},
		{"gather", "press-sections"}, {"tear-liner", "mark-pleats"}, {"mark-pleats", "fold-pleats"}, {"fold-pleats", "sew-machine"},
		{"mark-creases", "fold-creases"}, {"pierce-liner", "sew-pamphlet"}, {"pierce-sections", "sew-tapes"}, {"set-tapes", "sew-tapes"},
		{"tip-endpapers", "sew-link"}, {"press-block", "trim"}, {"trim", "line-back"}, {"ribbon", "line-back"}, {"tape-ends", "line-back"},
		{"line-back", "measure"}, {"trim", "measure"}, {"press-block", "measure"},
		{"measure", "cut-boards"}, {"measure", "cut-spine"}, {"measure", "cut-covering"}, {"measure", "cut-cloth"},
		{"bands", "glue-case"}, {"bands", "glue-cloth"}, {"lay-out", "glue-case"}, {"glue-case", "cut-corners"}, {"turn-in-cloth", "glue-sides"},
		{"glue-sides", "cut-corners"}, {"cut-corners", "turn-in"}, {"turn-in", "press-case"}, {"press-case", "elastic"},
		{"elastic", "case-in-first"}, {"press-case", "case-in-first"}, {"mark-casing", "case-in-first"}, {"guard-leaves", "case-in-first"},
		{"case-in-first", "case-in-second"}, {"case-in-second", "groove"}, {"groove", "press-book"}, {"press-book", "open-first"},
	}
	met := map[[2]string]bool{}
	books(t, func(errorf func(string, ...any), b book.Book) {
		all := ids(b)
		for _, pair := range before {
			first, then := slices.Index(all, pair[0]), slices.Index(all, pair[1])
			met[pair] = met[pair] || first >= 0 && then >= 0
			if first >= 0 && then >= 0 && first > then {
				errorf("%s comes after %s", pair[0], pair[1])
			}
		}
		last := 0
		for _, s := range Steps(b) {
			at := slices.Index(Stages(), s.Stage)
			if at < last {
				errorf("%s: stage %q comes after a later one", s.ID, s.Stage)
			}
			last = at
		}
	})
	for _, pair := range before {
		if !met[pair] {
			t.Errorf("no book has both %s and %s", pair[0], pair[1])
		}
	}
}

// A left-handed maker marks, folds, pierces, sews and cuts the other way round; the
// machine stands as it stands. Own reasoning.
func TestHandedSteps(t *testing.T) {
	handed := []string{"fold-folios", "fold-guards", "mark-pleats", "mark-creases", "fold-pleats", "fold-creases", "fold-endpapers", "tear-liner", "pierce-liner", "pierce-sections",
		"sew-pamphlet", "sew-link", "sew-tapes", "cut-corners"}
	books(t, func(errorf func(string, ...any), b book.Book) {
		for _, s := range Steps(b) {
			if s.Handed != slices.Contains(handed, s.ID) {
				errorf("%s: handed %v", s.ID, s.Handed)
			}
		}
	})
}

// Every drawing stands beside the step that it shows.
func TestDrawingsBelongToTheirSteps(t *testing.T) {
	want := map[string]Drawing{
		"fold-folios": DrawFolding, "gather": DrawGathering, "mark-pleats": DrawValleys, "mark-creases": DrawValleys,
		"pierce-liner": DrawStations, "pierce-sections": DrawStations, "sew-machine": DrawSewing, "sew-pamphlet": DrawSewing,
		"sew-link": DrawSewing, "sew-tapes": DrawSewing, "lay-out": DrawLayingOut, "lay-out-cloth": DrawLayingOut,
		"cut-corners": DrawCuttingCorners, "turn-in": DrawTurningIn, "mark-casing": DrawCasingIn, "case-in-first": DrawCasingIn,
		"press-case": DrawPressing, "press-book": DrawPressing, "label": DrawLabel, "measure": "", "grain": "",
	}
	books(t, func(errorf func(string, ...any), b book.Book) {
		for _, s := range Steps(b) {
			if drawing, listed := want[s.ID]; listed && s.Drawing != drawing {
				errorf("%s: drawing %q, want %q", s.ID, s.Drawing, drawing)
			}
		}
	})
}
