package book

import "grainwise/model/measure"

// TapePlan is the tapes that a block is sewn on.
type TapePlan struct {
	At            []Length // their middles, from the head
	Width, Length Length
	Lap           Length // of each end past the back
}

// computeTapes cuts each T_s + 2 × lap long (arithmetic.md, "Structures") and
// spaces them evenly between the kettles.
func computeTapes(r *Resolved, block Block, round rounding) TapePlan {
	lap := r.Sewing.TapeLap
	p := TapePlan{Width: r.Sewing.TapeWidth, Length: round.up(block.SpineThickness + 2*lap), Lap: lap}
	end := kettle(r, block)
	for i := 1; i <= r.Sewing.Tapes; i++ {
		p.At = append(p.At, end+(block.Height-2*end)*Length(i)/Length(r.Sewing.Tapes+1))
	}
	return p
}

// kettle is how far the kettle stitches stand from head and tail.
func kettle(r *Resolved, block Block) Length { return min(r.Sewing.EndStation, block.Height/2) }

// tapeStations are the kettles and a pair at the edges of each tape, from the
// head; tapes that have no room share their stations.
func tapeStations(r *Resolved, block Block, tapes TapePlan) []Length {
	end := kettle(r, block)
	half := min(tapes.Width, (block.Height-2*end)/Length(len(tapes.At)+1)) / 2
	all := []Length{end}
	for _, at := range tapes.At {
		all = append(all, at-half, at+half)
	}
	return append(all, block.Height-end)
}

// The thread of a linked block beyond its seams, own reasoning (arithmetic.md,
// "Sheets, weight, time, money").
const (
	linkStep  = 16 * measure.Millimetre // from section to section
	linkTails = 400 * measure.Millimetre
)

// linkThread is (n + 1)·H + 16 mm·n + 400 mm.
func linkThread(r *Resolved, block Block) Length {
	n := Length(r.Sections.Count)
	return (n+1)*block.Height + n*linkStep + linkTails
}
