package batch

import (
	"slices"

	"grainwise/assets/words"
	"grainwise/model/measure"
)

// Order is so many books of one variant for one person, or for the maker.
type Order struct {
	ID       string `json:"id"` // each once in a batch
	Customer string `json:"customer,omitempty"`
	Kind     Kind   `json:"kind"`
	Variant  string `json:"variant,omitempty"` // its name; none is the base design
	Count    int    `json:"count"`
	Parcel   string `json:"parcel,omitempty"` // orders of one parcel are packed together; none goes nowhere
	Zone     string `json:"zone,omitempty"`   // of the post
	State    State  `json:"state"`
	Dates    Dates  `json:"dates,omitzero"`    // when it came to each state
	Address  string `json:"address,omitempty"` // lines of the label, or parts between commas
	Note     string `json:"note,omitempty"`
}

// Kind says for whom a book is made.
type Kind string

// The kinds.
const (
	Customer Kind = "customer"
	Keeper   Kind = "keeper" // the maker's own copy
	Sample   Kind = "sample" // of a class
	Spare    Kind = "spare"
)

// Kinds lists them.
func Kinds() []Kind { return []Kind{Customer, Keeper, Sample, Spare} }

// Label is the kind in words.
func (k Kind) Label() string { return words.Say("order.kind." + string(k)) }

// State is how far an order has come.
type State string

// The states, in their order.
const (
	Ordered State = "ordered"
	Making  State = "making"
	Made    State = "made"
	Packed  State = "packed"
	Posted  State = "posted"
)

// States lists them in their order.
func States() []State { return []State{Ordered, Making, Made, Packed, Posted} }

// Label is the state in words.
func (s State) Label() string { return words.Say("order.state." + string(s)) }

// Reached reports whether an order in state s has come as far as t.
func (s State) Reached(t State) bool { return slices.Index(States(), s) >= slices.Index(States(), t) }

// Dates are the days on which an order came to each state; the zero date where
// nobody noted it.
type Dates struct {
	Ordered measure.Date `json:"ordered,omitzero"`
	Making  measure.Date `json:"making,omitzero"`
	Made    measure.Date `json:"made,omitzero"`
	Packed  measure.Date `json:"packed,omitzero"`
	Posted  measure.Date `json:"posted,omitzero"`
}

// at is where a state's date stands.
func (d *Dates) at(s State) *measure.Date {
	return []*measure.Date{&d.Ordered, &d.Making, &d.Made, &d.Packed, &d.Posted}[slices.Index(States(), s)]
}

// Of is the day on which a state was reached.
func (d Dates) Of(s State) measure.Date { return *d.at(s) }

// Limits of an order; they keep slips of the hand and damage out, no more.
const (
	longestMark = 60
	LongestName = 120
	longestNote = 2_000
	MostCopies  = 1_000
	MostOrders  = 20_000
	MostBooks   = 50_000 // of all orders together
)

// Validate returns the first thing that is wrong with an order, or nil. That its
// variant is there, and its id but once, is a matter of the batch.
func (o Order) Validate() error {
	switch {
	case !mark(o.ID, longestMark):
		return want("id", "order.want.id", "most", longestMark)
	case !plainText(o.Customer, LongestName):
		return want("customer", "order.want.text", "most", LongestName)
	case !slices.Contains(Kinds(), o.Kind):
		return want("kind", "order.want.one", "names", joined(Kinds()))
	case !slices.Contains(States(), o.State):
		return want("state", "order.want.one", "names", joined(States()))
	case o.Count < 1 || o.Count > MostCopies:
		return want("count", "order.want.count", "most", MostCopies)
	case !plainText(o.Parcel, longestMark):
		return want("parcel", "order.want.text", "most", longestMark)
	case !plainText(o.Zone, longestMark):
		return want("zone", "order.want.text", "most", longestMark)
	case !note(o.Address):
		return want("address", "order.want.text", "most", longestNote)
	case !note(o.Note):
		return want("note", "order.want.text", "most", longestNote)
	}
	return o.checkDates()
}

// checkDates holds that states were reached in their order, and none beyond the
// order's own.
func (o Order) checkDates() error {
	last := measure.Date{}
	for _, s := range States() {
		d := o.Dates.Of(s)
		switch {
		case d.IsZero():
			continue
		case !d.Valid():
			return want("dates", "measure.want.date")
		case !o.State.Reached(s):
			return want("dates", "order.want.reached", "state", s.Label(), "date", d)
		case d.Compare(last) < 0:
			return want("dates", "order.want.later", "state", s.Label(), "date", d, "last", last)
		}
		last = d
	}
	return nil
}

// Check returns the first thing wrong with a batch's orders as a whole: an id
// twice, a variant that is not there, more books than are held. At is its number
// among the orders.
func (b Batch) Check() (at int, err error) {
	known := map[string]bool{"": true}
	for _, v := range b.Variants {
		known[v.Name] = true
	}
	seen, books := map[string]bool{}, 0
	for i, o := range b.Orders {
		books += o.Count
		switch {
		case seen[o.ID]:
			return i, want("id", "order.want.once", "id", o.ID)
		case !known[o.Variant]:
			return i, want("variant", "order.want.variant", "found", o.Variant, "names", b.variantNames())
		case books > MostBooks || i >= MostOrders:
			return i, want("count", "order.want.fewer", "books", MostBooks, "orders", MostOrders)
		}
		seen[o.ID] = true
	}
	return 0, nil
}
