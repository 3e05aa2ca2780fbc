package price

import (
	"math/big"

	"grainwise/assets/words"
)

// Work works out the prices. An [Error] says what of the input cannot be worked with;
// shares that reach 1, and prices that lose money, are findings.
func Work(in Input) (Release, error) {
	currency, err := in.check()
	if err != nil {
		return Release{}, err
	}
	w := work{in: in, currency: currency}
	r := Release{}
	sums := sums{cost: new(big.Rat), takings: new(big.Rat), fees: new(big.Rat)}
	for i, v := range in.Variants {
		of, exact := w.variant(i)
		r.Variants = append(r.Variants, of)
		r.Books += v.Books
		sums.add(exact, int64(v.Books))
		r.Findings = append(r.Findings, w.low(of, exact)...)
	}
	if w.keeps().Sign() <= 0 {
		r.Findings = append(r.Findings, Finding{ID: "price-shares", Level: Stop, Text: words.Say("price.shares", words.With{
			"fee": percent(in.FeeShare), "profit": percent(in.Profit),
		})})
	}
	w.release(&r, sums)
	return r, w.err
}

// work is one input being worked out; amounts are exact, in minor units.
type work struct {
	in       Input
	currency string
	err      error // of the first sum that is out of range
}

// exact is what a book of a variant costs and brings.
type exact struct{ cost, price, fees *big.Rat }

type sums struct{ cost, takings, fees *big.Rat }

func (s *sums) add(e exact, books int64) {
	n := big.NewRat(books, 1)
	s.cost.Add(s.cost, times(e.cost, n))
	s.takings.Add(s.takings, times(e.price, n))
	s.fees.Add(s.fees, times(e.fees, n))
}

func (w *work) variant(i int) (Of, exact) {
	v := w.in.Variants[i]
	of := Of{ID: v.ID, Name: v.Name, Books: v.Books, Overheads: w.money(rat(w.in.Overheads)), Packing: w.money(rat(v.Packing))}
	cost := plus(rat(w.in.Overheads), rat(v.Packing))
	for _, m := range w.in.Materials {
		if share := m.share(v.ID); share.Sign() > 0 {
			one := over(times(m.cost(m.Taken), share), big.NewRat(int64(v.Books), 1))
			cost.Add(cost, one)
			of.Materials = append(of.Materials, Line{ID: m.ID, Name: m.Name, Cost: w.money(one)})
		}
	}
	for _, t := range w.times(v) {
		one := w.hands(t.minutes)
		cost.Add(cost, one)
		minutes, _ := t.minutes.Float64()
		of.Times = append(of.Times, Line{ID: t.Activity, Name: t.Name, Minutes: minutes, Cost: w.money(one)})
	}
	e := exact{cost: cost, price: rat(v.Asked)}
	if keeps := w.keeps(); keeps.Sign() > 0 {
		wanted := over(plus(cost, rat(w.in.FeeFixed)), keeps)
		of.Wanted = w.money(wanted)
		if v.Asked == (Money{}) {
			e.price = rat(of.Wanted) // what is paid is whole cents
		}
	}
	of.Cost, e.fees = w.money(cost), new(big.Rat)
	if of.Wanted != (Money{}) || v.Asked != (Money{}) {
		w.brings(&of, &e)
	}
	return of, e
}

// brings fills in what a price leaves.
func (w *work) brings(of *Of, e *exact) {
	if e.price.Sign() > 0 {
		e.fees = plus(times(e.price, decimal(w.in.FeeShare)), rat(w.in.FeeFixed))
	}
	profit := less(less(e.price, e.fees), e.cost)
	of.Price, of.Fees, of.Profit = w.money(e.price), w.money(e.fees), w.money(profit)
	if e.price.Sign() > 0 {
		of.Margin, _ = over(profit, e.price).Float64()
	}
}

// spent is minutes at one activity, a book's share of the set-up in them.
type spent struct {
	Time
	minutes *big.Rat
}

