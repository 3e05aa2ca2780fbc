package main

import "grainwise/model/book"

// What holds the sections together and to their case. Of a book that has it
// not, each is null.

type linerPlan struct {
	Width       number   `json:"width"`
	Height      number   `json:"height"`
	CutWidth    number   `json:"cutWidth"`
	CutHeight   number   `json:"cutHeight"`
	Spacing     number   `json:"valleySpacing"`
	PastedWidth number   `json:"pastedWidth"`
	Valleys     []number `json:"valleys"`
	Ridges      []number `json:"ridges"`
}

func linerOf(l book.LinerPlan) *linerPlan {
	if l.Valleys == nil {
		return nil
	}
	return &linerPlan{
		mm(l.Width), mm(l.Height), mm(l.CutWidth), mm(l.CutHeight), mm(l.Spacing), mm(l.PastedWidth),
		sizes(l.Valleys), sizes(l.Ridges),
	}
}

type endpaperPlan struct {
	Count      int    `json:"count"`
	Width      number `json:"width"` // flat, to cut
	Height     number `json:"height"`
	LeafWidth  number `json:"leafWidth"` // pasted and free, once trimmed
	LeafHeight number `json:"leafHeight"`
	Tip        number `json:"tip"`
}

func endpapersOf(e book.EndpaperPlan) *endpaperPlan {
	if e.Count == 0 {
		return nil
	}
	return &endpaperPlan{e.Count, mm(e.Width), mm(e.Height), mm(e.LeafWidth), mm(e.LeafHeight), mm(e.Tip)}
}

type tapePlan struct {
	At     []number `json:"at"` // their middles, from the head
	Width  number   `json:"width"`
	Length number   `json:"length"`
	Lap    number   `json:"lap"`
}

func tapesOf(t book.TapePlan) *tapePlan {
	if len(t.At) == 0 {
		return nil
	}
	return &tapePlan{sizes(t.At), mm(t.Width), mm(t.Length), mm(t.Lap)}
}

type mullPlan struct {
	Width  number `json:"width"`
	Height number `json:"height"`
	Lap    number `json:"lap"`
	Head   number `json:"fromHead"`
}

func mullOf(m book.MullPlan) *mullPlan {
	if m.Height == 0 {
		return nil
	}
	return &mullPlan{mm(m.Width), mm(m.Height), mm(m.Lap), mm(m.Head)}
}
