package ui

import (
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/ui/controls"
	"grainwise/ui/preview"
	"grainwise/ui/session"
)

// cutList is what the maker came for: what to cut for one book.
type cutList struct {
	session *session.Session
	head    *controls.GroupHead
	lines   []*controls.LineItem
	rows    *fyne.Container
	scroll  *container.Scroll
	list    *fyne.Container // heading and rows
	folded  bool
	narrow  bool // the heading has room for the unit only
	chosen  book.PartID

	before func() *book.Book // what the lines are told against; nil at rest
	choose func(book.PartID)
	point  func(book.PartID)
}

func newCutList(s *session.Session) *cutList {
	c := &cutList{session: s, head: controls.NewGroupHead(words.Say("cut.title"))}
	c.head.OnTapped = func() { c.folded = !c.folded; c.show() }
	c.rows = controls.Down(0)
	c.scroll = container.NewVScroll(c.rows)
	line := controls.NewHairline()
	c.list = container.New(&cutLayout{line, c.head, c.rows, c.scroll}, line, c.head, c.scroll)
	return c
}

// show brings the lines up to date.
func (c *cutList) show() {
	parts, system := c.session.Book().Parts, c.session.System()
	for len(c.lines) < len(parts) {
		c.addLine(len(c.lines))
	}
	changed := false
	for i, line := range c.lines {
		if i < len(parts) {
			p := parts[i]
			line.Set(strconv.Itoa(p.Count), partName(p), session.Size(p.Width, p.Height, system), p.ID == c.chosen)
			line.SetChange(c.change(p))
		}
		changed = setVisible(line, i < len(parts) && !c.folded) || changed
	}
	c.head.SetState(controls.HeadState{
		Title: words.Say("cut.title"), Open: !c.folded, Lasting: true,
		Summary: c.sizes(system),
	})
	if changed {
		c.rows.Refresh()
		c.list.Refresh()
	}
}

// fit writes what a column so wide has room for.
func (c *cutList) fit(width float32) {
	c.narrow = width < 300
	c.show()
}

func (c *cutList) sizes(system measure.System) string {
	if c.narrow {
		return system.Label()
	}
	return words.Say("cut.sizes", words.With{"unit": system.Label()})
}

func (c *cutList) addLine(i int) {
	line := controls.NewLineItem()
	line.OnTapped = func() { c.choose(c.session.Book().Parts[i].ID) }
	line.OnHover = func(in bool) {
		if in {
			c.point(c.session.Book().Parts[i].ID)
		} else {
			c.point("")
		}
	}
	c.lines = append(c.lines, line)
	c.rows.Add(line)
}

// change says by how much a line differs from before: its size, else its count.
func (c *cutList) change(now book.Part) string {
	before := c.before()
	if before == nil {
		return ""
	}
	for _, p := range before.Parts {
		if p.ID != now.ID {
			continue
		}
		if size := preview.Spread(preview.Style(c.session.System()), p.Width, p.Height, now.Width, now.Height); size != "" {
			return size
		}
		return preview.Counted(p.Count, now.Count)
	}
	return ""
}

func partName(p book.Part) string {
	if p.Count == 1 {
		return words.Say("cut.one." + p.Word)
	}
	return words.Say("cut.many." + p.Word)
}

// cutLayout keeps the heading in sight while the rows scroll under it, where a
// book has more kinds of piece than the column has room for.
type cutLayout struct{ line, head, rows, scroll fyne.CanvasObject }

// Layout implements fyne.Layout.
func (l *cutLayout) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	y := float32(0)
	for _, o := range []fyne.CanvasObject{l.line, l.head} {
		high := o.MinSize().Height
		o.Resize(fyne.NewSize(size.Width, high))
		o.Move(fyne.NewPos(0, y))
		y += high
	}
	l.scroll.Resize(fyne.NewSize(size.Width, max(0, size.Height-y)))
	l.scroll.Move(fyne.NewPos(0, y))
}

// MinSize implements fyne.Layout: all rows in sight.
func (l *cutLayout) MinSize([]fyne.CanvasObject) fyne.Size {
	rows := l.rows.MinSize()
	return fyne.NewSize(rows.Width, l.line.MinSize().Height+l.head.MinSize().Height+rows.Height)
}
