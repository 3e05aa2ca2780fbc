package sheets

import (
	"strconv"

	"grainwise/model/book"
	"grainwise/model/cutting"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Offcut is what is left of a sheet, or one that is kept in stock. It lies as
// its sheet did, length upright.
type Offcut struct {
	Name     string // "A1": the layout's letter, and a number from the largest down
	Material string
	Length   Length // along the length of the sheet it came from
	Width    Length
	Grain    stock.Grain // as of the sheet: long runs along Length
	Times    int64
	Layout   int
	X, Y     Length // where the first of it lies on its sheet
}

// DefaultLeastOffcut is the shorter side from which an offcut is worth keeping:
// a folded leaf of 50 mm, the least of a pocket book (O, a setting).
const DefaultLeastOffcut = 100 * measure.Millimetre

func (o Offcut) sheet() stock.Sheet {
	return stock.Sheet{Size: stock.Size{Length: o.Length, Width: o.Width}, Grain: o.Grain}
}

// Folios is how many folios of a page an offcut gives, its grain along their
// height.
func (o Offcut) Folios(page book.Page) int {
	return o.sheet().Yield(page.Height+page.TrimHead+page.TrimTail, 2*(page.Width+page.TrimFore), false).Total
}

// offcuts names what is worth keeping of a plan.
func (c Cutting) offcuts(bench Bench) []Offcut {
	least := bench.LeastOffcut
	if least <= 0 {
		least = DefaultLeastOffcut
	}
	numbers := map[int]int{}
	var all []Offcut
	for _, o := range c.Plan.Offcuts(c.planned(), int64(least)) {
		numbers[o.Layout]++
		all = append(all, Offcut{
			Name: LayoutName(o.Layout) + strconv.Itoa(numbers[o.Layout]), Material: c.Material.Name,
			Length: Length(o.Height), Width: Length(o.Width), Grain: c.Sheet.Grain,
			Times: o.Times, Layout: o.Layout, X: Length(o.X), Y: Length(o.Y),
		})
	}
	return all
}

// planned are the parents as the planner knows them.
func (c Cutting) planned() cutting.Job {
	var job cutting.Job
	for _, p := range c.Parents {
		job.Sheets = append(job.Sheets, planned(p.Sheet, sheetCost, cutting.Unlimited))
	}
	return job
}

// LayoutName is a layout's letter: A … Z, then AA, AB ….
func LayoutName(layout int) string {
	const letters = 26
	if layout < letters {
		return string(rune('A' + layout))
	}
	return LayoutName(layout/letters-1) + string(rune('A'+layout%letters))
}
