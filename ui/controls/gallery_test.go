package controls

import (
	"image"
	"image/color"
	"image/draw"
	"image/png"
	"os"
	"path/filepath"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"

	"grainwise/ui/look"
)

// TestGallery draws every control in both variants. With GRAINWISE_GALLERY set
// to a folder it writes the pictures there, to be looked at.
func TestGallery(t *testing.T) {
	for name, variant := range map[string]fyne.ThemeVariant{"light": theme.VariantLight, "dark": theme.VariantDark} {
		for _, width := range []float32{420, 360} {
			dress(t, variant)
			window := test.NewTempWindow(t, gallery(width))
			window.SetPadded(false)
			size := fyne.NewSize(width+700, 900)
			window.Resize(size)
			window.Resize(size.AddWidthHeight(1, 0)) // cards know their width now
			save(t, name+"-"+map[float32]string{420: "wide", 360: "narrow"}[width]+".png", window)
		}
	}
}

// save captures a window and writes it where GRAINWISE_GALLERY says, if set.
func save(t *testing.T, name string, window fyne.Window) {
	t.Helper()
	picture := window.Canvas().Capture()
	folder := os.Getenv("GRAINWISE_GALLERY")
	if folder == "" {
		return
	}
	file, err := os.Create(filepath.Join(folder, name))
	if err != nil {
		t.Fatal(err)
	}
	if err := png.Encode(file, picture); err != nil {
		t.Fatal(err)
	}
	if err := file.Close(); err != nil {
		t.Fatal(err)
	}
}

func dress(t *testing.T, variant fyne.ThemeVariant) {
	t.Helper()
	test.NewTempApp(t).Settings().SetTheme(look.Always(variant))
}

func gallery(width float32) fyne.CanvasObject {
	tips := NewTips()
	left := Fixed(width, 0, Down(0, galleryRows(tips)...))
	middle := Fixed(320, 0, Down(0, galleryCards()...))
	right := Fixed(330, 0, Down(8, galleryButtons(tips)...))
	page := Around(Fixed(0, 38, galleryTabs()), nil, nil, nil, Across(8, top(left), top(middle), top(right)))
	return container.NewStack(page, tips)
}

// top keeps a column at the top of the height it is given.
func top(o fyne.CanvasObject) fyne.CanvasObject { return Fixed(0, 850, Around(o, nil, nil, nil, nil)) }

func galleryTabs() fyne.CanvasObject {
	var tabs []fyne.CanvasObject
	tabs = append(tabs, Gap(6, 1))
	for i, name := range []string{"Design", "Sheets", "Papers to print", "Materials"} {
		tab := NewTab(name, nil)
		tab.SetOn(i == 0)
		tabs = append(tabs, tab)
	}
	undo, redo := NewIconToggle(look.IconUndo, nil, "Undo", nil), NewIconToggle(look.IconRedo, nil, "Redo", nil)
	redo.Disable()
	units := NewSegment([]string{"mm", "in"}, nil)
	units.SetOn(0)
	tabs = append(tabs, Spring(), undo, redo, Gap(8, 1), units, Gap(8, 1))
	return Around(nil, NewHairline(), nil, nil, Across(0, tabs...))
}

