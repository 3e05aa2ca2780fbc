package sheet

import (
	"fmt"
	"math"

	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// markingPlate is the liner laid flat: what is folded where, all from one edge.
func markingPlate(d plate) {
	l := d.in.Book.Liner
	const x0, top, foot = 8.0, 17.0, 38.0
	long := d.width - 2*x0
	x := func(from book.Length) float64 { return x0 + from.MM()/l.Width.MM()*long }
	d.slab(linerTint(), x0, top, x0+long, foot)
	for _, r := range l.Ridges {
		d.line(partLine, []at{{X: x(r), Y: top}, {X: x(r), Y: foot}}, 3, 0.8, 0.6, 0.8)
		d.wedge(x(r), top, -1)
	}
	for _, v := range l.Valleys {
		d.line(partLine, []at{{X: x(v), Y: top}, {X: x(v), Y: foot}}, 1.6, 1)
		d.wedge(x(v), foot, 1)
	}
	d.origin(x0, top, foot)
	d.runningSizes(l.Ridges, x, top-3.4, -1)
	d.runningSizes(l.Valleys, x, foot+7.2, 1)
}

// wedge is the little roof over a ridge, or the little valley under a valley.
func (d plate) wedge(x, y, down float64) {
	const half, high, air = 0.9, 1.3, 0.7
	d.line(partLine, []at{{X: x - half, Y: y + down*air}, {X: x, Y: y + down*(air+high)}, {X: x + half, Y: y + down*air}})
}

// origin marks the edge from which everything is measured.
func (d plate) origin(x, top, foot float64) {
	d.line(heavyLine, []at{{X: x, Y: top - 4}, {X: x, Y: foot + 4}})
	ring := draft.Circle(d.place(x, foot+4), 1.1/scene.Px)
	d.Face(ring, white, scene.None, scene.Plane{})
	d.Outline(pen(partLine), ring...)
}

// runningSizes writes distances from the edge beside their marks: all of them where
// they have room, else as many as have, the first and the last before others.
func (d plate) runningSizes(marks []book.Length, x func(book.Length) float64, y, away float64) {
	for _, i := range tellable(marks, x) {
		text := d.in.size(marks[i])
		for row := range 2 {
			at0 := y + away*float64(row)*5.2
			if d.number(x(marks[i]), at0, text) {
				break
			}
		}
	}
}

// apart is how far marks must lie apart on the page so that a number over them, or in
// a second row, can be told to be theirs, mm.
const apart = 4.0

// tellable are the marks that are numbered: those at the ends first, and where all lie
// close only those.
func tellable(marks []book.Length, x func(book.Length) float64) []int {
	n := len(marks)
	if n > 2 && math.Abs(x(marks[n-1])-x(marks[0])) < apart*float64(n-1) {
		return []int{0, n - 1}
	}
	return outsideIn(n)
}

// outsideIn counts from both ends to the middle.
func outsideIn(n int) []int {
	var all []int
	for i := range (n + 1) / 2 {
		all = append(all, i)
		if j := n - 1 - i; j != i {
			all = append(all, j)
		}
	}
	return all
}

// mostPleats is how many valleys are drawn.
const mostPleats = 7

// The folded liner's place: its first valley from the left where there is room for
// the leaves that will be pasted, its valleys' height, and how far the leaves reach.
const (
	pleatsLeft = 63.0
	pleatsBase = 46.0
	pleatsStep = 12.5
	leafDrawn  = 22.0
)

// pleatingPlate is the folded liner from its tail, with the sections that will stand
// in its valleys; beside it one valley closed, with its sizes.
func pleatingPlate(d plate) {
	l := d.in.Book.Liner
	n := min(len(l.Valleys), mostPleats)
	rise := 2.0
	if len(l.Ridges) > 0 {
		rise = 13
		d.closedValley()
	}
	x0 := pleatsLeft + (mostPleats-float64(n))*pleatsStep/2
	d.ribbon(pleats(x0, n, rise))
	for i := range n {
		d.standing(x0+float64(i)*pleatsStep, pleatsBase-max(rise-4, 4))
	}
	last := x0 + float64(n-1)*pleatsStep
	if n < len(l.Valleys) {
		d.say(last+leafDrawn-2, pleatsBase-14, fmt.Sprintf("× %d", len(l.Valleys)), scene.Middle)
	}
}

// pleats is the liner's edge from its left leaf to its right one.
func pleats(x0 float64, n int, rise float64) []at {
	if n == 1 {
		return []at{{X: x0 - leafDrawn, Y: pleatsBase - 12}, {X: x0, Y: pleatsBase}, {X: x0 + leafDrawn, Y: pleatsBase - 12}}
	}
	profile := []at{{X: x0 - leafDrawn, Y: pleatsBase}}
	for i := range n {
		v := x0 + float64(i)*pleatsStep
		profile = append(profile, at{X: v, Y: pleatsBase})
		if i+1 < n {
			profile = append(profile, at{X: v + pleatsStep/2, Y: pleatsBase - rise})
		}
	}
	return append(profile, at{X: x0 + float64(n-1)*pleatsStep + leafDrawn, Y: pleatsBase})
}

// closedValley is one valley between its two ridges, pressed shut: the depth of a
// pleat and the room of a section.
func (d plate) closedValley() {
	l := d.in.Book.Liner
	const left, right, top, half = 12.0, 27.0, 26.0, 0.6
	d.line(partLine, []at{
		{X: 5, Y: pleatsBase}, {X: left - half, Y: pleatsBase}, {X: left, Y: top}, {X: left + half, Y: pleatsBase},
		{X: right - half, Y: pleatsBase}, {X: right, Y: top}, {X: right + half, Y: pleatsBase}, {X: right + 7, Y: pleatsBase},
	})
	d.size(at{X: left, Y: top}, at{X: right, Y: top}, -4, l.Spacing)
	d.size(at{X: right, Y: top}, at{X: right, Y: pleatsBase}, 3.5, d.in.Book.Resolved.Liner.PleatDepth)
}

// ribbon is a sheet seen from its edge, going back behind it.
func (d plate) ribbon(profile []at) {
	back := at{X: 9, Y: -7}
	for i := 0; i+1 < len(profile); i++ {
		a, b := profile[i], profile[i+1]
		tint := linerTint()
		if b.Y > a.Y {
			tint = draft.Front(tint)
		}
		d.Face(d.places([]at{a, b, {X: b.X + back.X, Y: b.Y + back.Y}, {X: a.X + back.X, Y: a.Y + back.Y}}), tint, scene.None, scene.Plane{})
		d.line(thinLine, []at{b, {X: b.X + back.X, Y: b.Y + back.Y}})
		d.line(thinLine, []at{{X: a.X + back.X, Y: a.Y + back.Y}, {X: b.X + back.X, Y: b.Y + back.Y}})
	}
	d.line(thinLine, []at{profile[0], {X: profile[0].X + back.X, Y: profile[0].Y + back.Y}})
	d.line(heavyLine, profile)
}

// standing is a section over its valley, and the way down to a height.
func (d plate) standing(x, foot float64) {
	const up, down = 28.0, 12.0
	for _, off := range []float64{1.5, 0.75} {
		d.line(partLine, []at{{X: x - off, Y: foot - up}, {X: x - off, Y: foot - down - 3}, {X: x, Y: foot - down}, {X: x + off, Y: foot - down - 3}, {X: x + off, Y: foot - up}})
	}
	d.push(at{X: x, Y: foot - down + 2}, at{X: x, Y: foot})
}
