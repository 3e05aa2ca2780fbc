package view

import (
	"strings"

	"grainwise/assets/words"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// The fields of the title strip that several drawings share.

// bookLine is the project's name and the page's size.
func (in Input) bookLine() string {
	page := in.by(in.Book.Resolved.Page.Width, in.Book.Resolved.Page.Height)
	if in.Name == "" {
		return page
	}
	return in.Name + ", " + page
}

// coveringLine is the covering's name and how its grain lies.
func (in Input) coveringLine() string {
	covering, _ := in.Book.Part("covering")
	if stock := in.Book.Resolved.Stock; quartered(in.Book) {
		return words.Say("strip.quarter", words.With{"name": stock.Covering.Name, "side": stock.Side.Name})
	}
	return words.Say("strip.grain."+string(covering.Grain), words.With{"name": in.Book.Resolved.Stock.Covering.Name})
}

// sizesLine is the unit of the figures.
func (in Input) sizesLine() string { return words.Say("strip.sizes." + in.System.String()) }

// footUp is how far the remarks' baseline stands over the sheet's edge, px.
const footUp = 12.0

// footAlone says a drawing's remarks where there is no title strip, as many as
// fit.
func footAlone(s *draft.Sheet, left float64, remarks []string) {
	for n := len(remarks); n > 0; n-- {
		at := draft.P{X: left, Y: s.Height - footUp}
		if s.Try(at, strings.Join(remarks[:n], noteSpace), draft.SizeLine(), scene.Start, 0) {
			return
		}
	}
}
