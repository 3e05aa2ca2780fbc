package controls

import (
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"

	"grainwise/ui/look"
)

func TestPressByPointerSpaceAndEnter(t *testing.T) {
	dress(t, theme.VariantLight)
	n := 0
	b := NewButton(Framed, "Close", func() { n++ })
	w := test.NewTempWindow(t, b)
	w.Resize(fyne.NewSize(200, 60))
	test.Tap(b)
	if b.ring.Visible() {
		t.Error("a click shows the focus ring")
	}
	w.Canvas().Unfocus()
	test.FocusNext(w.Canvas())
	if !b.ring.Visible() {
		t.Error("the Tab key shows no focus ring")
	}
	b.TypedKey(key(fyne.KeySpace))
	b.TypedKey(key(fyne.KeyReturn))
	if n != 3 {
		t.Errorf("pressed %d times, want 3", n)
	}
	b.Disable()
	test.Tap(b)
	if n != 3 {
		t.Error("a disabled button was pressed")
	}
}

func TestSegmentTellsAndWaits(t *testing.T) {
	dress(t, theme.VariantLight)
	picked := -1
	s := NewSegment([]string{"mm", "in"}, func(i int) { picked = i })
	s.SetOn(0)
	w := test.NewTempWindow(t, s)
	w.Resize(fyne.NewSize(120, 40))
	test.Tap(s.Chips()[1])
	if picked != 1 || !s.Chips()[0].On() || s.Chips()[1].On() {
		t.Errorf("picked %d, on: %v %v", picked, s.Chips()[0].On(), s.Chips()[1].On())
	}
}

func TestCardButtonsGoUnderEachOtherWhenNarrow(t *testing.T) {
	dress(t, theme.VariantLight)
	c := NewCard()
	c.SetState(CardState{Level: look.Check, Word: "Check", Sentence: "Narrow joint: the boards will bind", Why: "Why.",
		Primary: "Joint back to automatic", Secondary: "Leave as is…", Open: true})
	c.Resize(fyne.NewSize(336, c.HeightFor(336)))
	if c.primary.Position().Y != c.secondary.Position().Y {
		t.Error("at 336 the buttons stand side by side")
	}
	wide := c.HeightFor(336)
	c.Resize(fyne.NewSize(268, c.HeightFor(268)))
	if c.secondary.Position().Y < c.primary.Position().Y+ButtonHeight || c.HeightFor(268) <= wide {
		t.Error("at 268 the second goes under the first and the card grows")
	}
	for _, b := range []*Button{c.primary, c.secondary} {
		if right := b.Position().X + b.Size().Width; right > 268-cardMargin {
			t.Errorf("%q runs out of the card: %v", b.Text(), right)
		}
		if bottom := b.Position().Y + b.Size().Height; bottom > c.Size().Height {
			t.Errorf("%q hangs below the card", b.Text())
		}
	}
}

func TestClosedCardShowsOnlyItsSentence(t *testing.T) {
	dress(t, theme.VariantLight)
	c := NewCard()
	state := CardState{Level: look.Note, Word: "Note", Sentence: "One", Found: "found", Why: "why", Primary: "Do", Open: true}
	c.SetState(state)
	open := c.HeightFor(300)
	state.Open = false
	c.SetState(state)
	if closed := c.HeightFor(300); closed >= open || c.primary.Visible() {
		t.Errorf("closed %v, open %v", closed, open)
	}
}

func TestCardCallbacks(t *testing.T) {
	dress(t, theme.VariantLight)
	d := &diary{}
	c := NewCard()
	c.OnTapped, c.OnPrimary, c.OnSecondary = d.note("choose"), d.note("primary"), d.note("secondary")
	c.SetState(CardState{Level: look.Stop, Word: "Stop", Sentence: "One", Primary: "Do", Secondary: "Leave", Open: true})
	w := test.NewTempWindow(t, Down(0, c))
	w.SetPadded(false)
	w.Resize(fyne.NewSize(336, 300))
	test.Tap(c.primary)
	test.Tap(c.secondary)
	test.TapCanvas(w.Canvas(), fyne.NewPos(60, 20))
	d.is(t, "primary", "secondary", "choose")
}

