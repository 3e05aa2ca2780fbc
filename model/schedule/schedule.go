// Package schedule plans a batch of books through one pair of hands and a press:
// which round of books has which step when, what rests meanwhile, and when all is
// done. It knows steps and minutes, no project; [Steps] takes them from a book.
//
// The hands do one thing at a time and work only within the calendar's hours; what
// rests goes on resting through nights and days off. A step once begun is carried
// on, over nights if need be; a pasting burst is never broken off. A round's books go
// into the press together. All times are whole minutes.
//
// It is scheduling on one machine with chains, delays and a second, cumulative
// resource, which is hard in general: priority rules and a bounded search give a
// plan, and bounds beside it say how far from the shortest it can be at most.
package schedule

import "grainwise/model/measure"

// Input is everything that a plan rests on.
type Input struct {
	Calendar Calendar
	Places   int     // in the press, one a book; 0 is no limit
	Round    int     // most books in a round; 0 is as many as the press has places, or all
	Lots     []Lot   // what is made
	Others   []Other // other work, put where the hands are free
	Slack    int     // working days kept between the end and the promise
}

// Lot is a number of books that go the same way, all alike.
type Lot struct {
	ID, Name string // ID is its own
	Books    int
	Steps    []Step       // in order; what is done already is left out
	Ready    Moment       // its first step begins no earlier; the zero Moment is no limit
	Due      measure.Date // to be done by the end of this day; the zero Date is no deadline
}

// Step is one kind of work on a book, with the rest that follows it.
//
// Lots whose steps have the same IDs in the same order may share a round. A step's
// set-up is done once in the batch, before its first round.
type Step struct {
	ID, Name string
	SetUp    int  // minutes, once
	Each     int  // minutes a book
	Glue     int  // of these, minutes from the first adhesive to the last touch; 0 is none
	Working  int  // minutes that the adhesive works for; 0 is any
	Whole    bool // a round's work is not broken off by night or break
	Together bool // all rounds have it before any goes on, as cutting from whole sheets
	Wait     int  // minutes of drying and pressing before the next step, at the least
	Press    int  // minutes of these in the press; with glue, from the moment of pasting
}

// Other is work of another kind, done where it keeps no book waiting.
type Other struct {
	ID, Name string
	Minutes  int
	Piece    int          // shortest piece it may be broken into; 0 is in one go
	From     measure.Date // not before this day; the zero Date is any time
}

// pasted: adhesive sets how much is done in one go.
func (s Step) pasted() bool { return s.Glue > 0 }

// burst is how many books one pasting burst holds at most: as many as the adhesive
// works for, and never less than one.
func (s Step) burst() int {
	if s.Working == 0 {
		return 1
	}
	return max(1, s.Working/s.Glue)
}

// rest is how long the books rest before their next step.
func (s Step) rest() int { return max(s.Wait, s.Press) }

// size is the most books in a round.
func (in Input) size() int {
	switch {
	case in.Round > 0:
		return in.Round
	case in.Places > 0:
		return in.Places
	}
	return in.books()
}

func (in Input) books() int {
	sum := 0
	for _, l := range in.Lots {
		sum += l.Books
	}
	return max(sum, 1)
}
