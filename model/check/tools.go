package check

import (
	"strings"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
)

// Tools is what a studio can reach with; a size of 0 was never entered and
// limits nothing.
type Tools struct {
	LongestCut book.Length // of the cutter or board shears
	Throat     book.Length // of the sewing machine, needle to column
	Press      Plate       // its platen
	Mat        Plate       // that is cut on

	Capacity    book.Length // stack that the cutter takes at once; no rule, but the cutting plans go by it
	LeastOffcut book.Length // shorter side from which an offcut is worth keeping; likewise
}

// Plate is a flat tool's size; which side is which does not matter.
type Plate struct{ Width, Height book.Length }

// Tool is one size of a studio's tools: its key in files and words.
type Tool struct {
	Key   string
	At    func(*Tools) *book.Length
	Least book.Length // that can be meant
}

// ToolTable lists the sizes in the order in which they are asked for.
func ToolTable() []Tool {
	return []Tool{
		{"longestCut", func(t *Tools) *book.Length { return &t.LongestCut }, smallTool},
		{"cutterCapacity", func(t *Tools) *book.Length { return &t.Capacity }, smallStack},
		{"leastOffcut", func(t *Tools) *book.Length { return &t.LeastOffcut }, smallTool},
		{"matWidth", func(t *Tools) *book.Length { return &t.Mat.Width }, smallTool},
		{"matHeight", func(t *Tools) *book.Length { return &t.Mat.Height }, smallTool},
		{"pressWidth", func(t *Tools) *book.Length { return &t.Press.Width }, smallTool},
		{"pressHeight", func(t *Tools) *book.Length { return &t.Press.Height }, smallTool},
		{"machineThroat", func(t *Tools) *book.Length { return &t.Throat }, smallTool},
	}
}

// The least sizes that can be meant: of a tool, and of a stack of sheets.
const (
	smallTool  = 10 * measure.Millimetre
	smallStack = measure.Millimetre / 5
)

func (p Plate) entered() bool { return p.Width > 0 && p.Height > 0 }

// over is what height and width lack on the plate, lying the better way.
func (p Plate) over(height, width book.Length) (tall, wide book.Length) {
	if !p.entered() {
		return 0, 0
	}
	tall, wide = max(0, height-p.Height), max(0, width-p.Width)
	turnedTall, turnedWide := max(0, height-p.Width), max(0, width-p.Height)
	if turnedTall+turnedWide < tall+wide {
		return turnedTall, turnedWide
	}
	return tall, wide
}

// lacks is the greater of the two.
func (p Plate) lacks(height, width book.Length) book.Length {
	tall, wide := p.over(height, width)
	return max(tall, wide)
}

// cutOver is the same of a cutter, whose cuts are all as long as it allows.
func (t Tools) cutOver(height, width book.Length) (tall, wide book.Length) {
	if t.LongestCut <= 0 {
		return 0, 0
	}
	return max(0, height-t.LongestCut), max(0, width-t.LongestCut)
}

// scissored are the parts that no cutter or mat is needed for.
func scissored(id book.PartID) bool {
	switch id {
	case book.PartTape, book.PartRibbon, book.PartElastic, book.PartBand:
		return true
	}
	return false
}

// toolReach: what the studio's tools cannot take is better known before the
// bench.
func toolReach(b *matter) []Finding {
	t := b.tools
	var found []Finding
	spoken := map[string]bool{}
	for _, p := range b.Parts {
		key := t.reachKey(p)
		if scissored(p.ID) || spoken[key] {
			continue
		}
		f := t.pieceReach(p)
		f.Part, f.Key = p.ID, key
		spoken[key] = f.Level != ""
		found = append(found, one(f)...)
	}
	return append(append(found, one(t.pressReach(b))...), one(t.throatReach(b))...)
}

// reachKey is the parameter that a piece too large is blamed on: the page for
// its folio, the material for all else.
func (t Tools) reachKey(p book.Part) string {
	cutTall, cutWide := t.cutOver(p.Height, p.Width)
	matTall, matWide := t.Mat.over(p.Height, p.Width)
	switch {
	case p.ID != book.PartFolio:
		return strings.TrimSuffix(turnedKey(p.ID), ".turned")
	case max(cutTall, matTall) > max(cutWide, matWide):
		return "page.height"
	}
	return "page.width"
}

