package view

import (
	"fmt"

	"grainwise/assets/words"
	"grainwise/model/cutting"
	"grainwise/model/sheets"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// Cutting draws how sheets and rolls are cut: every layout to scale, with what
// is lost, its pieces, its cuts numbered in the order of the bench with their
// stop distances, and what is left over.
func Cutting(in Input) *scene.Scene {
	s := in.sheet(draft.GroundFlat)
	d := &cuttingDrawing{in: in, sheet: s, foot: s.Height - cuttingEdge/2}
	if in.Title {
		d.foot = s.Height - draft.StripHeight(d.compact()) - 8
	}
	if len(in.Cuttings) == 0 {
		s.Text(draft.P{X: s.Width / 2, Y: s.Height / 2}, words.Say("cutting.none"), draft.Word().At(13), scene.Middle, 0)
		return s.Scene()
	}
	d.flow()
	if in.Title {
		d.strip()
	}
	for _, row := range d.rows {
		for _, b := range row.blocks {
			d.drawBlock(b, row)
		}
	}
	if d.left > 0 {
		s.Try(draft.P{X: cuttingEdge, Y: d.foot - 1}, counted("cutting.notDrawn", d.left), draft.Word(), scene.Start, 0)
	}
	return s.Scene()
}

// cuttingDrawing is one drawing of layouts that flow over the sheet in rows.
type cuttingDrawing struct {
	in    Input
	sheet *draft.Sheet
	foot  float64 // px; nothing is drawn below
	rooms cuttingRooms
	scale float64 // px a millimetre
	all   []cuttingBlock
	rows  []cuttingRow
	left  int // layouts that there was no room for
}

// cuttingEdge is the margin of the page, px.
const cuttingEdge = 22.0

func mmOf(n int64) float64 { return sheets.Length(n).MM() }

func (d *cuttingDrawing) compact() bool { return d.sheet.Height < 560 }

// strip is the title strip along the foot.
func (d *cuttingDrawing) strip() {
	work := cutting.Work{}
	for _, c := range d.in.Cuttings {
		work.Settings += c.Work.Settings
		work.Cuts += c.Work.Cuts
		work.Strokes += c.Work.Strokes
	}
	d.sheet.Strip(draft.Strip{
		Title: words.Say("view.cutting"), Subtitle: words.Say("cutting.subtitle"), Compact: d.compact(),
		Fields: []draft.Field{
			{Word: words.Say("strip.book"), Value: d.in.bookLine()},
			{Word: words.Say("cutting.copies"), Value: fmt.Sprint(d.in.Book.Resolved.Copies)},
			{Word: words.Say("cutting.settings"), Value: fmt.Sprint(work.Settings)},
			{Word: words.Say("cutting.cuts"), Value: fmt.Sprint(work.Cuts)},
			{Word: words.Say("cutting.strokes"), Value: fmt.Sprint(work.Strokes)},
		},
		Foot: []string{words.Say("cutting.foot.waste"), words.Say("cutting.foot.cuts")},
		Bar: func(right draft.P, widest float64) float64 {
			return d.sheet.ScaleBar(right, d.scale, widest, d.in.System)
		},
	}, cuttingEdge, d.sheet.Width-cuttingEdge, d.foot+8)
}
