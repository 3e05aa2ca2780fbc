package batch

import (
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// priced fills in what the need costs, or that no price is known.
func (n Need) priced() Need {
	cost, ok := n.costOf(n.ToBuy)
	worth, also := n.costOf(n.Needed.and(n.Taken))
	if !ok || !also {
		n.Lack = NoPrice
		return n
	}
	n.Cost, n.Worth = cost, worth
	return n
}

// costOf is an amount at the material's price; false where none is known for it.
func (n Need) costOf(a Amount) (measure.Money, bool) {
	price := n.Stock.Price
	if price.Amount.Currency == "" || price.Per != n.unit() {
		return measure.Money{}, false
	}
	var cost measure.Money
	var err error
	if price.Per == stock.PerMetre {
		cost, err = price.Amount.Part(a.Length.MM() / measure.Metre.MM())
	} else {
		cost, err = price.Amount.Times(a.Sheets)
	}
	return cost, err == nil
}

// unit is what its price must be for; adhesive is sold by none that prices know.
func (n Need) unit() string {
	switch {
	case n.Kind == stock.Adhesive:
		return ""
	case n.Stock.RollWidth > 0 || n.Kind == stock.Thread:
		return stock.PerMetre
	}
	return stock.PerSheet
}
