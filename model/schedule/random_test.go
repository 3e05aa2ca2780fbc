package schedule

import (
	"context"
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/measure"
)

var monday = measure.Date{Year: 2026, Month: 3, Day: 2}

func anyCalendar(t *rapid.T) Calendar {
	c := Calendar{Start: measure.Date{Year: 2024, Month: 2, Day: 1}.AddDays(rapid.IntRange(0, 800).Draw(t, "start"))}
	for i := range c.Week {
		c.Week[i] = rapid.Bool().Draw(t, "works")
	}
	c.Week[rapid.IntRange(0, 6).Draw(t, "day")] = true
	c.Hours = rapid.SampledFrom([][]Span{
		{{540, 840}}, {{480, 720}, {780, 960}}, {{0, 1440}}, {{600, 660}, {660, 900}}, {{0, 300}, {1200, 1440}},
	}).Draw(t, "hours")
	for range rapid.IntRange(0, 3).Draw(t, "off") {
		c.Off = append(c.Off, c.Start.AddDays(rapid.IntRange(0, 20).Draw(t, "off day")))
	}
	for range rapid.IntRange(0, 3).Draw(t, "away") {
		from := rapid.IntRange(0, 1400).Draw(t, "from")
		c.Away = append(c.Away, Away{Day: c.Start.AddDays(rapid.IntRange(0, 20).Draw(t, "away day")),
			Span: Span{from, min(1440, from+rapid.IntRange(1, 300).Draw(t, "long"))}})
	}
	return c
}

func anyStep(t *rapid.T, id string) Step {
	s := Step{ID: id, Name: id, SetUp: rapid.IntRange(0, 40).Draw(t, "set-up"), Each: rapid.IntRange(0, 30).Draw(t, "each")}
	if rapid.Bool().Draw(t, "pasted") {
		s.Glue = rapid.IntRange(0, s.Each).Draw(t, "glue")
		s.Working = rapid.IntRange(0, 45).Draw(t, "working")
		if s.Glue > 0 && s.Working/s.Glue > 0 && s.Working/s.Glue*s.Each > 120 {
			s.Working = s.Glue
		}
	}
	if rapid.Bool().Draw(t, "waits") {
		s.Wait = rapid.IntRange(0, 2000).Draw(t, "wait")
	}
	if rapid.Bool().Draw(t, "pressed") {
		s.Press = rapid.IntRange(0, 1500).Draw(t, "press")
	}
	if rapid.IntRange(0, 4).Draw(t, "together") == 0 {
		s.Together, s.Each = true, max(s.Each, 1)
	}
	return s
}

// anyInput is a small batch. Lots have the same steps in one order, some left out,
// so that steps which all have together cannot wait crosswise.
func anyInput(t *rapid.T) Input {
	in := Input{Calendar: anyCalendar(t), Places: rapid.IntRange(0, 9).Draw(t, "places"), Slack: rapid.IntRange(0, 5).Draw(t, "slack")}
	kinds := rapid.IntRange(1, 5).Draw(t, "kinds")
	var steps []Step
	for k := range kinds {
		steps = append(steps, anyStep(t, fmt.Sprint("step ", k)))
	}
	for l := range rapid.IntRange(1, 4).Draw(t, "lots") {
		lot := Lot{ID: fmt.Sprint(l), Name: fmt.Sprint("lot ", l), Books: rapid.IntRange(1, 14).Draw(t, "books")}
		for _, s := range steps {
			if rapid.IntRange(0, 5).Draw(t, "has") > 0 {
				if rapid.Bool().Draw(t, "slower") {
					s.Each += rapid.IntRange(0, 5).Draw(t, "by")
				}
				lot.Steps = append(lot.Steps, s)
			}
		}
		if len(lot.Steps) == 0 {
			lot.Steps = steps[:1]
		}
		if rapid.Bool().Draw(t, "due?") {
			lot.Due = in.Calendar.Start.AddDays(rapid.IntRange(0, 15).Draw(t, "due"))
		}
		if rapid.IntRange(0, 3).Draw(t, "ready?") == 0 {
			lot.Ready = Moment{in.Calendar.Start.AddDays(rapid.IntRange(0, 5).Draw(t, "ready")), rapid.IntRange(0, 1439).Draw(t, "at")}
		}
		in.Lots = append(in.Lots, lot)
	}
	for o := range rapid.IntRange(0, 2).Draw(t, "others") {
		other := Other{ID: fmt.Sprint("other ", o), Minutes: rapid.IntRange(1, 60).Draw(t, "minutes")}
		if rapid.Bool().Draw(t, "in pieces") {
			other.Minutes *= 5
			other.Piece = rapid.IntRange(1, other.Minutes).Draw(t, "piece")
		}
		in.Others = append(in.Others, other)
	}
	return in
}

// Random batches against the checker, which knows nothing of the planner.
func TestAnyPlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyInput(t)
		p, err := Make(context.Background(), in, nil)
		if err != nil {
			t.Fatal(err)
		}
		for _, w := range judge(in, p) {
			t.Error(w)
		}
	})
}

// Rounds that are alike come in turn, and turning them costs nothing: the plan that is
// shown is no later than the one that was found.
func TestRoundsComeInTurn(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyInput(t)
		w := newWork(in)
		best, err := w.search(context.Background(), score{}, nil)
		if err != nil {
			t.Fatal(err)
		}
		s := newState(w)
		if !s.follow(w.inTurn(best.order)) || s.score().late > best.score.late || s.score().end > best.score.end {
			t.Errorf("found %+v, in turn %+v", best.score, s.score())
		}
	})
	p := made(t, demo(24))
	first := map[string]int{}
	for _, b := range p.Bars {
		if b.Kind == Work {
			if b.Round < first[b.Step] {
				t.Errorf("round %d after %d: %+v", b.Round, first[b.Step], b)
			}
			first[b.Step] = b.Round
		}
	}
}
