// Package svg writes a scene as SVG at true size: the page is so many
// millimetres, and so is a unit of the drawing. Textures are left out and soft
// shadows become a few flat layers, except in a still, which is set as a picture.
//
// Text stays text, in the embedded faces by name; textLength holds the measured
// width where a viewer must do with another face.
package svg

import (
	"bufio"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"

	"grainwise/render/scene"
)

// Write writes one scene as one SVG file, with the title for those who read
// the file with other means than eyes; "" for none. A scene with layers becomes
// one group a layer.
func Write(w io.Writer, title string, s *scene.Scene) error {
	if err := checked(s); err != nil {
		return err
	}
	b := bufio.NewWriter(w)
	d := &drawing{w: b}
	d.line(`<svg xmlns="http://www.w3.org/2000/svg" width="%smm" height="%smm" viewBox="0 0 %[1]s %[2]s" stroke="none">`, mm(s.Width), mm(s.Height))
	if title != "" {
		d.line(`<title>%s</title>`, escaped(title))
	}
	if layered(s) {
		d.layers(s)
	} else {
		d.line(`<rect width="%s" height="%s" fill="%s"/>`, mm(s.Width), mm(s.Height), hex(s.Ground))
		for _, item := range s.Items {
			d.add(item)
		}
	}
	d.line(`</svg>`)
	return b.Flush()
}

// Inline writes one scene as an element of an HTML page, as wide as it is printed
// and never wider than its place. Every id in it begins with id, so that many stand
// on one page; the title is what it shows. Its ground and layers are left out.
func Inline(w io.Writer, id, title string, s *scene.Scene) error {
	if err := checked(s); err != nil {
		return err
	}
	b := bufio.NewWriter(w)
	d := &drawing{w: b, id: id + "-"}
	d.line(`<svg xmlns="http://www.w3.org/2000/svg" width="%smm" height="%smm" viewBox="0 0 %[1]s %[2]s" stroke="none" role="img" aria-labelledby="%[3]s-title">`, mm(s.Width), mm(s.Height), escaped(id))
	d.line(`<title id="%s-title">%s</title>`, escaped(id), escaped(title))
	for _, item := range s.Items {
		d.add(item)
	}
	d.line(`</svg>`)
	return b.Flush()
}

// checked is an error where the page's size cannot be written.
func checked(s *scene.Scene) error {
	if !(s.Width > 0 && s.Height > 0 && shown(scene.Path{{X: s.Width, Y: s.Height}})) {
		return fmt.Errorf("svg: the page is %g × %g mm, want sides over 0 and up to %g mm", s.Width, s.Height, float64(farthest))
	}
	return nil
}

// drawing is the file being written; bufio keeps its first error.
type drawing struct {
	w     *bufio.Writer
	id    string // what its ids begin with
	clips int
}

func (d *drawing) line(format string, values ...any) {
	fmt.Fprintf(d.w, format+"\n", values...)
}

func (d *drawing) add(item scene.Item) {
	switch it := item.(type) {
	case scene.Face:
		d.face(it)
	case scene.Stroke:
		d.stroke(it)
	case scene.Text:
		d.text(it)
	case scene.Cast:
		d.cast(it)
	case scene.Still:
		d.still(it)
	case scene.Picture:
		d.picture(it)
	}
}

// farthest is how far from the page's corner a thing may lie, mm.
const farthest = 1e5

// shown tells whether a path can be written; the rest of the drawing does
// without one that cannot.
func shown(path scene.Path) bool {
	for _, at := range path {
		if !(math.Abs(at.X) <= farthest && math.Abs(at.Y) <= farthest) {
			return false
		}
	}
	return true
}

// mm writes a length to a tenth of a micrometre, without needless noughts.
func mm(x float64) string {
	s := strings.TrimRight(strings.TrimRight(strconv.FormatFloat(x, 'f', 4, 64), "0"), ".")
	if s == "-0" {
		return "0"
	}
	return s
}

func hex(c scene.Colour) string { return fmt.Sprintf("#%06x", uint32(c)&0xFFFFFF) }

// opacity is an attribute, or nothing where a thing is opaque.
func opacity(alpha float64) string {
	if alpha >= 1 {
		return ""
	}
	return fmt.Sprintf(` opacity="%s"`, mm(alpha))
}

// about is what an item belongs to, as attributes.
func about(t scene.Tag) string {
	s := ""
	if t.Part != "" {
		s += ` data-part="` + escaped(t.Part) + `"`
	}
	if t.Key != "" {
		s += ` data-key="` + escaped(t.Key) + `"`
	}
	return s
}

// escaped is text as XML 1.0 may hold it: what it forbids becomes a question
// mark.
func escaped(s string) string {
	var b strings.Builder
	for _, r := range s {
		switch {
		case r == '<':
			b.WriteString("&lt;")
		case r == '>':
			b.WriteString("&gt;")
		case r == '&':
			b.WriteString("&amp;")
		case r == '"':
			b.WriteString("&quot;")
		case r == '\t' || r == '\n' || r == '\r':
			b.WriteByte(' ')
		case r < ' ' || r == 0xFFFE || r == 0xFFFF:
			b.WriteByte('?')
		default:
			b.WriteRune(r)
		}
	}
	return b.String()
}
