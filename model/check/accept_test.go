package check

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/measure"
)

// again is the one finding of a rule in a design, with the answers to it.
func again(t *testing.T, rule string, answers []Acceptance, settings ...string) Finding {
	t.Helper()
	for _, f := range Answered(All(reckon(with(t, measure.Metric, settings...))), answers) {
		if f.ID == rule {
			return f
		}
	}
	t.Fatalf("%v: nothing of %s", settings, rule)
	return Finding{}
}

// An answer holds while the value is no worse, lapses one step further out,
// and holds again when the value comes back. Limits: the list of checks.
func TestAnswersHoldUntilTheValueWorsens(t *testing.T) {
	for _, c := range []struct {
		rule                    string
		accepted, milder, worse []string
		says                    string
	}{
		{"square-small", set("square.head", "1.3 mm"), set("square.head", "1.6 mm"), set("square.head", "1.1 mm"), "at 1.4 mm; now it is 1.05 mm"}, // a board of 214.5 and of 214
		{"board-thin", set("page.height", "240 mm", "board.thickness", "1.7 mm"), set("page.height", "240 mm", "board.thickness", "1.75 mm"),
			set("page.height", "240 mm", "board.thickness", "1.6 mm"), "at 1.7 mm; now it is 1.6 mm"},
		{"joint-wide", set("joint.width", "14 mm"), set("joint.width", "13.5 mm"), set("joint.width", "14.5 mm"), "; now it is"},
		// The level: 2.6 mm of leaves is a check, 3.28 a stop.
		{"section-thick", set("paper.thickness", "0.33 mm"), set("paper.thickness", "0.32 mm"), set("paper.thickness", "0.41 mm"), "at 2.64 mm; now it is 3.28 mm"},
		// The limit moves, the value stays: creep outgrows the trim.
		{"trim-under-creep", set("trim.foreEdge", "1 mm"), set("trim.foreEdge", "1 mm", "paper.thickness", "0.215 mm"),
			set("trim.foreEdge", "1 mm", "sections.folios", "5"), "when 1.04 mm was wanted; now 1.38 mm is wanted"},
		// The other side of a range is another matter.
		{"spine-fit", set("spine.width", "25 mm"), set("spine.width", "24 mm"), set("spine.width", "12 mm"), "at 25 mm; now it is 12 mm"},
		// A square format is a finding within its limit: 3 %, then nearer.
		{"square-format", set("page.width", "204 mm"), set("page.width", "204 mm"), set("page.width", "208 mm"), "at 2.9 %; now it is 1 %"},
		// Another material is another matter.
		{"material-unknown", set("covering", "Nowhere 1"), set("covering", "Nowhere 1"), set("covering", "Nowhere 2"), "for Nowhere 1; now it is Nowhere 2"},
	} {
		answers := []Acceptance{again(t, c.rule, nil, c.accepted...).Accept("It is meant so.")}
		for _, settings := range [][]string{c.accepted, c.milder} {
			f := again(t, c.rule, answers, settings...)
			if f.Accepted != "It is meant so." || f.Lapsed != nil || f.Again(measure.Style{Decimals: 2}) != "" {
				t.Errorf("%s %v: accepted %q, lapsed %v", c.rule, settings, f.Accepted, f.Lapsed)
			}
		}
		f := again(t, c.rule, answers, c.worse...)
		if f.Accepted != "" || f.Lapsed == nil || *f.Lapsed != answers[0] {
			t.Errorf("%s %v: accepted %q, lapsed %v", c.rule, c.worse, f.Accepted, f.Lapsed)
			continue
		}
		if text := f.Again(measure.Style{Decimals: 2}); !strings.Contains(text, c.says) || !strings.HasSuffix(text, "You wrote: It is meant so.") {
			t.Errorf("%s %v: %q does not say %q", c.rule, c.worse, text, c.says)
		}
	}
}

