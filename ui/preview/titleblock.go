package preview

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/ui/controls"
	"grainwise/ui/look"
)

// narrow is the width below which the cells stand in two lines of four, dp.
const narrow = 760

// short is the width below which they leave out the other unit, dp.
const short = 560

// titleBlock shows a book's key figures on the drawing's own paper.
type titleBlock struct {
	object fyne.CanvasObject
	cells  []*controls.Figure
	tips   *controls.Tips // nil: none are shown
}

// newTitleBlock returns a title block of eight empty cells.
func newTitleBlock() *titleBlock {
	t := &titleBlock{}
	sheet := controls.NewPaint(0, 0, func(p look.Palette) color.NRGBA { return p.Sheet })
	objects := make([]fyne.CanvasObject, cellCount)
	for i := range objects {
		cell := controls.NewFigure(i > 0)
		t.cells = append(t.cells, cell)
		objects[i] = cell
	}
	rule := controls.NewHairline()
	grid := container.New(&cells{rule: rule}, append(objects, rule)...)
	t.object = container.NewStack(sheet, controls.Around(controls.NewHairline(), nil, nil, nil, grid))
	return t
}

// set shows other figures, and in the accent by how much they differ from
// before, which may be nil.
func (t *titleBlock) set(figures []Cell, changes []string) {
	for i, c := range figures {
		change := ""
		if changes != nil {
			change = changes[i]
		}
		t.cells[i].Set(c.Name, c.Value, c.Under, change)
		t.cells[i].SetTip(t.tips, c.Tip)
	}
}

// cells lays the figures out in one line or two, each column as wide as what
// it holds and an even share of the rest, the same in both lines.
type cells struct{ rule fyne.CanvasObject }

// Layout implements fyne.Layout.
func (c *cells) Layout(objects []fyne.CanvasObject, size fyne.Size) {
	figures := objects[:cellCount]
	rows, high := rowsAt(size.Width), cellHeight(size.Width)
	for _, o := range figures {
		o.(*controls.Figure).SetBrief(size.Width < short)
	}
	inRow := cellCount / rows
	widths := columns(figures, inRow, size.Width)
	for i, o := range figures {
		o.(*controls.Figure).SetRuled(i%inRow > 0)
		left := float32(0)
		for _, w := range widths[:i%inRow] {
			left += w
		}
		o.Move(fyne.NewPos(left, float32(i/inRow)*high))
		o.Resize(fyne.NewSize(widths[i%inRow], high))
	}
	c.rule.Move(fyne.NewPos(0, float32(rows-1)*high))
	c.rule.Resize(fyne.NewSize(size.Width, 1))
}

// MinSize implements fyne.Layout; the stage gives the height.
func (c *cells) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.Size{} }

// rowsAt is how many lines of cells a width has room for.
func rowsAt(width float32) int {
	if width < narrow {
		return 2
	}
	return 1
}

// cellHeight is that of a cell: the other unit gives way last.
func cellHeight(width float32) float32 {
	if width < short {
		return controls.BriefHeight
	}
	return controls.FigureHeight
}

// titleHeight is the block's height at a width, its upper rule included.
func titleHeight(width float32) float32 { return float32(rowsAt(width))*cellHeight(width) + 1 }

// columns are the widths of one line's cells.
func columns(figures []fyne.CanvasObject, inRow int, width float32) []float32 {
	widths, sum := make([]float32, inRow), float32(0)
	for i, o := range figures {
		widths[i%inRow] = max(widths[i%inRow], o.MinSize().Width)
	}
	for _, w := range widths {
		sum += w
	}
	for i := range widths {
		widths[i] += (width - sum) / float32(inRow)
	}
	return widths
}
