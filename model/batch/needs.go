package batch

import (
	"context"
	"math"
	"slices"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/sheets"
	"grainwise/model/stock"
)

// Need is what a batch takes of one material, and what is to be bought of it.
type Need struct {
	Kind       stock.Kind
	Material   string
	Stock      stock.Material  // as the books have it; of thread only its name
	Pieces     []sheets.Piece  // still to cut
	Cutting    *sheets.Cutting // how they are cut; nil where nothing is
	Taken      Amount          // what pieces that are cut already took
	Net        Amount          // what the pieces take
	Needed     Amount          // with spoilage
	OnHand     Amount          // in stock
	ToBuy      Amount          // rounded up to what is sold
	Offcuts    int64           // kept ones that are cut
	Spare      int64           // pieces that the sheets give beyond those to cut
	Substitute string
	Cost       measure.Money // of what is to be bought
	Worth      measure.Money // of all that is needed or cut, in stock or not
	Lack       Lack
}

// Lack says why a need has no cost.
type Lack string

// The lacks. Priced lacks nothing.
const (
	Priced  Lack = ""
	NoPrice Lack = "price" // none is known, or it is for another unit
	NoPlan  Lack = "plan"  // a piece is too large, or there was no time
)

// sold is the step in which lengths are sold where nobody says another: a tenth
// of a metre, as cloth is.
const sold = 100 * measure.Millimetre

// Needs is what sets of books take of every material, cut together. Report, which
// may be nil, hears how many of the materials are planned. The error is that of a
// context that was called off.
func (p *Planner) Needs(ctx context.Context, sets []Set, b Batch, report func(done, of int)) (needs []Need, unused []Cut, err error) {
	jobs, unused := withoutCut(Jobs(sets, b.Buying), b.Cut)
	for i, j := range jobs {
		n, err := p.cutNeed(ctx, j, b)
		if err != nil {
			return nil, nil, err
		}
		needs = append(needs, n)
		if report != nil {
			report(i+1, len(jobs))
		}
	}
	needs = append(needs, runningNeeds(sets, b)...)
	kinds := stock.Kinds()
	slices.SortStableFunc(needs, func(m, n Need) int { return slices.Index(kinds, m.Kind) - slices.Index(kinds, n.Kind) })
	return needs, unused, nil
}

// cutNeed is what a job's plan takes.
func (p *Planner) cutNeed(ctx context.Context, j sheets.Job, b Batch) (Need, error) {
	n := Need{Kind: j.Material.Kind, Material: j.Material.Name, Stock: j.Material, Pieces: j.Pieces}
	n.Taken = b.took(n.Kind, n.Material)
	if len(j.Pieces) == 0 {
		return n.bought(b), nil
	}
	c, err := p.Plan(ctx, j)
	switch {
	case ctx.Err() != nil:
		return n, ctx.Err()
	case err != nil || c.Trouble != nil:
		n.Lack = NoPlan
		return n, nil
	}
	n.Cutting = &c
	if c.Roll() {
		n.Net.Length = c.Length
	} else {
		n.Net.Sheets = c.New()
		for _, l := range c.Plan.Layouts {
			n.Offcuts += l.Times
		}
		n.Offcuts -= n.Net.Sheets
	}
	n = n.bought(b)
	n.Spare = n.spare()
	return n, nil
}

// spare is how many pieces the sheets bought and in stock give beyond those to
// cut; of a sheet of several kinds it counts the kind of which it gives fewest.
func (n Need) spare() int64 {
	c := n.Cutting
	if c.Roll() {
		return 0
	}
	least := int64(math.MaxInt64)
	for _, y := range c.Other.Right {
		if y > 0 {
			least = min(least, int64(y))
		}
	}
	return c.Spare() + (n.OnHand.Sheets+n.ToBuy.Sheets-n.Net.Sheets)*least
}

// bought adds spoilage, takes off what is in stock, and rounds up to what is sold.
func (n Need) bought(b Batch) Need {
	h := b.holding(n.Kind, n.Material)
	n.OnHand, n.Substitute = Amount{h.Sheets, h.Length, h.Grams}, h.Substitute
	n.Needed = n.Net.spoiled(b.Buying.Of(n.Kind))
	rest := n.Needed.less(n.OnHand)
	n.ToBuy = Amount{
		Sheets: packs(rest.Sheets, h.Pack),
		Length: rest.Length.RoundUp(sold),
		Grams:  math.Ceil(rest.Grams),
	}
	if n.ToBuy.Length > 0 {
		n.ToBuy.Length = max(n.ToBuy.Length, h.Least)
	}
	return n.priced()
}

// took is what the cut pieces of a material took.
func (b Batch) took(kind stock.Kind, name string) (sum Amount) {
	for _, c := range b.Cut {
		if c.Kind == kind && c.Material == name {
			sum = sum.and(c.Took)
		}
	}
	return sum
}

func (b Batch) holding(kind stock.Kind, name string) Holding {
	i := slices.IndexFunc(b.Stock, func(h Holding) bool { return h.Kind == kind && h.Material == name })
	if i < 0 {
		return Holding{}
	}
	return b.Stock[i]
}

// spoiled is an amount and its share of spoilage, whole sheets rounded up. A
// sheet that a sum of floating point makes of nothing does not count.
func (a Amount) spoiled(share float64) Amount {
	const nothing = 1e-9
	return Amount{
		Sheets: int64(math.Ceil(float64(a.Sheets)*(1+share) - nothing)),
		Length: a.Length.Times(1 + share),
		Grams:  a.Grams * (1 + share),
	}
}

func packs(sheets, pack int64) int64 {
	if pack < 2 {
		return sheets
	}
	return (sheets + pack - 1) / pack * pack
}

// runningNeeds is what is not cut from sheets: strips by their length, adhesive by
// the area that it is spread on, thread by its length.
func runningNeeds(sets []Set, b Batch) []Need {
	var all []Need
	add := func(m stock.Material, a Amount) {
		if a.IsZero() {
			return
		}
		i := slices.IndexFunc(all, func(n Need) bool { return n.Kind == m.Kind && n.Material == m.Name })
		if i < 0 {
			i = len(all)
			all = append(all, Need{Kind: m.Kind, Material: m.Name, Stock: m})
		}
		all[i].Net = all[i].Net.and(a)
	}
	for _, s := range sets {
		running(s, s.Copies(), anyPart, add)
	}
	for _, s := range firstOf(sets, b.Buying.SpareBlocks, paperOf) {
		running(s, b.Buying.SpareBlocks, ofBlock, add)
	}
	for _, s := range firstOf(sets, b.Buying.SpareCases, coveringOf) {
		running(s, b.Buying.SpareCases, ofCase, add)
	}
	for i := range all {
		all[i] = all[i].bought(b)
	}
	return all
}

// running adds up what some books of a set take, or spare blocks or cases: thread
// goes with the block, adhesive with the case.
func running(s Set, copies int, of func(part book.PartID) bool, add func(stock.Material, Amount)) {
	many := float64(copies)
	for _, p := range s.Book.Parts {
		if m, _, _ := s.Book.Source(p); m.Kind.ByLength() && of(p.ID) {
			add(m, Amount{Length: max(p.Height, p.Width).Times(many * float64(p.Count))})
		}
	}
	if of(book.PartCovering) {
		add(s.Book.Resolved.Stock.Adhesive, Amount{Grams: s.Book.WetAdhesive() * many})
	}
	if of(book.PartFolio) {
		add(threadOf(s), Amount{Length: s.Book.Sewing.ThreadPerBook.Times(many)})
	}
}
