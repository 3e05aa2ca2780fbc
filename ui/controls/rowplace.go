package controls

import (
	"fyne.io/fyne/v2"

	"grainwise/ui/look"
)

const (
	levelLeft  = float32(6)
	levelSize  = float32(12)
	labelLeft  = float32(22)
	rightEdge  = float32(6)  // from the pill to the row's end
	controlGap = float32(13) // between the track's end and the value
)

// columns are the places of a row's parts, by its width.
type columns struct {
	label        float32 // width
	control      float32 // left end of slider or choice
	value, wide  float32 // left end and width of the value
	pill, ending float32 // left ends of the pill and of the right margin
}

// columnsOf are narrower below 372, as the window's narrow column asks.
func columnsOf(width float32) columns {
	c := columns{label: 114, control: 142, wide: 74}
	if width < 372 {
		c = columns{label: 108, control: 136, wide: 70}
	}
	c.pill = width - rightEdge - pillWidth
	c.ending = width - rightEdge - 4
	c.value = c.pill - 1 - c.wide
	return c
}

func (r *Row) placeCommon(c columns, size fyne.Size) {
	put(r.bar, 0, 0, 3, size.Height)
	put(r.Why, 3, 0, labelLeft-1, RowHeight)
	put(r.level, levelLeft, RowHeight/2-levelSize/2, levelSize, levelSize)
	look.At(r.name, labelLeft, valueBase)
	put(r.Pill, c.pill, 0, pillWidth, RowHeight)
}

func (r *Row) placeNumber(size fyne.Size) {
	c := columnsOf(size.Width)
	r.placeCommon(c, size)
	put(r.Slider, c.control-trackInset, 0, c.value-controlGap-c.control+2*trackInset, RowHeight)
	put(r.Value, c.value, 0, c.wide, RowHeight)
	look.At(r.trouble, labelLeft, RowHeight+10)
}

func (r *Row) placeChoice(size fyne.Size) {
	c := columnsOf(size.Width)
	r.placeCommon(c, size)
	end := c.ending
	if r.state.Origin != Given {
		end = c.pill - 1
	}
	put(r.Choice, c.control, 0, end-c.control, RowHeight)
	look.At(r.trouble, labelLeft, RowHeight+10)
}

// placeWide puts the slider under the label and the ruler under the slider.
func (r *Row) placeWide(size fyne.Size) {
	c := columnsOf(size.Width)
	r.placeCommon(c, size)
	look.At(r.remark, r.remarkLeft(), valueBase)
	put(r.Value, c.value, 0, c.wide, RowHeight)
	put(r.Slider, labelLeft-trackInset, RowHeight-2, c.ending-labelLeft+trackInset, 24)
	put(r.Ruler, labelLeft-trackInset, RowHeight+18, c.ending-labelLeft+trackInset, 20)
	look.At(r.trouble, labelLeft, r.bare()+10)
}

func (r *Row) remarkLeft() float32 { return labelLeft + look.Width(r.name, r.name.Text) + 8 }
