package book

// Places are the three at which a block's thickness is measured.
type Places struct{ Head, Middle, Tail Choice[Length] }

// Place names one of the three.
type Place string

// The places along the spine.
const (
	AtHead   Place = "head"
	AtMiddle Place = "middle"
	AtTail   Place = "tail"
)

// each calls f with every place that was measured, from the head.
func (p Places) each(f func(Place, Length)) {
	for _, at := range []struct {
		place Place
		found Choice[Length]
	}{{AtHead, p.Head}, {AtMiddle, p.Middle}, {AtTail, p.Tail}} {
		if l, measured := at.found.Get(); measured {
			f(at.place, l)
		}
	}
}

// Greatest is the thickness that the case is made for, automatic where no
// place was measured. A case a little loose can be lived with, and one that is
// too tight cannot be cured: so not the mean (own reasoning).
func (p Places) Greatest() Choice[Length] {
	l, _, measured := p.greatest()
	if !measured {
		return Auto[Length]()
	}
	return Typed(l)
}

// greatest also names the place, the one nearest the head of equal ones.
func (p Places) greatest() (most Length, at Place, measured bool) {
	p.each(func(place Place, l Length) {
		if !measured || l > most {
			most, at, measured = l, place, true
		}
	})
	return most, at, measured
}

// Spread is how far the places differ; none with fewer than two of them.
func (p Places) Spread() Length {
	low, high, first := Length(0), Length(0), true
	p.each(func(_ Place, l Length) {
		if first {
			low, high, first = l, l, false
		}
		low, high = min(low, l), max(high, l)
	})
	return high - low
}

// Spine is the measure in force at the spine: of the whole, or else the
// greatest of the places; automatic where nothing was measured.
func (m Measured) Spine() Choice[Length] { return inForce(m.SpineThickness, m.SpineAt) }

// ForeEdge is the same at the fore edge.
func (m Measured) ForeEdge() Choice[Length] { return inForce(m.ForeEdgeThickness, m.ForeEdgeAt) }

func inForce(whole Choice[Length], places Places) Choice[Length] {
	if whole.IsTyped() {
		return whole
	}
	return places.Greatest()
}
