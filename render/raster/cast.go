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
	count         []int32 // the change from the cell to the left, then the sum
}

// castGrain is how many pixels of a window's layout a cell is wide.
const castGrain = 2.5

// span notes a run of cells.
func (m *castMask) span(y, x0, x1 int, cover uint8) {
	row := m.count[y*m.width:]
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
	m.width, m.height = width, height
	if n := width * height; cap(m.count) < n {
		m.count = make([]int32, n)
	} else {
		m.count = m.count[:n]
		clear(m.count)
	}
}

func (m *castMask) sum() {
	for y := range m.height {
		sum := int32(0)
		row := m.count[y*m.width : (y+1)*m.width]
		for x := range row {
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
	for y := range dst.Rect.Dy() {
		fy := max((float64(y)+0.5)*step-0.5, 0)
		cy := min(int(fy), m.height-2)
		fy -= float64(cy)
		upper, lower := m.count[cy*m.width:(cy+1)*m.width], m.count[(cy+1)*m.width:(cy+2)*m.width]
		out := dst.Pix[y*dst.Stride:]
		for cx := range m.width - 1 {
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
				put(out[x*4:], blend(get(out[x*4:]), tint, uint32(share+0.5)))
				share += (right - left) * step
			}
		}
	}
}
