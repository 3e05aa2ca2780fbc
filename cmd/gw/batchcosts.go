package main

import (
	"grainwise/model/batch"
	"grainwise/model/measure"
	"grainwise/model/post"
	"grainwise/model/price"
)

// costPlan is what the batch costs and brings. Amounts of a variant are a book.
type costPlan struct {
	Variants  []variantCost `json:"variants"`
	Books     int           `json:"books"`
	Cost      string        `json:"cost"`    // of all books, own hours in it
	Takings   string        `json:"takings"` // all sold at their prices
	Fees      string        `json:"fees"`
	Profit    string        `json:"profit"`
	Cash      string        `json:"cashFirst"` // to be bought, and packing
	BreakEven int           `json:"breakEven"` // books sold to have the cost back; 0 is never
	CashBack  int           `json:"cashBack"`
	Unpriced  []string      `json:"unpriced"` // materials without a price, not in the cost
}

type variantCost struct {
	Name      string     `json:"name"`
	Books     int        `json:"books"`
	Materials []costLine `json:"materials"`
	Times     []costLine `json:"times"`
	Overheads string     `json:"overheads"`
	Packing   string     `json:"packing"`
	Cost      string     `json:"cost"`
	Wanted    string     `json:"wanted"` // the price that leaves the profit wanted; empty where none can
	Price     string     `json:"price"`  // asked, or the wanted one
	Fees      string     `json:"fees"`
	Profit    string     `json:"profit"`
	Margin    number     `json:"margin"`
}

type costLine struct {
	Name    string  `json:"name"`
	Minutes *number `json:"minutes,omitempty"`
	Cost    string  `json:"cost"`
}

func costsOf(w batch.Work) *costPlan {
	r := w.Release
	if r == nil {
		return nil
	}
	plan := &costPlan{
		Variants: []variantCost{}, Books: r.Books, Cost: moneyText(r.Cost), Takings: moneyText(r.Takings), Fees: moneyText(r.Fees),
		Profit: moneyText(r.Profit), Cash: moneyText(r.Cash), BreakEven: r.BreakEven, CashBack: r.CashBack, Unpriced: append([]string{}, w.Unpriced()...),
	}
	for _, v := range r.Variants {
		plan.Variants = append(plan.Variants, variantCost{
			Name: v.Name, Books: v.Books, Materials: costLines(v.Materials, false), Times: costLines(v.Times, true),
			Overheads: moneyText(v.Overheads), Packing: moneyText(v.Packing), Cost: moneyText(v.Cost), Wanted: moneyText(v.Wanted),
			Price: moneyText(v.Price), Fees: moneyText(v.Fees), Profit: moneyText(v.Profit), Margin: number(v.Margin),
		})
	}
	return plan
}

func costLines(all []price.Line, timed bool) []costLine {
	lines := []costLine{}
	for _, l := range all {
		line := costLine{Name: l.Name, Cost: moneyText(l.Cost)}
		if timed {
			minutes := number(l.Minutes)
			line.Minutes = &minutes
		}
		lines = append(lines, line)
	}
	return lines
}

// postPlan is the parcels and what sending them costs by the maker's own table.
type postPlan struct {
	Parcels []parcelPlan `json:"parcels"`
	Total   string       `json:"total"`
}

type parcelPlan struct {
	ID      string    `json:"id"`
	To      string    `json:"to"`
	Zone    string    `json:"zone"`
	Books   int       `json:"books"`
	Mass    number    `json:"mass"`
	Size    [3]number `json:"size"` // longest side first
	Band    string    `json:"band"`
	Most    *number   `json:"bandMost"` // g; null where no band takes it
	Margin  *number   `json:"bandMargin"`
	Price   string    `json:"price"`
	Packing []string  `json:"packingList"`
	Label   []string  `json:"label"`
}

func postOf(w batch.Work) *postPlan {
	if len(w.Packed) == 0 {
		return nil
	}
	plan := &postPlan{Parcels: []parcelPlan{}, Total: moneyText(w.Postage)}
	for i, p := range w.Packed {
		plan.Parcels = append(plan.Parcels, parcelOf(p, i+1, len(w.Packed)))
	}
	return plan
}

func parcelOf(p post.Packed, at, of int) parcelPlan {
	plan := parcelPlan{
		ID: p.Parcel.ID, To: p.Parcel.To, Zone: p.Parcel.Zone, Books: p.Books, Mass: number(p.Grams),
		Size:    [3]number{mm(p.Size.Length), mm(p.Size.Width), mm(p.Size.Thickness)},
		Packing: p.List(at, of, told), Label: p.Label(),
	}
	if b := p.Band; b != nil {
		most, margin := number(b.Most), number(p.Spare.Grams)
		plan.Band, plan.Most, plan.Margin, plan.Price = b.Name, &most, &margin, moneyText(b.Price)
	}
	return plan
}

// today is the first day of a plan where the maker says none.
func today(day measure.Date) batch.Today { return batch.Today{Date: day, Style: told} }