func galleryRows(tips *Tips) []fyne.CanvasObject {
	text := NewGroupHead("Text block")
	text.SetState(HeadState{Title: "Text block", Open: true, Level: look.Stop})
	height, wide := NewWideRow("Page height", tips), NewWideRow("Page width", tips)
	height.SetState(RowState{Text: "210", Unit: "mm", Remark: "8 folios a sheet", Level: look.Note,
		Slider: SliderState{Min: 60, Max: 420, Step: 1, Value: 210}})
	bars := []Bar{{60, 80, "28", false, 80}, {80, 95, "24", false, 95}, {95, 118, "18", false, 118}, {118, 140, "14", false, 140},
		{140, 190, "10", false, 190}, {190, 245, "8", true, 245}, {245, 380, "6", false, 380}, {380, 420, "4", false, 420}}
	height.Ruler.SetBars(bars)
	wide.SetState(RowState{Text: "150", Unit: "mm", Remark: "8 folios a sheet", Chosen: true,
		Slider: SliderState{Min: 60, Max: 420, Step: 1, Value: 150}})
	wide.Ruler.SetBars(bars)
	paper := NewChoiceRow("Paper", tips)
	paper.SetOptions([]string{"Ebbwhite Drawing 170", "Tideline 120"})
	leaf := NewRow("Leaf thickness", tips)
	leaf.SetState(RowState{Text: "0.22", Unit: "mm", Origin: Auto, Slider: SliderState{Min: 0.05, Max: 0.6, Step: 0.01, Value: 0.22}})
	grain := NewChoiceRow("Grain of the leaf", tips)
	grain.SetOptions([]string{"across the spine"})
	grain.SetState(RowState{Level: look.Stop})
	piece := NewChoiceRow("Spine piece", tips)
	piece.SetOptions([]string{"card"})
	piece.SetState(RowState{Origin: Auto})
	more := NewMoreLine()
	more.Set("5 more, 1 of them automatic", false)

	sewing := NewGroupHead("Sections and sewing")
	sewing.SetState(HeadState{Title: "Sections and sewing", Open: true, Level: look.Check})
	sections := NewRow("Sections", tips)
	sections.SetState(RowState{Text: "6", Slider: SliderState{Min: 1, Max: 40, Step: 1, Value: 6}})
	block := NewRow("Block, spine", tips)
	block.SetState(RowState{Text: "14.1", Unit: "mm", Origin: Measured, Slider: SliderState{Min: 2, Max: 60, Step: 0.1, Value: 14.1, Auto: 13.4, HasAuto: true}})
	joint := NewRow("Joint", tips)
	joint.SetState(RowState{Text: "7", Unit: "mm", Origin: Typed, Level: look.Check, Chosen: true,
		Slider: SliderState{Min: 2, Max: 20, Step: 0.5, Value: 7, Auto: 9, HasAuto: true}})
	square := NewRow("Square, fore edge", tips)
	square.SetState(RowState{Text: "17 17/32", Unit: "in", Origin: Typed, Error: "Not a size. Try 187, 18.7 cm or 7 3/8 in.", Level: look.Note,
		Slider: SliderState{Min: 0, Max: 20, Step: 1. / 32, Value: 17.53, Auto: 4, HasAuto: true}})
	square.Slider.held = true
	square.Slider.Refresh()
	thread := NewRow("Thread", tips)
	thread.SetState(RowState{Text: "0.28", Unit: "mm", Slider: SliderState{Min: 0.1, Max: 1, Step: 0.01, Value: 0.28}})
	thread.Slider.FocusGained()
	hovered := NewRow("Spine width", tips)
	hovered.SetState(RowState{Text: "18", Unit: "mm", Origin: Typed, Slider: SliderState{Min: 4, Max: 40, Step: 0.5, Value: 18}})
	hovered.Pill.MouseIn(nil)

	liner := NewGroupHead("Liner")
	liner.SetState(HeadState{Title: "Liner", Summary: "pleats 10"})
	boards := NewGroupHead("Boards")
	boards.SetState(HeadState{Title: "Boards", Summary: "2.5 thick, square 3"})
	boards.FocusGained()
	return []fyne.CanvasObject{text, height, wide, paper, leaf, grain, piece, more, sewing, sections, block, joint, square, thread, hovered, liner, boards}
}

func galleryCards() []fyne.CanvasObject {
	stop, check, note := NewCard(), NewCard(), NewCard()
	stop.SetState(CardState{Level: look.Stop, Word: "Stop", Group: "Text block", Sentence: "Leaf grain runs across the spine",
		Found: "found across, wanted along", Why: "Waves at the gutter, a stiff opening, cracked folds.", Primary: "Turn the piece", Secondary: "Leave as is…", Open: true})
	check.SetState(CardState{Level: look.Check, Word: "Check", Group: "Spine and joint", Sentence: "Narrow joint: the boards will bind",
		Found: "found 7, wanted 8.4 or more", Why: "Opened, each board presses against the spine piece and strains the cloth.",
		Primary: "Joint back to automatic", Secondary: "Leave as is and say why…", Open: true})
	note.SetState(CardState{Level: look.Note, Word: "Note", Group: "Sections and sewing", Sentence: "The sewing template reads the same both ways", Why: "hidden"})
	objects := []fyne.CanvasObject{stop, check, note, Gap(1, 20)}
	for i, l := range [][3]string{{"24", "folios", "300 × 210"}, {"1", "liner", "410.6 × 210"}, {"2", "boards", "150.5 × 216"}} {
		line := NewLineItem()
		line.Set(l[0], l[1], l[2], i == 1)
		objects = append(objects, line)
	}
	return objects
}

// plate is a coloured rectangle in the middle of a picture.
func plate(width, height, w, h int) image.Image {
	img := image.NewNRGBA(image.Rect(0, 0, width, height))
	at := image.Rect((width-w)/2, (height-h)/2, (width+w)/2, (height+h)/2)
	draw.Draw(img, at, image.NewUniform(color.NRGBA{0x3F, 0x5A, 0x48, 0xFF}), image.Point{}, draw.Src)
	return img
}

