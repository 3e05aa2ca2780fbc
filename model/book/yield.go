package book

import "sort"

// YieldStep is a stretch of page sizes that give as many folios a sheet.
type YieldStep struct {
	Largest Length // the largest size of the stretch, to the nanometre
	Folios  int
}

// YieldSteps says how many folios a sheet of paper gives over the range of
// page.height or page.width, the rest of the book as it is: from the most
// folios to the fewest. Other keys have none.
func (b *Book) YieldSteps(key string) []YieldStep {
	resized, ok := b.resizedFolio(key)
	if !ok {
		return nil
	}
	sheet, turned := b.Resolved.PaperSheet(), b.Resolved.Paper.Turned
	folios := func(l Length) int {
		size := resized(l)
		return sheet.Yield(size.height, size.width, turned).Total
	}
	p, _ := Lookup(key)
	least, most := p.Lengths()
	var steps []YieldStep
	for l := least; l <= most; {
		n := folios(l)
		// A larger page never gives more: the first that gives fewer ends the step.
		more := sort.Search(int(most-l), func(i int) bool { return folios(l+1+Length(i)) < n })
		l += Length(more)
		steps = append(steps, YieldStep{Largest: l, Folios: n})
		l++
	}
	return steps
}

// resizedFolio gives the folio of another page height or width.
func (b *Book) resizedFolio(key string) (func(Length) face, bool) {
	page, now := b.Resolved.Page, folioSize(&b.Resolved)
	switch key {
	case "page.height":
		return func(l Length) face { return face{now.height + l - page.Height, now.width} }, true
	case "page.width":
		return func(l Length) face { return face{now.height, now.width + 2*(l-page.Width)} }, true
	}
	return nil, false
}

// NearYield is the largest page height or width below the present one, by no
// more than within and on the steps it is cut in, at which a sheet gives more
// folios; false where there is none.
func (b *Book) NearYield(key string, within Length) (size Length, folios int, ok bool) {
	resized, ok := b.resizedFolio(key)
	if !ok {
		return 0, 0, false
	}
	p, _ := Lookup(key)
	now, step := b.Resolved.Page.Height, PageStep(b.Resolved.CutIn)
	if key == "page.width" {
		now = b.Resolved.Page.Width
	}
	least, _ := p.Lengths()
	sheet, turned := b.Resolved.PaperSheet(), b.Resolved.Paper.Turned
	for size := (now - 1).RoundDown(step); size >= max(now-within, least); size -= step {
		f := resized(size)
		if n := sheet.Yield(f.height, f.width, turned).Total; n > b.Use.FoliosASheet {
			return size, n, true
		}
	}
	return 0, 0, false
}

// SheetShare is the part of a whole sheet of paper that its folios take, 0 to 1.
func (b *Book) SheetShare() float64 {
	sheet := b.Resolved.PaperSheet()
	whole := face{sheet.Length, sheet.Width}.area()
	if whole <= 0 {
		return 0
	}
	return float64(b.Use.FoliosASheet) * folioSize(&b.Resolved).area() / whole
}
