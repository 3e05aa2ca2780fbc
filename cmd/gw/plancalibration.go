package main

import (
	"grainwise/model/book"
	"grainwise/model/measure"
)

// calibrationPlan is what a finished book's measures say of the two figures that
// no shelf tells.
type calibrationPlan struct {
	ThreadCrush foundPlan `json:"threadCrush"` // share of the thread's diameter that is left
	Groove      foundPlan `json:"groove"`      // millimetres
}

// foundPlan is a figure found, the range that the measures leave open and what
// the design takes now; value and range are null where nothing can be said, and
// why says the reason.
type foundPlan struct {
	Key   string     `json:"key"` // of the decision that it would set
	Value *number    `json:"value"`
	Range *[2]number `json:"range"`
	Now   number     `json:"now"`
	Why   string     `json:"why,omitempty"`
}

func calibrationOf(b book.Book) calibrationPlan {
	crush, groove := book.FindCrush(b), book.FindGroove(b, measure.Style{Decimals: 1})
	return calibrationPlan{
		ThreadCrush: foundOf("sewing.threadCrush", number(b.Resolved.Sewing.Crush), crush.Why,
			number(crush.Value), [2]number{number(crush.Low), number(crush.High)}),
		Groove: foundOf("joint.groove", mm(b.Resolved.Groove()), groove.Why, mm(groove.Value), span(groove.Range)),
	}
}

func foundOf(key string, now number, why string, value number, open [2]number) foundPlan {
	if why != "" {
		return foundPlan{Key: key, Now: now, Why: why}
	}
	return foundPlan{Key: key, Value: &value, Range: &open, Now: now}
}
