package pdf

import (
	"codeberg.org/go-pdf/fpdf"

	"grainwise/render/scene"
	"grainwise/render/typeface"
)

// layers is how many flat layers stand for a soft shadow.
const layers = 6

func (p *page) face(f scene.Face) {
	if len(f.Outline) < 3 || !shown(f.Outline) {
		return
	}
	alpha := scene.Opacity(f.Alpha)
	if !f.Bare {
		p.fill(f.Fill, alpha)
		p.outlines(append([]scene.Path{f.Outline}, f.More...))
	}
	for _, shade := range f.Shades {
		steps := shade.Steps(f.Plane, layers)
		if len(steps) == 0 {
			continue
		}
		p.ClipPolygon(points(f.Outline), false)
		for _, step := range steps {
			if shown(step.Outline) {
				p.fill(shade.Tint, step.Alpha*alpha)
				p.Polygon(points(step.Outline), "F")
			}
		}
		p.ClipEnd()
	}
}

// outlines fills outlines as one; those that run the other way round are holes.
func (p *page) outlines(all []scene.Path) {
	if len(all) == 1 && len(all[0]) > 2 && shown(all[0]) {
		p.Polygon(points(all[0]), "F")
		return
	}
	drawn := false
	for _, path := range all {
		if len(path) < 3 || !shown(path) {
			continue
		}
		p.MoveTo(path[0].X, path[0].Y)
		for _, at := range path[1:] {
			p.LineTo(at.X, at.Y)
		}
		p.ClosePath()
		drawn = true
	}
	if drawn {
		p.DrawPath("F")
	}
}

func points(path scene.Path) []fpdf.PointType {
	list := make([]fpdf.PointType, len(path))
	for i, at := range path {
		list[i] = fpdf.PointType{X: at.X, Y: at.Y}
	}
	return list
}

// stroke draws the underlay, then the lines with their dashes.
func (p *page) stroke(s scene.Stroke) {
	if !(s.Line.Width > 0 && s.Line.Width < 1e5) {
		return
	}
	if s.Line.Halo > s.Line.Width && s.Line.Halo < 1e5 {
		p.SetDashPattern(nil, 0)
		p.lines(s, s.Line.Under, s.Line.Halo, scene.HaloAlpha)
	}
	p.SetDashPattern(dashes(s.Line.Dash), 0)
	p.lines(s, s.Line.Colour, s.Line.Width, scene.Opacity(s.Line.Alpha))
}

// dashes returns a pattern as PDF takes it: no negative length, and not all
// of them nothing.
func dashes(pattern []float64) []float64 {
	total := 0.0
	for _, d := range pattern {
		if !(d >= 0 && d < 1e5) {
			return nil
		}
		total += d
	}
	if total < 0.01 {
		return nil
	}
	return pattern
}

func (p *page) lines(s scene.Stroke, c scene.Colour, width, alpha float64) {
	r, g, b := c.RGB()
	p.SetDrawColor(int(r), int(g), int(b))
	p.SetLineWidth(width)
	p.SetAlpha(alpha, "Normal")
	for _, path := range s.Paths {
		if len(path) < 2 || !shown(path) {
			continue
		}
		p.MoveTo(path[0].X, path[0].Y)
		for _, at := range path[1:] {
			p.LineTo(at.X, at.Y)
		}
		if s.Closed {
			p.ClosePath()
		}
		p.DrawPath("D")
	}
}

// smallest and largest em that is set, mm.
const smallestEm, largestEm = 0.05, 2000

func (p *page) text(t scene.Text) {
	text := typeface.Shown(t.Font, t.String)
	if text == "" || !shown(scene.Path{t.At}) || !(t.Size >= smallestEm && t.Size <= largestEm) {
		return
	}
	p.font(t.Font, t.Size)
	r, g, b := t.Colour.RGB()
	p.fill(t.Colour, 1) // said outright: a clip that ended has taken its colour back
	p.SetTextColor(int(r), int(g), int(b))
	x := t.At.X
	switch t.Align {
	case scene.Middle:
		x -= typeface.Width(t.Font, t.Size, t.String) / 2
	case scene.End:
		x -= typeface.Width(t.Font, t.Size, t.String)
	}
	turn := t.Turn & 3
	if turn == 0 {
		p.Text(x, t.At.Y, text)
		return
	}
	p.TransformBegin()
	p.TransformRotate(float64(turn)*90, t.At.X, t.At.Y)
	p.Text(x, t.At.Y, text)
	p.TransformEnd()
}

// font sets a face, embedding it at its first use.
func (p *page) font(f scene.Font, size float64) {
	face := typeface.Of(f)
	p.AddUTF8FontFromBytes(face.Family, face.Style, face.File)
	p.SetFont(face.Family, face.Style, size*72/25.4)
}
