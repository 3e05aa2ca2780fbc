package book

// DeckleSides says which sides of a sheet of paper have a deckle, the feathered
// edge of its making. The sheet lies with its length upright.
type DeckleSides string

// The sides that may have one.
const (
	DeckleNone      DeckleSides = "none"
	DeckleLeftRight DeckleSides = "left-right"
	DeckleTopBottom DeckleSides = "top-bottom"
	DeckleAll       DeckleSides = "all"
)

// DeckleAtHead reports whether folios reach from one deckle of their sheet to
// the other, so that one of the two falls at the head, and what the sheet has
// to spare there. A deckle at one end only is turned to the tail; one that lies
// in a lost strip, or is trimmed at the head, is cut off.
func (b *Book) DeckleAtHead() (spare Length, reaches bool) {
	sheet, size := b.Resolved.PaperSheet(), folioSize(&b.Resolved)
	cut := sheet.Yield(size.height, size.width, b.Resolved.Paper.Turned)
	if cut.Total == 0 || b.Resolved.Page.TrimHead > 0 {
		return 0, false
	}
	has, lost, usable := b.Resolved.Paper.Deckle, sheet.Lost, sheet.Usable()
	if cut.Lying {
		kept := lost.Left <= 0 && lost.Right <= 0 && (has == DeckleLeftRight || has == DeckleAll)
		return usable.Width - size.height, kept && cut.Across == 1
	}
	kept := lost.Top <= 0 && lost.Bottom <= 0 && (has == DeckleTopBottom || has == DeckleAll)
	return usable.Length - size.height, kept && cut.Along == 1
}
