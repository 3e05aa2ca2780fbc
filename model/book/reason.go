package book

import (
	"strconv"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/measure"
)

// Reason says in one sentence with figures where a parameter's automatic value
// comes from; it is empty for a parameter that is never automatic. The figures
// are those of the sizes to cut.
func Reason(b Book, key string, style measure.Style) string {
	if why, ok := reasons()[key]; ok {
		return why(telling{&b, &b.Resolved, style})
	}
	return ""
}

// telling is a book and how its lengths are told.
type telling struct {
	b     *Book
	r     *Resolved
	style measure.Style
}

func reasons() map[string]func(telling) string {
	stock := func(name func(Materials) string) func(telling) string {
		return func(t telling) string { return say("reason.material", "name", name(t.r.OnShelf)) }
	}
	paper := stock(func(m Materials) string { return m.Paper.Name })
	liner := stock(func(m Materials) string { return m.Liner.Name })
	endpaper := stock(func(m Materials) string { return m.Endpaper.Name })
	board := stock(func(m Materials) string { return m.Board.Name })
	cloth := stock(func(m Materials) string { return m.Covering.Name })
	allEdges := func(t telling) string { return words.Say("reason.allEdges") + t.equals(t.r.Paper.Lost.All) }
	whole := func(edge string) func(telling) string {
		return func(telling) string { return words.Say("reason.place." + edge) }
	}
	return map[string]func(telling) string{
		"paper.thickness": paper, "paper.grammage": paper, "paper.grain": paper,
		"paper.sheetLength": paper, "paper.sheetWidth": paper,
		"paper.lostEdges.left": allEdges, "paper.lostEdges.right": allEdges,
		"paper.lostEdges.top": allEdges, "paper.lostEdges.bottom": allEdges,
		"interleaf.thickness": stock(func(m Materials) string { return m.Interleaf.Name }),
		"liner.thickness":     liner, "liner.grain": liner,
		"endpaper.thickness": endpaper, "endpaper.grain": endpaper,
		"board.thickness": board, "board.grain": board,
		"covering.thickness": cloth, "covering.grain": cloth,
		"sewing.threadDiameter":             telling.thread,
		"measured.spineThickness":           telling.spineThickness,
		"measured.foreEdgeThickness":        telling.foreEdge,
		"measured.spineThickness.head":      whole("spine"),
		"measured.spineThickness.middle":    whole("spine"),
		"measured.spineThickness.tail":      whole("spine"),
		"measured.foreEdgeThickness.head":   whole("foreEdge"),
		"measured.foreEdgeThickness.middle": whole("foreEdge"),
		"measured.foreEdgeThickness.tail":   whole("foreEdge"),
		"measured.squareForeEdge":           telling.squareFore,
		"measured.blockWidth":               telling.blockWidth,
		"measured.blockHeight":              telling.blockHeight,
		"liner.valleySpacing":               telling.valley,
		"board.height":                      telling.boardHeight,
		"board.width":                       telling.boardWidth,
		"spine.width":                       telling.spineWidth,
		"spine.thickness":                   telling.spineOwn,
		"joint.width":                       telling.joint,
		"joint.groove":                      telling.groove,
		"covering.cornerCut":                telling.cornerCut,
	}
}

// say fills a text's blanks from name, value pairs.
func say(key string, blanks ...string) string {
	with := words.With{}
	for i := 0; i+1 < len(blanks); i += 2 {
		with[blanks[i]] = blanks[i+1]
	}
	return words.Say(key, with)
}

func (t telling) of(l Length) string { return t.style.Format(l) }

func (t telling) equals(sum Length) string { return say("reason.sum", "sum", t.of(sum)) }

// rounded ends a sentence: the exact sum, and how it became the size to cut.
func (t telling) rounded(sum, cut Length, how string) string {
	if sum == cut {
		return t.equals(sum)
	}
	return t.equals(sum) + words.Say(how)
}

func (t telling) ease(ease Length) string {
	if ease == 0 {
		return ""
	}
	return say("reason.ease", "ease", t.of(ease))
}

func (t telling) spineWidth() string {
	boards := Length(t.r.Spine.Kind.BoardsInSpine()) * t.r.Stock.Board.Thickness
	text := say("reason.spine."+string(t.r.Spine.Kind), "block", t.of(t.b.Block.SpineThickness), "boards", t.of(boards))
	return text + t.ease(t.r.Spine.Ease) + t.rounded(autoSpineWidth(t.r, t.b.Block), autoSpineToCut(t.b), "reason.roundedUp")
}

func (t telling) joint() string {
	groove := t.r.Groove()
	exact := autoJoint(t.r, t.r.jointAt(t.b.Block, t.b.ToCut.SpineWidth, groove))
	across := exact - groove - t.r.bendLoss() - t.r.Joint.Ease
	text := say("reason.joint", "back", t.of(t.r.Joint.SetBack), "groove", t.of(groove),
		"across", t.of(across), "bends", t.of(t.r.bendLoss()))
	return text + t.ease(t.r.Joint.Ease) + t.rounded(exact, autoJointToCut(t.b), "reason.roundedUp")
}

