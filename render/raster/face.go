package raster

import (
	"image"
	"math"

	"grainwise/render/scene"
)

// facePainter paints the spans of one face: colour × texture, drawn towards
// the tints of its shadows, then laid over what is there.
type facePainter struct {
	pix    []uint8
	stride int
	bare   bool
	alpha  uint32      // 0 … 256
	colour [256]uint32 // by the tile's byte
	tile   *tile       // nil: flat
	shades []shadeSpan
	tints  [][256]uint32

	u, v           float64 // of the part, mm, at the pixel (0, 0)
	ux, uy, vx, vy float64 // change of u and v a pixel right and down
	texels         float64 // a millimetre of the part
	away           bool    // the plane is seen in perspective, and the above holds at the face's middle
	back           homography

	y, begin, end int    // the run at hand: pixels side by side in a row
	parts         []part // of the run
	row           []uint32
	levels        []uint8 // the tile's bytes under the row
	level         []uint8 // the same for a flat face
}

// part is the pixels of a run up to one, all covered alike.
type part struct {
	to    int
	cover uint8
}

// paintFace paints one polygon.
func (p *Painter) paintFace(dst *image.RGBA, f scene.Face, v View) {
	outline, ok := p.pixels(f.Outline, v)
	if !ok || len(outline) < 3 {
		return
	}
	w, h := dst.Rect.Dx(), dst.Rect.Dy()
	p.face.start(dst, f, v, &p.tiles, middle(outline))
	if p.face.bare && len(p.face.shades) == 0 {
		return
	}
	p.fill.start(w, h)
	p.fill.add(outline)
	for _, path := range f.More {
		if outline, ok = p.pixels(path, v); ok && len(outline) > 2 {
			p.fill.add(outline)
		}
	}
	p.fill.spans(&p.face)
	p.face.finish()
}

// start prepares a face: its colours, its texture and its shadows.
func (fp *facePainter) start(dst *image.RGBA, f scene.Face, v View, t *tiles, at point) {
	fp.pix, fp.stride, fp.bare = dst.Pix, dst.Stride, f.Bare
	fp.alpha = uint32(scene.Opacity(f.Alpha)*256 + 0.5)
	fp.tile, fp.shades = nil, fp.shades[:0]
	fp.room(dst.Rect.Dx())
	contrast := 0.0
	if fp.place(f.Plane.Or(), v, at) {
		if f.Texture != scene.None && !f.Bare {
			contrast = fp.dress(f, v, t)
		}
		fp.cast(f.Shades, contrast)
	}
	ramp(&fp.colour, f.Fill, contrast)
}

// room makes rows wide enough.
func (fp *facePainter) room(width int) {
	if len(fp.row) >= width {
		return
	}
	fp.row, fp.levels, fp.level = make([]uint32, width), make([]uint8, width), make([]uint8, width)
	for i := range fp.level {
		fp.level[i] = level1
	}
}

// place inverts the plane: where each pixel lies on the part. A plane seen
// exactly edge-on has neither texture nor shadows.
func (fp *facePainter) place(plane scene.Plane, v View, at point) bool {
	fp.back, fp.away = backTo(plane, v), plane.Away != (scene.Point{})
	u, w := fp.back.at(at.x, at.y), fp.back.slope(at.x, at.y)
	fp.ux, fp.uy, fp.vx, fp.vy = w[0], w[1], w[2], w[3]
	x, y := 0.5-at.x, 0.5-at.y // from there to the middle of the first pixel
	fp.u, fp.v = u.x+x*fp.ux+y*fp.uy, u.y+x*fp.vx+y*fp.vy
	return usable(fp.u) && usable(fp.v) && usable(fp.ux) && usable(fp.uy) && usable(fp.vx) && usable(fp.vy) &&
		usable(1/(fp.ux*fp.vy-fp.uy*fp.vx))
}

// middle is the middle of an outline's corners.
func middle(outline []point) point {
	var sum point
	for _, p := range outline {
		sum.x, sum.y = sum.x+p.x, sum.y+p.y
	}
	n := float64(len(outline))
	return point{sum.x / n, sum.y / n}
}

// Textures never get finer than this, whatever the scale: px of the window.
const (
	finestThread = 2.3
	finestFibre  = 1.0
)

// fibre is how coarse paper and board are, mm.
const fibre = 0.18

// threadPitch is how far apart the threads of a cloth lie, mm.
func threadPitch(t scene.Texture) float64 {
	switch t {
	case scene.Canvas:
		return 0.9
	case scene.Fine:
		return 0.34
	}
	return 0.5
}

