package making

import (
	"grainwise/assets/words"
	"grainwise/model/book"
)

// WaitKind is what the work rests for.
type WaitKind string

// The kinds of waiting.
const (
	Drying   WaitKind = "drying"
	Pressing WaitKind = "pressing"
)

// Wait is how long the work rests, hours; the zero Wait is none.
type Wait struct {
	Kind  WaitKind
	Hours int
}

// Text says it in a few words, "" for none.
func (w Wait) Text() string {
	if w.Hours == 0 {
		return ""
	}
	return words.Say("making.wait."+string(w.Kind), words.With{"hours": w.Hours})
}

// The least hours of drying. A case stays in the press for 12 h or more (Bailey,
// Library Bookbinding, 1916); boards and covers need 12 to 24 h to settle, 48 h
// after paste (published-facts, "Drying, safety"). An adhesive that says longer
// of itself is believed.
const (
	caseHours  = 12
	bookHours  = 24
	pasteHours = 48
)

// The shorter waits, own reasoning: folds settle and small joints hold.
const (
	foldHours     = 1
	smallHours    = 2
	smallPasteHrs = 6
)

func pressed() Wait { return Wait{Pressing, foldHours} }

// small is the drying of a joint that nothing pulls at yet.
func small(b book.Book) Wait {
	if pasty(b) {
		return Wait{Drying, smallPasteHrs}
	}
	return Wait{Drying, smallHours}
}

// dryCase is the drying of a case just made, dryBook of a book just cased in.
func dryCase(b book.Book) Wait { return drying(b, caseHours) }

func dryBook(b book.Book) Wait { return drying(b, bookHours) }

func drying(b book.Book, least int) Wait {
	if pasty(b) {
		least = pasteHours
	}
	if facts := b.Resolved.Stock.Adhesive.Adhesive; facts != nil {
		least = max(least, facts.DryHours)
	}
	return Wait{Drying, least}
}

// pasty: the adhesive brings much water.
func pasty(b book.Book) bool {
	facts := b.Resolved.Stock.Adhesive.Adhesive
	return facts != nil && facts.Paste
}
