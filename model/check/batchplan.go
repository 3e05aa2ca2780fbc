package check

import (
	"time"

	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/model/making"
	"grainwise/model/schedule"
)

// What dries, P: after cases are made, and after books are cased in.
const (
	caseHours   = 12
	casingHours = 24
	pasteHours  = 48 // of casing in, where paste brings more water
)

// roundSlow: what is pasted in one go must be done before the adhesive grabs.
func roundSlow(m *batchMatter) []Finding {
	if m.Plan == nil {
		return nil
	}
	var all []Finding
	for _, t := range m.Plan.Tight {
		all = append(all, Finding{
			Level: Check, Part: book.PartCovering, Key: "adhesive/" + t.Step,
			Found: count(t.Glue), Limit: count(t.Working), Blanks: map[string]any{"step": t.Name},
		})
	}
	return all
}

// dryShort: a plan that moves on too soon warps boards and wets leaves. It looks at
// the rests as they are laid out, whatever they were planned from.
func dryShort(m *batchMatter) []Finding {
	if m.Plan == nil || len(m.Sets) == 0 {
		return nil
	}
	shortest := map[string]schedule.Bar{}
	var steps []string
	for _, bar := range m.Plan.Merged() {
		if bar.Kind != schedule.Rest {
			continue
		}
		if was, met := shortest[bar.Step]; !met || rests(bar) < rests(was) {
			if !met {
				steps = append(steps, bar.Step)
			}
			shortest[bar.Step] = bar
		}
	}
	var all []Finding
	for _, step := range steps {
		hours, least := rests(shortest[step]).Hours(), leastOf(m.Sets, step)
		if hours < float64(least) {
			all = append(all, Finding{
				Level: Stop, Part: book.PartCovering, Key: "adhesive/" + step,
				Found: count(int(hours)), Limit: count(least), Blanks: map[string]any{"step": shortest[step].Name},
			})
		}
	}
	return all
}

// rests is how long a bar lasts.
func rests(b schedule.Bar) time.Duration { return clock(b.To).Sub(clock(b.From)) }

func clock(m schedule.Moment) time.Time {
	return time.Date(m.Day.Year, time.Month(m.Day.Month), m.Day.Day, 0, m.Minute, 0, 0, time.UTC)
}

// leastOf is what all sets' books rest at the least.
func leastOf(sets []batch.Set, step string) int {
	least := leastHours(&sets[0].Book, step)
	for _, s := range sets {
		least = min(least, leastHours(&s.Book, step))
	}
	return least
}

func leastHours(b *book.Book, step string) int {
	facts := b.Resolved.Stock.Adhesive.Adhesive
	switch {
	case step == string(making.StageCase):
		return caseHours
	case step != string(making.StageCaseIn):
		return 0
	case facts != nil && facts.Paste:
		return pasteHours
	}
	return casingHours
}

// pressFull: books in the press that have no place of their own are pressed
// unevenly.
func pressFull(m *batchMatter) []Finding {
	w := m.Batch.Working
	return one(Finding{
		Level: when(w.Press > 0 && min(w.Round, m.Copies()) > w.Press, Check), Part: book.PartBook, Key: "copies",
		Found: count(w.Round), Limit: count(w.Press),
	})
}
