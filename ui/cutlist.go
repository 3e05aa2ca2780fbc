package ui

import (
	"strconv"

	"fyne.io/fyne/v2"

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
	list    *fyne.Container
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
	c.list = controls.Down(0, c.head)
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
	c.list.Add(line)
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
