package check

import "grainwise/model/book"

// matter is what the rules speak of: a book, the tools that it is made with,
// and what several rules ask of the book, found once.
type matter struct {
	*book.Book
	tools Tools
	uses  []use
	sides []side
}

func newMatter(b *book.Book, t Tools) *matter {
	return &matter{b, t, usesOf(b), sidesOf(b)}
}
