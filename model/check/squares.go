package check

import (
	"math"

	"grainwise/assets/words"
	"grainwise/model/book"
)

// side is one of the three edges where the boards overhang.
type side struct {
	edge     string // its word
	square   string // key of its square
	board    string // key of the board's size that it comes from
	overhang string // key of the pasted leaf's overhang; "" of an endpaper, which has none

	wide     book.Length // the square to cut
	over     book.Length // of the pasted leaf past the page
	margin   book.Length // of the pasted leaf, placed
	standing book.Length // the same when the leaf has grown
}

func sidesOf(b *book.Book) []side {
	s, c := b.Squares, b.Casing
	fore, head, tail := b.Resolved.PastPage()
	all := []side{
		{"head", "square.head", "board.height", "liner.overhangHead", s.Head, head, c.Head, c.Head},
		{"tail", "square.tail", "board.height", "liner.overhangTail", s.Tail, tail, c.Tail, c.Tail},
		{"fore-edge", "square.foreEdge", "board.width", "liner.overhangForeEdge", s.ForeEdge, fore, c.ForeEdge, c.Grown},
	}
	for i := range all {
		if b.Resolved.PastedPart() != book.PartLiner {
			all[i].overhang = ""
		}
	}
	return all
}

// leaf is the key that a finding on the pasted leaf points to.
func (s side) leaf() string {
	if s.overhang == "" {
		return s.square
	}
	return s.overhang
}

// one is [one] of a finding that names the edge.
func (s side) one(f Finding) []Finding {
	if f.Level == "" {
		return nil
	}
	f.Blanks = map[string]any{"edge": words.Say("finding.edge." + s.edge)}
	return []Finding{f}
}

// flush reports whether the maker wants boards flush with the block all round.
// One square of nothing beside two others is a slip; so is one that a typed
// board brings about.
func flush(b *matter) bool {
	r := b.Resolved
	return r.Square == book.Square{} && !r.Board.Width.IsTyped() && !r.Board.Height.IsTyped()
}

// squareSmall: the boards must protect the leaves' edges.
func squareSmall(b *matter) []Finding {
	if flush(b) {
		return nil
	}
	var found []Finding
	for _, s := range b.sides {
		found = append(found, s.one(Finding{
			Level: Worse(when(s.wide < b.limits.squareLeast, Check), when(s.wide <= 0, Stop)),
			Part:  book.PartBoard, Key: s.square, Found: length(s.wide), Limit: length(b.limits.squareLeast),
		})...)
	}
	return found
}

// squareLarge: over a wide square the block drops and turn-ins show, unless
// the pasted leaf is widened with it.
func squareLarge(b *matter) []Finding {
	var found []Finding
	for _, s := range b.sides {
		wide := s.wide > squareMost && s.wide-s.over > squareMost
		found = append(found, s.one(Finding{
			Level: when(wide && b.Resolved.Page.Height < squareMostUnder, Note),
			Part:  book.PartBoard, Key: s.square, Found: length(s.wide), Limit: length(squareMost),
		})...)
	}
	return found
}

func usualSquare(b *matter, f Finding) []Remedy {
	for _, s := range b.sides {
		if s.square == f.Key {
			return squareBack(b, s)
		}
	}
	return nil
}

// squareBack gives board or square back, or both.
func squareBack(b *matter, s side) []Remedy {
	return []Remedy{
		remedy("board-auto", auto(s.board)),
		remedy("usual-square", usual(b, s.square)),
		remedy("usual-square", usual(b, s.square), auto(s.board)),
	}
}

// boardThin: a high board bends.
func boardThin(b *matter) []Finding {
	board, least := b.Resolved.Stock.Board.Thickness, boardFor(b)
	return one(Finding{
		Level: when(board < least, Check), Part: book.PartBoard, Key: "board.thickness",
		Found: length(board), Limit: length(least), Blanks: map[string]any{"height": b.Resolved.Page.Height},
	})
}

func boardFor(b *matter) book.Length {
	switch height := b.Resolved.Page.Height; {
	case height > boardTall:
		return b.limits.boardLeastTall
	case height > boardHigh:
		return b.limits.boardLeast
	}
	return 0
}

// thickerBoard takes the next half millimetre, as boards are sold.
func thickerBoard(b *matter, f Finding) []Remedy {
	least := boardFor(b)
	return []Remedy{remedy("thicker-board", atLeast(b, f.Key, least.RoundUp(boardsSold)))}
}

// squareFormat: a square page lets turned parts go unnoticed.
func squareFormat(b *matter) []Finding {
	w, h := b.Resolved.Page.Width.MM(), b.Resolved.Page.Height.MM()
	longer := max(w, h)
	if longer <= 0 {
		return nil
	}
	off := 100 * math.Abs(w-h) / longer
	return one(Finding{
		Level: when(off <= squareFormatPercent, Note), Part: book.PartFolio, Key: "page.width",
		Found: percent(off), Limit: percent(squareFormatPercent),
	})
}
