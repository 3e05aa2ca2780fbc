package lists

import (
	"math"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/sheets"
	"grainwise/model/stock"
)

// bought is the step in which material is bought by its length where nobody says
// another: a tenth of a metre, as cloth is sold.
const bought = 100 * measure.Millimetre

// Lack says why a row has no cost.
type Lack string

// The lacks. Priced lacks nothing.
const (
	Priced  Lack = ""
	NoPrice Lack = "price" // none is known, or it is for another unit
	NoPlan  Lack = "plan"  // it cannot be cut, or nobody has planned it
)

// ShoppingRow is one material to buy: so many sheets, or a length, or a mass. The
// other two are nought.
type ShoppingRow struct {
	Material, Supplier string
	Kind               stock.Kind
	Sheet              stock.Size // of a sheet, else nothing
	RollWidth          Length     // of a roll or a strip, else 0
	Sheets             int64      // new ones
	Length             Length     // rounded up to what is sold
	Grams              float64    // of adhesive as it is spread, rounded up to whole grams
	Offcuts            int64      // taken from what is kept, not to be bought
	NoSpare            bool       // the sheets give not one piece more than is wanted
	Price              stock.Price
	Cost               measure.Money
	Lack               Lack
}

// Shopping lists what some copies of a book take, in the order of making: what is
// cut as planned, strips by their length, adhesive, thread. Nothing is added for
// spoilage. Materials that no cutting is there for lack a plan.
func Shopping(b book.Book, cuttings []sheets.Cutting, copies int) []ShoppingRow {
	var rows []ShoppingRow
	for _, j := range sheets.Jobs(b, copies) {
		rows = append(rows, cutRow(j, cuttings))
	}
	rows = append(rows, stripRows(b, copies)...)
	if b.WetAdhesive() > 0 {
		rows = append(rows, adhesiveRow(b, copies))
	}
	if b.Sewing.ThreadPerBook > 0 {
		rows = append(rows, threadRow(b, copies))
	}
	return rows
}

func rowOf(m stock.Material) ShoppingRow {
	return ShoppingRow{
		Material: m.Name, Supplier: m.Supplier, Kind: m.Kind, Sheet: m.Sheet, RollWidth: m.RollWidth, Price: m.Price,
	}
}

// cutRow is what a job's plan takes.
func cutRow(j sheets.Job, cuttings []sheets.Cutting) ShoppingRow {
	row := rowOf(j.Material)
	c, planned := cuttingOf(j, cuttings)
	switch {
	case !planned:
		row.Lack = NoPlan
		return row
	case c.Roll():
		row.Length = c.Length.RoundUp(bought)
	default:
		row.Sheets, row.NoSpare = c.New(), c.Spare() == 0
		row.Offcuts = cutFrom(c) - row.Sheets
	}
	return row.priced()
}

func cuttingOf(j sheets.Job, cuttings []sheets.Cutting) (sheets.Cutting, bool) {
	for _, c := range cuttings {
		if c.Material.Kind == j.Material.Kind && c.Material.Name == j.Material.Name {
			return c, c.Trouble == nil
		}
	}
	return sheets.Cutting{}, false
}

// cutFrom is how many sheets and offcuts a plan cuts.
func cutFrom(c sheets.Cutting) int64 {
	sum := int64(0)
	for _, l := range c.Plan.Layouts {
		sum += l.Times
	}
	return sum
}

// stripRows are what is bought by its length and only cut across: tape, ribbon,
// elastic.
func stripRows(b book.Book, copies int) []ShoppingRow {
	var rows []ShoppingRow
	for _, p := range b.Parts {
		m, _, _ := b.Source(p)
		if !m.Kind.ByLength() || p.Count == 0 {
			continue
		}
		row := rowOf(m)
		each := max(p.Height, p.Width)
		row.Length = each.Times(float64(p.Count * max(1, copies))).RoundUp(bought)
		rows = append(rows, row.priced())
	}
	return rows
}

func adhesiveRow(b book.Book, copies int) ShoppingRow {
	row := rowOf(b.Resolved.Stock.Adhesive)
	row.Grams = math.Ceil(b.WetAdhesive() * float64(max(1, copies)))
	return row.priced()
}

func threadRow(b book.Book, copies int) ShoppingRow {
	size := measure.Style{System: b.Resolved.CutIn, Decimals: 3}.WithUnit(b.Sewing.ThreadDiameter)
	row := ShoppingRow{Kind: stock.Thread, Material: words.Say("lists.thread", words.With{"diameter": size})}
	row.Length = b.Sewing.ThreadPerBook.Times(float64(max(1, copies))).RoundUp(bought)
	return row.priced()
}

// priced fills in what the row costs, or that no price is known.
func (row ShoppingRow) priced() ShoppingRow {
	cost, err := row.cost()
	if err != nil || row.Price.Amount.Currency == "" || row.Price.Per != row.unit() {
		row.Lack = NoPrice
		return row
	}
	row.Cost = cost
	return row
}

func (row ShoppingRow) cost() (measure.Money, error) {
	if row.unit() == stock.PerMetre {
		return row.Price.Amount.Part(row.Length.MM() / measure.Metre.MM())
	}
	return row.Price.Amount.Times(row.Sheets)
}

// unit is what its price must be for; adhesive is sold by none that prices know.
func (row ShoppingRow) unit() string {
	switch {
	case row.Kind == stock.Adhesive:
		return ""
	case row.RollWidth > 0 || row.Kind == stock.Thread:
		return stock.PerMetre
	}
	return stock.PerSheet
}
