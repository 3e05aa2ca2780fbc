package schedule

import (
	"context"
	"testing"

	"grainwise/model/book"
	"grainwise/model/book/booktest"
	"grainwise/model/measure"
	"grainwise/model/stock"

	"pgregory.net/rapid"
)

func demoBook() book.Book {
	return book.Compute(book.Resolve(book.Defaults(measure.Metric), stock.Default()))
}

// demoWeek is five days of five hours.
func demoWeek() Calendar {
	return Calendar{Start: monday, Week: WeekDays(), Hours: []Span{{540, 840}}}
}

func demo(books int) Input {
	return Input{Calendar: demoWeek(), Places: 8, Slack: 3, Lots: []Lot{LotOf("white", "Ebbwhite", demoBook(), books)}}
}

func made(t testing.TB, in Input) Plan {
	t.Helper()
	p, err := Make(context.Background(), in, nil)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// Source: the demo project: 195 min of set-up, 84 min a book, three rounds in a press
// that holds 8, days of 5 h. Waiting after its checks: 12 h for a case, 24 h for a
// book. By hand: 24 books are 2211 min of hands, 7 days of 300 and 111 more, so the
// work ends on the eighth working day at the soonest. The press by hand: the first cases
// go in on Wednesday the 4th, are out overnight, the books follow on Thursday and come out
// on Friday at 10:44; so again from Friday to Tuesday and from Tuesday to Thursday the
// 12th, 10:44; finishing eight takes 48 min more.
func TestTheDemosBatch(t *testing.T) {
	in := demo(24)
	p := made(t, in)
	for _, w := range judge(in, p) {
		t.Error(w)
	}
	setUp, each := 0, 0
	for _, s := range in.Lots[0].Steps {
		setUp, each = setUp+s.SetUp, each+s.Each
	}
	if setUp != 195 || each != 84 || p.Hands != 195+24*84 {
		t.Errorf("set-up %d, each %d, hands %d", setUp, each, p.Hands)
	}
	if len(p.Rounds) != 3 || p.Rounds[0].Books != 8 || p.Rounds[2].Books != 8 {
		t.Errorf("rounds %+v", p.Rounds)
	}
	if eighth := in.Calendar.later(monday, 7); p.End.Day.Compare(eighth) < 0 {
		t.Errorf("ends %v, before %v", p.End, eighth)
	}
	if in.Calendar.WorkDays(p.End.Day, p.Promise) != 3 || p.Slack != 3 {
		t.Errorf("ends %v, promised %v", p.End, p.Promise)
	}
	if got := p.Bound.Press.String(); got != "2026-03-12 11:32" {
		t.Errorf("the press allows an end at %s", got)
	}
	if p.End.Day.Compare(p.Bound.Press.Day.AddDays(1)) > 0 {
		t.Errorf("ends %v, more than a day after %v", p.End, p.Bound.Press)
	}
	t.Logf("ends %v, bound %+v, proved %v, promised %v", p.End, p.Bound, p.Proved, p.Promise)
}

// Any book's steps make a plan that its checker accepts, and rest as long as package
// making says.
func TestAnyBookIsPlanned(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := booktest.Books().Draw(t, "book")
		in := demo(1)
		in.Calendar.Hours = []Span{{480, 1080}}
		in.Lots = []Lot{LotOf("one", "one", b, rapid.IntRange(1, 20).Draw(t, "books"))}
		p, err := Make(context.Background(), in, nil)
		if err != nil {
			t.Fatal(err)
		}
		for _, w := range judge(in, p) {
			t.Error(w)
		}
	})
}

func BenchmarkReplan24(b *testing.B) {
	in := demo(24)
	for b.Loop() {
		made(b, in)
	}
}

func BenchmarkPlan1000(b *testing.B) {
	in := demo(1000)
	for b.Loop() {
		made(b, in)
	}
}
