package check

import (
	"slices"

	"grainwise/assets/words"
	"grainwise/model/measure"
)

// Acceptance is a maker's answer to a finding: it stays as it is, and why. It
// speaks of the finding of one identity while that is no worse than it was.
type Acceptance struct {
	ID     string   // the rule's
	Key    string   // what the finding points to
	Level  Level    // as it was when it was accepted; so is all that follows
	Found  Quantity // in the unit of the rule
	Limit  Quantity
	About  string // the material it spoke of; empty where the value says all
	Reason string // never empty
}

// Accept is the answer to a finding as it stands now.
func (f Finding) Accept(reason string) Acceptance {
	return Acceptance{f.ID, f.Key, f.Level, f.Found, f.Limit, f.about(), reason}
}

// about is the material that a finding is about; another one is another matter.
func (f Finding) about() string {
	name, _ := f.Blanks["name"].(string)
	return name
}

// Answers reports whether a is the answer to a finding of f's identity.
func (a Acceptance) Answers(f Finding) bool { return a.ID == f.ID && a.Key == f.Key }

// SameMatter reports whether two answers are to findings of one identity.
func (a Acceptance) SameMatter(other Acceptance) bool { return a.ID == other.ID && a.Key == other.Key }

// holds reports whether the finding is no worse than the maker accepted it.
func (a Acceptance) holds(f Finding) bool {
	return !f.Level.WorseThan(a.Level) && a.About == f.about() && !furtherOut(f, a)
}

// furtherOut reports whether a finding lies further beyond its limit than it
// did when it was accepted, or on the limit's other side.
func furtherOut(f Finding, a Acceptance) bool {
	if f.Found.Unit != a.Found.Unit {
		return true
	}
	now, then := f.Found.Amount-f.Limit.Amount, a.Found.Amount-a.Limit.Amount
	if now < 0 {
		now, then = -now, -then
	}
	return now > 0 && now > then+sameAmount
}

// sameAmount is what the sums of two equal amounts may differ by: far under a
// nanometre.
const sameAmount = 1e-9

// Answered marks the findings that a maker leaves as they are, and those whose
// answer no longer holds. The findings given stay as they are.
func Answered(found []Finding, answers []Acceptance) []Finding {
	marked := slices.Clone(found)
	for i := range marked {
		f := &marked[i]
		for _, a := range answers {
			switch {
			case !a.Answers(*f):
			case a.holds(*f):
				f.Accepted = a.Reason
			default:
				f.Lapsed = &a
			}
		}
	}
	return marked
}

// Standing are the findings that still speak, in their order.
func Standing(found []Finding) []Finding {
	return slices.DeleteFunc(slices.Clone(found), func(f Finding) bool { return f.Accepted != "" })
}

// Left are the findings that the maker leaves as they are, in their order.
func Left(found []Finding) []Finding {
	return slices.DeleteFunc(slices.Clone(found), func(f Finding) bool { return f.Accepted == "" })
}

// With returns the answers with another one: the newest of an identity counts.
// The answers given stay as they are.
func With(answers []Acceptance, a Acceptance) []Acceptance {
	return append(Without(answers, a.ID, a.Key), a)
}

// Without returns the answers without that to one identity.
func Without(answers []Acceptance, id, key string) []Acceptance {
	return slices.DeleteFunc(slices.Clone(answers), func(a Acceptance) bool { return a.ID == id && a.Key == key })
}

// Again says why a finding speaks although it was accepted: "left as it was at
// 1.3 mm; now 1.1 mm". Empty where nothing has lapsed.
func (f Finding) Again(style measure.Style) string {
	if f.Lapsed == nil {
		return ""
	}
	what, then, now := f.outgrown(*f.Lapsed, style)
	return words.Say("accept."+what, words.With{"then": then, "now": now}, words.With{"reason": f.Lapsed.Reason})
}

// outgrown is what an answer no longer covers: which words, then and now.
func (f Finding) outgrown(a Acceptance, style measure.Style) (what, then, now string) {
	switch {
	case a.About != f.about():
		return "other", a.About, f.about()
	case a.Found != f.Found:
		style = apart(a.Found, f.Found, style)
		return "further", a.Found.Text(style), f.Found.Text(style)
	case a.Limit != f.Limit:
		style = apart(a.Limit, f.Limit, style)
		return "limit", a.Limit.Text(style), f.Limit.Text(style)
	}
	return "level", a.Level.Label(), f.Level.Label()
}
