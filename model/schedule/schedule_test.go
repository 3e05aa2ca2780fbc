package schedule

import (
	"context"
	"errors"
	"strings"
	"testing"

	"grainwise/model/measure"
)

// Each input is wrong in one way, and its error names the place.
func TestWhatCannotBePlanned(t *testing.T) {
	step := func(s Step) func(*Input) { return func(in *Input) { in.Lots[0].Steps = []Step{s} } }
	for name, c := range map[string]struct {
		spoil func(*Input)
		says  string
	}{
		"no first day":        {func(in *Input) { in.Calendar.Start = measure.Date{Year: 2026, Month: 2, Day: 30} }, "2026-02-30"},
		"no working day":      {func(in *Input) { in.Calendar.Week = [7]bool{} }, "working day"},
		"hours over midnight": {func(in *Input) { in.Calendar.Hours = []Span{{1200, 1500}} }, "hours"},
		"hours backwards":     {func(in *Input) { in.Calendar.Hours = []Span{{600, 540}} }, "hours"},
		"away backwards":      {func(in *Input) { in.Calendar.Away = []Away{{monday, Span{600, 540}, "class"}} }, "class"},
		"no lots":             {func(in *Input) { in.Lots = nil }, "1 to 10000"},
		"no books":            {func(in *Input) { in.Lots[0].Books = 0 }, "at least one"},
		"two lots of a name":  {func(in *Input) { in.Lots = append(in.Lots, in.Lots[0]) }, "white"},
		"no steps":            {func(in *Input) { in.Lots[0].Steps = nil }, "no steps"},
		"a step twice":        {func(in *Input) { in.Lots[0].Steps = append(in.Lots[0].Steps, in.Lots[0].Steps[0]) }, "twice"},
		"minus minutes":       {step(Step{ID: "a", Name: "Sew", Each: -1}), "Sew"},
		"more glue than work": {step(Step{ID: "a", Name: "Paste", Each: 3, Glue: 4}), "Paste"},
		"longer than a day":   {step(Step{ID: "a", Name: "Paste", Each: 301, Glue: 4}), "301 minutes"},
		"a whole round":       {step(Step{ID: "a", Name: "Dye", Each: 50, Whole: true}), "350 minutes"},
		"too many in press":   {func(in *Input) { in.Round = 9 }, "9 books"},
		"minus places":        {func(in *Input) { in.Places = -1 }, "below nought"},
		"other work":          {func(in *Input) { in.Others = []Other{{Name: "tidy", Minutes: 0}} }, "tidy"},
		"other work, long":    {func(in *Input) { in.Others = []Other{{Name: "class", Minutes: 400}} }, "class"},
	} {
		in := demo(27)
		c.spoil(&in)
		_, err := Make(context.Background(), in, nil)
		var known *Error
		if !errors.As(err, &known) || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// Two lots that have each other's step together before their own wait for ever.
func TestStepsThatWaitCrosswise(t *testing.T) {
	a, b := Step{ID: "a", Name: "A", Each: 1, Together: true}, Step{ID: "b", Name: "B", Each: 1, Together: true}
	in := demo(1)
	in.Lots = []Lot{{ID: "1", Books: 1, Steps: []Step{a, b}}, {ID: "2", Books: 1, Steps: []Step{b, a}}}
	if _, err := Make(context.Background(), in, nil); err == nil {
		t.Error("planned")
	}
}

func TestStoppedPlansAreGivenUp(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	calls := 0
	_, err := Make(ctx, demo(1000), func(done, all int) {
		if calls++; done < 1 || done > all {
			t.Errorf("%d of %d", done, all)
		}
		if done == 3 {
			stop()
		}
	})
	if !errors.Is(err, context.Canceled) || calls != 3 {
		t.Errorf("%v after %d calls", err, calls)
	}
}

func TestAThousandBooks(t *testing.T) {
	in := demo(1000)
	p := made(t, in)
	for _, w := range judge(in, p) {
		t.Error(w)
	}
	t.Logf("ends %v, bound %+v", p.End, p.Bound)
}

// Other work takes no minute from the books: the plan is the same with and without,
// and what fits into the waiting lies there.
func TestOtherWorkWaitsForNobody(t *testing.T) {
	in := demo(24)
	alone := made(t, in)
	in.Others = []Other{{ID: "pocket", Name: "Fold for pocket books", Minutes: 90, Piece: 20}, {ID: "post", Name: "Pack", Minutes: 60, From: monday.AddDays(7)}}
	p := made(t, in)
	for _, w := range judge(in, p) {
		t.Error(w)
	}
	minutes := map[string]int{}
	for _, b := range p.Bars {
		if b.Kind == Aside {
			minutes[b.Step] += clock(in, b.To) - clock(in, b.From)
			if b.Step == "post" && b.From.Day.Compare(monday.AddDays(7)) < 0 {
				t.Errorf("too soon: %+v", b)
			}
		}
	}
	if p.End != alone.End || minutes["pocket"] != 90 || minutes["post"] != 60 {
		t.Errorf("ends %v, alone %v; %v", p.End, alone.End, minutes)
	}
}

// By hand: Monday to Friday of five hours from nine, 300 minutes a day. Each book has
// 100 minutes and then dries 24 h; with two books in one round the work ends at 12:20
// on Monday and all is dry at 12:20 on Tuesday. A deadline on Tuesday is met with no
// day to spare, one on Monday is missed by one, one on Thursday leaves two.
func TestDeadlinesByHand(t *testing.T) {
	for due, margin := range map[int]int{0: -1, 1: 0, 3: 2, 7: 4} {
		in := Input{Calendar: demoWeek(), Lots: []Lot{{ID: "a", Books: 2, Due: monday.AddDays(due), Steps: []Step{{ID: "s", Each: 100, Wait: 1440}}}}}
		p := made(t, in)
		if p.End != (Moment{monday.AddDays(1), 740}) || p.Lots[0].Margin != margin || p.End.String() != "2026-03-03 12:20" {
			t.Errorf("due %d: %v, %+v", due, p.End, p.Lots)
		}
		if (p.Late > 0) != (margin < 0) || !p.Proved {
			t.Errorf("%d minutes late, proved %v", p.Late, p.Proved)
		}
	}
}

// By hand: a lot with a deadline goes first even if it is listed last.
func TestTheEarliestDeadlineGoesFirst(t *testing.T) {
	step := []Step{{ID: "s", Each: 300}}
	in := Input{Calendar: demoWeek(), Round: 1, Lots: []Lot{{ID: "any", Books: 3, Steps: step}, {ID: "soon", Books: 1, Steps: step, Due: monday}}}
	if p := made(t, in); p.Late != 0 || p.Lots[1].End.Day != monday {
		t.Errorf("%+v", p.Lots)
	}
}

// By hand: the adhesive works for 10 minutes and a book's pasting takes 4: two a burst.
// At 13:50 no burst of 20 minutes fits before 14:00.
func TestPastingFitsTheAdhesive(t *testing.T) {
	in := Input{Calendar: demoWeek(), Lots: []Lot{{ID: "a", Books: 5, Steps: []Step{{ID: "s", SetUp: 270, Each: 10, Glue: 4, Working: 10}}}}}
	p := made(t, in)
	want := []string{"2026-03-02 09:00", "2026-03-03 09:00", "2026-03-03 09:20"}
	for i, b := range p.Bars {
		if i < len(want) && b.From.String() != want[i] {
			t.Errorf("burst %d begins %v, want %v", i+1, b.From, want[i])
		}
	}
	if p.Bars[0].Books != 2 || p.End.String() != "2026-03-03 09:30" {
		t.Errorf("%+v, ends %v", p.Bars[0], p.End)
	}
	in.Lots[0].Steps[0].Working = 3
	if p = made(t, in); len(p.Tight) != 1 || p.Tight[0].Glue != 4 || p.Tight[0].Working != 3 {
		t.Errorf("%+v", p.Tight)
	}
}

func TestTheSameInputGivesTheSamePlan(t *testing.T) {
	a, b := made(t, demo(24)), made(t, demo(24))
	if a.End != b.End || len(a.Bars) != len(b.Bars) {
		t.Errorf("%v, %v", a.End, b.End)
	}
	for i := range a.Bars {
		if a.Bars[i] != b.Bars[i] {
			t.Fatalf("%+v, %+v", a.Bars[i], b.Bars[i])
		}
	}
}
