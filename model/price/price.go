// Package price says what a book of a batch costs and what must be asked for it. It
// takes plain values and knows no project.
//
// Sums are exact fractions of a minor unit (a cent); nothing is rounded on the way.
// What is shown is rounded once, at the end, half up to the minor unit, so that lines
// which are shown beside their sum may differ from it by a cent.
//
// Price = (cost + fixed fee) / (1 − fee share − profit share), profit as a share of
// the price.
package price

import "grainwise/model/measure"

// Money is an amount in minor units of a currency.
type Money = measure.Money

// Input is what a batch's prices rest on. All amounts are of one currency; the zero
// Money is nothing. A share is read as the shortest decimal that gives its float64,
// so 0.04 is exactly four in a hundred.
type Input struct {
	Variants  []Variant
	Materials []Material
	SetUps    []Time  // once for the batch, shared by the books that have the activity
	Rate      Money   // an hour of hands' work
	Overheads Money   // a book
	FeeFixed  Money   // of each sale
	FeeShare  float64 // of the price
	Profit    float64 // wanted, a share of the price
}

// Variant is books that are alike.
type Variant struct {
	ID, Name string
	Books    int
	Times    []Time // of one book, by activity
	Packing  Money  // a book
	Asked    Money  // the price that is asked, or the zero Money for the one that is wanted
}

// Time is hands' minutes at one activity.
type Time struct {
	Activity string // its ID, which set-up and work have in common
	Name     string
	Minutes  int
}

// Material is one material of the whole batch: what it takes with spoilage, in whole
// sheets or lengths, and who uses how much of it.
type Material struct {
	ID, Name string
	Price    Money  // of one unit
	Taken    Amount // for the batch, with spoilage
	Bought   Amount // of this, what must be bought now
	Uses     []Use  // the variants share the cost as their uses are to each other
}

// Amount is so many units of a material, as a fraction that is exact.
type Amount struct{ Count, Of int64 }

// Sheets is a number of whole sheets, or of anything counted.
func Sheets(n int64) Amount { return Amount{n, 1} }

// Metres is a length of what is sold by the metre.
func Metres(l measure.Length) Amount { return Amount{int64(l), int64(measure.Metre)} }

// Use is how much of a material one variant's books take together, in any unit that
// all uses of the material share: pieces, or their area. Spoilage is not in it.
type Use struct {
	Variant string // its ID
	Much    float64
}

// Line is one part of a book's cost.
type Line struct {
	ID, Name string
	Minutes  float64 // of an activity, the book's share of set-up in them
	Cost     Money   // a book
}

// Of is what one variant costs and brings, a book.
type Of struct {
	ID, Name           string
	Books              int
	Materials          []Line // as in the input, those that it uses
	Times              []Line // its own first, then set-ups of others' activities
	Overheads, Packing Money
	Cost               Money // all of these
	Wanted             Money // the price that leaves the profit wanted; the zero Money where none can
	Price              Money // asked, or the wanted one
	Fees               Money // at the price
	Profit             Money // what the price leaves
	Margin             float64
}

// Release is all variants together.
type Release struct {
	Variants  []Of
	Books     int
	Cost      Money // of all books, own hours in it
	Takings   Money // all sold at their prices
	Fees      Money
	Profit    Money
	Cash      Money // needed first: what is to be bought, and packing
	BreakEven int   // books to be sold to have Cost back, sold as they are made; 0 is never
	CashBack  int   // books to be sold to have Cash back; 0 is never
	Findings  []Finding
}

// Level is how bad a finding is.
type Level string

// The levels.
const (
	Stop  Level = "stop"
	Check Level = "check"
)

// Finding is what is wrong with prices.
type Finding struct {
	ID      string // "price-shares" or "price-low"
	Level   Level
	Variant string // its ID; "" for all
	Text    string
}
