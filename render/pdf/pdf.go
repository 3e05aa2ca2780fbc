// Package pdf writes scenes as PDF pages at true size: a millimetre of the
// scene is a millimetre on paper. Textures are left out and soft shadows become a
// few flat layers, except in a still, which is set as a picture; faces are embedded
// as subsets.
package pdf

import (
	"fmt"
	"io"
	"time"

	"codeberg.org/go-pdf/fpdf"

	"grainwise/render/scene"
)

// Options are what a document says about itself.
type Options struct {
	Title string
	Date  time.Time // of creation; zero is a fixed date, so that equal scenes give equal files
}

// fixedDate stands for no date.
var fixedDate = time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)

// largestPage is the longest side that a PDF page may have: 14 400 points of
// 1/72 in (ISO 32000-1, Annex C), in millimetres.
const largestPage = 14400 * 25.4 / 72

// Write writes one page for each scene, as large as the scene.
func Write(w io.Writer, o Options, pages ...*scene.Scene) error {
	if len(pages) == 0 {
		return fmt.Errorf("pdf: no pages to write, want at least one")
	}
	for i, s := range pages {
		if !(s.Width > 0 && s.Height > 0 && s.Width <= largestPage && s.Height <= largestPage) {
			return fmt.Errorf("pdf: page %d is %g × %g mm, want sides over 0 and up to %g mm", i+1, s.Width, s.Height, largestPage)
		}
	}
	p := &page{Fpdf: newDocument(o, pages[0])}
	for _, s := range pages {
		p.add(s)
	}
	return p.Output(w)
}

func newDocument(o Options, first *scene.Scene) *fpdf.Fpdf {
	f := fpdf.NewCustom(&fpdf.InitType{UnitStr: "mm", Size: sizeOf(first)})
	date := o.Date
	if date.IsZero() {
		date = fixedDate
	}
	f.SetCreationDate(date)
	f.SetModificationDate(date)
	f.SetCatalogSort(true)
	f.SetProducer("Grainwise", true)
	if o.Title != "" {
		f.SetTitle(o.Title, true)
	}
	f.SetMargins(0, 0, 0)
	f.SetAutoPageBreak(false, 0)
	return f
}

func sizeOf(s *scene.Scene) fpdf.SizeType { return fpdf.SizeType{Wd: s.Width, Ht: s.Height} }

// page is the document with what the page at hand has set.
type page struct {
	*fpdf.Fpdf
	scene    *scene.Scene
	pictures int // so far, in the document
}

// shown tells whether every point of a path lies where a PDF number can say
// it; the rest of the drawing does without a path that is not.
func shown(path scene.Path) bool {
	for _, at := range path {
		if !(at.X > -1e5 && at.X < 1e5 && at.Y > -1e5 && at.Y < 1e5) {
			return false
		}
	}
	return true
}

const white = scene.Colour(0xFFFFFF)

// add draws one scene on a page of its own.
func (p *page) add(s *scene.Scene) {
	p.AddPageFormat("P", sizeOf(s))
	p.scene = s
	p.SetLineCapStyle("butt")
	p.SetLineJoinStyle("bevel")
	if s.Ground != white {
		p.fill(s.Ground, 1)
		p.Rect(0, 0, s.Width, s.Height, "F")
	}
	for _, item := range s.Items {
		switch it := item.(type) {
		case scene.Face:
			p.face(it)
		case scene.Stroke:
			p.stroke(it)
		case scene.Text:
			p.text(it)
		case scene.Cast:
			p.cast(it)
		case scene.Still:
			p.still(it)
		case scene.Picture:
			p.picture(it)
		}
	}
}

// fill sets colour and opacity of what is filled next.
func (p *page) fill(c scene.Colour, alpha float64) {
	r, g, b := c.RGB()
	p.SetFillColor(int(r), int(g), int(b))
	p.SetAlpha(alpha, "Normal")
}
