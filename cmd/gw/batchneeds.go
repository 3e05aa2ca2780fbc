package main

import (
	"grainwise/model/batch"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// needPlan is one material of a batch. Amounts are in its unit: whole sheets,
// millimetres, or grams.
type needPlan struct {
	Material   string      `json:"material"`
	Kind       stock.Kind  `json:"kind"`
	Unit       string      `json:"unit"`   // "sheet", "mm" or "g"
	Net        number      `json:"net"`    // what the pieces take
	Needed     number      `json:"needed"` // with spoilage
	InStock    number      `json:"inStock"`
	ToBuy      number      `json:"toBuy"` // rounded up to what is sold
	Offcuts    int64       `json:"offcuts,omitempty"`
	Rows       int64       `json:"rows,omitempty"` // of a roll, as it is cut
	Spare      *int64      `json:"spare"`          // pieces beyond those to cut; null but of sheets
	Proved     bool        `json:"proved"`
	Pieces     []piecePlan `json:"pieces"`
	Supplier   string      `json:"supplier"`
	Lot        string      `json:"lot"`
	Price      string      `json:"price"`
	Per        string      `json:"per"`
	PriceOn    string      `json:"priceOn"`
	Cost       string      `json:"cost"`
	Lack       batch.Lack  `json:"lack,omitempty"` // why it has no cost: "price" or "plan"
	Substitute string      `json:"substitute,omitempty"`
}

type piecePlan struct {
	Part   string `json:"part"`
	Height number `json:"height"`
	Width  number `json:"width"`
	Count  int    `json:"count"`
}

func needOf(n batch.Need) needPlan {
	price := n.Stock.Price
	plan := needPlan{
		Material: n.Material, Kind: n.Kind, Unit: "sheet", Offcuts: n.Offcuts, Pieces: []piecePlan{},
		Supplier: n.Stock.Supplier, Lot: n.Stock.Lot, Price: moneyText(price.Amount), Per: price.Per, PriceOn: dateText(price.On),
		Cost: moneyText(n.Cost), Lack: n.Lack, Substitute: n.Substitute,
	}
	amount := func(a batch.Amount) number { return number(a.Sheets) }
	switch {
	case n.Kind == stock.Adhesive:
		plan.Unit, amount = "g", func(a batch.Amount) number { return number(a.Grams) }
	case n.Stock.RollWidth > 0 || n.Kind == stock.Thread:
		plan.Unit, amount = "mm", func(a batch.Amount) number { return mm(a.Length) }
	default:
		plan.Spare = &n.Spare
	}
	plan.Net, plan.Needed, plan.InStock, plan.ToBuy = amount(n.Net), amount(n.Needed), amount(n.OnHand), amount(n.ToBuy)
	if c := n.Cutting; c != nil {
		plan.Proved = c.Plan.Proved()
		if c.Roll() {
			plan.Rows = c.Plan.Sheets
		}
	}
	for _, p := range n.Pieces {
		plan.Pieces = append(plan.Pieces, piecePlan{string(p.Part), mm(p.Height), mm(p.Width), p.Count})
	}
	return plan
}

// dateText is a day, nothing for none.
func dateText(d measure.Date) string {
	if d.IsZero() {
		return ""
	}
	return d.String()
}
