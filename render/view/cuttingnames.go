package view

import (
	"cmp"
	"slices"

	"grainwise/assets/words"
	"grainwise/model/cutting"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// label decides at a scale how large the names on a block are, alike on all its
// kinds, and which kinds have no room for their size, to be named below.
func (b *cuttingBlock) label(scale float64) {
	b.large, b.captions = true, nil
	for _, k := range b.kinds {
		f, fits := b.labels[k.kind].best(scale*k.lies[0][0], scale*k.lies[0][1], true, false)
		b.large = b.large && fits && f.large
	}
	for _, k := range b.kinds {
		if !b.sized(k, scale) && len(b.captions) < mostCaptions {
			b.captions = append(b.captions, k.kind)
		}
	}
}

// sized says whether a kind has room for its size at a scale.
func (b *cuttingBlock) sized(k kindOf, scale float64) bool {
	for _, size := range k.lies {
		if f, fits := b.labels[k.kind].best(scale*size[0], scale*size[1], b.large, true); fits && f.sized {
			return true
		}
	}
	return false
}

// names puts a name on every piece that has room for it, on the first of a kind
// with its size, and tells which kinds are named.
func (l cuttingSheet) names() map[int]bool {
	sized, named := map[int]bool{}, map[int]bool{}
	l.each(func(p cutting.Part) {
		label, b := l.labels[p.Piece], l.pxBox(p.X, p.Y, p.Width, p.Height)
		s := l.sheet.About(l.cutting.Pieces[p.Piece].Part, "")
		if f, fits := label.best(b.X1-b.X0, b.Y1-b.Y0, l.large, !sized[p.Piece]); fits && f.put(s, b, label) {
			sized[p.Piece] = sized[p.Piece] || f.sized
			named[p.Piece] = true
		}
	})
	return named
}

// Captions below a sheet: how many at most, their leading, and how far they
// stand from their leader, px.
const (
	mostCaptions = 4
	captionLead  = 16.0
	captionIn    = 10.0
)

// caption is what stands below the sheet of a kind: name, size, how many.
func (b cuttingBlock) caption(kind int) string {
	with := words.With{"name": b.labels[kind].name, "size": b.labels[kind].size}
	for _, k := range b.kinds {
		if k.kind == kind {
			with["count"] = k.count
		}
	}
	return words.Say("cutting.caption", with)
}

// captionWidth is how wide the captions make a block.
func (b cuttingBlock) captionWidth(rooms cuttingRooms) float64 {
	widest := 0.0
	for _, kind := range b.captions {
		widest = max(widest, rooms.left+captionIn+4+draft.Small().Width(b.caption(kind)))
	}
	return widest
}

// captionsBelow names below the sheet the kinds that have no room for it, the
// rightmost highest: a leader drops from the lowest piece of each that bears no
// name either; those that do come last, so that no leader crosses them.
func (l cuttingSheet) captionsBelow(named map[int]bool) {
	kinds := slices.Clone(l.captions)
	slices.SortStableFunc(kinds, func(a, b int) int {
		if named[a] != named[b] {
			return cmp.Compare(unnamedFirst(named[a]), unnamedFirst(named[b]))
		}
		return cmp.Compare(l.lowest(b).X, l.lowest(a).X)
	})
	left := l.plan.Origin.X
	right := left - l.drawing.rooms.left + l.width - 14
	for i, kind := range kinds {
		s, text := l.sheet.About(l.cutting.Pieces[kind].Part, ""), l.caption(kind)
		from := l.lowest(kind)
		y := l.plan.Origin.Y + l.drawing.rooms.below + captionLead*float64(i) + 9
		x := max(left, min(from.X+captionIn, right-draft.Small().Width(text)))
		if named[kind] {
			x = left
		}
		if s.Try(draft.P{X: x, Y: y}, text, draft.Small().In(draft.Ink), scene.Start, 0) && !named[kind] {
			l.sheet.Leader(from, draft.P{X: from.X, Y: y - 4}, draft.P{X: max(x-3, from.X), Y: y - 4})
		}
	}
}

func unnamedFirst(named bool) int {
	if named {
		return 1
	}
	return 0
}

// lowest is the middle of the lowest and leftmost piece of a kind.
func (l cuttingSheet) lowest(kind int) draft.P {
	var found cutting.Part
	l.each(func(p cutting.Part) {
		if p.Piece == kind && (found.Width == 0 || p.Y < found.Y || p.Y == found.Y && p.X < found.X) {
			found = p
		}
	})
	return l.px(found.X+found.Width/2, found.Y+found.Height/2)
}

// offcutNames says what an offcut is called and how large it is, or its name
// alone.
func (l cuttingSheet) offcutNames() {
	for _, o := range l.kept() {
		label := labelOf(o.Name, l.drawing.in.by(o.Width, o.Length))
		b := l.pxBox(int64(o.X), int64(o.Y), int64(o.Width), int64(o.Length))
		if f, fits := label.best(b.X1-b.X0, b.Y1-b.Y0, l.large, true); fits {
			f.name.Colour = draft.Ink2
			f.put(l.sheet, b, label)
		}
	}
}
