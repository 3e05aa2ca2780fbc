package book

import (
	"math"

	"grainwise/model/measure"
)

// Default thread diameters, by hand and by machine (parameters.md).
const (
	machineThread = 280 * measure.Micrometre
	handThread    = 500 * measure.Micrometre
)

// MachineTail is what is left hanging at each end of each of the two threads of
// a seam, to be drawn in and knotted (own choice, a setting of the studio once
// there are settings).
const MachineTail = 150 * measure.Millimetre

const machineTails = 4 * MachineTail

// pamphletTails is the tail of a hand-sewn section (arithmetic.md).
const pamphletTails = 150 * measure.Millimetre

// ThreadDiameter is the typed diameter, or the usual one of the method.
func (r *Resolved) ThreadDiameter() Length {
	return r.Sewing.Thread.Or(usualThread(r.Sewing.Method))
}

func computeSewing(r *Resolved, block Block, tapes TapePlan) SewingPlan {
	p := SewingPlan{ThreadDiameter: r.ThreadDiameter()}
	switch r.Sewing.Method {
	case Machine:
		machineSeam(r, block, &p)
	case LinkOnTapes:
		p.Stations = tapeStations(r, block, tapes)
		p.ThreadPerBook = linkThread(r, block)
	case Link:
		p.Stations = stations(r, block.Height)
		p.ThreadPerBook = linkThread(r, block)
	default:
		p.Stations = stations(r, block.Height)
		p.ThreadPerBook = Length(r.Sections.Count) * (2*block.Height + pamphletTails)
	}
	return p
}

// machineSeam is a straight seam, its ends left unsewn. A seam of length ℓ
// takes 2·ℓ·(1 + (τ + g)/stitch) of two threads, and tails (arithmetic.md).
func machineSeam(r *Resolved, block Block, p *SewingPlan) {
	start := min(r.Sewing.FreeEnds, block.Height/2)
	p.Seam = Range{start, block.Height - start}
	seam := p.Seam.High - p.Seam.Low
	if r.Sewing.Stitch <= 0 {
		return
	}
	p.Stitches = int(math.Round(ratio(seam, r.Sewing.Stitch)))
	through := block.SectionThickness + r.Stock.Liner.Thickness
	each := (2 * seam).Times(1 + ratio(through, r.Sewing.Stitch))
	p.ThreadPerBook = Length(r.Sections.Count) * (each + machineTails)
}

// stations are evenly spaced between the two end stations, from the head.
func stations(r *Resolved, height Length) []Length {
	end := min(r.Sewing.EndStation, height/2)
	between := height - 2*end
	steps := Length(r.Sewing.Stations - 1)
	all := make([]Length, 0, r.Sewing.Stations)
	for i := range r.Sewing.Stations {
		all = append(all, end+between*Length(i)/steps)
	}
	return all
}

// Fence is how far the machine's fence stands from the needle: an open section's
// leaves reach from their fold to it, before the fore edge is trimmed.
func (b Book) Fence() Length { return b.Resolved.Page.Width + b.Resolved.Page.TrimFore }
