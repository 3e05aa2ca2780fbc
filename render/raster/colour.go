package raster

import (
	"encoding/binary"

	"grainwise/render/scene"
)

// packed is an opaque colour as the four bytes of a pixel, red lowest.
func packed(c scene.Colour) uint32 {
	r, g, b := c.RGB()
	return uint32(r) | uint32(g)<<8 | uint32(b)<<16 | 0xFF000000
}

func put(pix []uint8, c uint32) { binary.LittleEndian.PutUint32(pix, c) }

func get(pix []uint8) uint32 { return binary.LittleEndian.Uint32(pix) }

// blend mixes two pixels, share 0 … 256 of the second; two channels a step.
func blend(a, b, share uint32) uint32 {
	const even, half = 0x00FF00FF, 0x00800080
	keep := 256 - share
	low := ((a&even)*keep + (b&even)*share + half) >> 8 & even
	high := ((a>>8&even)*keep + (b>>8&even)*share + half) & (even << 8)
	return low | high
}

// shades of one colour: what each byte of a tile makes of it.
func ramp(into *[256]uint32, c scene.Colour, contrast float64) {
	for i := range into {
		into[i] = packed(c.Times(1 + contrast*float64(i-level1)/512))
	}
}