func TestTipsWaitThenShowInsideTheWindow(t *testing.T) {
	dress(t, theme.VariantLight)
	tips := NewTips()
	var due func()
	var after time.Duration
	tips.wait = func(d time.Duration, f func()) { due, after = f, d }
	toggle := NewIconToggle(look.IconGrain, tips, "Show the grain of every piece in the drawing", nil)
	w := test.NewTempWindow(t, container.NewStack(Down(0, Gap(1, 170), Across(0, Spring(), toggle)), tips))
	w.SetPadded(false)
	w.Resize(fyne.NewSize(300, 200))
	at := fyne.NewPos(285, 185)
	test.MoveMouse(w.Canvas(), at)
	if tips.Shown() != "" || after != 500*time.Millisecond {
		t.Fatalf("at once: %q, wait %v", tips.Shown(), after)
	}
	due()
	if tips.Shown() != "Show the grain of every piece in the drawing" {
		t.Fatalf("after the wait: %q", tips.Shown())
	}
	low, high := tips.card.Position(), tips.card.Position().Add(tips.card.Size())
	if low.X < 0 || low.Y < 0 || high.X > 300 || high.Y > 200 {
		t.Errorf("the tip stands at %v … %v", low, high)
	}
	test.MoveMouse(w.Canvas(), fyne.NewPos(10, 10))
	if tips.Shown() != "" {
		t.Error("the tip stays after the pointer left")
	}
	test.MoveMouse(w.Canvas(), at)
	if after != 30*time.Millisecond {
		t.Errorf("the next tip waits %v, want 30 ms", after)
	}
	test.MoveMouse(w.Canvas(), fyne.NewPos(10, 10))
	due()
	if tips.Shown() != "" {
		t.Error("a timer of a tip no longer wanted opened it")
	}
}

// A tip of a place stands beside the pointer, and inside the window wherever
// that is; a pointer that moves on takes its time again.
func TestATipOfAPlaceStandsBesideThePointer(t *testing.T) {
	dress(t, theme.VariantLight)
	tips := NewTips()
	var due []func()
	tips.wait = func(d time.Duration, f func()) { due = append(due, f) }
	field := Gap(600, 400)
	w := test.NewTempWindow(t, container.NewStack(field, tips))
	w.SetPadded(false)
	w.Resize(fyne.NewSize(600, 400))
	for _, at := range []fyne.Position{{X: 100, Y: 100}, {X: 590, Y: 390}, {X: 5, Y: 395}} {
		due = nil
		tips.OverAt(field, fyne.NewPos(50, 50), "where the pointer was")
		tips.OverAt(field, at, "Board, 149 × 216 mm\nDouble-click: its parameters")
		for _, f := range due {
			f()
		}
		if got := tips.Shown(); got != "Board, 149 × 216 mm Double-click: its parameters" {
			t.Fatalf("at %v: %q", at, got)
		}
		low, high := tips.card.Position(), tips.card.Position().Add(tips.card.Size())
		if low.X < 0 || low.Y < 0 || high.X > 600 || high.Y > 400 {
			t.Errorf("at %v the tip stands at %v … %v", at, low, high)
		}
		if at.X >= low.X && at.X <= high.X && at.Y >= low.Y && at.Y <= high.Y {
			t.Errorf("the tip lies under the pointer at %v", at)
		}
		tips.Out(field)
		if tips.Shown() != "" {
			t.Error("it stays after the pointer left")
		}
	}
}

func TestTipsTakeNoEvents(t *testing.T) {
	s := newShelf(t)
	s.tips.Say(s.first, "a bubble over the second row")
	test.TapCanvas(s.window.Canvas(), fyne.NewPos(330, 42))
	if s.entry(t).field != s.second.Value {
		t.Error("the bubble caught the click")
	}
}

