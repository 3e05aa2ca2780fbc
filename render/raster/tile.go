package raster

import (
	"math"
	"math/rand/v2"

	"grainwise/render/scene"
)

// A tile is side × side texels that repeat; each multiplies a colour. As a
// float it is the difference from 1, as a byte (128 + 512·difference).
const side = 256

type texels [side * side]float32

type tile [side * side]uint8

const level1 = 128 // the byte that leaves a colour as it is

// threadTexels is how many texels one thread of the weave is wide.
const threadTexels = 4

// tileKey names a tile averaged over so many texels along u and v.
type tileKey struct {
	texture scene.Texture
	u, v    int
}

// manyTiles is how many averages are kept, 64 kB each: a slow zoom would
// collect hundreds, and a bent page asks for dozens.
const manyTiles = 128

// tiles keeps the textures, made once, and their averages for a scale.
type tiles struct {
	raw      map[scene.Texture]*texels
	filtered map[tileKey]*tile
}

// get returns a texture averaged over the texels that one pixel shows.
func (t *tiles) get(texture scene.Texture, u, v int) *tile {
	key := tileKey{texture, u, v}
	if found := t.filtered[key]; found != nil {
		return found
	}
	if t.raw == nil {
		t.raw, t.filtered = map[scene.Texture]*texels{}, map[tileKey]*tile{}
	}
	if t.raw[texture] == nil {
		t.raw[texture] = makeTexels(texture)
	}
	if len(t.filtered) >= manyTiles {
		clear(t.filtered)
	}
	made := average(t.raw[texture], u, v).levels()
	t.filtered[key] = made
	return made
}

func makeTexels(texture scene.Texture) *texels {
	r := rand.New(rand.NewPCG(21, uint64(texture)))
	switch texture {
	case scene.Weave, scene.Canvas, scene.Fine:
		return weave(r, plain)
	case scene.Twill:
		return weave(r, twill)
	case scene.Board:
		return board(r)
	}
	return tooth(r)
}

// plain and twill tell which of the two threads that cross lies on top.
func plain(x, y int) bool { return (x+y)%2 == 0 }
func twill(x, y int) bool { return (x+y)%4 < 2 }

// weave is a cloth of 64 × 64 threads: where a thread lies on top it is bright in
// its middle and dark towards its ends. Threads differ a little, and some swell
// (slubs); the cloud keeps the repeat from being seen.
func weave(r *rand.Rand, warpOver func(x, y int) bool) *texels {
	const threads = side / threadTexels
	var warp, weft [threads]float64
	for i := range warp {
		warp[i], weft[i] = 0.05*spread(r), 0.05*spread(r)
	}
	slubU, slubV := noise(r, 22, 1, 0.03), noise(r, 1, 22, 0.03)
	cloud := noise(r, 20, 20, 0.012)
	made := new(texels)
	for i := range made {
		u, v := i%side, i/side
		fx := (float64(u%threadTexels)+0.5)/threadTexels*2 - 1
		fy := (float64(v%threadTexels)+0.5)/threadTexels*2 - 1
		x, y := u/threadTexels, v/threadTexels
		if warpOver(x, y) {
			made[i] = float32(0.10*(1-fx*fx)-0.09*fy*fy+warp[x]) + slubV[i]
		} else {
			made[i] = float32(0.07*(1-fy*fy)-0.13*fx*fx+weft[y]) + slubU[i]
		}
		made[i] += cloud[i]
	}
	return centred(made)
}

// board is grey board: felted noise, with specks of what it was made from.
func board(r *rand.Rand) *texels {
	made := sum(noise(r, 1, 1, 0.014), noise(r, 6, 3, 0.007))
	for range side * side / 100 {
		at, size := r.IntN(side*side), 0.03+0.05*r.Float64()
		if r.IntN(2) == 0 {
			size = -size
		}
		made[at] += float32(size)
		made[(at+1)%len(made)] += float32(size / 2)
	}
	return centred(made)
}

// tooth is the surface of drawing paper.
func tooth(r *rand.Rand) *texels {
	return centred(sum(noise(r, 1, 1, 0.0065), noise(r, 3, 3, 0.0035)))
}

// spread is a number about ±1, seldom over 2.
func spread(r *rand.Rand) float64 { return min(max(r.NormFloat64(), -2), 2) }

// noise is smoothed over (2ru+1) × (2rv+1) texels and has the given
// standard deviation.
func noise(r *rand.Rand, ru, rv int, deviation float64) *texels {
	made := new(texels)
	for i := range made {
		made[i] = float32(r.NormFloat64())
	}
	made = average(made, 2*ru+1, 2*rv+1)
	var squares float64
	for _, x := range centred(made) {
		squares += float64(x) * float64(x)
	}
	scale := float32(deviation / math.Sqrt(squares/float64(len(made))))
	for i := range made {
		made[i] *= scale
	}
	return made
}

func sum(a, b *texels) *texels {
	for i := range a {
		a[i] += b[i]
	}
	return a
}

// centred moves a texture's mean to nothing, so that it keeps a colour's tone.
func centred(t *texels) *texels {
	var mean float64
	for _, x := range t {
		mean += float64(x)
	}
	mean /= float64(len(t))
	for i := range t {
		t[i] -= float32(mean)
	}
	return t
}

// average is the mean of u × v neighbours, round the edges of the tile.
func average(t *texels, u, v int) *texels {
	return along(along(t, u, 1), v, side)
}

// along averages n texels that lie step apart, on both sides of each.
func along(t *texels, n, step int) *texels {
	if n <= 1 {
		return t
	}
	made := new(texels)
	other := side + 1 - step // the step to the next line: side or 1
	for line := range side {
		start := line * other
		var sum float32
		for k := range n {
			sum += t[start+(k-n/2+side)%side*step]
		}
		for k := range side {
			made[start+k*step] = sum / float32(n)
			sum += t[start+(k-n/2+n)%side*step] - t[start+(k-n/2+side)%side*step]
		}
	}
	return made
}

func (t *texels) levels() *tile {
	made := new(tile)
	for i, x := range t {
		made[i] = uint8(min(max(math.Round(level1+512*float64(x)), 0), 255))
	}
	return made
}
