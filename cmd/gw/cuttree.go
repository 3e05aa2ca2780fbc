package main

import "grainwise/model/cutting"

// tree is how a part is cut, cut after cut as at the bench.
//
// Many cuts of one direction, each through what the one before left, would nest
// as deep as they are many, which some readers refuse. They are halved instead:
// in any order they set the same parts free.
func (s scale) tree(p cutting.Part) treeAnswer {
	switch {
	case p.Cut != "":
		if run := parallel(p, p.Cut, nil); len(run) > mostNested {
			return s.halved(p.Cut, run)
		}
		return treeAnswer{Cut: p.Cut, At: s.size(p.At), Parts: []treeAnswer{s.tree(p.Parts[0]), s.tree(p.Parts[1])}}
	case p.Piece == cutting.Waste:
		return treeAnswer{Waste: true}
	}
	return treeAnswer{Piece: s.Job.Pieces[p.Piece].ID}
}

// mostNested is how many parts side by side are told cut after cut.
const mostNested = 64

// parallel gathers the parts side by side that cuts of a direction set free.
func parallel(p cutting.Part, cut cutting.Direction, found []cutting.Part) []cutting.Part {
	for p.Cut == cut {
		found = parallel(p.Parts[0], cut, found)
		p = p.Parts[1]
	}
	return append(found, p)
}

// halved cuts parts side by side in the middle, and so on.
func (s scale) halved(cut cutting.Direction, parts []cutting.Part) treeAnswer {
	if len(parts) == 1 {
		return s.tree(parts[0])
	}
	half := len(parts) / 2
	before := parts[half-1]
	at := before.Y + before.Height
	if cut == cutting.Vertical {
		at = before.X + before.Width
	}
	return treeAnswer{Cut: cut, At: s.size(at), Parts: []treeAnswer{s.halved(cut, parts[:half]), s.halved(cut, parts[half:])}}
}
