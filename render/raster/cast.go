package raster

import (
	"image"

	"grainwise/render/scene"
)

// castMask adds up the outlines of a soft shadow on a grid coarser than the
// pixels: how many of them, times 255, cover each cell. A span is noted by its
// two ends only and summed up at last.
type castMask struct {
	fill          filler
	width, height int
	count         []int32         // the change from the cell to the left, then the sum
	reached       image.Rectangle // the cells that are not nought
}

// castGrain is how many pixels of a window's layout a cell is wide.
const castGrain = 2.5

// span notes a run of cells.
func (m *castMask) span(y, x0, x1 int, cover uint8) {
	row := m.count[y*m.width:]
	r := &m.reached
	r.Min.X, r.Max.X = min(r.Min.X, x0), max(r.Max.X, x1)
	r.Min.Y, r.Max.Y = min(r.Min.Y, y), max(r.Max.Y, y+1)
	row[x0] += int32(cover)
	if x1 < m.width {
		row[x1] -= int32(cover)
	}
}

// paintCast draws what lies under the shadow towards its tint.
func (p *Painter) paintCast(dst *image.RGBA, c scene.Cast, v View) {
	if len(c.Outlines) == 0 || !(c.Amount > 0) {
		return
	}
	grain := max(castGrain*v.density(), 2)
	m := &p.mask
	m.start(int(float64(dst.Rect.Dx())/grain)+2, int(float64(dst.Rect.Dy())/grain)+2)
	for _, outline := range c.Outlines {
		m.fill.start(m.width, m.height)
		for _, piece := range outline {
			if px, ok := p.pixels(piece, v); ok && len(px) > 2 {
				for i := range px {
					px[i] = point{px[i].x / grain, px[i].y / grain}
				}
				m.fill.add(px)
			}
		}
		m.fill.spans(m)
	}
	m.sum()
	m.lay(dst, c, grain)
}

// start forgets what was there.
func (m *castMask) start(width, height int) {
	if n := width * height; cap(m.count) < n {
		m.count = make([]int32, n)
	} else if width != m.width || height != m.height {
		m.count = m.count[:n]
		clear(m.count)
	} else {
		m.clean()
	}
	m.width, m.height = width, height
	m.reached = image.Rectangle{Min: image.Pt(width, height)}
}

func (m *castMask) clean() {
	for y := m.reached.Min.Y; y < m.reached.Max.Y; y++ {
		clear(m.count[y*m.width : (y+1)*m.width])
	}
}

func (m *castMask) sum() {
	for y := m.reached.Min.Y; y < m.reached.Max.Y; y++ {
		sum := int32(0)
		row := m.count[y*m.width : (y+1)*m.width]
		for x := m.reached.Min.X; x < m.reached.Max.X; x++ {
			sum += row[x]
			row[x] = sum
		}
	}
}

// lay darkens the pixels, between four cells each.
func (m *castMask) lay(dst *image.RGBA, c scene.Cast, grain float64) {
	tint := packed(c.Tint)
	full := c.Amount * 256 / (255 * float64(len(c.Outlines)))
	step := 1 / grain
	first, last := max(m.reached.Min.X-1, 0), min(m.reached.Max.X, m.width-1)
	for y := max(int(float64(m.reached.Min.Y-1)*grain), 0); y < min(int(float64(m.reached.Max.Y+1)*grain), dst.Rect.Dy()); y++ {
		fy := max((float64(y)+0.5)*step-0.5, 0)
		cy := min(int(fy), m.height-2)
		fy -= float64(cy)
		upper, lower := m.count[cy*m.width:(cy+1)*m.width], m.count[(cy+1)*m.width:(cy+2)*m.width]
		out := dst.Pix[y*dst.Stride:]
		for cx := first; cx < last; cx++ {
			if upper[cx]|upper[cx+1]|lower[cx]|lower[cx+1] == 0 {
				continue
			}
			left := full * (float64(upper[cx])*(1-fy) + float64(lower[cx])*fy)
			right := full * (float64(upper[cx+1])*(1-fy) + float64(lower[cx+1])*fy)
			from := max(int((float64(cx)+0.5)*grain+0.5), 0)
			if cx == 0 {
				from = 0
			}
			to := min(int((float64(cx)+1.5)*grain+0.5), dst.Rect.Dx())
			share := left + (right-left)*((float64(from)+0.5)*step-0.5-float64(cx))
			for x := from; x < to; x++ {
				put(out[x*4:], blend(get(out[x*4:]), tint, uint32(min(max(share, 0), 256)+0.5)))
				share += (right - left) * step
			}
		}
	}
}
