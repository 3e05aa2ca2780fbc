package controls

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"
)

// Passage is a heading and the paragraphs under it.
type Passage struct {
	Head  string
	Lines []string
}

// Reader is running text to read and to copy: Ctrl+C copies all of it.
type Reader struct {
	Scroller
	// OnCopy is given the whole text.
	OnCopy func(string)

	passages []Passage
	list     *fyne.Container
}

// NewReader makes an empty reader.
func NewReader() *Reader {
	r := &Reader{list: Down(4)}
	r.make(Inset(8, 16, 16, 20, r.list), r)
	return r
}

// SetText shows other passages; the place in the text stays.
func (r *Reader) SetText(passages []Passage) {
	if slices.EqualFunc(r.passages, passages, func(a, b Passage) bool {
		return a.Head == b.Head && slices.Equal(a.Lines, b.Lines)
	}) {
		return
	}
	r.passages = passages
	r.list.Objects = nil
	for _, p := range passages {
		r.list.Add(Inset(8, 0, 0, 0, NewLabel(HeadLabel, p.Head)))
		for _, line := range p.Lines {
			r.list.Add(NewParagraph(line))
		}
	}
	r.list.Refresh()
	r.scroll.Refresh()
}

// Text is all of it as it is copied.
func (r *Reader) Text() string {
	var parts []string
	for _, p := range r.passages {
		parts = append(parts, p.Head+"\n"+strings.Join(p.Lines, "\n"))
	}
	return strings.Join(parts, "\n\n")
}

// TypedShortcut implements fyne.Shortcutable.
func (r *Reader) TypedShortcut(s fyne.Shortcut) {
	if _, copies := s.(*fyne.ShortcutCopy); copies {
		tell(r.OnCopy, r.Text())
		return
	}
	handOnShortcut(r, s)
}
