package view_test

import (
	"context"
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"grainwise/assets/words"
	"grainwise/model/book/booktest"
	"grainwise/model/measure"
	"grainwise/model/schedule"
	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/view"
)

func timelinePlan(t *rapid.T) schedule.Plan {
	in := schedule.Input{
		Calendar: schedule.Calendar{Start: measure.Date{Year: 2026, Month: 1, Day: 1}.AddDays(rapid.IntRange(0, 400).Draw(t, "start")), Week: schedule.WeekDays(),
			Hours: rapid.SampledFrom([][]schedule.Span{{{From: 540, To: 840}}, {{From: 480, To: 720}, {From: 780, To: 1020}}, {{From: 0, To: 1440}}}).Draw(t, "hours")},
		Places: rapid.IntRange(0, 9).Draw(t, "places"), Slack: rapid.IntRange(0, 12).Draw(t, "slack"),
	}
	long := rapid.SampledFrom([]string{"White", "", "A name so long that no column of names can hold it beside anything else"}).Draw(t, "name")
	for i := range rapid.IntRange(1, 3).Draw(t, "lots") {
		b := booktest.Books().Draw(t, "book")
		l := schedule.LotOf(fmt.Sprint(i), long, b, rapid.SampledFrom([]int{1, 2, 9, 60, 300}).Draw(t, "books"))
		for k := range l.Steps {
			l.Steps[k].ID += fmt.Sprint(i % 2) // some lots go ways of their own
			if long != "White" {
				l.Steps[k].Name = long
			}
		}
		in.Lots = append(in.Lots, l)
	}
	if rapid.Bool().Draw(t, "other") {
		in.Others = []schedule.Other{{ID: "o", Name: long, Minutes: 300, Piece: 20}}
	}
	p, err := schedule.Make(context.Background(), in, nil)
	if err != nil {
		t.Skip(err) // a pasting longer than the day
	}
	return p
}

// Any plan in any frame: no text leaves the sheet, overlaps another or is too small,
// every item is drawn at finite places, and no bar leaves the sheet.
func TestTimelineOfAnyPlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := timelinePlan(t)
		frame := rapid.SampledFrom(frames()).Draw(t, "frame")
		s := view.Timeline(view.TimelineInput{Plan: p, Name: rapid.SampledFrom([]string{"", "Low Water", "A name so long that no title strip can hold it beside anything else at all"}).Draw(t, "batch"),
			Width: frame[0], Height: frame[1], DarkSurround: rapid.Bool().Draw(t, "dark")})
		if trouble := draft.TextTrouble(s); trouble != "" {
			t.Fatal(trouble)
		}
		for _, item := range s.Items {
			if !finite(item) {
				t.Fatalf("%#v", item)
			}
			if f, is := item.(scene.Face); is {
				for _, q := range f.Outline {
					if q.X < -1e-6 || q.Y < -1e-6 || q.X > s.Width+1e-6 || q.Y > s.Height+1e-6 {
						t.Fatalf("%v is off the sheet", q)
					}
				}
			}
		}
	})
}

// The demo's 24 books: a solid bar for every stretch of work, each at its time: as the
// plan's bars follow one another, so do those drawn; and promise, end and bound are told.
func TestTimelineOfTheDemo(t *testing.T) {
	in := demo(t)
	plan, err := schedule.Make(context.Background(), schedule.Input{
		Calendar: schedule.Calendar{Start: measure.Date{Year: 2026, Month: 3, Day: 2}, Week: schedule.WeekDays(), Hours: []schedule.Span{{From: 540, To: 840}}},
		Places:   8, Slack: 3, Lots: []schedule.Lot{schedule.LotOf("w", "white", in.Book, 24)},
	}, nil)
	if err != nil {
		t.Fatal(err)
	}
	s := view.Timeline(view.TimelineInput{Plan: plan, Name: "Low Water", Width: 1200, Height: 800})
	solid, work := 0, 0
	for _, item := range s.Items {
		if f, is := item.(scene.Face); is && f.Fill == draft.Cloth {
			solid++
		}
	}
	for _, b := range plan.Merged() {
		if b.Kind == schedule.Work {
			work++
		}
	}
	if solid != work || work < 24 {
		t.Errorf("%d solid bars for %d stretches of work", solid, work)
	}
	said := texts(s)
	for _, text := range []string{"Low Water", "24", "36 h 51", words.Say("timeline.slack", words.With{"days": 3}), words.Say("timeline.bound"), words.Say("timeline.press")} {
		if said[text] == 0 {
			t.Errorf("%q is not told: %v", text, said)
		}
	}
}

func TestTimelineOfNothing(t *testing.T) {
	if s := view.Timeline(view.TimelineInput{Width: 500, Height: 400}); draft.TextTrouble(s) != "" || texts(s)[words.Say("timeline.none")] != 1 {
		t.Error("an empty plan")
	}
}
