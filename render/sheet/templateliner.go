package sheet

import (
	"slices"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// pleated tells whether sections stand in a liner.
func pleated(in Input) bool { return in.Book.Resolved.Structure == book.PleatedLiner }

// The fold ruler from its working edge down, mm.
const (
	foldMark  = 15.0 // lines of the folds
	foldFan   = 8.0  // from the lines to their labels
	foldFoot  = 17.0 // room for the pasted leaves' names
	foldAir   = 3.0  // between a distance and what it is of
	noteHead  = 6.0  // between the ruler and its notes
	noteWidth = 160.0
)

// ruler is the fold ruler being drawn.
type ruler struct {
	stencil
	in       Input
	all      []fold
	style    style   // of the distances
	every    int     // so many folds have one label
	distance float64 // room for the distances, mm
	words    float64 // room for what the folds are
}

func (in Input) ruler() ruler {
	r := ruler{in: in, all: foldsOf(in.Book.Liner)}
	r.style, r.every = labelled(len(r.all), in.Book.Liner.Width.MM()-4)
	for _, f := range r.all {
		r.distance = max(r.distance, r.style.width(in.size(f.at))+foldAir)
		r.words = max(r.words, r.wordStyle().width(f.word())+foldAir)
	}
	return r
}

// wordStyle is that of what the folds are.
func (r ruler) wordStyle() style {
	return style{scene.SansItalic, min(4.2, r.style.size), r.style.leading, draft.Ink}
}

// high is the ruler's own height.
func (r ruler) high() float64 { return foldMark + foldFan + r.distance + r.words + foldFoot }

// fold is one fold of the liner.
type fold struct {
	at     book.Length // from the edge where the ruler begins
	number int
	ridge  bool
}

// foldsOf are a liner's folds, from the left.
func foldsOf(l book.LinerPlan) []fold {
	var all []fold
	for i, v := range l.Valleys {
		if i > 0 && i <= len(l.Ridges) {
			all = append(all, fold{l.Ridges[i-1], i, true})
		}
		all = append(all, fold{v, i + 1, false})
	}
	return all
}

// linerRuler is a strip as wide as the liner is flat: laid on it, it shows where
// every valley and every ridge is folded. Mirrored, it counts from the right edge:
// the liner's halves are alike, so the distances stay.
func linerRuler(in Input) Document {
	l := in.Book.Liner
	width := l.Width.MM()
	r := in.ruler()
	notes := r.notes()
	below := noteHead
	for _, n := range notes {
		below += float64(len(body().wrapped(n, noteWidth))) * body().leading
	}
	s := newStencil(max(width, noteWidth), r.high()+below, in.Left)
	r.stencil = s
	base, top := below, below+r.high()
	s.cutOut(at{Y: base}, at{X: width - 6, Y: base}, at{X: width, Y: base + 6}, at{X: width, Y: top}, at{Y: top})
	r.pastedLeaves(base)
	r.folds(top)
	r.begin(top)
	y := base - noteHead
	for _, n := range notes {
		y = s.lines(at{Y: y}, n, body(), noteWidth)
	}
	return in.fullSize("liner-ruler", s.Scene())
}

// folds draws the lines, their shapes and their labels under the working edge.
func (r ruler) folds(top float64) {
	size := foldShape(r.all)
	var wanted []float64
	var named []fold
	for i, f := range r.all {
		r.foldLine(f, top, size)
		if i%r.every == 0 {
			wanted, named = append(wanted, f.at.MM()), append(named, f)
		}
	}
	half := r.style.leading / 2
	for i, x := range spread(wanted, r.style.leading, 1+half, r.in.Book.Liner.Width.MM()-1-half) {
		r.foldLabel(named[i], x, top)
	}
}

// begin says from which edge the ruler counts, and of which design it is, where no
// label stands.
func (r ruler) begin(top float64) {
	room := r.in.Book.Liner.PastedWidth.MM() - 6
	y := top - foldMark - foldFan - r.distance/2
	r.openArrow(at{Y: y}, 9)
	r.tryLevel(at{X: 11, Y: y}, words.Say("template.start"), bold(), scene.Start)
	r.tryLevel(at{X: 3, Y: y - 8}, r.in.about(words.Say("paper.liner-ruler"), quiet(), room), quiet(), scene.Start)
}

// foldShape is half the size of the shapes that tell valleys from ridges: no wider
// than there is room between two folds.
func foldShape(all []fold) float64 {
	size := 1.8
	for i := 1; i < len(all); i++ {
		size = min(size, (all[i].at-all[i-1].at).MM()*0.45)
	}
	return size
}

// foldLine is solid and ends in an open V for a valley; dashed and ends in a full
// roof for a ridge.
func (r ruler) foldLine(f fold, top, size float64) {
	x, end := f.at.MM(), top-foldMark
	if f.ridge {
		r.line(pen(0.25, 1.6, 0.9), at{X: x, Y: top}, at{X: x, Y: end})
		r.area(draft.Ink, at{X: x, Y: end}, at{X: x - size, Y: end - 1.7*size}, at{X: x + size, Y: end - 1.7*size})
		return
	}
	r.line(pen(0.35), at{X: x, Y: top}, at{X: x, Y: end - 1.7*size})
	r.line(pen(0.35), at{X: x - size, Y: end}, at{X: x, Y: end - 1.7*size}, at{X: x + size, Y: end})
}

// foldLabel names a fold and its distance, and leads it to its line.
func (r ruler) foldLabel(f fold, x, top float64) {
	const air = 1.2
	under := top - foldMark - foldFan
	r.line(pen(thinWidth), at{X: f.at.MM(), Y: top - foldMark - 3.6}, at{X: x, Y: under + 0.6})
	r.upright(at{X: x, Y: under - air}, r.in.size(f.at), r.style, scene.End)
	r.upright(at{X: x, Y: under - r.distance}, f.word(), r.wordStyle(), scene.End)
}

func (f fold) word() string {
	if f.ridge {
		return words.Say("template.ridge", words.With{"number": f.number})
	}
	return words.Say("template.valley", words.With{"number": f.number})
}

// pastedLeaves dimensions the two leaves that go on the boards.
func (r ruler) pastedLeaves(base float64) {
	l := r.in.Book.Liner
	width, leaf := l.Width.MM(), l.PastedWidth.MM()
	y := base + 8.5
	for _, ends := range [][2]float64{{0, leaf}, {width - leaf, width}} {
		r.span(at{X: ends[0], Y: y}, at{X: ends[1], Y: y})
		r.mark(at{X: ends[0], Y: base + 6.5}, at{X: ends[0], Y: base + foldFoot - 3})
		r.mark(at{X: ends[1], Y: base + 6.5}, at{X: ends[1], Y: base + foldFoot - 3})
		r.leafName((ends[0]+ends[1])/2, y, leaf-4)
	}
}

// leafName is set over its dimension, in one line or two.
func (r ruler) leafName(x, y, room float64) {
	size := r.in.sized(r.in.Book.Liner.PastedWidth)
	full := words.Say("template.pastedLeaf", words.With{"size": size})
	st := number()
	if st.width(full) > room {
		st = bold()
	}
	if st.width(full) > room {
		full = size
	}
	r.write(at{X: x, Y: y + 1.6}, full, st, scene.Middle, 0)
}

// notes say what the lines mean and from which edge they count.
func (r ruler) notes() []string {
	in := r.in
	l := in.Book.Liner
	from := "template.ruler.left"
	if in.Left {
		from = "template.ruler.right"
	}
	notes := []string{words.Say(from, words.With{"width": in.sized(l.Width)})}
	if len(l.Ridges) > 0 {
		notes = append(notes, words.Say("template.ruler.ridges", words.With{"depth": in.sized(in.Book.Resolved.Liner.PleatDepth)}))
	} else {
		notes = append(notes, words.Say("template.ruler.valleys"))
	}
	if l.CutWidth != l.Width {
		notes = append(notes, words.Say("template.ruler.torn", words.With{"cut": in.sized(l.CutWidth)}))
	}
	if r.every > 1 {
		notes = append(notes, r.everyFold(false))
		if len(l.Ridges) > 0 {
			notes = append(notes, r.everyFold(true))
		}
	}
	return notes
}

// everyFold lists the valleys or the ridges.
func (r ruler) everyFold(ridges bool) string {
	var at []book.Length
	for _, f := range slices.DeleteFunc(slices.Clone(r.all), func(f fold) bool { return f.ridge != ridges }) {
		at = append(at, f.at)
	}
	key := "template.ruler.allValleys"
	if ridges {
		key = "template.ruler.allRidges"
	}
	return words.Say(key, words.With{"at": strings.Join(r.in.inRow(at), dotted)})
}