// pieceReach is of the worse of the piece's sizes: of the cutter, of the mat, or
// of both.
func (t Tools) pieceReach(p book.Part) Finding {
	tall, wide := t.cutOver(p.Height, p.Width)
	onMat := t.Mat.lacks(p.Height, p.Width)
	if max(tall, wide, onMat) <= 0 {
		return Finding{}
	}
	f := Finding{
		Level: Check, Found: length(max(p.Height, p.Width)), Limit: length(t.LongestCut),
		Blanks: map[string]any{"piece": words.Say("part." + p.Word), "height": p.Height, "width": p.Width},
	}
	switch {
	case max(tall, wide) > 0 && onMat > 0:
		f.saying = "both"
	case onMat > 0:
		f.saying = "mat"
		f.Found, f.Limit = onPlate(t.Mat, p.Height, p.Width)
	}
	return f
}

// pressReach is of the closed book in the press.
func (t Tools) pressReach(b *matter) Finding {
	height, width := b.Closed.Height, b.Closed.Width
	f := Finding{
		Level: when(t.Press.lacks(height, width) > 0, Check), Part: book.PartBoard, Key: "board.height",
		saying: "press", Blanks: map[string]any{"height": height, "width": width},
	}
	f.Found, f.Limit = onPlate(t.Press, height, width)
	return f
}

// throatReach is of the leaf that lies to the right of the needle.
func (t Tools) throatReach(b *matter) Finding {
	leaf := leafUnderNeedle(b)
	return Finding{
		Level: when(byMachine(b) && t.Throat > 0 && leaf > t.Throat, Check), Part: book.PartBlock, Key: "sewing.method",
		Found: length(leaf), Limit: length(t.Throat), saying: "throat",
	}
}

func leafUnderNeedle(b *matter) book.Length {
	return b.Resolved.Page.Width + b.Resolved.Page.TrimFore
}

// onPlate is the size that does not fit, and the plate's own.
func onPlate(p Plate, height, width book.Length) (found, limit Quantity) {
	long, short := max(height, width), min(height, width)
	if room := max(p.Width, p.Height); long > room {
		return length(long), length(room)
	}
	return length(short), length(min(p.Width, p.Height))
}

// withinReach proposes a smaller page, and for the machine sewing by hand.
func withinReach(b *matter, f Finding) []Remedy {
	t := b.tools
	switch f.Key {
	case "sewing.method":
		return []Remedy{
			remedy("sew-by-hand", Setting{f.Key, string(book.Pamphlet)}),
			remedy("smaller-page", atMost(b, "page.width", b.Resolved.Page.Width-(leafUnderNeedle(b)-t.Throat))),
		}
	case "board.height":
		tall, wide := t.Press.over(b.Closed.Height, b.Closed.Width)
		return smallerPage(b, tall, wide)
	}
	p, _ := b.Part(f.Part)
	cutTall, cutWide := t.cutOver(p.Height, p.Width)
	matTall, matWide := t.Mat.over(p.Height, p.Width)
	tall, wide := max(cutTall, matTall), max(cutWide, matWide)
	if p.ID != book.PartBoard {
		wide = (wide + 1) / 2 // these are two pages wide
	}
	return smallerPage(b, tall, wide)
}

// smallerPage takes so much off the page, and a step more, for what is cut from
// it may be rounded up.
func smallerPage(b *matter, tall, wide book.Length) []Remedy {
	var proposed []Remedy
	for _, more := range []book.Length{0, roundedUp} {
		var set []Setting
		if tall > 0 {
			set = append(set, atMost(b, "page.height", b.Resolved.Page.Height-tall-more))
		}
		if wide > 0 {
			set = append(set, atMost(b, "page.width", b.Resolved.Page.Width-wide-more))
		}
		if len(set) > 0 {
			proposed = append(proposed, remedy("smaller-page", set...))
		}
	}
	return proposed
}
