package view_test

import (
	"image"
	"math"
	"slices"
	"testing"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
	"grainwise/render/raster"
	"grainwise/render/scene"
	"grainwise/render/view"
)

// How large things come out in the mock-up, measured back from its pixels as from a
// photograph: a pinhole camera of its own (from drawings.md: 40° over the table, 2600
// mm away, looking at the middle of the picture), its focal length found from the
// ruler of 200 mm on the table, and then the books' corners on the table. Closed
// width and height, and the open case, are what the design says, to 1 %.
func TestSizesAreMeasuredBackFromThePicture(t *testing.T) {
	for name, changes := range map[string][]string{
		"demo": nil, "landscape": {"page.width", "210", "page.height", "148"}, "thin": {"sections.count", "1"},
		"thick": {"sections.count", "20", "sections.folios", "6"},
	} {
		t.Run(name, func(t *testing.T) {
			in := magenta(t, changes)
			s := view.MockUp(in)
			im := raster.Image(s, 3600)
			cam := cameraOf(s, 3600/s.Width)
			books, rulers := components(im, isMagenta), components(im, isWood)
			ruler := largest(rulers)
			cam.calibrate(ruler.frontLeft(), ruler.frontRight(), 200)

			c := in.Book.Closed
			lying := leftmost(split(books, func(p patch) bool { return p.Max.Y > im.Rect.Dy()*41/100 }))
			check := func(what string, got float64, want measure.Length) {
				t.Helper()
				if math.Abs(got-want.MM()) > 0.01*want.MM() {
					t.Errorf("%s is %.1f mm in the picture, want %.1f", what, got, want.MM())
				}
			}
			cut, cloth := in.Book.ToCut, in.Book.Resolved.Stock.Covering.Thickness
			// left of the picture's middle what is higher lies farther out: the back's upper corner
			back, near, fore := closer(s, 3600/s.Width, lying.head(lying.Min.X)), lying.nearest(), lying.foot(lying.Max.X-1)
			// and lying on its lower board the swollen book leans over by its taper
			high, block := (c.Thickness+cut.SpineWidth)/2, in.Book.Block
			lean := high.Times(((block.SpineThickness - block.ForeEdgeThickness) / 2).MM() / cut.BoardWidth.MM())
			check("the closed width", cam.apart(back, high.MM(), near, 0), c.Width-lean)
			check("the closed height", cam.apart(near, 0, fore, 0), c.Height)
			halves := split(books, func(p patch) bool { return p.Max.Y <= im.Rect.Dy()*41/100 && p.n < 100_000 })
			slices.SortFunc(halves, func(a, b patch) int { return a.Min.X - b.Min.X }) // the boards of the first open book
			left, near, head := halves[0].foot(halves[0].Min.X), halves[1].nearest(), halves[1].head(halves[1].Max.X-1)
			check("the open case's width", cam.apart(left, 0, near, 0), 2*(cut.BoardWidth+cut.JointWidth)+cut.SpineWidth)
			check("the open case's height", cam.apart(near, 0, head, (in.Book.Resolved.Stock.Board.Thickness+cloth).MM()), c.Height)
		})
	}
}

// closer looks at the leftmost corner of a patch once more, four times as large, and
// returns where it is in the pixels of the whole.
func closer(s *scene.Scene, perMM float64, at [2]float64) [2]float64 {
	const times, reach = 4.0, 60.0
	im := image.NewRGBA(image.Rect(0, 0, 2*times*reach, 2*times*reach))
	x0, y0 := at[0]-reach, at[1]-reach
	new(raster.Painter).Paint(im, s, raster.View{Scale: times * perMM, OffsetX: -times * x0, OffsetY: -times * y0, Density: perMM * scene.Px})
	for x := range im.Rect.Dx() {
		for y := range im.Rect.Dy() {
			if c := im.RGBAAt(x, y); isMagenta(int(c.R), int(c.G), int(c.B)) {
				return [2]float64{x0 + (float64(x)+0.5)/times, y0 + (float64(y)+0.5)/times}
			}
		}
	}
	return at
}