// dress chooses the tile for the scale and returns the contrast to show it at:
// pale cloth and faces seen edge-on get less.
func (fp *facePainter) dress(f scene.Face, v View, t *tiles) float64 {
	det := math.Abs(fp.ux*fp.vy - fp.uy*fp.vx) // mm² a px²
	lu := math.Hypot(fp.vx, fp.vy) / det       // px along one mm of u
	lv := math.Hypot(fp.ux, fp.uy) / det
	longest := max(lu, lv)
	contrast := 1.0
	if f.Texture.Cloth() {
		fp.texels = threadTexels / max(threadPitch(f.Texture), finestThread*v.density()/longest)
		contrast = 1.05 - 0.75*f.Fill.Luminance()
	} else {
		contrast = min(1.9-1.5*f.Fill.Luminance(), 1)
		fp.texels = 1 / max(fibre, finestFibre*v.density()/longest)
	}
	perU := fp.texels * math.Hypot(fp.ux, fp.uy)
	perV := fp.texels * math.Hypot(fp.vx, fp.vy)
	fp.tile = t.get(f.Texture, texelsAPixel(perU), texelsAPixel(perV))
	flat := 1 / (det * longest * longest) // 1 seen from the front, 0 edge-on
	return contrast * min(1, flat*4)
}

// texelsAPixel is over how many texels a pixel must average.
func texelsAPixel(step float64) int { return int(min(max(math.Round(step*1.25), 1), 12)) }

// span paints pixels of a row: flat ones at once, others when their run ends,
// since to find texture and shadows takes longer than to paint a pixel.
func (fp *facePainter) span(y, x0, x1 int, cover uint8) {
	if fp.tile == nil && len(fp.shades) == 0 {
		over(fp.pix[y*fp.stride+x0*4:y*fp.stride+x1*4], fp.colour[level1], fp.share(cover))
		return
	}
	if y != fp.y || x0 != fp.end {
		fp.finish()
		fp.y, fp.begin = y, x0
	}
	fp.end = x1
	fp.parts = append(fp.parts, part{x1, cover})
}

func (fp *facePainter) share(cover uint8) uint32 { return (uint32(cover)*fp.alpha + 127) / 255 }

// finish paints the run at hand.
func (fp *facePainter) finish() {
	if len(fp.parts) == 0 {
		return
	}
	out := fp.pix[fp.y*fp.stride+fp.begin*4 : fp.y*fp.stride+fp.end*4]
	row := fp.row[:fp.end-fp.begin]
	levels := fp.base(row, out)
	for i := range fp.shades {
		fp.shades[i].darken(row, levels, &fp.tints[i], fp.begin, fp.y)
	}
	at := 0
	for _, part := range fp.parts {
		to := part.to - fp.begin
		lay(out[at*4:to*4], row[at:to], fp.share(part.cover))
		at = to
	}
	fp.parts = fp.parts[:0]
}

// base fills a row with what the shadows fall on, and returns the tile's bytes.
func (fp *facePainter) base(row []uint32, out []uint8) []uint8 {
	switch {
	case fp.tile != nil:
		return fp.texture(row)
	case fp.bare:
		for i := range row {
			row[i] = get(out[i*4:])
		}
	default:
		for i := range row {
			row[i] = fp.colour[level1]
		}
	}
	return fp.level[:len(row)]
}

// texture looks the tile up along a row, in steps of 1/65536 texel; in
// perspective a few pixels at a time.
func (fp *facePainter) texture(row []uint32) (levels []uint8) {
	levels = fp.levels[:len(row)]
	if !fp.away {
		u, v := fp.at(fp.begin, fp.y)
		fp.thread(row, levels, u, v, fp.ux, fp.vx)
		return levels
	}
	const few = 16
	y := float64(fp.y) + 0.5
	from := fp.back.at(float64(fp.begin)+0.5, y)
	for at := 0; at < len(row); at += few {
		n := min(few, len(row)-at)
		to := fp.back.at(float64(fp.begin+at+n)+0.5, y)
		fp.thread(row[at:at+n], levels[at:at+n], from.x, from.y, (to.x-from.x)/float64(n), (to.y-from.y)/float64(n))
		from = to
	}
	return levels
}

// thread looks up a run that begins at (u, v) of the part, mm.
func (fp *facePainter) thread(row []uint32, levels []uint8, u, v, ux, vx float64) {
	tu, tv := fixed16(u*fp.texels), fixed16(v*fp.texels)
	du, dv := fixed16(ux*fp.texels), fixed16(vx*fp.texels)
	t := fp.tile
	for i := range row {
		l := t[tv>>8&0xFF00|tu>>16&0xFF]
		levels[i] = l
		row[i] = fp.colour[l]
		tu += du
		tv += dv
	}
}

// at is the place on the part, mm, of the middle of a pixel.
func (fp *facePainter) at(x, y int) (u, v float64) {
	fx, fy := float64(x), float64(y)
	return fp.u + fx*fp.ux + fy*fp.uy, fp.v + fx*fp.vx + fy*fp.vy
}

// fixed16 wraps a number of texels round the tile as 16.16 fixed point.
func fixed16(x float64) uint32 { return uint32(int64(x * 65536)) }
