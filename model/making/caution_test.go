package making

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"grainwise/model/book"
)

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
	books(t, func(errorf func(string, ...any), b book.Book) {
		for _, s := range Steps(b) {
			for _, c := range Cautions() {
				met[string(c)+s.ID] = true
				if has, want := slices.Contains(s.Cautions, c), slices.Contains(wanted[c], s.ID); has != want {
					errorf("%s: caution %s %v, want %v", s.ID, c, has, want)
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
	for _, b := range manyBooks(t) {
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
