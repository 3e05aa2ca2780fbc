package main

import (
	"grainwise/assets/words"
	"grainwise/model/book"
)

type blockPlan struct {
	Leaves            int          `json:"leaves"`
	Pages             int          `json:"pages"`
	Openings          openingsPlan `json:"openings"`
	SectionThickness  number       `json:"sectionThickness"`
	ForeEdgeThickness number       `json:"foreEdgeThickness"`
	SpineThickness    number       `json:"spineThickness"`
	FilledForeEdge    number       `json:"filledForeEdge"`
	Swell             number       `json:"swell"`
	Creep             [2]number    `json:"creep"`
	Width             number       `json:"width"`
	Height            number       `json:"height"`
	Estimated         estimate     `json:"estimated"` // what a measure has replaced or would replace
}

type openingsPlan struct {
	Inside     int `json:"inside"`
	OneSheet   int `json:"oneSheet"`
	InSections int `json:"inSections"`
}

type estimate struct {
	ForeEdgeThickness number `json:"foreEdgeThickness"`
	SpineThickness    number `json:"spineThickness"`
}

func blockOf(b book.Book) blockPlan {
	k := b.Block
	return blockPlan{
		Leaves: k.Leaves, Pages: k.Pages, Openings: openingsPlan(k.Openings),
		SectionThickness: mm(k.SectionThickness), ForeEdgeThickness: mm(k.ForeEdgeThickness),
		SpineThickness: mm(k.SpineThickness), FilledForeEdge: mm(k.FilledForeEdge),
		Swell: number(k.Swell), Creep: span(k.Creep), Width: mm(k.Width), Height: mm(k.Height),
		Estimated: estimate{mm(k.EstimatedForeEdge), mm(k.EstimatedSpine)},
	}
}

type casePlan struct {
	SpineWidth     number `json:"spineWidth"`
	JointWidth     number `json:"jointWidth"`
	SetBack        number `json:"setBack"`
	BoardHeight    number `json:"boardHeight"`
	BoardWidth     number `json:"boardWidth"`
	CoveringHeight number `json:"coveringHeight"`
	CoveringWidth  number `json:"coveringWidth"`
	SideHeight     number `json:"sideHeight"` // of a quarter covering, else 0
	SideWidth      number `json:"sideWidth"`
	CornerCut      number `json:"cornerCut"`
	Closes         bool   `json:"closes"` // the joint is wide enough to close
}

func caseOf(c book.Case) casePlan {
	return casePlan{
		mm(c.SpineWidth), mm(c.JointWidth), mm(c.SetBack), mm(c.BoardHeight), mm(c.BoardWidth),
		mm(c.CoveringHeight), mm(c.CoveringWidth), mm(c.SideHeight), mm(c.SideWidth), mm(c.CornerCut), c.Closes,
	}
}

type squarePlan struct {
	Head          number    `json:"head"`
	Tail          number    `json:"tail"`
	ForeEdge      number    `json:"foreEdge"`
	ForeEdgeRange [2]number `json:"foreEdgeRange"`
}

func squareOf(s book.Squares) squarePlan {
	return squarePlan{mm(s.Head), mm(s.Tail), mm(s.ForeEdge), span(s.ForeEdgeRange)}
}

type closedPlan struct {
	Width     number `json:"width"`
	Height    number `json:"height"`
	Thickness number `json:"thickness"`
}

func closedOf(s book.Solid) closedPlan {
	return closedPlan{mm(s.Width), mm(s.Height), mm(s.Thickness)}
}

type rangePlan struct {
	SpineThickness [2]number `json:"spineThickness"`
	SquareForeEdge [2]number `json:"squareForeEdge"`
}

type casingPlan struct {
	ForeEdge      number `json:"foreEdge"`
	ForeEdgeGrown number `json:"foreEdgeGrown"`
	Head          number `json:"head"`
	Tail          number `json:"tail"`
	ShiftIfOpen   number `json:"shiftIfOpen"`
}

func casingOf(c book.CasingIn) casingPlan {
	return casingPlan{mm(c.ForeEdge), mm(c.Grown), mm(c.Head), mm(c.Tail), mm(c.ShiftIfOpen)}
}

type sewingPlan struct {
	Stations       []number `json:"stations"`
	Seam           []number `json:"seam"` // start and stop; empty when sewn by hand
	Stitches       int      `json:"stitches"`
	ThreadDiameter number   `json:"threadDiameter"`
	ThreadPerBook  number   `json:"threadPerBook"`
}

func sewingOf(b book.Book) sewingPlan {
	s := b.Sewing
	p := sewingPlan{
		Stations: sizes(s.Stations), Seam: []number{}, Stitches: s.Stitches,
		ThreadDiameter: mm(s.ThreadDiameter), ThreadPerBook: mm(s.ThreadPerBook),
	}
	if b.Resolved.Sewing.Method == book.Machine {
		p.Seam = sizes([]book.Length{s.Seam.Low, s.Seam.High})
	}
	return p
}

type partPlan struct {
	ID     book.PartID   `json:"id"`
	Name   string        `json:"name"`
	Stock  string        `json:"stock"`
	Count  int           `json:"count"`
	Height number        `json:"height"`
	Width  number        `json:"width"`
	Grain  book.GrainRun `json:"grain"`
	Mass   number        `json:"mass"`
}

func partsOf(parts []book.Part) []partPlan {
	var list []partPlan
	for _, p := range parts {
		list = append(list, partPlan{
			p.ID, words.Say("part." + p.Word), p.Stock, p.Count, mm(p.Height), mm(p.Width), p.Grain, number(p.Mass),
		})
	}
	return list
}

type massPlan struct {
	Total      number `json:"total"`
	Paper      number `json:"paper"`
	Interleaf  number `json:"interleaf"`
	Liner      number `json:"liner"`
	Endpapers  number `json:"endpapers"`
	Mull       number `json:"mull"`
	Tapes      number `json:"tapes"`
	Boards     number `json:"boards"`
	SpinePiece number `json:"spinePiece"`
	Covering   number `json:"covering"` // with its sides
	Finishing  number `json:"finishing"`
	Adhesive   number `json:"adhesive"`
	Thread     number `json:"thread"`
}

func massOf(m book.Mass) massPlan {
	return massPlan{
		Total: number(m.Total()), Paper: number(m.Paper), Interleaf: number(m.Interleaf),
		Liner: number(m.Liner), Endpapers: number(m.Endpapers), Mull: number(m.Mull), Tapes: number(m.Tapes),
		Boards: number(m.Boards), SpinePiece: number(m.SpinePiece), Covering: number(m.Covering),
		Finishing: number(m.Finishing), Adhesive: number(m.Adhesive), Thread: number(m.Thread),
	}
}

// sheetPlan is what the paper's sheet yields and one book's share of it.
type sheetPlan struct {
	Folios       int    `json:"foliosASheet"`
	FoliosTurned int    `json:"foliosASheetTurned"`
	ABook        number `json:"sheetsABook"`
	Cost         string `json:"materialCost"` // empty where a price is missing
}

func sheetsOf(u book.SheetUse) sheetPlan {
	p := sheetPlan{Folios: u.FoliosASheet, FoliosTurned: u.FoliosTurned, ABook: number(u.SheetsABook)}
	if u.Priced {
		p.Cost = u.Cost.String()
	}
	return p
}
