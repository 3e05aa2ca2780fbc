package sheet

import (
	"grainwise/assets/words"
	"grainwise/model/check"
)

// benchFindings are what would go wrong and stands, then what the maker leaves as
// it is, with the reason.
func (in Input) benchFindings(w float64) []block {
	var open, left []block
	for _, f := range check.Batched(in.Findings, in.copies()) {
		switch {
		case f.Accepted != "":
			left = append(left, lines("• "+f.Text(in.style())+" "+words.Say("bench.reason", words.With{"reason": f.Accepted}), body(), w))
		case f.Level == check.Stop || f.Level == check.Check:
			open = append(open, lines("• "+f.Level.Label()+": "+f.Text(in.style()), body(), w))
		}
	}
	return append(in.listed("bench.open.title", open, w), in.listed("bench.accepted.title", left, w)...)
}

// listed is a list under its head; nothing where it is empty.
func (in Input) listed(title string, items []block, w float64) []block {
	if len(items) == 0 {
		return nil
	}
	return append([]block{heading(words.Say(title), headStyle(), w)}, items...)
}

// ruledLines is how many lines are left to write on.
const ruledLines = 5

// benchNotes are the project's notes, and lines to write on for the next time.
func (in Input) benchNotes(w float64) []block {
	var all []block
	if in.Notes != "" {
		all = append(all, heading(words.Say("bench.notes.title"), headStyle(), w))
		all = append(all, paragraphs(in.Notes, body(), w)...)
	}
	return append(all, heading(words.Say("bench.next.title"), headStyle(), w), ruled(ruledLines, w))
}

// ruled is lines to write on.
func ruled(n int, w float64) block {
	const apart = 9.0
	return block{height: float64(n) * apart, draw: func(l leaf, p at) {
		for i := range n {
			y := p.Y + float64(i+1)*apart
			l.line(0.15, at{X: p.X, Y: y}, at{X: p.X + w, Y: y})
		}
	}}
}
