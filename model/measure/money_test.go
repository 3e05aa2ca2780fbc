package measure

import (
	"math"
	"math/big"
	"testing"

	"pgregory.net/rapid"
)

var anyMoney = rapid.Custom(func(t *rapid.T) Money {
	return Money{rapid.Int64().Draw(t, "minor"), rapid.SampledFrom([]string{"EUR", "JPY", "KWD"}).Draw(t, "currency")}
})

// Decimals after ISO 4217 (from memory): euro 2, yen 0, Kuwaiti dinar 3.
func TestMoneyIsShownInFull(t *testing.T) {
	for want, m := range map[string]Money{
		"12.31 EUR": {1231, "EUR"}, "-0.05 EUR": {-5, "EUR"}, "1231 JPY": {1231, "JPY"}, "1.231 KWD": {1231, "KWD"}, "0.00": {},
		"-92233720368547758.08 EUR": {math.MinInt64, "EUR"},
	} {
		if got := m.String(); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

func TestMoneyComesBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := anyMoney.Draw(t, "m")
		back, err := ParseMoney(m.String())
		if err != nil || back != m {
			t.Fatalf("%v → %q → %v, %v", m.Minor, m, back, err)
		}
	})
}

// Sums and products against arithmetic without limits.
func TestMoneyCountsRightOrRefuses(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := rapid.Int64().Draw(t, "a"), rapid.Int64().Draw(t, "b")
		x, y := big.NewInt(a), big.NewInt(b)
		sum, err := Money{a, "EUR"}.Add(Money{b, "EUR"})
		same(t, sum, err, new(big.Int).Add(x, y))
		product, err := Money{a, "EUR"}.Times(b)
		same(t, product, err, new(big.Int).Mul(x, y))
	})
}

func same(t *rapid.T, got Money, err error, want *big.Int) {
	fits := want.IsInt64() && want.Int64() != math.MinInt64
	if fits && (err != nil || got.Minor != want.Int64()) {
		t.Fatalf("%d, %v; want %v", got.Minor, err, want)
	}
	if !want.IsInt64() && err == nil {
		t.Fatalf("%d for %v", got.Minor, want)
	}
}

func TestMoneyOfTwoCurrencies(t *testing.T) {
	if sum, err := (Money{1, "EUR"}).Add(Money{1, "USD"}); err == nil {
		t.Errorf("EUR + USD = %v", sum)
	}
	if sum, err := (Money{}).Add(Money{5, "EUR"}); err != nil || sum != (Money{5, "EUR"}) {
		t.Errorf("nothing + 5 = %v, %v", sum, err)
	}
}

func TestPartOfAPrice(t *testing.T) {
	// 1.35 m of a cloth at 28 EUR a metre.
	if got, err := (Money{2800, "EUR"}).Part(1.35); err != nil || got.String() != "37.80 EUR" {
		t.Errorf("%v, %v", got, err)
	}
	for _, f := range []float64{math.NaN(), math.Inf(1), 1e300} {
		if got, err := (Money{2800, "EUR"}).Part(f); err == nil {
			t.Errorf("× %v = %v", f, got)
		}
	}
}

func TestRefusesWhatIsNoMoney(t *testing.T) {
	for _, text := range []string{"", "12.31", "EUR", "12.314 EUR", "1.5 JPY", "12.31 eur", "1e3 EUR", "999999999999999999 EUR"} {
		if got, err := ParseMoney(text); err == nil {
			t.Errorf("%q is read as %v", text, got)
		}
	}
}
