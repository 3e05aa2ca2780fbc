package batch

import (
	"cmp"
	"errors"
	"slices"
	"strconv"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/measure"
)

// Column is one fact of an order, as tables of orders show, sort and read it.
type Column struct {
	Name string // in files
	text func(*Order) string
	set  func(*Order, string) error
	less func(a, b *Order) int // nil: by text
}

// Label is the column's head on the screen.
func (c Column) Label() string { return words.Say("order.column." + c.Name) }

// Text is the fact as a table shows it.
func (c Column) Text(o Order) string { return c.text(&o) }

// Set changes the fact as it is typed into a table; an error is a [*Fault].
func (c Column) Set(o Order, text string) (Order, error) {
	if err := c.set(&o, strings.TrimSpace(text)); err != nil {
		return o, err
	}
	return o, o.Validate()
}

// Columns lists the facts in the order of a table.
func Columns() []Column {
	all := []Column{
		textColumn("id", func(o *Order) *string { return &o.ID }),
		textColumn("customer", func(o *Order) *string { return &o.Customer }),
		wordColumn("kind", Kinds(), func(o *Order) *Kind { return &o.Kind }),
		textColumn("variant", func(o *Order) *string { return &o.Variant }),
		countColumn(),
		textColumn("parcel", func(o *Order) *string { return &o.Parcel }),
		textColumn("zone", func(o *Order) *string { return &o.Zone }),
		wordColumn("state", States(), func(o *Order) *State { return &o.State }),
	}
	for _, s := range States() {
		all = append(all, dateColumn(s))
	}
	return append(all, textColumn("address", func(o *Order) *string { return &o.Address }), textColumn("note", func(o *Order) *string { return &o.Note }))
}

// ColumnOf finds a column by its name.
func ColumnOf(name string) (Column, bool) {
	all := Columns()
	i := slices.IndexFunc(all, func(c Column) bool { return c.Name == name })
	if i < 0 {
		return Column{}, false
	}
	return all[i], true
}

func textColumn(name string, at func(*Order) *string) Column {
	return Column{
		Name: name, text: func(o *Order) string { return *at(o) },
		set: func(o *Order, text string) error { *at(o) = text; return nil },
	}
}

// wordColumn is one of a few words; its order is theirs.
func wordColumn[T ~string](name string, all []T, at func(*Order) *T) Column {
	return Column{
		Name: name, text: func(o *Order) string { return string(*at(o)) },
		set: func(o *Order, text string) error {
			if !slices.Contains(all, T(text)) {
				return want(name, "order.want.one", "names", joined(all))
			}
			*at(o) = T(text)
			return nil
		},
		less: func(a, b *Order) int { return slices.Index(all, *at(a)) - slices.Index(all, *at(b)) },
	}
}

func countColumn() Column {
	return Column{
		Name: "count", text: func(o *Order) string { return strconv.Itoa(o.Count) },
		set: func(o *Order, text string) error {
			n, err := strconv.Atoi(text)
			if err != nil {
				return want("count", "order.want.count", "most", MostCopies)
			}
			o.Count = n
			return nil
		},
		less: func(a, b *Order) int { return cmp.Compare(a.Count, b.Count) },
	}
}

// dateColumn is the day on which a state was reached.
func dateColumn(s State) Column {
	return Column{
		Name: string(s) + "On",
		text: func(o *Order) string {
			if d := o.Dates.Of(s); !d.IsZero() {
				return d.String()
			}
			return ""
		},
		set: func(o *Order, text string) error {
			*o.Dates.at(s) = measure.Date{}
			if text == "" {
				return nil
			}
			d, err := measure.ParseDate(text)
			if err != nil {
				return want(string(s)+"On", "measure.want.date", "found", text)
			}
			*o.Dates.at(s) = d
			return nil
		},
		less: func(a, b *Order) int { return a.Dates.Of(s).Compare(b.Dates.Of(s)) },
	}
}

// placeOf is the column of a fault; of dates it is that of the order's own state.
func placeOf(err error, o Order) (column string, text string) {
	var fault *Fault
	if !errors.As(err, &fault) {
		return "", err.Error()
	}
	if fault.Place == "dates" {
		return string(o.State) + "On", fault.Text
	}
	return fault.Place, fault.Text
}