func galleryButtons(tips *Tips) []fyne.CanvasObject {
	off := NewButton(Framed, "Nothing to do", nil)
	off.Disable()
	ringed := NewButton(Framed, "Focused", nil)
	ringed.FocusGained()
	dimensions := NewIconToggle(look.IconDimensions, tips, "Dimensions", nil)
	dimensions.SetOn(true)
	views := NewSegment([]string{"Taken apart", "Laid flat", "End on"}, nil)
	views.SetOn(0)
	format := NewPictureButton(nil)
	format.Set("Portrait 150 × 210 mm", "6 sections, 48 leaves", "Formats")
	format.SetPicture(plate(40, 38, 27, 36))
	pocket, field := NewPictureCard(150, 190, nil), NewPictureCard(150, 190, nil)
	pocket.Set("Pocket", "90 × 140, 32 leaves", "")
	pocket.SetPicture(plate(130, 128, 50, 78))
	field.Set("Field book, Oat and a long name", "120 × 180, 40 leaves", "yours")
	field.SetPicture(plate(130, 128, 67, 100))
	page, leaves, mass := NewFigure(false), NewFigure(true), NewFigure(true)
	page.Set("Page", "150 × 210", "5 29/32 × 8 9/32 in", "")
	leaves.Set("Leaves", "48", "96 pages", "+8")
	mass.Set("Mass", "379 g", "13.4 oz", "")
	sheet := container.NewStack(NewPaint(0, 0, func(p look.Palette) color.NRGBA { return p.Sheet }), Across(0, page, leaves, mass))
	counts := Across(10)
	for _, c := range []struct {
		level look.Level
		text  string
	}{{look.Stop, "1 stop"}, {look.Check, "1 check"}, {look.Note, "2 notes"}} {
		count := NewLevelCount(c.level)
		count.Set(c.text)
		counts.Add(count)
	}
	return []fyne.CanvasObject{
		format, counts, sheet, Across(8, pocket, field),
		Across(8, NewButton(Solid, "Pick a format…", nil), NewButton(Framed, "From my paper…", nil), NewButton(Plain, "Close", nil)),
		Across(8, off, ringed),
		views,
		Across(4, dimensions, NewIconToggle(look.IconGrain, tips, "Grain", nil), NewIconToggle(look.IconMinus, tips, "Smaller", nil),
			NewIconToggle(look.IconPlus, tips, "Larger", nil), NewIconWord(look.IconFit, "Fit", nil), NewIconToggle(look.IconClose, tips, "Close", nil)),
	}
}

// TestGalleryOfWhatFloats draws an open entry with its bubble, a tooltip and a
// menu, which need a window that is already on show.
func TestGalleryOfWhatFloats(t *testing.T) {
	for name, variant := range map[string]fyne.ThemeVariant{"light": theme.VariantLight, "dark": theme.VariantDark} {
		dress(t, variant)
		tips := NewTips()
		tips.wait = func(_ time.Duration, open func()) { open() }
		size, joint, paper := NewRow("Page height", tips), NewRow("Joint", tips), NewChoiceRow("Paper", tips)
		size.SetState(RowState{Text: "8 1/4", Unit: "in", Slider: SliderState{Min: 2, Max: 20, Step: 0.25, Value: 8.25}})
		size.OnText = func(string) (string, string) { return "= 209.5 mm", "" }
		joint.SetState(RowState{Text: "7", Unit: "mm", Origin: Typed, AutoText: "Typed. Automatic would be 9 mm: two boards and the cloth, 8.94, rounded up. Click to give it back.",
			Slider: SliderState{Min: 2, Max: 20, Step: 0.5, Value: 7, Auto: 9, HasAuto: true}})
		paper.SetOptions([]string{"Ebbwhite Drawing 170", "Tideline 120", "Kelp 90"})
		window := test.NewTempWindow(t, container.NewStack(Down(0, size, joint, Gap(1, 90), paper, Gap(1, 120)), tips))
		window.SetPadded(false)
		window.Resize(fyne.NewSize(420, 300))
		size.Edit(window.Canvas())
		entry := window.Canvas().Focused().(*valueEntry)
		entry.TypedKey(key(fyne.KeyEnd))
		entry.TypedKey(key(fyne.KeyBackspace))
		save(t, name+"-editing.png", window)
		window.Canvas().Unfocus()
		joint.Pill.MouseIn(nil)
		if tips.Shown() == "" {
			t.Error("no tip to draw")
		}
		save(t, name+"-tip.png", window)
		joint.Pill.MouseOut()
		paper.Focus(window.Canvas())
		paper.Choice.TypedKey(key(fyne.KeySpace))
		save(t, name+"-menu.png", window)
	}
}