func TestDownMeasuresWhatFlows(t *testing.T) {
	dress(t, theme.VariantLight)
	c := NewCard()
	c.SetState(CardState{Level: look.Note, Word: "Note", Sentence: "The sewing template reads the same both ways, and that is worth a second line or a third"})
	column := Down(4, c, Gap(10, 10))
	for _, width := range []float32{268, 600} {
		column.Resize(fyne.NewSize(width, 400))
		if got, want := column.MinSize().Height, c.HeightFor(width)+14; got != want {
			t.Errorf("at %v the column is %v high, want %v", width, got, want)
		}
		if got := column.Objects[1].Position().Y; got != c.HeightFor(width)+4 {
			t.Errorf("at %v the second stands at %v", width, got)
		}
	}
}

func TestAroundLeavesNoGaps(t *testing.T) {
	top, left, middle := Gap(10, 20), Gap(30, 10), Gap(10, 10)
	a := Around(top, nil, left, nil, middle)
	a.Resize(fyne.NewSize(200, 100))
	if middle.Position() != fyne.NewPos(30, 20) || middle.Size() != fyne.NewSize(170, 80) || left.Size() != fyne.NewSize(30, 80) {
		t.Errorf("middle at %v, %v; left %v", middle.Position(), middle.Size(), left.Size())
	}
}

func TestGroupHeadHidesItsSummaryWhileOpen(t *testing.T) {
	dress(t, theme.VariantLight)
	h := NewGroupHead("Liner")
	h.Resize(fyne.NewSize(360, HeadHeight))
	h.SetState(HeadState{Title: "Liner", Summary: "pleats 10"})
	if h.summary.Text != "pleats 10" {
		t.Errorf("folded: %q", h.summary.Text)
	}
	h.SetState(HeadState{Title: "Liner", Summary: "pleats 10", Open: true})
	if h.summary.Text != "" {
		t.Errorf("open: %q", h.summary.Text)
	}
}

func TestFigureFitsItsCell(t *testing.T) {
	dress(t, theme.VariantLight)
	f := NewFigure(true)
	f.Set("Covering", "369 × 252", "14 17/32 × 9 29/32 in", "")
	for _, width := range []float32{70, f.MinSize().Width} {
		f.Resize(fyne.NewSize(width, FigureHeight))
		test.WidgetRenderer(f)
		if end := f.other.Position().X + look.Width(f.other, f.other.Text); end > width {
			t.Errorf("at %v the text ends at %v", width, end)
		}
	}
	if f.other.Text != "14 17/32 × 9 29/32 in" {
		t.Errorf("at its own width it is cut: %q", f.other.Text)
	}
	f.Set("Covering", "369 × 252", "14 17/32 × 9 29/32 in", "+2 wide")
	f.Resize(fyne.NewSize(200, FigureHeight))
	if f.value.Color != look.Light().SheetAccent || f.by.Text != "+2 wide" || !f.by.Visible() {
		t.Error("a figure that changed is in the accent and says by how much")
	}
	f.Resize(fyne.NewSize(90, FigureHeight))
	f.Refresh()
	if f.by.Visible() || f.other.Text != "+2 wide" || f.other.Color != look.Light().SheetAccent {
		t.Errorf("where there is no room beside it: %q", f.other.Text)
	}
}

func TestPicturedTextsKeepClearOfTheCorner(t *testing.T) {
	dress(t, theme.VariantLight)
	c := NewPictureCard(150, 190, nil)
	c.Set("A name that is far too long for a card", "120 × 180, 40 leaves and more", "yours")
	c.Resize(c.MinSize())
	b := NewPictureButton(nil)
	b.Set("Landscape 297 × 210 mm and a name", "12 sections, 96 leaves, interleaved", "Favourite formats")
	b.Resize(fyne.NewSize(348, PictureButtonHeight))
	test.WidgetRenderer(b)
	for _, p := range []*pictured{&c.pictured, &b.pictured} {
		if end := p.under.Position().X + look.Width(p.under, p.under.Text); end > p.word.Position().X-2 {
			t.Errorf("caption ends at %v, the word begins at %v", end, p.word.Position().X)
		}
		if end := p.name.Position().X + look.Width(p.name, p.name.Text); end > p.Size().Width {
			t.Errorf("the name ends at %v of %v", end, p.Size().Width)
		}
	}
}
