package schedule

import (
	"slices"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/making"
)

// Minutes from the first adhesive on one book to the last touch, own reasoning: a
// covering is pasted, laid on and turned in; a pasted leaf is spread and laid down
// within the time of casing in.
const (
	glueCase   = 8
	glueCaseIn = 8
)

// Steps are a book's stages at the bench, with the minutes and hours of package
// making, as a batch goes through them. Sheets are cut for all rounds together. Books
// go from casing in straight into the press, so these two are one step, and so are
// making cases and pressing them. A stage rests as long as its rests come to
// together, after its work.
func Steps(b book.Book) []Step {
	var all []Step
	for _, t := range making.Timing(b, 1) {
		s := Step{
			ID: string(t.Stage), Name: t.Stage.Name(), SetUp: t.SetUp, Each: t.Further, Wait: t.Rest * 60,
			Together: t.Stage == making.StageCut, Press: 60 * pressHours(b, t.Stage),
		}
		s.Glue = glueMinutes(t.Stage)
		if facts := b.Resolved.Stock.Adhesive.Adhesive; facts != nil && s.Glue > 0 {
			s.Working = facts.WorkingMinutes
		}
		if n := len(all) - 1; t.Stage == making.StagePress && n >= 0 && all[n].ID == string(making.StageCaseIn) {
			all[n].join(s)
			all[n].Name = words.Say("schedule.step.caseInPress")
			continue
		}
		all = append(all, s)
	}
	return all
}

// join lets a step follow another without a pause: the two are one.
func (s *Step) join(next Step) {
	s.SetUp, s.Each = s.SetUp+next.SetUp, s.Each+next.Each
	s.Wait, s.Press = s.Wait+next.Wait, s.Press+next.Press
}

func glueMinutes(stage making.Stage) int {
	switch stage {
	case making.StageCase:
		return glueCase
	case making.StageCaseIn:
		return glueCaseIn
	}
	return 0
}

// pressHours are what a stage's work lies in the press after pasting: cases and
// books. Sections and blocks lie between boards under weight, which takes no place.
func pressHours(b book.Book, stage making.Stage) int {
	hours := 0
	for _, s := range making.Steps(b) {
		if s.Stage == stage && slices.Contains([]string{"press-case", "press-book"}, s.ID) {
			hours += s.Wait.Hours
		}
	}
	return hours
}

// LotOf is so many copies of a book, all their steps before them.
func LotOf(id, name string, b book.Book, books int) Lot {
	return Lot{ID: id, Name: name, Books: books, Steps: Steps(b)}
}
