package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/ui/controls"
	"grainwise/ui/look"
	"grainwise/ui/session"
)

// column is the left panel: every parameter, in groups, in the order of making.
type column struct {
	session *session.Session
	groups  []*group
	list    *fyne.Container
	scroll  *container.Scroll
	chosen  string // the key of the row in accent

	// choose is told which row the maker turned to, point which one the pointer
	// is on (an empty key: none).
	choose, point func(key string)
	why           func(key string)
	tips          *controls.Tips
}

// group is a heading and its rows; the rarer ones are behind its "more".
type group struct {
	id       book.Group
	head     *controls.GroupHead
	more     *controls.MoreLine
	rows     []*parameter
	open     bool
	showMore bool
}

func newColumn(s *session.Session, tips *controls.Tips, choose, point func(string)) *column {
	c := &column{session: s, list: controls.Down(0), tips: tips, choose: choose, point: point}
	for _, id := range book.Groups() {
		c.addGroup(id, tips)
	}
	c.scroll = container.NewVScroll(c.list)
	return c
}

func (c *column) addGroup(id book.Group, tips *controls.Tips) {
	g := &group{id: id, head: controls.NewGroupHead(id.Label()), more: controls.NewMoreLine(), open: openAtStart(id)}
	g.head.OnTapped = func() { c.fold(g, !g.open) }
	g.head.OnFocus = whenFocused(func() { bringIn(c.scroll, g.head) })
	g.more.OnFocus = whenFocused(func() { bringIn(c.scroll, g.more) })
	g.more.OnTapped = func() { g.showMore = !g.showMore; c.show(nil) }
	c.list.Add(g.head)
	for _, p := range book.Params() {
		if p.Group == id {
			r := newParameter(p, c.session, tips)
			c.listen(r)
			g.rows = append(g.rows, r)
			c.list.Add(r.row)
		}
	}
	c.list.Add(g.more)
	c.groups = append(c.groups, g)
}

func openAtStart(id book.Group) bool {
	return id == book.GroupBlock || id == book.GroupSewing || id == book.GroupSpine
}

func (c *column) listen(r *parameter) {
	r.row.OnStart = func() {
		c.choose(r.Key)
		if r.row.Slider.Held() {
			c.session.Hold(r.Key)
		}
	}
	r.row.OnEnd = c.session.Release
	r.row.OnTapped = func() { c.choose(r.Key) }
	r.row.Why.OnTapped = func() { c.choose(r.Key); c.why(r.Key) }
	r.row.Why.SetTip(c.tips, words.Say("why.tip"))
	r.row.OnFocus = func(in bool) {
		if in {
			c.choose(r.Key)
			bringIn(c.scroll, r.row)
		}
	}
	r.row.OnHover = func(in bool) {
		if in {
			c.point(r.Key)
		} else {
			c.point("")
		}
	}
}

func (c *column) fold(g *group, open bool) {
	g.open = open
	c.show(nil)
}

// find returns a row and its group.
func (c *column) find(key string) (*parameter, *group) {
	for _, g := range c.groups {
		for _, r := range g.rows {
			if r.Key == key {
				return r, g
			}
		}
	}
	return nil, nil
}

// show brings every row up to date; levels are the worst finding of each
// parameter, nil to keep them.
func (c *column) show(levels map[string]look.Level) {
	changed := false
	for _, g := range c.groups {
		changed = g.show(c, levels) || changed
	}
	if changed {
		c.list.Refresh()
		c.scroll.Refresh()
	}
}

// show says whether a row came or went.
func (g *group) show(c *column, levels map[string]look.Level) (changed bool) {
	design := c.session.Decisions().Design
	worst := look.None
	more, automatic := 0, 0
	for _, r := range g.rows {
		level := r.row.State().Level
		if levels != nil {
			level = levels[r.Key]
		}
		worst = max(worst, level)
		r.show(level, c.chosen == r.Key)
		silent := mute(r.Param, design)
		changed = setVisible(r.row, g.open && !silent && (r.Main || g.showMore)) || changed
		if !r.Main && !silent {
			more++
			if r.origin() == controls.Auto {
				automatic++
			}
		}
	}
	g.head.SetState(controls.HeadState{Title: g.id.Label(), Summary: summary(g.id, c.session), Level: worst, Open: g.open})
	g.more.Set(moreWords(more, automatic, g.showMore), g.showMore)
	return setVisible(g.more, g.open && more > 0) || changed
}

func moreWords(more, automatic int, open bool) string {
	count := words.With{"count": more, "auto": automatic}
	switch {
	case open:
		return words.Say("row.fewer")
	case automatic > 0:
		return words.Say("row.moreAuto", count)
	}
	return words.Say("row.more", count)
}

func setVisible(o fyne.CanvasObject, visible bool) bool {
	if o.Visible() == visible {
		return false
	}
	if visible {
		o.Show()
	} else {
		o.Hide()
	}
	return true
}

// reveal opens the way to a row, scrolls it in, and says whether it is there.
func (c *column) reveal(key string) bool {
	r, g := c.find(key)
	if r == nil || mute(r.Param, c.session.Decisions().Design) {
		return false
	}
	if !r.row.Visible() {
		g.open, g.showMore = true, g.showMore || !r.Main
		c.show(nil)
	}
	top, height, window := r.row.Position().Y, r.row.Size().Height, c.scroll.Size().Height
	switch offset := c.scroll.Offset.Y; {
	case top < offset:
		c.scroll.ScrollToOffset(fyne.NewPos(0, max(0, top-controls.HeadHeight)))
	case top+height > offset+window:
		c.scroll.ScrollToOffset(fyne.NewPos(0, top+height-window+controls.RowHeight))
	}
	return true
}

// mark draws one row as chosen.
func (c *column) mark(key string) {
	if c.chosen != key {
		c.chosen = key
		c.show(nil)
	}
}

// summary is what a folded group says of itself.
func summary(id book.Group, s *session.Session) string {
	b, system := s.Book(), s.System()
	d := b.Resolved.Design
	of := func(key string) string {
		p, _ := book.Lookup(key)
		return p.Number(p.InForce(b), session.Style(p, system))
	}
	with := words.With{}
	switch id {
	case book.GroupBlock:
		with["size"], with["paper"] = session.Size(d.Page.Width, d.Page.Height, system), d.Paper.Material
	case book.GroupSewing:
		with["sections"], with["folios"], with["sewing"] = d.Sections.Count, d.Sections.Folios, of("sewing.method")
	case book.GroupLiner:
		if d.Structure == book.LinkStitched {
			return words.Say("summary.endpapers", words.With{"paper": d.Endpaper.Material, "lap": of("mull.lap")})
		}
		with["pleats"] = of("liner.pleatDepth")
	case book.GroupBoards:
		with["board"], with["square"] = of("board.thickness"), of("square.head")
	case book.GroupSpine:
		with["spine"], with["joint"] = of("spine.width"), of("joint.width")
	case book.GroupCovering:
		with["cloth"], with["turnIn"] = d.Covering.Material, of("covering.turnIn")
	case book.GroupBook:
		with["copies"], with["cut"] = d.Copies, of("rounding.system")
	}
	return words.Say("summary."+string(id), with)
}
