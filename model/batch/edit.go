package batch

import (
	"slices"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/measure"
)

// The operations below give a changed batch and leave the one given as it was; on
// an error, a [*Fault], nothing is changed.

// NewOrder is an order to begin with: one book for a customer, under a free id.
func (b Batch) NewOrder(today measure.Date) Order {
	taken := map[string]bool{}
	for _, o := range b.Orders {
		taken[o.ID], taken[o.Parcel] = true, true // or it would go into another's parcel
	}
	id, _ := freeID(taken, 1)
	o := Order{ID: id, Kind: Customer, Count: 1, Parcel: id, State: Ordered, Dates: Dates{Ordered: today}}
	if len(b.Variants) > 0 {
		o.Variant = b.Variants[0].Name
	}
	return o
}

// WithOrders puts orders in: those whose ids are there already are replaced in
// their places, the others come last.
func (b Batch) WithOrders(orders ...Order) (Batch, error) {
	changed := b
	changed.Orders = slices.Clone(b.Orders)
	at := map[string]int{}
	for i, o := range changed.Orders {
		at[o.ID] = i
	}
	for _, o := range orders {
		if err := o.Validate(); err != nil {
			return b, err
		}
		if i, there := at[o.ID]; there {
			changed.Orders[i] = o
			continue
		}
		at[o.ID] = len(changed.Orders)
		changed.Orders = append(changed.Orders, o)
	}
	if _, err := changed.Check(); err != nil {
		return b, err
	}
	return changed, nil
}

// WithoutOrders takes orders out, and what was measured of their books.
func (b Batch) WithoutOrders(ids ...string) Batch {
	b.Orders = slices.DeleteFunc(slices.Clone(b.Orders), func(o Order) bool { return slices.Contains(ids, o.ID) })
	b.Blocks = slices.DeleteFunc(slices.Clone(b.Blocks), func(m Block) bool { return slices.Contains(ids, m.Order) })
	return b
}

// Renamed gives an order another id; what was measured of its books follows it.
func (b Batch) Renamed(id, to string) (Batch, error) {
	changed := b
	changed.Orders, changed.Blocks = slices.Clone(b.Orders), slices.Clone(b.Blocks)
	for i := range changed.Orders {
		if o := &changed.Orders[i]; o.ID == id {
			o.ID = to
			if err := o.Validate(); err != nil {
				return b, err
			}
		}
	}
	for i := range changed.Blocks {
		if changed.Blocks[i].Order == id {
			changed.Blocks[i].Order = to
		}
	}
	if _, err := changed.Check(); err != nil {
		return b, err
	}
	return changed, nil
}

// Moved brings orders to a state on a day. Days of states that they go back
// behind are forgotten.
func (b Batch) Moved(to State, on measure.Date, ids ...string) (Batch, error) {
	changed := b
	changed.Orders = slices.Clone(b.Orders)
	for i := range changed.Orders {
		o := &changed.Orders[i]
		if !slices.Contains(ids, o.ID) || o.State == to {
			continue
		}
		o.State = to
		*o.Dates.at(to) = on
		for _, s := range States() {
			if !to.Reached(s) {
				*o.Dates.at(s) = measure.Date{}
			}
		}
		if err := o.Validate(); err != nil {
			return b, err
		}
	}
	return changed, nil
}

// Sorted orders a table by one of its columns; equal ones stay as they stand.
func Sorted(orders []Order, c Column, descending bool) []Order {
	sorted := slices.Clone(orders)
	slices.SortStableFunc(sorted, func(x, y Order) int {
		if descending {
			x, y = y, x
		}
		if c.less != nil {
			return c.less(&x, &y)
		}
		return strings.Compare(strings.ToLower(c.text(&x)), strings.ToLower(c.text(&y)))
	})
	return sorted
}

// Found are the orders that every word of a text is found in, capitals aside, in
// any of their facts. Words of kind and state count as they are shown.
func Found(orders []Order, text string) []Order {
	wanted := strings.Fields(strings.ToLower(text))
	if len(wanted) == 0 {
		return slices.Clone(orders)
	}
	columns := Columns()
	var found []Order
	for _, o := range orders {
		var b strings.Builder
		for _, c := range columns {
			b.WriteString(c.text(&o) + "\n")
		}
		facts := strings.ToLower(b.String() + o.Kind.Label() + "\n" + o.State.Label())
		if !slices.ContainsFunc(wanted, func(w string) bool { return !strings.Contains(facts, w) }) {
			found = append(found, o)
		}
	}
	return found
}

// WithVariant puts a variant in the place of the one of a name, or adds it; orders
// follow a new name.
func (b Batch) WithVariant(name string, v Variant) (Batch, error) {
	const longest = 80
	at := slices.IndexFunc(b.Variants, func(w Variant) bool { return w.Name == name })
	switch {
	case !mark(v.Name, longest):
		return b, want("name", "order.want.id", "most", longest)
	case slices.ContainsFunc(b.Variants, func(w Variant) bool { return w.Name == v.Name && w.Name != name }):
		return b, want("name", "batch.want.once")
	}
	changed := b.Clone()
	if at < 0 {
		changed.Variants = append(changed.Variants, v)
		return changed, nil
	}
	changed.Variants[at] = v
	for i := range changed.Orders {
		if changed.Orders[i].Variant == name {
			changed.Orders[i].Variant = v.Name
		}
	}
	return changed, nil
}

// WithoutVariant takes a variant out that nobody ordered.
func (b Batch) WithoutVariant(name string) (Batch, error) {
	if slices.ContainsFunc(b.Orders, func(o Order) bool { return o.Variant == name }) {
		return b, &Fault{"variant", words.Say("order.want.unordered", words.With{"name": name})}
	}
	b.Variants = slices.DeleteFunc(slices.Clone(b.Variants), func(v Variant) bool { return v.Name == name })
	return b, nil
}

// WithBlock notes what was found of one book, in the place of what was noted
// before; nothing found takes the note away.
func (b Batch) WithBlock(m Block) (Batch, error) {
	same := func(n Block) bool { return n.Order == m.Order && n.Copy == m.Copy }
	left := slices.DeleteFunc(slices.Clone(b.Blocks), same)
	if m == (Block{Order: m.Order, Copy: m.Copy}) {
		b.Blocks = left
		return b, nil
	}
	i := slices.IndexFunc(b.Orders, func(o Order) bool { return o.ID == m.Order })
	switch err := m.Validate(); {
	case err != nil:
		return b, err
	case i < 0:
		return b, want("order", "order.want.there", "id", m.Order)
	case m.Copy > b.Orders[i].Count:
		return b, want("copy", "order.want.count", "most", b.Orders[i].Count)
	}
	b.Blocks = append(left, m)
	return b, nil
}

// BlockOf is what was noted of one book.
func (b Batch) BlockOf(c Copy) Block {
	for _, m := range b.Blocks {
		if m.Order == c.Order && m.Copy == c.Number {
			return m
		}
	}
	return Block{Order: c.Order, Copy: c.Number}
}
