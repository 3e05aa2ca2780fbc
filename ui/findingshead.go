package ui

import (
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"grainwise/assets/words"
	"grainwise/model/check"
	"grainwise/ui/controls"
)

// findingsHead heads the findings: their name, and for each level its shape and
// how many there are. In a narrow column the words of the counts give way.
type findingsHead struct {
	box    *fyne.Container
	title  *controls.Label
	counts []*controls.LevelCount
	number map[check.Level]int
}

// levelsDown are the levels, the worst first.
var levelsDown = [...]check.Level{check.Stop, check.Check, check.Note}

func newFindingsHead(turnTo func(check.Level)) *findingsHead {
	h := &findingsHead{title: controls.NewLabel(controls.HeadLabel, words.Say("findings.title"))}
	objects := []fyne.CanvasObject{h.title}
	for _, level := range levelsDown {
		count := controls.NewLevelCount(levelOf(level))
		count.OnTapped = func() { turnTo(level) }
		h.counts = append(h.counts, count)
		objects = append(objects, count)
	}
	h.box = container.New(h, objects...)
	return h
}

// show counts the findings.
func (h *findingsHead) show(found []check.Finding) {
	h.number = map[check.Level]int{}
	for _, f := range found {
		h.number[f.Level]++
	}
	for i, level := range levelsDown {
		setVisible(h.counts[i], h.number[level] > 0)
	}
	h.box.Refresh()
}

func (h *findingsHead) word(level check.Level) string {
	key := "findings.many." + string(level)
	if h.number[level] == 1 {
		key = "findings.one." + string(level)
	}
	return words.Say(key, words.With{"count": h.number[level]})
}

func (h *findingsHead) figure(level check.Level) string { return strconv.Itoa(h.number[level]) }

// write sets the counts' texts and returns how wide they are with their gaps.
func (h *findingsHead) write(text func(check.Level) string) float32 {
	width := float32(0)
	for i, level := range levelsDown {
		h.counts[i].Set(text(level))
		if h.counts[i].Visible() {
			width += h.counts[i].MinSize().Width + countGap
		}
	}
	return width
}

const (
	headHeight = float32(36)
	headMargin = float32(10)
	countGap   = float32(10)
)

// Layout implements fyne.Layout.
func (h *findingsHead) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	title := h.title.MinSize()
	h.title.Resize(fyne.NewSize(title.Width, size.Height))
	h.title.Move(fyne.NewPos(headMargin, 0))
	width := h.write(h.word)
	if headMargin+title.Width+width+headMargin > size.Width {
		width = h.write(h.figure)
	}
	x := size.Width - headMargin - width + countGap
	for _, c := range h.counts {
		if c.Visible() {
			least := c.MinSize()
			c.Resize(least)
			c.Move(fyne.NewPos(x, (size.Height-least.Height)/2))
			x += least.Width + countGap
		}
	}
}

// MinSize implements fyne.Layout.
func (h *findingsHead) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(200, headHeight) }
