package draft

import "grainwise/render/scene"

// The line styles. Widths and dashes are in design px and never scale.

func line(width float64, c scene.Colour, dash ...float64) scene.Line {
	l := scene.Line{Width: width * scene.Px, Colour: c}
	for _, d := range dash {
		l.Dash = append(l.Dash, d*scene.Px)
	}
	return l
}

// PartLine is the outline of a part of a material.
func PartLine(material scene.Colour) scene.Line { return line(0.8, Edge(material)) }

// LightLine is an edge that catches the light, on dark cloth too.
func LightLine(material scene.Colour) scene.Line {
	l := line(0.7, material.Towards(Paper, 0.45))
	l.Alpha = 0.6
	return l
}

// FlatLine is the outline of a part in a working drawing.
func FlatLine(material scene.Colour) scene.Line { return line(1.2, Edge(material)) }

// CutEdgeLine is the cut edge of a folded sheet.
func CutEdgeLine(material scene.Colour) scene.Line { return line(1.2, Edge(material)) }

// DimensionLine carries a figure.
func DimensionLine() scene.Line { return line(0.7, Ink2) }

// ExtensionLine leads from a part to its dimension.
func ExtensionLine() scene.Line { return line(0.6, Ink2) }

// LeaderLine leads from a part to its label.
func LeaderLine() scene.Line { return line(0.7, Ink2) }

// LeafLine is one leaf among many.
func LeafLine() scene.Line {
	l := line(0.5, Ink)
	l.Alpha = 0.28
	return l
}

// HatchLine shades what is cut through.
func HatchLine() scene.Line {
	l := line(0.6, Ink)
	l.Alpha = 0.30
	return l
}

// SheetLine is a thin sheet seen from its edge: so many px thick, at least
// 1.1, with an outline of its own.
func SheetLine(material scene.Colour, thick float64) scene.Line {
	l := line(max(thick, 1.1), material)
	l.Halo, l.Under = l.Width+1.2*scene.Px, Edge(material)
	return l
}

// ThreadLine is the sewing thread, so many px thick, at least 1 and no more than
// 1.6.
func ThreadLine(thick float64) scene.Line { return line(min(max(thick, 1), 1.6), Thread.Times(0.8)) }

// JoiningLine joins corners that will meet.
func JoiningLine() scene.Line { return line(0.65, Ink2, 1, 2.4) }

// FoldLine is a fold or the place of a part.
func FoldLine(c scene.Colour) scene.Line { return line(0.7, c, 4, 2.5) }

// PastedLine is the edge of the pasted leaf.
func PastedLine(c scene.Colour) scene.Line { return line(0.9, c, 6, 3) }

// OpenMarkLine is where a pasted leaf would lie, placed with the case open.
func OpenMarkLine() scene.Line { return line(0.9, Ink2, 1.6, 2.6) }

// CentreLine is an axis of symmetry.
func CentreLine() scene.Line { return line(0.6, Ink2, 14, 3, 2, 3) }

// WasteLine is what is cut away.
func WasteLine() scene.Line { return line(0.7, Ink3, 2, 2.4) }

// GrainLine is the shaft and head of a grain arrow.
func GrainLine(c scene.Colour) scene.Line { return line(0.7, c) }

// RuleLine divides the sheet.
func RuleLine() scene.Line { return line(1, Ink2) }

// StopLine marks what stops the maker.
func StopLine() scene.Line { return haloed(line(1.5, Stop), 2.8) }

// CutLine is a cut of the bench: those of whole sheets are the heaviest, and so
// on inwards.
func CutLine(depth int) scene.Line { return line(max(1.5-0.35*float64(depth), 0.8), Ink) }

// ChosenLine outlines the part that is chosen.
func ChosenLine() scene.Line { return haloed(line(1.6, Accent), 3.6) }

func haloed(l scene.Line, width float64) scene.Line {
	l.Halo, l.Under = width*scene.Px, Ground
	return l
}

// MovingLine is the edge of what a parameter moves, as it is now.
func MovingLine() scene.Line { return haloed(line(1.5, Accent), 2.8) }

// GhostLine is where that edge was.
func GhostLine() scene.Line {
	l := line(0.8, Accent, ghostOn, ghostOff)
	l.Alpha = 0.85
	return l
}

// FollowingLine is where the edge was of what follows from a change.
func FollowingLine() scene.Line {
	l := line(0.7, Accent, ghostOn, ghostOff)
	l.Alpha = 0.60
	return l
}

// PinnedLine is the edge of a design that this one is compared with: a line of
// its own, for nothing of it changes now.
func PinnedLine() scene.Line {
	l := line(0.8, Ink, pinnedLong, pinnedGap, pinnedDot, pinnedGap)
	l.Alpha = 0.75
	return l
}

const pinnedLong, pinnedDot, pinnedGap = 7, 1.4, 2.4

const ghostOn, ghostOff = 3.2, 2.6

// Fainter is a line with so much of its strength left, 0 … 1; its underlay goes
// first.
func Fainter(l scene.Line, share float64) scene.Line {
	if share >= 1 {
		return l
	}
	l.Alpha = max(scene.Opacity(l.Alpha)*share, 1e-3) // 0 would be opaque
	l.Halo = 0
	return l
}
