package raster

import (
	"math"

	"grainwise/render/scene"
)

// shadeSpan is one shadow, ready for rows of pixels: the positions of its four
// edges in the ramp table, in 1/65536 of an entry.
type shadeSpan struct {
	amount         int64 // 0 … 32768
	u0, u1, v0, v1 int64 // at the pixel (0, 0)
	ux, uy, vx, vy int64 // change a pixel right and down
}

const rampSize = 512

// rampTable holds smoothstep from −1 to 1, as 0 … 32768.
var rampTable = func() (t [rampSize]int32) {
	for i := range t {
		t[i] = int32(math.Round(scene.Smooth(2*float64(i)/(rampSize-1)-1) * 32768))
	}
	return t
}()

// cast prepares the shadows that fall on the face, and what its texture makes
// of their tints.
func (fp *facePainter) cast(shades []scene.Shade, contrast float64) {
	for len(fp.tints) < len(shades) {
		fp.tints = append(fp.tints, [256]uint32{})
	}
	for _, s := range shades {
		ready, ok := fp.shade(s)
		if !ok {
			continue
		}
		ramp(&fp.tints[len(fp.shades)], s.Tint, contrast)
		fp.shades = append(fp.shades, ready)
	}
}

func (fp *facePainter) shade(s scene.Shade) (shadeSpan, bool) {
	wu, wv := s.Reach()
	const half = (rampSize - 1) / 2.0
	ru, rv := half/wu, half/wv // table entries a millimetre
	ready := shadeSpan{amount: int64(min(max(s.Amount, 0), 1) * 32768)}
	ok := ready.amount > 0
	set := func(to *int64, x float64) {
		ok = ok && math.Abs(x) < 1<<30
		if ok {
			*to = int64(x * 65536)
		}
	}
	set(&ready.u0, (fp.u-s.U0)*ru+half+0.5)
	set(&ready.u1, (fp.u-s.U1)*ru+half+0.5)
	set(&ready.v0, (fp.v-s.V0)*rv+half+0.5)
	set(&ready.v1, (fp.v-s.V1)*rv+half+0.5)
	set(&ready.ux, fp.ux*ru)
	set(&ready.uy, fp.uy*ru)
	set(&ready.vx, fp.vx*rv)
	set(&ready.vy, fp.vy*rv)
	return ready, ok
}

// darken draws a row towards the shadow's tint.
func (s *shadeSpan) darken(row []uint32, levels []uint8, tint *[256]uint32, x0, y int) {
	x, fy := int64(x0), int64(y)
	du, dv := x*s.ux+fy*s.uy, x*s.vx+fy*s.vy
	u0, u1, v0, v1 := s.u0+du, s.u1+du, s.v0+dv, s.v1+dv
	from, to := reached(0, int64(len(row)), u0, u1, s.ux)
	from, to = reached(from, to, v0, v1, s.vx)
	if from >= to {
		return
	}
	if s.vx == 0 {
		s.darkenLevel(row, levels, tint, u0, u1, step(v0)-step(v1), from, to)
		return
	}
	u0, u1, v0, v1 = u0+from*s.ux, u1+from*s.ux, v0+from*s.vx, v1+from*s.vx
	row, levels = row[from:to], levels[from:to]
	for i := range row {
		if a := s.share(step(u0)-step(u1), step(v0)-step(v1)); a > 0 {
			row[i] = blend(row[i], tint[levels[i]], a)
		}
		u0 += s.ux
		u1 += s.ux
		v0 += s.vx
		v1 += s.vx
	}
}

// darkenLevel does so where v does not change along the row: up the ramp of u,
// evenly where it has risen, and down again.
func (s *shadeSpan) darkenLevel(row []uint32, levels []uint8, tint *[256]uint32, u0, u1, depth, from, to int64) {
	risen, falls := above(from, to, u0-(rampSize-1)<<16, s.ux)
	risen, falls = above(risen, falls, 1<<16-1-u1, -s.ux)
	if risen >= falls {
		risen, falls = to, to
	}
	ramp := func(from, to int64) {
		for i := from; i < to; i++ {
			a := s.share(step(u0+i*s.ux)-step(u1+i*s.ux), depth)
			row[i] = blend(row[i], tint[levels[i]], a)
		}
	}
	ramp(from, risen)
	a := s.share(1<<15, depth)
	for i, c := range row[risen:falls] {
		row[risen+int64(i)] = blend(c, tint[levels[risen+int64(i)]], a)
	}
	ramp(falls, to)
}

// share is how far a pixel is drawn towards the tint, 0 … 256.
func (s *shadeSpan) share(along, across int64) uint32 {
	return uint32((along*across>>15*s.amount + 1<<21) >> 22)
}

// reached narrows a run of pixels to those that a shadow reaches along one
// direction: after its rise begins and before its fall ends.
func reached(from, to, rise, fall, slope int64) (int64, int64) {
	from, to = above(from, to, rise-1<<16, slope)
	return above(from, to, (rampSize-1)<<16-fall, -slope)
}

// above narrows a run to the pixels where at + i·slope ≥ 0.
func above(from, to, at, slope int64) (int64, int64) {
	switch {
	case slope > 0 && at < 0:
		from = max(from, (-at+slope-1)/slope)
	case slope < 0 && at >= 0:
		to = min(to, at/-slope+1)
	case at < 0:
		to = from
	}
	return from, to
}

// step looks a position up in the ramp.
func step(at int64) int64 {
	return int64(rampTable[min(max(at>>16, 0), rampSize-1)])
}