func (t telling) boardHeight() string {
	return say("reason.boardHeight", "block", t.of(t.b.Block.Height), "head", t.of(t.r.Square.Head), "tail", t.of(t.r.Square.Tail)) +
		t.rounded(boardHeight(t.r, t.b.Block), autoBoardHeight(t.b), "reason.rounded")
}

func (t telling) boardWidth() string {
	return say("reason.boardWidth", "block", t.of(t.b.Block.Width), "square", t.of(t.r.Square.Fore), "back", t.of(t.b.ToCut.SetBack)) +
		t.rounded(boardWidth(t.r, t.b.Block, t.b.ToCut), autoBoardWidth(t.b), "reason.rounded")
}

func (t telling) cornerCut() string {
	board := t.r.Stock.Board.Thickness
	key := "reason.cornerByCloth"
	if autoCornerCut(t.r) == board.Times(1.5) {
		key = "reason.cornerByBoard"
	}
	exact := autoCornerCut(t.r)
	return say(key, "board", t.of(board), "cloth", t.of(t.r.EdgeCovering().Thickness), "left", t.of(cornerLeft)) +
		t.rounded(exact, toCut(t.r.CutIn).up(exact), "reason.roundedUp")
}

func (t telling) valley() string {
	w := autoSpacing(t.r, t.b.Block)
	if w == t.b.Block.SectionThickness.Times(t.r.Liner.Allowance) {
		return say("reason.valleyBySection", "room", strconv.FormatFloat(round(t.r.Liner.Allowance, 3), 'f', -1, 64),
			"section", t.of(t.b.Block.SectionThickness)) + t.equals(w)
	}
	return say("reason.valleyByBlock", "block", t.of(t.b.Block.SpineThickness), "count", strconv.Itoa(t.r.Sections.Count)) + t.equals(w)
}

// places says which of the three places the case is made for.
func (t telling) places(p Places) string {
	var found []string
	p.each(func(at Place, l Length) { found = append(found, words.Say("place."+string(at))+" "+t.of(l)) })
	most, at, _ := p.greatest()
	if len(found) == 1 {
		return say("reason.onePlace", "place", words.Say("place."+string(at))) + t.equals(most)
	}
	return say("reason.places", "found", strings.Join(found, ", ")) + t.equals(most)
}

func (t telling) squareFore() string {
	return words.Say("reason.squareFore") + t.equals(max(t.b.Squares.ForeEdge, 0))
}

func (t telling) spineThickness() string {
	if at := t.r.Measured.SpineAt; at.Greatest().IsTyped() {
		return t.places(at)
	}
	thread := (Length(t.r.Sections.Count) * t.r.ThreadDiameter()).Times(t.r.Sewing.Crush)
	folded := foldedIn(t.r)
	key := "reason.spinePlain"
	switch {
	case t.r.Structure == LinkStitched:
		key = "reason.spineLined"
	case folded > 0:
		key = "reason.spinePleated"
	}
	return say(key, "fore", t.of(t.b.Block.ForeEdgeThickness), "folded", t.of(folded), "thread", t.of(thread)) +
		t.equals(t.b.Block.EstimatedSpine)
}

func (t telling) foreEdge() string {
	if at := t.r.Measured.ForeEdgeAt; at.Greatest().IsTyped() {
		return t.places(at)
	}
	key := "reason.foreEdge"
	if t.r.Structure == LinkStitched {
		key = "reason.foreEdgeLinked"
	}
	return say(key, "count", strconv.Itoa(t.r.Sections.Count), "section", t.of(t.b.Block.SectionThickness),
		"leaf", t.of(t.r.pastedStock().Thickness)) + t.equals(t.b.Block.EstimatedForeEdge)
}

func (t telling) blockWidth() string {
	if t.r.Page.TrimFore > 0 {
		return words.Say("reason.blockTrimmed") + t.equals(t.r.Page.Width)
	}
	return say("reason.blockWidth", "page", t.of(t.r.Page.Width), "creep", t.of(t.b.Block.Creep.High)) +
		t.equals(blockWidth(t.r, t.b.Block.Creep))
}

func (t telling) blockHeight() string {
	return words.Say("reason.blockHeight") + t.equals(t.r.Page.Height)
}

func (t telling) thread() string {
	return words.Say("reason.thread."+string(t.r.Sewing.Method)) + t.equals(usualThread(t.r.Sewing.Method))
}

func (t telling) spineOwn() string {
	if t.r.Spine.Kind == SpineCard {
		return say("reason.material", "name", t.r.OnShelf.Card.Name)
	}
	return words.Say("reason.spineOwn."+string(t.r.Spine.Kind)) + t.equals(t.r.autoSpineThickness())
}

func (t telling) groove() string {
	if t.r.Spine.Kind == SpineBoard {
		return words.Say("reason.grooveHalf") + t.equals(t.r.autoGroove())
	}
	return words.Say("reason.grooveWhole") + t.equals(t.r.autoGroove())
}
