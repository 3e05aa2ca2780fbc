package raster

import (
	"image"
	"math/rand/v2"

	"grainwise/render/scene"
)

// sheets keeps the sheets painted last: a fine screen shows drags in half the
// pixels and rests in all, by turns, and a drawing may have a still on a ground of
// its own. The latest comes first.
type sheets [4]sheet

// paint copies the sheet over the whole image.
func (kept *sheets) paint(dst *image.RGBA, ground scene.Colour, tooth bool) {
	w, h := dst.Rect.Dx(), dst.Rect.Dy()
	at := 0
	for at < len(kept)-1 && !kept[at].is(w, h, ground, tooth) {
		at++
	}
	latest := kept[at]
	copy(kept[1:at+1], kept[:at])
	kept[0] = latest
	s := &kept[0]
	if !s.is(w, h, ground, tooth) {
		s.ground, s.tooth, s.width, s.height = ground, tooth, w, h
		s.make()
	}
	for y := range h {
		copy(dst.Pix[y*dst.Stride:][:w*4], s.pix[y*w*4:][:w*4])
	}
}

// sheet is the bare paper under a drawing. It fills the image whatever the view
// shows of the page.
type sheet struct {
	ground        scene.Colour
	tooth         bool
	width, height int
	pix           []uint8 // width × height × 4
}

// is tells whether the sheet is of this size and colour.
func (s *sheet) is(width, height int, ground scene.Colour, tooth bool) bool {
	return s.width == width && s.height == height && s.ground == ground && s.tooth == tooth
}

// vignette is how much darker the corners are than the middle.
const vignette = 0.05

func (s *sheet) make() {
	if n := s.width * s.height * 4; cap(s.pix) < n {
		s.pix = make([]uint8, n)
	} else {
		s.pix = s.pix[:n]
	}
	if !s.tooth {
		flat := packed(s.ground)
		for i := 0; i < len(s.pix); i += 4 {
			put(s.pix[i:], flat)
		}
		return
	}
	s.makeTooth()
}

// makeTooth lays two tooth tiles of different periods over each other, so that
// no repeat is seen, and darkens the corners.
func (s *sheet) makeTooth() {
	r := rand.New(rand.NewPCG(21, 7))
	fine, coarse := noise(r, 1, 1, 0.003), noise(r, 3, 3, 0.0017)
	red, green, blue := s.ground.RGB()
	cx, cy := float32(s.width)/2, float32(s.height)/2
	for y := range s.height {
		dy := (float32(y) + 0.5 - cy) / cy
		for x := range s.width {
			dx := (float32(x) + 0.5 - cx) / cx
			d := (dx*dx + dy*dy) / 2
			f := fine[y%side*side+x%side] + coarse[x%251*side+y%241]
			m := (1 + f) * (1 - vignette*d*d*d)
			at := s.pix[(y*s.width+x)*4:]
			at[0], at[1], at[2], at[3] = times(red, m), times(green, m), times(blue, m), 255
		}
	}
}

func times(c uint8, m float32) uint8 {
	return uint8(min(max(float32(c)*m+0.5, 0), 255))
}
