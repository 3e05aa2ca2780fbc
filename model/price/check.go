package price

import (
	"math"

	"grainwise/assets/words"
)

// Error says what of an input cannot be worked with.
type Error struct {
	Where string // the variant, material or field that it is about
	Want  string // what is wrong and what would be right, in the user's language
}

// Error is the sentence to show.
func (e *Error) Error() string { return e.Want }

func wrong(where, key string, blanks ...words.With) *Error {
	return &Error{where, words.Say(key, append(blanks, words.With{"where": where})...)}
}

// amount is a Money of the input with what it is for.
type amount struct {
	where string
	money Money
}

// check returns the input's one currency, or what is wrong.
func (in Input) check() (string, error) {
	if err := in.checkNumbers(); err != nil {
		return "", err
	}
	currency := ""
	for _, a := range in.amounts() {
		switch {
		case a.money == Money{}:
			continue
		case a.money.Minor < 0:
			return "", wrong(a.where, "price.want.notBelow", words.With{"amount": a.money})
		case currency != "" && a.money.Currency != currency:
			return "", wrong(a.where, "price.want.oneCurrency", words.With{"one": currency, "other": a.money.Currency})
		}
		currency = a.money.Currency
	}
	if currency == "" {
		return "", wrong("", "price.want.money")
	}
	return currency, nil
}

func (in Input) amounts() []amount {
	all := []amount{
		{words.Say("price.rate"), in.Rate}, {words.Say("price.overheads"), in.Overheads}, {words.Say("price.feeFixed"), in.FeeFixed},
	}
	for _, v := range in.Variants {
		all = append(all, amount{v.Name, v.Packing}, amount{v.Name, v.Asked})
	}
	for _, m := range in.Materials {
		all = append(all, amount{m.Name, m.Price})
	}
	return all
}

func (in Input) checkNumbers() error {
	for _, share := range []float64{in.FeeShare, in.Profit} {
		if !(share >= 0 && share <= 100) {
			return wrong("", "price.want.share")
		}
	}
	ids := map[string]bool{}
	for _, v := range in.Variants {
		switch {
		case v.Books < 1 || v.Books > mostBooks || ids[v.ID]:
			return wrong(v.Name, "price.want.variant", words.With{"most": mostBooks})
		case minus(v.Times):
			return wrong(v.Name, "price.want.minutes")
		}
		ids[v.ID] = true
	}
	if len(in.Variants) == 0 {
		return wrong("", "price.want.variants")
	}
	if minus(in.SetUps) {
		return wrong("", "price.want.minutes")
	}
	for _, m := range in.Materials {
		if err := m.check(ids); err != nil {
			return err
		}
	}
	return nil
}

const mostBooks = 1_000_000

func minus(times []Time) bool {
	for _, t := range times {
		if t.Minutes < 0 {
			return true
		}
	}
	return false
}

func (m Material) check(variants map[string]bool) error {
	if m.Taken.Count < 0 || m.Taken.Of < 0 || m.Bought.Count < 0 || m.Bought.Of < 0 {
		return wrong(m.Name, "price.want.amount")
	}
	used := 0.0
	for _, u := range m.Uses {
		if !variants[u.Variant] || !(u.Much >= 0) || math.IsInf(u.Much, 0) {
			return wrong(m.Name, "price.want.use")
		}
		used += u.Much
	}
	if used == 0 && m.Taken.Count > 0 {
		return wrong(m.Name, "price.want.use")
	}
	return nil
}
