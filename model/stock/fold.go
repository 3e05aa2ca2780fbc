package stock

import "grainwise/model/measure"

// How often a sheet is folded for the named formats.
const (
	Folio     = 1
	Quarto    = 2
	Octavo    = 3
	Sixteenmo = 4
)

// mostFolds is far more than paper can be folded.
const mostFolds = 30

// Halved is the sheet after one fold: its longer side halved and rounded down
// to a multiple of step. With a step of 1 mm this is how the sizes of ISO 216
// and 217 follow one another.
func (s Size) Halved(step measure.Length) Size {
	half := (max(s.Length, s.Width) / 2).RoundDown(step)
	other := min(s.Length, s.Width)
	return Size{Length: max(half, other), Width: min(half, other)}
}

// FoldedLeaf is the leaf that a sheet folded so often gives, uncut, its long
// side as Length. Every fold halves the longer side (Cockerell, Vaughn).
func FoldedLeaf(sheet Size, folds int) Size {
	leaf := Size{Length: max(sheet.Length, sheet.Width), Width: min(sheet.Length, sheet.Width)}
	for range held(folds) {
		leaf = leaf.Halved(measure.Nanometre)
	}
	return leaf
}

// Leaves is how many leaves a folded sheet gives: folio 2, quarto 4, octavo 8.
func Leaves(folds int) int { return 1 << held(folds) }

// GrainAfter reports whether the grain of a folded sheet runs along its spine,
// which is the last fold. A sheet at most twice as long as wide wants a short
// grain for folio, long for quarto, short for octavo, and so on in turn. A sheet
// without grain is never wrong. known is false for an untested sheet, and for
// one not folded at all.
func GrainAfter(sheet Size, folds int, parent Grain) (along, known bool) {
	switch {
	case held(folds) == 0 || parent == Untested:
		return false, false
	case parent == None:
		return true, true
	}
	length, width := sheet.Length, sheet.Width
	spineAcross := false // does the last crease run across the sheet's length?
	for range held(folds) {
		spineAcross = length >= width
		if spineAcross {
			length /= 2
		} else {
			width /= 2
		}
	}
	return spineAcross == (parent == Short), true
}

func held(folds int) int { return min(max(folds, 0), mostFolds) }
