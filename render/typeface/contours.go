package typeface

import (
	"golang.org/x/image/font/sfnt"

	"grainwise/render/scene"
)

// curvePieces is how many straight pieces stand for one curve of a letter.
const curvePieces = 6

// Contours are the outlines of a text's letters, at an em of size millimetres: the
// pen starts at the origin, y runs down. Holes run the other way round.
func Contours(f scene.Font, size float64, text string) []scene.Path {
	var buffer sfnt.Buffer
	var all []scene.Path
	face, x := Of(f), 0.0
	for _, r := range Shown(f, text) {
		segments, unit := face.Outline(&buffer, r)
		place := func(s sfnt.Segment, i int) scene.Point {
			return scene.Point{X: x + float64(s.Args[i].X)/unit*size, Y: float64(s.Args[i].Y) / unit * size}
		}
		var path scene.Path
		for _, s := range segments {
			switch s.Op {
			case sfnt.SegmentOpMoveTo:
				all = kept(all, path)
				path = scene.Path{place(s, 0)}
			case sfnt.SegmentOpLineTo:
				path = append(path, place(s, 0))
			case sfnt.SegmentOpQuadTo:
				path = curved(path, place(s, 0), place(s, 1))
			}
		}
		all = kept(all, path)
		x += face.Advance(r) * size
	}
	return all
}

func kept(all []scene.Path, path scene.Path) []scene.Path {
	if len(path) > 2 {
		return append(all, path)
	}
	return all
}

// curved goes on along a quadratic curve.
func curved(path scene.Path, control, to scene.Point) scene.Path {
	from := path[len(path)-1]
	for i := 1; i <= curvePieces; i++ {
		t := float64(i) / curvePieces
		a, b, c := (1-t)*(1-t), 2*t*(1-t), t*t
		path = append(path, scene.Point{X: a*from.X + b*control.X + c*to.X, Y: a*from.Y + b*control.Y + c*to.Y})
	}
	return path
}
