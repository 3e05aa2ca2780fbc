// Package view holds the drawings of a book: each turns a computed book into a
// scene, for the window, for files and for paper.
package view

import (
	"slices"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/model/sheets"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// Input is what a drawing is made from. Width and Height are design px: lines
// and type keep their size, the drawing fits the frame.
type Input struct {
	Book          book.Book
	System        measure.System // of the figures shown
	Width, Height float64        // of the frame
	Dimensions    bool           // with dimension lines
	Grain         bool           // with grain arrows
	Title         bool           // with the drawing's title
	DarkSurround  bool           // the window around it is dark
	Stark         bool           // the window is of high contrast
	Chosen        book.PartID    // outlined in the accent colour
	Marks         Marks          // what is wrong with which part
	Name          string         // of the project
	Moving        string         // key of the parameter that moves, "" for none by itself
	Before        *book.Book     // as the book was before what changes now; nil at rest
	Pinned        *book.Book     // the design that this one is compared with; nil for none
	PinnedName    string
	Faded         float64          // how far what changed is back at rest, 0 … 1
	Cuttings      []sheets.Cutting // how the sheets are cut, for the views of sheets
	Alone         int              // of what the cutting view shows, this one alone, counted from 1; 0 for all
	Sizes         *sheets.SizeMap  // what other page sizes give, for the map of sizes
	Offer         Offer            // what a customer is told, for the mock-up
}

// Marks is the worst level found on each part.
type Marks map[book.PartID]check.Level

// MarksOf gathers the findings by the part they speak of.
func MarksOf(findings []check.Finding) Marks {
	marks := Marks{}
	for _, f := range findings {
		marks[f.Part] = check.Worse(marks[f.Part], f.Level)
	}
	return marks
}

// of is the worst level of some parts, "" for none.
func (m Marks) of(parts ...book.PartID) check.Level {
	var worst check.Level
	for _, p := range parts {
		worst = check.Worse(worst, m[p])
	}
	return worst
}

// View is one kind of drawing.
type View struct {
	ID       string
	Draw     func(Input) *scene.Scene
	OfSheets bool // it shows how sheets are cut, from Input.Cuttings

	// ForCustomers says that it is a picture to sell the book by: it shows no
	// dimensions, no marks, and nothing of a change.
	ForCustomers bool
}

// Label is the view's name.
func (v View) Label() string { return words.Say("view." + v.ID) }

// All lists the drawings in the order in which they are offered.
func All() []View {
	return []View{
		{ID: "taken-apart", Draw: TakenApart},
		{ID: "laid-flat", Draw: LaidFlat},
		{ID: "end-on", Draw: EndOn},
		{ID: "closed", Draw: Closed},
		{ID: "open-flat", Draw: OpenFlat},
		{ID: "mock-up", Draw: MockUp, ForCustomers: true},
		{ID: "cutting", Draw: Cutting, OfSheets: true},
		{ID: "sizes", Draw: SizeMap, OfSheets: true},
	}
}

// OfSheets lists the drawings of how its sheets are cut.
func OfSheets() []View {
	return slices.DeleteFunc(All(), func(v View) bool { return !v.OfSheets })
}

// OfBook lists the drawings of a book by itself.
func OfBook() []View {
	return slices.DeleteFunc(All(), func(v View) bool { return v.OfSheets })
}

// Find returns the view with an id.
func Find(id string) (View, bool) {
	for _, v := range All() {
		if v.ID == id {
			return v, true
		}
	}
	return View{}, false
}

// The least frame that a drawing is made for; a smaller one gets this.
const (
	leastWidth  = 360
	leastHeight = 280
)

// Frame is what to draw for a place of width × height dp: of the same shape, and
// larger where the place is smaller than any drawing is made for.
func Frame(width, height float64) (float64, float64) {
	larger := max(1, leastWidth/width, leastHeight/height)
	return width * larger, height * larger
}

// sheet starts a drawing on its ground.
func (in Input) sheet(ground scene.Colour) *draft.Sheet {
	if in.DarkSurround {
		ground = draft.GroundDark
	}
	return draft.NewSheet(max(in.Width, leastWidth), max(in.Height, leastHeight), ground)
}

// size is a length as text, in the unit shown.
func (in Input) size(l measure.Length) string { return draft.Sizes(in.System).Format(l) }

// figure is a length as a dimension's figure.
func (in Input) figure(l measure.Length) draft.Figure { return draft.FigureOf(l, in.System) }

// by is two sizes, width before height: "150 × 210".
func (in Input) by(width, height measure.Length) string {
	return in.size(width) + " × " + in.size(height)
}
