package sheet

import "grainwise/render/scene"

// Article is a paper as text with drawings, before it is laid out: on pages, or
// in one that rolls.
type Article struct {
	Title    string
	Lead     []string // lines under the title
	Finished Picture
	Figures  []Figure // of the finished book
	Chapters []Chapter
}

// Figure is a number with what it is.
type Figure struct{ Name, Value string }

// Chapter is what stands under one head: lists, or steps.
type Chapter struct {
	ID    string
	Title string
	Lists []List
	Steps []Lesson
}

// List is lines under a title, which may be empty, with a note that may be.
type List struct {
	Title string
	Lines []string
	Note  string
}

// Lesson is one step as it is taught. Empty texts are left out.
type Lesson struct {
	ID       string // of the step
	Number   int    // from 1, through all chapters
	Do       string // in a line or two
	How      string // how it is done, and why
	Hand     string // what a left-handed maker does otherwise
	Wait     string
	Cautions []string
	Picture  Picture
}

// Picture is a drawing at the size at which it is printed; without a scene there
// is none.
type Picture struct {
	Scene *scene.Scene
	Means string // what it shows, for those who cannot see it
}
