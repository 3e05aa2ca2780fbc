package schedule

import (
	"context"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// What was begun before a lost day stays, nothing is done on it, and the rest is a
// whole plan; by the checker, which is told of the lost day.
func TestALostDay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyInput(t)
		in.Others = nil
		p, err := Make(context.Background(), in, nil)
		if err != nil {
			t.Fatal(err)
		}
		day := in.Calendar.Start.AddDays(rapid.IntRange(0, 12).Draw(t, "lost"))
		c, err := p.LostDay(context.Background(), day)
		if err != nil {
			t.Fatal(err)
		}
		in.Calendar = in.Calendar.Without(day)
		for _, w := range judge(in, c.Plan) {
			t.Error(w)
		}
		if c.Later != clock(in, c.Plan.End)-clock(in, p.End) {
			t.Errorf("%d minutes later: %v, %v", c.Later, p.End, c.Plan.End)
		}
		before := func(p Plan) (all []Bar) {
			for _, b := range p.Bars {
				if b.Kind == Work && b.To.Day.Compare(day) < 0 {
					b.GoesOn = false
					all = append(all, b)
				}
			}
			return all
		}
		is := before(c.Plan)
		for _, b := range before(p) {
			if !slices.Contains(is, b) {
				t.Errorf("before %v there was %+v", day, b)
			}
		}
	})
}

// By hand: the demo's batch has no working day without work up to its second Tuesday,
// so one lost there ends it later; a Sunday is no loss.
func TestWhatADayCostsTheDemo(t *testing.T) {
	p := made(t, demo(24))
	c, err := p.LostDay(context.Background(), monday.AddDays(1))
	if err != nil || c.Later <= 0 || c.WorkDays < 1 || len(c.Moved) == 0 || c.Plan.Promise.Compare(p.Promise) <= 0 {
		t.Errorf("%v later, %d working days, %v; %v", c.Later, c.WorkDays, c.Moved, err)
	}
	c, err = p.LostDay(context.Background(), monday.AddDays(6))
	if err != nil || c.Later != 0 || c.WorkDays != 0 || len(c.Moved) != 0 {
		t.Errorf("a Sunday: %d, %d, %v, %v", c.Later, c.WorkDays, c.Moved, err)
	}
}