// magenta is the demo in a cloth that nothing else in the picture looks like.
func magenta(t *testing.T, changes []string) view.Input {
	t.Helper()
	d, shelf := book.Defaults(measure.Metric), stock.Default()
	for i := 0; i < len(changes); i += 2 {
		p, _ := book.Lookup(changes[i])
		v, err := p.Parse(changes[i+1], measure.Metric)
		if err == nil {
			err = p.Set(&d, v)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	for i := range shelf.Materials {
		if shelf.Materials[i].Kind == stock.Covering {
			shelf.Materials[i].Colour = "#E000E0"
		}
	}
	return view.Input{Book: book.Compute(book.Resolve(d, shelf)), Width: 1200, Height: 800}
}

func isMagenta(r, g, b int) bool { return r > 40 && g < r/3 && b > 2*r/3 }
func isWood(r, g, b int) bool    { return r > 110 && b*100 < 67*r && g*100 > 78*r && g < r }

// pinhole is the camera, its page in pixels.
type pinhole struct{ f, cx, cy float64 }

func cameraOf(s *scene.Scene, perMM float64) *pinhole {
	for _, item := range s.Items {
		if still, is := item.(scene.Still); is {
			return &pinhole{cx: still.Max.X / 2 * perMM, cy: still.Max.Y / 2 * perMM}
		}
	}
	return nil
}

// at is the place, mm, under a pixel, so high over the table.
func (p *pinhole) at(x, y, high float64) (float64, float64) {
	const distance, elevation = 2600.0, 40 * math.Pi / 180
	sin, cos := math.Sin(elevation), math.Cos(elevation)
	right, up := (x-p.cx)/p.f, (p.cy-y)/p.f
	// the ray: forward (0, cos, −sin) + right (1, 0, 0) + up (0, sin, cos)
	dx, dy, dz := right, cos+up*sin, -sin+up*cos
	far := (high - distance*sin) / dz
	return far * dx, -distance*cos + far*dy
}

// apart is how far two pixels lie from each other, each so high over the table.
func (p *pinhole) apart(a [2]float64, high float64, b [2]float64, high2 float64) float64 {
	ax, ay := p.at(a[0], a[1], high)
	bx, by := p.at(b[0], b[1], high2)
	return math.Hypot(bx-ax, by-ay)
}

// calibrate finds the focal length at which two pixels lie so many mm apart.
func (p *pinhole) calibrate(a, b [2]float64, mm float64) {
	low, high := 100.0, 1e6
	for range 60 {
		if p.f = math.Sqrt(low * high); p.apart(a, 0, b, 0) > mm {
			low = p.f
		} else {
			high = p.f
		}
	}
}

// patch is a patch of one colour: its pixels' bounds and, of each column, the lowest
// and the highest.
type patch struct {
	image.Rectangle
	n         int
	low, high map[int]int
}

// foot and head are the lowest and the highest pixel of a column, nearest the lowest
// of all.
func (p patch) foot(x int) [2]float64 { return [2]float64{float64(x) + 0.5, float64(p.low[x]) + 0.5} }
func (p patch) head(x int) [2]float64 { return [2]float64{float64(x) + 0.5, float64(p.high[x]) + 0.5} }

func (p patch) nearest() [2]float64 {
	lowest, sum, n := p.Max.Y-1, 0, 0
	for x, y := range p.low {
		if y == lowest {
			sum, n = sum+x, n+1
		}
	}
	return [2]float64{float64(sum)/float64(n) + 0.5, float64(lowest) + 0.5}
}

// frontLeft and frontRight are the ends of a patch's lower edge, for one that lies
// level.
func (p patch) frontLeft() [2]float64  { return p.level(1) }
func (p patch) frontRight() [2]float64 { return p.level(-1) }
func (p patch) level(step int) [2]float64 {
	x := p.Min.X
	if step < 0 {
		x = p.Max.X - 1
	}
	for ; x >= p.Min.X && x < p.Max.X; x += step {
		if p.low[x] >= p.Max.Y-4 {
			break
		}
	}
	return [2]float64{float64(x) + 0.5, float64(p.low[x])}
}

// components are the patches of a kind of colour, small ones left out.
func components(im *image.RGBA, is func(r, g, b int) bool) []patch {
	w, h := im.Rect.Dx(), im.Rect.Dy()
	mark := make([]bool, w*h)
	for i := range mark {
		mark[i] = is(int(im.Pix[4*i]), int(im.Pix[4*i+1]), int(im.Pix[4*i+2]))
	}
	var all []patch
	for start := range mark {
		if !mark[start] {
			continue
		}
		p := patch{low: map[int]int{}, high: map[int]int{}}
		p.Min = image.Pt(w, h)
		stack := []int{start}
		mark[start] = false
		for len(stack) > 0 {
			at := stack[len(stack)-1]
			stack = stack[:len(stack)-1]
			x, y := at%w, at/w
			p.n++
			p.Min.X, p.Min.Y, p.Max.X, p.Max.Y = min(p.Min.X, x), min(p.Min.Y, y), max(p.Max.X, x+1), max(p.Max.Y, y+1)
			p.low[x] = max(p.low[x], y)
			if top, seen := p.high[x]; !seen || y < top {
				p.high[x] = y
			}
			for _, d := range [][2]int{{-1, 0}, {1, 0}, {0, -1}, {0, 1}} {
				nx, ny := x+d[0], y+d[1]
				if nx >= 0 && nx < w && ny >= 0 && ny < h && mark[ny*w+nx] {
					mark[ny*w+nx] = false
					stack = append(stack, ny*w+nx)
				}
			}
		}
		if p.n > 2000 {
			all = append(all, p)
		}
	}
	return all
}

func largest(all []patch) patch {
	return best(all, func(p patch) int { return p.n })
}

func leftmost(all []patch) patch {
	return best(all, func(p patch) int { return -p.Min.X })
}

func best(all []patch, by func(patch) int) (p patch) {
	for i, q := range all {
		if i == 0 || by(q) > by(p) {
			p = q
		}
	}
	return p
}

// split are the patches that something holds for.
func split(all []patch, in func(patch) bool) (out []patch) {
	for _, p := range all {
		if in(p) {
			out = append(out, p)
		}
	}
	return out
}
