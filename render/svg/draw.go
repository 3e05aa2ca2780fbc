package svg

import (
	"fmt"
	"strings"

	"grainwise/render/scene"
	"grainwise/render/typeface"
)

// shadeSteps is how many flat faces stand for a soft shadow.
const shadeSteps = 8

func (d *drawing) face(f scene.Face) {
	if len(f.Outline) < 3 || !shown(f.Outline) {
		return
	}
	outline := path(f.Outline, true)
	for _, more := range f.More {
		if len(more) > 2 && shown(more) {
			outline += path(more, true)
		}
	}
	alpha := scene.Opacity(f.Alpha)
	if !f.Bare {
		d.line(`<path d="%s" fill="%s"%s%s/>`, outline, hex(f.Fill), opacity(alpha), about(f.Tag))
	}
	var steps []string
	for _, shade := range f.Shades {
		for _, step := range shade.Steps(f.Plane, shadeSteps) {
			if shown(step.Outline) {
				steps = append(steps, fmt.Sprintf(`<path d="%s" fill="%s"%s/>`, path(step.Outline, true), hex(shade.Tint), opacity(step.Alpha*alpha)))
			}
		}
	}
	if len(steps) == 0 {
		return
	}
	d.clips++
	d.line(`<clipPath id="%sc%d"><path d="%s"/></clipPath><g clip-path="url(#%[1]sc%[2]d)">`, escaped(d.id), d.clips, outline)
	d.line("%s</g>", strings.Join(steps, "\n"))
}

// path is a path's data.
func path(p scene.Path, closed bool) string {
	var b strings.Builder
	for i, at := range p {
		if i == 0 {
			b.WriteByte('M')
		} else {
			b.WriteByte('L')
		}
		b.WriteString(mm(at.X) + " " + mm(at.Y))
	}
	if closed {
		b.WriteByte('Z')
	}
	return b.String()
}

// stroke draws the underlay, then the lines with their dashes.
func (d *drawing) stroke(s scene.Stroke) {
	var b strings.Builder
	for _, p := range s.Paths {
		if len(p) > 1 && shown(p) {
			b.WriteString(path(p, s.Closed))
		}
	}
	if b.Len() == 0 || !(s.Line.Width > 0 && s.Line.Width <= farthest) {
		return
	}
	const form = `<path d="%s" fill="none" stroke="%s" stroke-width="%s" stroke-linejoin="bevel"%s%s%s/>`
	if s.Line.Halo > s.Line.Width && s.Line.Halo <= farthest {
		d.line(form, b.String(), hex(s.Line.Under), mm(s.Line.Halo), opacity(scene.HaloAlpha), "", "")
	}
	d.line(form, b.String(), hex(s.Line.Colour), mm(s.Line.Width), opacity(scene.Opacity(s.Line.Alpha)), dashes(s.Line.Dash), about(s.Tag))
}

// dashes is the pattern as an attribute; nothing for one that is none.
func dashes(pattern []float64) string {
	total, list := 0.0, make([]string, len(pattern))
	for i, x := range pattern {
		if !(x >= 0 && x <= farthest) {
			return ""
		}
		total += x
		list[i] = mm(x)
	}
	if total < 0.01 {
		return ""
	}
	return fmt.Sprintf(` stroke-dasharray="%s"`, strings.Join(list, " "))
}

// text writes a run as text. Its start is worked out here, so that text-anchor
// and the viewer's own measuring play no part.
func (d *drawing) text(t scene.Text) {
	text := typeface.Shown(t.Font, t.String)
	if text == "" || !shown(scene.Path{t.At}) || !(t.Size > 0 && t.Size <= farthest) {
		return
	}
	width := typeface.Width(t.Font, t.Size, t.String)
	x, y := t.At.X-width*before(t.Align), t.At.Y
	turn := ""
	if quarters := t.Turn & 3; quarters != 0 {
		turn = fmt.Sprintf(` transform="translate(%s %s) rotate(%d)"`, mm(t.At.X), mm(t.At.Y), -90*quarters)
		x, y = x-t.At.X, 0
	}
	d.line(`<text x="%s" y="%s" font-family="%s" font-size="%s"%s fill="%s" textLength="%s" lengthAdjust="spacingAndGlyphs" xml:space="preserve" style="font-kerning:none;font-variant-ligatures:none"%s%s>%s</text>`,
		mm(x), mm(y), families(t.Font), mm(t.Size), style(t.Font), hex(t.Colour), mm(width), turn, about(t.Tag), escaped(text))
}

// before is the share of its width that a text starts before its place.
func before(a scene.Align) float64 {
	switch a {
	case scene.Middle:
		return 0.5
	case scene.End:
		return 1
	}
	return 0
}

// families names the embedded face, then what may stand in for it.
func families(f scene.Font) string {
	if f == scene.Serif {
		return typeface.Of(f).Family + ", serif"
	}
	return typeface.Of(f).Family + ", sans-serif"
}

func style(f scene.Font) string {
	switch typeface.Of(f).Style {
	case "I":
		return ` font-style="italic"`
	case "B":
		return ` font-weight="bold"`
	}
	return ""
}
