package cutting

import (
	"cmp"
	"slices"
)

// Step is one setting of the cutter's stop and all cuts made with it, in the
// order of the bench: what is lost at the edges first, then the cuts through
// whole sheets, then those through what they divided.
type Step struct {
	Layout  int
	Depth   int       // how many directions were cut before
	Cut     Direction // where the cuts run, on the sheet
	Stop    int64     // from the edge at the stop to the cut
	Cuts    int64     // made in one sheet, counting parts that are stacked once each
	Length  int64     // of all of them in one sheet
	Strokes int64     // over all sheets, stacked to the cutter's capacity
	Waste   bool      // what falls off is waste
	Lines   []Line    // where the cuts lie on the sheet
}

// Line is a cut on the whole sheet.
type Line struct{ X1, Y1, X2, Y2 int64 }

// Work is what a plan asks of the hands.
type Work struct {
	Settings int64 // of the stop
	Cuts     int64 // over all sheets, each through one thickness
	Strokes  int64 // over all sheets, stacked
	Length   int64 // of all cuts, through one thickness
}

// Steps lists the settings of a plan, layout by layout. At most stack sheets are
// cut at once.
func (p Plan) Steps(stack int64) []Step {
	var steps []Step
	for i, l := range p.Layouts {
		b := &bench{layout: i, times: l.Times, stack: max(1, stack)}
		b.divide([]*Part{&l.Root}, 0)
		steps = append(steps, b.steps...)
	}
	return steps
}

// Work sums up steps.
func (p Plan) Work(steps []Step) Work {
	w := Work{Settings: int64(len(steps))}
	for _, s := range steps {
		times := p.Layouts[s.Layout].Times
		w.Cuts += s.Cuts * times
		w.Length += s.Length * times
		w.Strokes += s.Strokes
	}
	return w
}

// bench gathers the steps of one layout.
type bench struct {
	layout       int
	times, stack int64
	steps        []Step
}

// slab is a part that a run of cuts in one direction sets free, and the cut that
// did so.
type slab struct {
	part  *Part
	size  int64
	line  Line
	split bool // a cut ends it; the last of a run needs none
}

// divide cuts parts that lie on the bench together, then what they fall into.
// Of two directions the one with the longest cut comes first.
func (b *bench) divide(parts []*Part, depth int) {
	var inner []*Part
	directions := []Direction{Vertical, Horizontal}
	if longestCut(parts, Horizontal) > longestCut(parts, Vertical) {
		slices.Reverse(directions)
	}
	for _, cut := range directions {
		var slabs []slab
		for _, p := range parts {
			if p.Cut == cut {
				slabs = append(slabs, run(p)...)
			}
		}
		b.settings(slabs, cut, depth)
		for _, s := range slabs {
			if s.part.Cut != "" {
				inner = append(inner, s.part)
			}
		}
	}
	if len(inner) > 0 {
		b.divide(inner, depth+1)
	}
}

// longestCut is the length of the longest cut of a direction.
func longestCut(parts []*Part, cut Direction) int64 {
	longest := int64(0)
	for _, p := range parts {
		if p.Cut == cut {
			longest = max(longest, p.Width+p.Height-p.across(cut))
		}
	}
	return longest
}

// run follows cuts of one direction, each through what the one before left.
func run(p *Part) []slab {
	cut := p.Cut
	var slabs []slab
	for p.Cut == cut {
		near, far := &p.Parts[0], &p.Parts[1]
		line := Line{p.At, p.Y, p.At, p.Y + p.Height}
		if cut == Horizontal {
			line = Line{p.X, p.At, p.X + p.Width, p.At}
		}
		// What is measured is what is set free: a piece or strip, or waste where the rest is kept whole.
		free, rest := near, far
		if far.waste() && !near.waste() && near.Cut == cut {
			free, rest = far, near
		}
		size := free.across(cut)
		if size == 0 { // the kerf took all of it
			size = rest.across(cut)
		}
		slabs = append(slabs, slab{free, size, line, true})
		p = rest
	}
	return append(slabs, slab{part: p})
}

func (p *Part) waste() bool { return p.Cut == "" && p.Piece == Waste }

// across is a part's size across a cut.
func (p *Part) across(cut Direction) int64 {
	if cut == Vertical {
		return p.Width
	}
	return p.Height
}

// settings gathers equal stops into one step each: waste first, then the larger
// distances.
func (b *bench) settings(slabs []slab, cut Direction, depth int) {
	slabs = slices.DeleteFunc(slices.Clone(slabs), func(s slab) bool { return !s.split })
	first := len(b.steps)
	for _, s := range slabs {
		at := slices.IndexFunc(b.steps[first:], func(t Step) bool { return t.Stop == s.size && t.Waste == s.part.waste() })
		if at < 0 {
			at = len(b.steps) - first
			b.steps = append(b.steps, Step{Layout: b.layout, Depth: depth, Cut: cut, Stop: s.size, Waste: s.part.waste()})
		}
		step := &b.steps[first+at]
		step.Cuts++
		step.Length += s.line.X2 - s.line.X1 + s.line.Y2 - s.line.Y1
		step.Strokes = step.Cuts * ((b.times + b.stack - 1) / b.stack)
		step.Lines = append(step.Lines, s.line)
	}
	slices.SortStableFunc(b.steps[first:], func(x, y Step) int {
		switch {
		case x.Waste && y.Waste:
			return 0 // the outer first, as they come
		case x.Waste:
			return -1
		case y.Waste:
			return 1
		}
		return cmp.Compare(y.Stop, x.Stop)
	})
}