// times are a book's minutes by activity. Of a set-up each book that has the activity
// bears its share; where no variant has it, every book does.
func (w *work) times(v Variant) []spent {
	var all []spent
	for _, t := range v.Times {
		all = append(all, spent{t, big.NewRat(int64(t.Minutes), 1)})
	}
	for _, s := range w.in.SetUps {
		books := w.in.having(s.Activity)
		share := big.NewRat(int64(s.Minutes), int64(max(books, 1)))
		if books == 0 {
			share = big.NewRat(int64(s.Minutes), int64(w.in.books()))
			all = append(all, spent{s, share})
			continue
		}
		for i := range all {
			if all[i].Activity == s.Activity {
				all[i].minutes = plus(all[i].minutes, share)
				break
			}
		}
	}
	return all
}

// having is how many books have an activity.
func (in Input) having(activity string) int {
	books := 0
	for _, v := range in.Variants {
		for _, t := range v.Times {
			if t.Activity == activity {
				books += v.Books
				break
			}
		}
	}
	return books
}

func (in Input) books() int {
	books := 0
	for _, v := range in.Variants {
		books += v.Books
	}
	return max(books, 1)
}

// hands is what minutes of work cost.
func (w *work) hands(minutes *big.Rat) *big.Rat {
	return over(times(minutes, rat(w.in.Rate)), big.NewRat(60, 1))
}

// keeps is what is left of a price after its fee's and its profit's shares.
func (w *work) keeps() *big.Rat {
	return less(less(big.NewRat(1, 1), decimal(w.in.FeeShare)), decimal(w.in.Profit))
}

// cost is what an amount of a material costs.
func (m Material) cost(a Amount) *big.Rat {
	if a.Of == 0 {
		return new(big.Rat)
	}
	return times(rat(m.Price), big.NewRat(a.Count, a.Of))
}

// share is how much of a material's cost a variant bears.
func (m Material) share(variant string) *big.Rat {
	own, all := new(big.Rat), new(big.Rat)
	for _, u := range m.Uses {
		much := decimal(u.Much)
		all.Add(all, much)
		if u.Variant == variant {
			own.Add(own, much)
		}
	}
	if all.Sign() == 0 {
		return all
	}
	return over(own, all)
}

// release sums the variants up.
func (w *work) release(r *Release, s sums) {
	r.Cost, r.Takings, r.Fees = w.money(s.cost), w.money(s.takings), w.money(s.fees)
	net := less(s.takings, s.fees)
	r.Profit = w.money(less(net, s.cost))
	cash := new(big.Rat)
	for _, m := range w.in.Materials {
		cash.Add(cash, m.cost(m.Bought))
	}
	for _, v := range w.in.Variants {
		cash.Add(cash, times(rat(v.Packing), big.NewRat(int64(v.Books), 1)))
	}
	r.Cash = w.money(cash)
	r.BreakEven, r.CashBack = soldFor(s.cost, net, r.Books), soldFor(cash, net, r.Books)
}

// soldFor is how many books bring a sum, if so many bring what is net of fees; 0 for
// never.
func soldFor(sum, net *big.Rat, books int) int {
	if net.Sign() <= 0 || books == 0 {
		return 0
	}
	n := times(over(sum, net), big.NewRat(int64(books), 1))
	up := new(big.Int).Add(n.Num(), new(big.Int).Sub(n.Denom(), big.NewInt(1)))
	up.Div(up, n.Denom())
	if !up.IsInt64() || up.Int64() > 1<<31 {
		return 0
	}
	return int(up.Int64())
}

// low finds a price that loses money, or leaves less than is wanted. A price of the
// wanted amount, rounded, is never low.
func (w *work) low(of Of, e exact) []Finding {
	if of.Price == (Money{}) {
		return nil
	}
	blanks := words.With{"name": of.Name, "price": of.Price, "cost": of.Cost, "fees": of.Fees, "wanted": of.Wanted, "profit": of.Profit}
	switch {
	case e.price.Cmp(plus(e.cost, e.fees)) < 0:
		return []Finding{{"price-low", Stop, of.ID, words.Say("price.loss", blanks)}}
	case of.Wanted != (Money{}) && of.Price.Minor < of.Wanted.Minor:
		return []Finding{{"price-low", Check, of.ID, words.Say("price.low", blanks)}}
	}
	return nil
}