// Worse at the same value: the level alone makes an answer lapse.
func TestAWorseLevelLapses(t *testing.T) {
	f := Finding{ID: "section-thick", Key: "sections.folios", Level: Check, Found: length(measure.MM(3)), Limit: length(measure.MM(2.5))}
	answers := []Acceptance{f.Accept("So.")}
	f.Level = Stop
	f = Answered([]Finding{f}, answers)[0]
	if f.Accepted != "" || f.Again(measure.Style{}) != "You left it as it was as a Check; now it is a Stop. You wrote: So." {
		t.Errorf("accepted %q, says %q", f.Accepted, f.Again(measure.Style{}))
	}
	f.Level = Note
	if f = Answered([]Finding{f}, answers)[0]; f.Accepted != "So." {
		t.Error("a milder level is no reason to speak")
	}
}

// answered draws answers to some of a book's findings.
func answered(t *rapid.T, found []Finding) []Acceptance {
	var answers []Acceptance
	for _, f := range found {
		if rapid.Bool().Draw(t, f.Identity()) {
			answers = With(answers, f.Accept("Reason "+f.Identity()))
		}
	}
	return answers
}

// In the book that they were given for, answers hold, one and all; nothing else
// of the findings changes, and none is lost.
func TestAnswersHoldInTheirOwnBook(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		found := All(book.Compute(booktest.Books().Draw(t, "book").Resolved))
		answers := answered(t, found)
		marked := Answered(found, answers)
		left, standing := Left(marked), Standing(marked)
		if len(left) != len(answers) || len(left)+len(standing) != len(found) {
			t.Fatalf("%d answers, %d left, %d standing of %d", len(answers), len(left), len(standing), len(found))
		}
		for i, f := range marked {
			if f.Lapsed != nil || f.Identity() != found[i].Identity() || found[i].Accepted != "" {
				t.Fatalf("%s: %+v", f.Identity(), f)
			}
		}
	})
}

// In any other book an answer holds or has lapsed for each finding of its
// identity, says so, and speaks of no other finding. One that holds is never
// milder than what it covers.
func TestAnswersInAnotherBook(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := booktest.Decisions().Draw(t, "design")
		answers := answered(t, All(reckon(d)))
		other := d
		for range rapid.IntRange(1, 3).Draw(t, "changes") {
			p := rapid.SampledFrom(book.Params()).Draw(t, "key")
			v := p.Get(booktest.Decisions().Draw(t, "other"))
			if p.Kind == book.KindWord && !slices.Contains(p.WordsFor(other.Design), v.Word) {
				continue // does not suit this structure
			}
			if err := p.Set(&other, v); err != nil {
				t.Fatal(err)
			}
		}
		for _, f := range Answered(All(reckon(other)), answers) {
			var answer *Acceptance
			for _, a := range answers {
				if a.Answers(f) {
					answer = &a
				}
			}
			switch {
			case answer == nil:
				if f.Accepted != "" || f.Lapsed != nil {
					t.Fatalf("%s: nobody answered it", f.Identity())
				}
			case f.Lapsed == nil:
				now, then := f.Found.Amount-f.Limit.Amount, answer.Found.Amount-answer.Limit.Amount
				if f.Accepted != answer.Reason || f.Level.WorseThan(answer.Level) || max(now, -now) > max(then, -then)+1e-6 {
					t.Fatalf("%s: %v, %v holds for %v, %v", f.Identity(), answer.Found, answer.Limit, f.Found, f.Limit)
				}
			default:
				if f.Accepted != "" || f.Again(measure.Style{Decimals: 2}) == "" {
					t.Fatalf("%s: lapsed and silent", f.Identity())
				}
			}
		}
	})
}

func TestTheNewestAnswerCounts(t *testing.T) {
	one := Acceptance{ID: "a", Key: "k", Reason: "first"}
	other := Acceptance{ID: "a", Key: "l", Reason: "other"}
	both := With(With(nil, one), other)
	newer := With(both, Acceptance{ID: "a", Key: "k", Reason: "second"})
	if len(both) != 2 || len(newer) != 2 || newer[0] != other || newer[1].Reason != "second" || both[0] != one {
		t.Errorf("%v, then %v", both, newer)
	}
	if gone := Without(newer, "a", "k"); len(gone) != 1 || gone[0] != other || len(newer) != 2 {
		t.Errorf("%v left of %v", gone, newer)
	}
}
