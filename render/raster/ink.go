package raster

import "image"

// inkOn paints spans of one colour.
type inkOn struct {
	dst    *image.RGBA
	colour uint32
	alpha  uint32 // 0 … 256
}

func (k *inkOn) span(y, x0, x1 int, cover uint8) {
	over(k.dst.Pix[y*k.dst.Stride+x0*4:y*k.dst.Stride+x1*4], k.colour, (uint32(cover)*k.alpha+127)/255)
}

// over lays one colour over a row of pixels.
func over(out []uint8, c, share uint32) {
	if share >= 256 {
		for i := 0; i < len(out); i += 4 {
			put(out[i:], c)
		}
		return
	}
	for i := 0; i < len(out); i += 4 {
		put(out[i:], blend(get(out[i:]), c, share))
	}
}

// lay lays a row of colours over a row of pixels.
func lay(out []uint8, row []uint32, share uint32) {
	if share >= 256 {
		for i, c := range row {
			put(out[i*4:], c)
		}
		return
	}
	for i, c := range row {
		put(out[i*4:], blend(get(out[i*4:]), c, share))
	}
}
