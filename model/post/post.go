// Package post packs books into parcels and finds what it costs to send them, by a
// table that the maker keeps; nothing of any post is built in. It takes plain values
// and knows no project.
//
// Lengths are outer sizes in whole nanometres, masses grams.
package post

import (
	"grainwise/model/book"
	"grainwise/model/measure"
)

// Length is a length in whole nanometres.
type Length = measure.Length

// Money is an amount in minor units of a currency.
type Money = measure.Money

// Book is some finished books that are alike.
type Book struct {
	Name                     string
	Width, Height, Thickness Length
	Grams                    float64 // of one
	Count                    int
}

// BookOf is some copies of a book as it is computed, closed.
func BookOf(name string, b book.Book, count int) Book {
	return Book{name, b.Closed.Width, b.Closed.Height, b.Closed.Thickness, b.Mass.Total(), count}
}

// Packing is what goes round the books.
type Packing struct {
	Grams     float64 // of a parcel
	EachGrams float64 // and for each book in it
	Padding   Length  // on every side
}

// Parcel is what one customer is sent.
type Parcel struct {
	ID, To  string
	Address []string // lines of the label, without the name
	Zone    string
	Note    string // for the packing list
	Books   []Book
}

// Band is a row of the maker's table: a price for a parcel that is within all its
// limits. A limit of 0 is none. A parcel's longest side is its length, its shortest
// its thickness; girth is length and twice the two others.
type Band struct {
	Name, Zone               string
	Most                     float64 // g
	Length, Width, Thickness Length
	Girth                    Length
	Price                    Money
}

// Slot is the largest parcel that goes through something, as a letter box: its
// opening, and how long it may be. A limit of 0 is none.
type Slot struct {
	Name                     string
	Length, Width, Thickness Length
}

// Table is all that the maker knows of the post.
type Table struct {
	Bands []Band
	Slots []Slot
}

// Size is an outer size, the longest side first.
type Size struct{ Length, Width, Thickness Length }

// Girth is the length and twice the two other sides.
func (s Size) Girth() Length { return s.Length + 2*(s.Width+s.Thickness) }

// Packed is a parcel as it is sent.
type Packed struct {
	Parcel   Parcel
	Books    int
	Piles    int // side by side
	Grams    float64
	Size     Size
	Band     *Band // the cheapest that takes it, or nil
	Spare    Spare // within the band
	Lighter  *Step // the next cheaper band that its size fits
	Heavier  *Step // the next dearer one, for what is over this band's mass
	Slots    []Passes
	Findings []Finding
}

// Spare is how far a parcel lies within a band's limits; 0 where there is none.
type Spare struct {
	Grams            float64
	Thickness, Girth Length
}

// Step is another band, and what would move the parcel there.
type Step struct {
	Band  Band
	Grams float64 // too heavy for it by so much; or may still be added before it is reached
	Price Money   // of that band less this one's: below nought is saved
}

// Passes tells how a parcel goes through a slot.
type Passes struct {
	Slot   Slot
	Passes bool
	Spare  Length // of thickness; below nought too thick
}

// Finding is what is tight about a parcel.
type Finding struct {
	ID   string // "post-band" or "post-none"
	Text string
}
