package scene

// Colour is an opaque sRGB colour, 0xRRGGBB.
type Colour uint32

// RGB returns the three channels, 0 … 255.
func (c Colour) RGB() (r, g, b uint8) {
	return uint8(c >> 16), uint8(c >> 8), uint8(c)
}

// Towards mixes c with other in sRGB; share 0 is c, 1 is other.
func (c Colour) Towards(other Colour, share float64) Colour {
	r, g, b := c.RGB()
	r2, g2, b2 := other.RGB()
	return pack(mix(r, r2, share), mix(g, g2, share), mix(b, b2, share))
}

// Times darkens (below 1) or lightens a colour, channel by channel.
func (c Colour) Times(f float64) Colour {
	r, g, b := c.RGB()
	return pack(float64(r)*f, float64(g)*f, float64(b)*f)
}

// Luminance is the share of white, 0 … 1, weighted as in Rec. 709 on the sRGB
// values themselves: good enough to choose between dark and light marks.
func (c Colour) Luminance() float64 {
	r, g, b := c.RGB()
	return (0.2126*float64(r) + 0.7152*float64(g) + 0.0722*float64(b)) / 255
}

func mix(a, b uint8, share float64) float64 {
	return float64(a) + (float64(b)-float64(a))*share
}

func pack(r, g, b float64) Colour {
	return Colour(channel(r))<<16 | Colour(channel(g))<<8 | Colour(channel(b))
}

func channel(v float64) uint8 {
	return uint8(min(max(v+0.5, 0), 255))
}
