package view

import (
	"strconv"

	"grainwise/assets/words"
	"grainwise/render/draft"
)

// strip is the title strip: what the batch is, and what the marks stand for.
func (d timeline) strip() {
	p := d.in.Plan
	books := 0
	for _, r := range p.Rounds {
		books += r.Books
	}
	t := draft.Strip{
		Title: words.Say("timeline.title"), Subtitle: words.Say("timeline.subtitle"), Compact: d.compact(),
		Fields: []draft.Field{
			{Word: words.Say("timeline.field.books"), Value: strconv.Itoa(books)},
			{Word: words.Say("timeline.field.rounds"), Value: strconv.Itoa(len(p.Rounds))},
			{Word: words.Say("timeline.field.hands"), Value: shownHours(p.Hands)},
			{Word: words.Say("timeline.field.end"), Value: shownDay(p.End.Day)},
			{Word: words.Say("timeline.field.promise"), Value: shownDay(p.Promise)},
			{Word: words.Say("timeline.field.bound"), Value: d.boundText()},
		},
		Foot: []string{words.Say("timeline.foot.marks"), words.Say("timeline.foot.axis")},
	}
	if d.in.Name != "" {
		t.Fields = append([]draft.Field{{Word: words.Say("timeline.field.batch"), Value: fitted(d.in.Name, draft.ValueType(), 220)}}, t.Fields...)
	}
	left, right := d.margin(), d.sheet.Width-d.margin()
	d.sheet.Strip(t, left, right, d.sheet.Height-draft.StripHeight(t.Compact))
}

func (d timeline) margin() float64 { return d.sheet.Width - d.field.x1 }

// boundText says how soon any plan could end.
func (d timeline) boundText() string {
	if d.in.Plan.Proved {
		return words.Say("timeline.proved", words.With{"day": shownDay(d.in.Plan.End.Day)})
	}
	return shownDay(d.in.Plan.Bound.Greatest().Day)
}

// shownHours is minutes as hours: "36 h 51".
func shownHours(minutes int) string {
	rest := strconv.Itoa(minutes % 60)
	if len(rest) < 2 {
		rest = "0" + rest
	}
	return words.Say("timeline.hours", words.With{"hours": minutes / 60, "minutes": rest})
}
