package sheet

import (
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// foldLine is the fold drawn lying, its head at the left, between two x.
type foldLine struct {
	d      plate
	x0, x1 float64
	y      float64
}

// x is where a distance from the head lies.
func (f foldLine) x(from book.Length) float64 {
	return f.x0 + from.MM()/f.d.in.Book.Block.Height.MM()*(f.x1-f.x0)
}

// ends writes head and tail over the fold's ends.
func (f foldLine) ends(y float64) {
	f.d.say(f.x0, y, words.Say("sheet.head"), scene.Start)
	f.d.say(f.x1, y, words.Say("sheet.tail"), scene.End)
}

// stationsPlate is the section in the cradle, and where its fold is pierced.
func stationsPlate(d plate) {
	d.cradle(26, 38)
	f := foldLine{d, 62, d.width - 8, 27}
	d.slab(cardTint(), f.x0, f.y-6, f.x1, f.y+6)
	stations := d.in.Book.Sewing.Stations
	for _, s := range stations {
		d.line(partLine, []at{{X: f.x(s), Y: f.y - 6}, {X: f.x(s), Y: f.y + 6}})
		d.hole(f.x(s), f.y)
	}
	d.origin(f.x0, f.y-6, f.y+6)
	d.runningSizes(stations, f.x, f.y+14, 1)
	f.ends(f.y - 13)
}

// hole is a pierced hole.
func (d plate) hole(x, y float64) { d.Dot(d.place(x, y), 0.8/scene.Px, draft.Ink) }

// cradle is a trough with an opened section in it, from its end, and the awl that
// stands square to the fold.
func (d plate) cradle(x, y float64) {
	const wide, high = 20.0, 15.0
	d.piece(boardTint(), at{X: x - wide, Y: y - high}, at{X: x, Y: y}, at{X: x + wide, Y: y - high},
		at{X: x + wide, Y: y - high + 3.6}, at{X: x + 2, Y: y + 5}, at{X: x - 2, Y: y + 5}, at{X: x - wide, Y: y - high + 3.6})
	n := min(d.in.Book.Resolved.Sections.Folios, 4)
	for i := range n {
		up := 0.7 + float64(i)*0.9
		d.line(partLine, []at{{X: x - wide + 1.5, Y: y - high + 1.1 - up}, {X: x, Y: y - up}, {X: x + wide - 1.5, Y: y - high + 1.1 - up}})
	}
	tip := y - 0.7
	d.line(partLine, []at{{X: x, Y: tip}, {X: x, Y: tip - 17}})
	d.piece(cardTint(), at{X: x - 1.6, Y: tip - 27}, at{X: x + 1.6, Y: tip - 27}, at{X: x + 1.2, Y: tip - 16}, at{X: x - 1.2, Y: tip - 16})
	d.push(at{X: x + 6, Y: tip - 24}, at{X: x + 6, Y: tip - 14})
}

// machinePlate is the opened section from above with its seam, and a few stitches
// of it larger.
func machinePlate(d plate) {
	b := d.in.Book
	const fold, top, foot = 34.0, 11.0, 58.0
	s := (foot - top) / b.Block.Height.MM()
	half := min(b.Block.Width.MM()*s, 17)
	y := func(from book.Length) float64 { return top + from.MM()*s }
	d.slab(linerTint(), fold-half-1.5, top, fold+half+1.5, foot)
	d.slab(paperTint(), fold-half, top, fold+half, foot)
	d.line(thinLine, []at{{X: fold, Y: top}, {X: fold, Y: foot}})
	low, high := b.Sewing.Seam.Low, b.Sewing.Seam.High
	d.line(heavyLine, []at{{X: fold, Y: y(low)}, {X: fold, Y: y(high)}}, 1.6, 0.8)
	d.hole(fold, y(low))
	d.hole(fold, y(high))
	d.push(at{X: fold + 5, Y: y(low) + 4}, at{X: fold + 5, Y: min(y(low)+16, foot-4)})
	d.say(fold, top-3, words.Say("sheet.head"), scene.Middle)
	d.size(at{X: fold, Y: top}, at{X: fold, Y: y(low)}, -half-5.5, low)
	d.size(at{X: fold, Y: top}, at{X: fold, Y: y(high)}, half+5.5, high)
	d.stitches(at{X: 67, Y: 49})
}

// stitches are a few of them, as through a glass.
func (d plate) stitches(c at) {
	const r, long = 8.5, 4.4
	ring := draft.Circle(d.place(c.X, c.Y), r/scene.Px)
	d.Face(ring, white, scene.None, scene.Plane{})
	d.Outline(pen(thinLine), ring...)
	for i := range 3 {
		y := c.Y - 1.5*long + float64(i)*long
		d.line(heavyLine, []at{{X: c.X - 3, Y: y + 0.5}, {X: c.X - 3, Y: y + long - 0.5}})
	}
	stitch := d.in.Book.Resolved.Sewing.Stitch
	d.sizeText(at{X: c.X - 3, Y: c.Y - long/2}, at{X: c.X - 3, Y: c.Y + long/2}, 3, d.in.size(stitch))
}

// pass is one run of the thread from a station to another, inside or outside.
type pass struct {
	from, to int
	inside   bool
}

// pamphletWay is the thread's way through so many stations, as the step tells it: from
// the middle along the fold to the tail and back past the middle, to the head and
// home. Every hole that it comes to it goes through.
func pamphletWay(stations int) []pass {
	if stations < 2 {
		return nil
	}
	middle := stations / 2
	if middle == stations-1 { // of two, there is no other side
		return []pass{{middle, 0, false}, {0, middle, true}}
	}
	var way []pass
	go1 := func(to, by int) {
		for at := last(way, middle); at != to; at += by {
			way = append(way, pass{at, at + by, len(way)%2 == 1})
		}
	}
	go1(stations-1, 1)
	go1(middle+1, -1)
	if middle == 0 {
		return append(way, pass{middle + 1, middle, true})
	}
	way = append(way, pass{middle + 1, middle - 1, true})
	go1(0, -1)
	go1(middle, 1)
	return way
}

// last is where a way has come to; start where it has not begun.
func last(way []pass, start int) int {
	if len(way) == 0 {
		return start
	}
	return way[len(way)-1].to
}

// pamphletPlate is the fold with the thread's way: inside over the line, outside
// under it.
func pamphletPlate(d plate) {
	f := foldLine{d, 12, d.width - 12, 27}
	stations := d.in.Book.Sewing.Stations
	d.slab(paperTint(), f.x0, f.y-0.9, f.x1, f.y+0.9)
	for i, p := range pamphletWay(len(stations)) {
		d.threaded(f.x(stations[p.from]), f.x(stations[p.to]), f.y, p.inside, i+1)
	}
	for _, s := range stations {
		d.hole(f.x(s), f.y)
	}
	if n := len(stations); n > 1 {
		m := f.x(stations[n/2])
		d.line(partLine, []at{{X: m, Y: f.y}, {X: m - 1.5, Y: f.y - 6}, {X: m - 4, Y: f.y - 8}})
	}
	f.ends(7)
	d.origin(f.x0, f.y-5, f.y+5)
	d.runningSizes(stations, f.x, 50, 1)
}

// threaded is a run of thread with its arrow and its number.
func (d plate) threaded(x0, x1, y float64, inside bool, n int) {
	high := min(9, 2+max(x1-x0, x0-x1)*0.16)
	up := -1.0
	dash := []float64{1.6, 0.9}
	if inside {
		up, dash = 1, nil
	}
	bulge := high * up
	if x1 < x0 {
		bulge = -bulge
	}
	path := bow(at{X: x0, Y: y - up}, at{X: x1, Y: y - up}, bulge)
	d.line(heavyLine*0.75, path, dash...)
	mid := max(len(path)/2, 1)
	d.head(path[mid-1], path[mid])
	d.turn((x0+x1)/2, y-up*(high+5), n)
}

// mostSections is how many sections are drawn one on another.
const mostSections = 4

// linkPlate is the back of the block while it is sewn: the thread's way in every
// section, tapes, and kettle stitches at the ends.
func linkPlate(d plate) {
	b := d.in.Book
	n := min(b.Resolved.Sections.Count, mostSections)
	const pitch, foot = 7.5, 42.0
	f := foldLine{d, 12, d.width - 12, foot}
	for i := range n {
		y := foot - float64(i)*pitch
		d.slab(paperTint(), f.x0, y-pitch+0.8, f.x1, y)
	}
	for _, t := range b.Tapes.At {
		half := b.Tapes.Width / 2
		d.slab(cardTint(), f.x(t-half), foot-float64(mostSections)*pitch-3, f.x(t+half), foot+3)
	}
	for i := range n {
		d.sewn(f, i, foot-(float64(i)+0.5)*pitch+0.4, pitch)
	}
	f.ends(6)
	d.origin(f.x0, foot-5, foot+3)
	d.runningSizes(b.Sewing.Stations, f.x, 54, 1)
}

// sewn is the thread outside one section, i from the bottom.
func (d plate) sewn(f foldLine, i int, y, pitch float64) {
	stations := d.in.Book.Sewing.Stations
	end := len(stations) - 1
	onTapes := len(d.in.Book.Tapes.At) > 0
	for k, s := range stations {
		x := f.x(s)
		d.hole(x, y)
		switch {
		case k == 0 || k == end:
			if i > 0 {
				d.kettle(x, y, pitch, i > 1)
			}
		case onTapes && k%2 == 1 && k+1 < end:
			d.line(heavyLine, []at{{X: x, Y: y}, {X: f.x(stations[k+1]), Y: y}})
		case !onTapes && i > 0:
			d.line(heavyLine*0.75, bow(at{X: x - 0.5, Y: y}, at{X: x + 0.5, Y: y}, -pitch*0.62))
		}
		if k < end && !(onTapes && k%2 == 1 && k+1 < end) {
			d.line(thinLine, []at{{X: x + 1, Y: y}, {X: f.x(stations[k+1]) - 1, Y: y}}, 1, 1)
		}
	}
}

// kettle is the stitch that ties a section to the ones below; the first just links.
func (d plate) kettle(x, y, pitch float64, tied bool) {
	d.line(heavyLine*0.75, []at{{X: x, Y: y}, {X: x, Y: y + pitch}})
	if tied {
		d.Outline(pen(heavyLine*0.75), draft.Circle(d.place(x, y+pitch/2), 1.2/scene.Px)...)
	}
}
