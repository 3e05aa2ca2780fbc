package check

import "grainwise/model/book"

// matter is what the rules speak of: a book, the tools that it is made with, the
// limits that hold, and what several rules ask of the book, found once.
type matter struct {
	*book.Book
	tools  Tools
	limits *limits
	uses   []use
	sides  []side
}

func newMatter(b *book.Book, t Tools, l *limits) *matter {
	return &matter{b, t, l, usesOf(b), sidesOf(b)}
}
