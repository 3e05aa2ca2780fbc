package making

import (
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/assets"
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

var styles = []measure.Style{{Decimals: 1}, {System: measure.Imperial, Denominator: 32}, {System: measure.Imperial, Decimals: 3}}

// made is the demo project's white book with changes, as the table parses them.
func made(t *testing.T, settings ...string) book.Book {
	t.Helper()
	d := book.Defaults(measure.Metric)
	for i := 0; i+1 < len(settings); i += 2 {
		set(t, &d, settings[i], settings[i+1], measure.Metric)
	}
	return book.Compute(book.Resolve(d, stock.Default()))
}

func set(t *testing.T, d *book.Decisions, key, text string, system measure.System) {
	t.Helper()
	p, known := book.Lookup(key)
	if !known {
		t.Fatalf("no key %s", key)
	}
	v, err := p.Parse(text, system)
	if err == nil {
		err = p.Set(d, v)
	}
	if err != nil {
		t.Fatalf("%s = %s: %v", key, text, err)
	}
}

func ids(b book.Book) []string {
	var all []string
	for _, s := range Steps(b) {
		all = append(all, s.ID)
	}
	return all
}

func stepOf(t *testing.T, b book.Book, id string) Step {
	t.Helper()
	for _, s := range Steps(b) {
		if s.ID == id {
			return s
		}
	}
	t.Fatalf("no step %s", id)
	return Step{}
}

// Source: the demo project's table, "computed by hand from the arithmetic", and
// its decisions. Both papers.
func TestDemoSizesInTheTexts(t *testing.T) {
	white, oat := made(t), made(t, "paper", "Marramstone Oat 180")
	for _, c := range []struct{ id, white, oat string }{
		{"lost-edges", "3 mm on every edge", "3 mm on every edge"},
		{"cut-folios", "24 of 300 × 210 mm", "24 of 300 × 210 mm"},
		{"cut-liner", "410.6 × 210 mm", "411.5 × 210 mm"},
		{"fold-folios", "150 × 210 mm", "150 × 210 mm"},
		{"gather", "4 to a section: 6 in all", "4 to a section: 6 in all"},
		{"try-seam", "stitch 4.5 mm, thread 0.28 mm", "stitch 4.5 mm, thread 0.28 mm"},
		{"sew-machine", "start 20 mm, stop 190 mm", "start 20 mm, stop 190 mm"}, // 170 mm of seam
		{"cut-boards", "2 of 149 × 216 mm, 2.5 mm thick", "2 of 149 × 216 mm, 2.5 mm thick"},
		{"cut-spine", "16 × 216 mm", "17 × 216 mm"},
		{"cut-covering", "368 × 252 mm", "369 × 252 mm"},
		{"lay-out", "joints 9 mm, turn-ins 18 mm", "joints 9 mm, turn-ins 18 mm"},
		{"glue-case", "9 mm spacers", "9 mm spacers"},
		{"turn-in", "18 mm all round", "18 mm all round"},
		{"try-case", "3 mm fore edge, 3 mm head, 3 mm tail", "3 mm head, 3 mm tail"},
	} {
		for b, want := range map[*book.Book]string{&white: c.white, &oat: c.oat} {
			if got := stepOf(t, *b, c.id).Short(styles[0]); !strings.Contains(got, want) {
				t.Errorf("%s: %q lacks %q", c.id, got, want)
			}
		}
	}
	for _, c := range []struct{ id, white, oat string }{
		{"cut-folios", "gives 8:", "gives 3:"}, // folios a sheet
		{"gather", "1.76 mm", "1.92 mm"},
		{"measure", "Spine: about 13.4 mm expected. Fore edge: about 10.9 mm", "Spine: about 14.3 mm expected. Fore edge: about 11.8 mm"},
		{"lay-out", "34 mm lies between the boards", "35 mm lies between the boards"}, // 16 or 17 and two joints of 9
	} {
		for b, want := range map[*book.Book]string{&white: c.white, &oat: c.oat} {
			if got := stepOf(t, *b, c.id).How(styles[0]); !strings.Contains(got, want) {
				t.Errorf("%s: %q lacks %q", c.id, got, want)
			}
		}
	}
}

// Source: the design's `gw plan` example of the demo's white book (valleys,
// ridge, casing-in, corner to cut, seam).
func TestDemoPlanInTheTexts(t *testing.T) {
	b := made(t)
	for id, want := range map[string]string{
		"mark-pleats": "valleys at 150.88 mm and ridges at 161.76 mm; both repeat every 21.76 mm",
		"mark-casing": "4.043 mm from the fore edge, 3 mm from the head",
		"cut-corners": "at 45°, 4 mm outside",
		"try-case":    "squares 3.006 mm fore edge",
	} {
		if got := stepOf(t, b, id).Short(measure.Style{Decimals: 3}); !strings.Contains(got, want) {
			t.Errorf("%s: %q lacks %q", id, got, want)
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
	rapid.Check(t, func(t *rapid.T) {
		b := booktest.Books().Draw(t, "book")
		got, want := ids(b), presence(b)
		for id, wanted := range want {
			if slices.Contains(got, id) != wanted {
				t.Errorf("%s: there %v, wanted %v", id, !wanted, wanted)
			}
		}
		for i, id := range got {
			if _, known := want[id]; !known || slices.Contains(got[:i], id) {
				t.Errorf("%s is unknown or twice there", id)
			}
		}
	})
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
	rapid.Check(t, func(t *rapid.T) {
		b := booktest.Books().Draw(t, "book")
		all := ids(b)
		for _, pair := range before {
			first, then := slices.Index(all, pair[0]), slices.Index(all, pair[1])
			met[pair] = met[pair] || first >= 0 && then >= 0
			if first >= 0 && then >= 0 && first > then {
				t.Errorf("%s comes after %s", pair[0], pair[1])
			}
		}
		last := 0
		for _, s := range Steps(b) {
			at := slices.Index(Stages(), s.Stage)
			if at < last {
				t.Errorf("%s: stage %q comes after a later one", s.ID, s.Stage)
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

func TestEveryTextIsFilled(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := booktest.Books().Draw(t, "book")
		style := rapid.SampledFrom(styles).Draw(t, "style")
		filled := func(what, text string) {
			if text == "" || strings.ContainsAny(text, "{}") || strings.Contains(text, "making.") || strings.Contains(text, "  ") || strings.Contains(text, "%!") {
				t.Errorf("%s: %q", what, text)
			}
		}
		for _, s := range Steps(b) {
			filled(s.ID, s.Short(style))
			filled(s.ID, s.How(style))
			filled(s.ID, s.Stage.Name())
			if s.Wait.Hours > 0 {
				filled(s.ID, s.Wait.Text())
			}
			for _, c := range s.Cautions {
				filled(s.ID, c.Text())
			}
		}
		for _, tool := range Kit(b) {
			filled(tool.ID, tool.Text(style))
		}
		for _, supply := range Supplies(b) {
			filled(supply.ID, supply.Text(style))
		}
	})
}

// quiet is the corpus of ordinary, well-made books.
func quiet(t *testing.T) map[string]book.Book {
	t.Helper()
	names, err := filepath.Glob("../../testdata/quiet/*.json")
	if err != nil || len(names) == 0 {
		t.Fatalf("no books: %v", err)
	}
	books := map[string]book.Book{}
	for _, name := range names {
		var q struct {
			System measure.System    `json:"system"`
			Set    map[string]string `json:"set"`
		}
		data, err := os.ReadFile(name)
		if err == nil {
			err = json.Unmarshal(data, &q)
		}
		if err != nil {
			t.Fatal(err)
		}
		d := book.Defaults(q.System)
		for _, p := range book.Params() {
			if value, given := q.Set[p.Key]; given {
				set(t, &d, p.Key, value, q.System)
			}
		}
		books[filepath.Base(name)] = book.Compute(book.Resolve(d, stock.Default()))
	}
	return books
}

// Short texts are printed large: 110 letters, a little more in inches.
func TestShortTextsAreShort(t *testing.T) {
	for name, b := range quiet(t) {
		for _, s := range Steps(b) {
			for i, most := range []int{110, 125, 125} {
				if text := s.Short(styles[i]); len([]rune(text)) > most {
					t.Errorf("%s, %s: %d letters: %s", name, s.ID, len([]rune(text)), text)
				}
			}
		}
	}
}

// Source: the checks' list of bench cautions, printed with the step that they
// belong to.
func TestCautionsBelongToTheirSteps(t *testing.T) {
	wanted := map[Caution][]string{
		Knife: {"lost-edges", "cut-folios", "cut-guards", "cut-liner", "cut-endpapers", "trim", "cut-boards", "cut-spine", "cut-covering",
			"cut-cloth", "cut-sides", "bands", "cut-corners", "elastic", "label"},
		Guillotine: {"lost-edges", "cut-folios", "cut-guards", "cut-liner", "cut-endpapers", "trim", "cut-boards", "cut-spine", "cut-covering",
			"cut-cloth", "cut-sides", "bands", "label"},
		Awl:     {"knot-seams", "pierce-liner", "sew-pamphlet", "pierce-sections", "sew-tapes", "sew-link"},
		Machine: {"try-seam", "sew-machine"},
		Adhesive: {"tip-endpapers", "ribbon", "tape-ends", "line-back", "bands", "glue-case", "glue-cloth", "turn-in-cloth", "glue-sides",
			"turn-in", "elastic", "case-in-first", "case-in-second", "label"},
		Weights: {"grain", "lost-edges", "cut-folios", "cut-boards", "press-sections", "tip-endpapers", "press-block", "press-case", "groove", "press-book"},
	}
	if len(wanted) != len(Cautions()) {
		t.Errorf("%d cautions, want %d", len(Cautions()), len(wanted))
	}
	met := map[string]bool{}
	rapid.Check(t, func(t *rapid.T) {
		for _, s := range Steps(booktest.Books().Draw(t, "book")) {
			for _, c := range Cautions() {
				met[string(c)+s.ID] = true
				if has, want := slices.Contains(s.Cautions, c), slices.Contains(wanted[c], s.ID); has != want {
					t.Errorf("%s: caution %s %v, want %v", s.ID, c, has, want)
				}
			}
		}
	})
	for c, steps := range wanted {
		for _, id := range steps {
			if !met[string(c)+id] {
				t.Errorf("no book has the step %s", id)
			}
		}
	}
}

// What the texts tell the maker to do brings its caution along, whatever the
// lists above say.
func TestTextsThatAskForCare(t *testing.T) {
	asks := map[Caution]*regexp.Regexp{
		Adhesive: regexp.MustCompile(`\b([Ss]pread|[Bb]rush|[Ss]tick|[Gg]lue|[Pp]aste) `),
		Knife:    regexp.MustCompile(`^Cut the (corners|boards|covering|folios|liner|spine|sides|guard|endpapers|lost|label)|^Trim the block|Cut a slot`),
		Machine:  regexp.MustCompile(`[Ss]titch \d`),
		Awl:      regexp.MustCompile(`[Pp]ierce (each|\d)|[Nn]eedle`),
		Weights:  regexp.MustCompile(`under weight|the press\b`),
	}
	texts := map[string]int{}
	for _, b := range quiet(t) {
		for _, s := range Steps(b) {
			for _, text := range []string{s.Short(styles[0]), s.How(styles[0])} {
				for c, ask := range asks {
					if !ask.MatchString(text) {
						continue
					}
					texts[string(c)]++
					if !slices.Contains(s.Cautions, c) && !spoken(s.ID, c) {
						t.Errorf("%s asks for care with %s: %q", s.ID, c, text)
					}
				}
			}
		}
	}
	for c := range asks {
		if texts[string(c)] == 0 {
			t.Errorf("no text speaks of %s", c)
		}
	}
}

// spoken are steps that only speak of what a later step does.
func spoken(id string, c Caution) bool {
	return c == Adhesive && (id == "mark-pleats" || id == "mark-creases") // "left to paste on a board"
}

// Source: the checks: the usual care, with the maker's own local rules and
// training ahead of it.
func TestCautionsDefer(t *testing.T) {
	for c, parts := range map[Caution][]string{
		Knife:      {"safety rule", "mat", "behind the blade", "fresh blade", "sharps bin"},
		Guillotine: {"guard", "both hands", "trained", "powered", "makers and local rules"},
		Awl:        {"awl and needle"},
		Machine:    {"fingers", "eyes"},
		Adhesive:   {"label", "air", "skin", "solvents"},
		Weights:    {"heavy sheets", "weights", "press"},
	} {
		text := c.Text()
		if !strings.HasPrefix(text, "Local rules and your training come first. Usual care:") {
			t.Errorf("%s does not defer: %q", c, text)
		}
		for _, part := range parts {
			if !strings.Contains(text, part) {
				t.Errorf("%s: %q lacks %q", c, text, part)
			}
		}
	}
}

// Source: the arithmetic, "Case with a flat back": never any adhesive between the back and the
// spine piece; the leaf placed with the book closed.
func TestCasingInKeepsTheBackFree(t *testing.T) {
	for name, b := range quiet(t) {
		for _, id := range []string{"case-in-first", "case-in-second"} {
			s := stepOf(t, b, id)
			if text := s.Short(styles[0]) + s.How(styles[0]); !regexp.MustCompile(`(?i)(no|never any) adhesive on the back`).MatchString(text) {
				t.Errorf("%s, %s does not keep the back free: %q", name, id, text)
			}
		}
		if how := stepOf(t, b, "turn-in").Short(styles[0]); !strings.Contains(how, "head and tail first, nip the corners, then the fore edges") {
			t.Errorf("%s: %q", name, how)
		}
	}
}

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

// Nothing in the words' file speaks of a step, tool or caution that is none.
func TestWordsHaveTheirSteps(t *testing.T) {
	data, err := assets.Files.ReadFile("lang/en/making.json")
	if err != nil {
		t.Fatal(err)
	}
	var texts map[string]string
	if err := json.Unmarshal(data, &texts); err != nil {
		t.Fatal(err)
	}
	steps := presence(made(t))
	for key, text := range texts {
		kind, rest, _ := strings.Cut(strings.TrimPrefix(key, "making."), ".")
		id, _, _ := strings.Cut(rest, ".")
		if _, known := steps[id]; (kind == "step" || kind == "how") && !known {
			t.Errorf("%s speaks of no step", key)
		}
		if kind == "caution" && !slices.Contains(Cautions(), Caution(id)) {
			t.Errorf("%s speaks of no caution", key)
		}
		if strings.Contains(text, "  ") || text == "" {
			t.Errorf("%s: %q", key, text)
		}
		if _, has := words.Lookup(key); !has {
			t.Errorf("%s is not found", key)
		}
	}
}
