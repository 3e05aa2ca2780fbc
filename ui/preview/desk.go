package preview

import (
	"image/color"

	"grainwise/render/raster"
	"grainwise/render/scene"
)

// Desk is what a printed page lies on in the pane.
type Desk struct {
	Ground, Edge, Shade color.NRGBA
	Paper               *color.NRGBA // in place of white, where white would glare; nil: white
}

// Lay shows one page of paper on the desk, as large as it fits, in place of a
// view. A page of another id is shown whole; without a page the desk is bare.
func (p *Pane) Lay(page *scene.Scene, id string, desk Desk) {
	if id != p.paperID {
		p.port = fitted
	}
	if page == nil {
		page = &scene.Scene{}
	}
	p.paper, p.paperID, p.desk = page, id, desk
	p.ask()
}

// deskMargin is the desk seen round a page that fits, dp.
const deskMargin = 26.0

// layDown paints a page on its desk.
func (d *drawer) layDown(j job) frame {
	width, height := float64(j.width)/j.device, float64(j.height)/j.device
	fit := min((width-2*deskMargin)/max(j.paper.Width, 1), (height-2*deskMargin)/max(j.paper.Height, 1))
	fit = max(fit, 0.1)
	left, top := (width-fit*j.paper.Width)/2, (height-fit*j.paper.Height)/2
	picture := d.blank(j.width, j.height)
	d.painter.Paint(picture, onDesk(j.paper, j.desk, 1/fit/j.port.Zoom), raster.View{
		Scale:   j.port.Zoom * fit * j.device,
		OffsetX: (j.port.X + j.port.Zoom*left) * j.device,
		OffsetY: (j.port.Y + j.port.Zoom*top) * j.device,
		Density: j.device,
	})
	return frame{picture, nil, j.port}
}

// onDesk is a page with the desk round it; dp is how many mm of the page one dp
// of the pane shows.
func onDesk(page *scene.Scene, desk Desk, dp float64) *scene.Scene {
	s := &scene.Scene{Width: page.Width, Height: page.Height, Ground: colourOf(desk.Ground)}
	if page.Width <= 0 || page.Height <= 0 {
		return s
	}
	w, h := page.Width, page.Height
	s.Add(scene.Face{Outline: rectangle(0, 0, w, h), Fill: onPaper(page.Ground, desk)})
	for _, item := range page.Items {
		if face, is := item.(scene.Face); is {
			face.Fill = onPaper(face.Fill, desk)
			item = face
		}
		s.Add(item)
	}
	// What runs over the page's edge is not printed.
	for _, out := range around(w, h, 10*(w+h)) {
		s.Add(scene.Face{Outline: out, Fill: colourOf(desk.Ground)})
	}
	const reach, down = 5, 2 // dp
	shade := scene.Shade{
		U0: 0, U1: w, V0: down * dp, V1: h + down*dp, Width: reach * dp,
		Amount: 2 * float64(desk.Shade.A) / 0xFF, Tint: colourOf(desk.Shade),
	}
	for _, out := range around(w, h, 4*reach*dp) {
		s.Add(scene.Face{Outline: out, Bare: true, Shades: []scene.Shade{shade}})
	}
	s.Add(scene.Stroke{Paths: []scene.Path{rectangle(0, 0, w, h)}, Closed: true, Line: scene.Line{Width: dp, Colour: colourOf(desk.Edge)}})
	return s
}

// around are four rectangles that leave a page free.
func around(w, h, far float64) []scene.Path {
	return []scene.Path{
		rectangle(-far, -far, w+far, 0), rectangle(-far, h, w+far, h+far),
		rectangle(-far, 0, 0, h), rectangle(w, 0, w+far, h),
	}
}

func rectangle(x0, y0, x1, y1 float64) scene.Path {
	return scene.Path{{X: x0, Y: y0}, {X: x1, Y: y0}, {X: x1, Y: y1}, {X: x0, Y: y1}}
}

// onPaper is a colour as the desk's light shows it: only white differs.
func onPaper(c scene.Colour, desk Desk) scene.Colour {
	if c == white && desk.Paper != nil {
		return colourOf(*desk.Paper)
	}
	return c
}

// white is that of bare paper.
const white scene.Colour = 0xFFFFFF

func colourOf(c color.NRGBA) scene.Colour {
	return scene.Colour(c.R)<<16 | scene.Colour(c.G)<<8 | scene.Colour(c.B)
}
