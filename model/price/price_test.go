package price

import (
	"errors"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/measure"
)

func eur(minor int64) Money { return Money{Minor: minor, Currency: "EUR"} }

// demo is the demo project's release: sheets, prices and counts from its tables.
// Cloth lies in rows of two of 252 mm; its card takes one sheet.
func demo() Input {
	in := Input{
		Rate: eur(2200), Overheads: eur(250), FeeShare: 0.04, FeeFixed: eur(30), Profit: 0.2,
		SetUps: []Time{{Activity: "bench", Name: "set-up", Minutes: 195}},
	}
	for _, v := range []struct {
		id    string
		books int
	}{{"WK", 6}, {"WB", 5}, {"WF", 3}, {"OK", 4}, {"OB", 3}, {"OF", 3}} {
		in.Variants = append(in.Variants, Variant{ID: v.id, Name: v.id, Books: v.books, Packing: eur(165), Times: []Time{{"bench", "bench", 84}}})
	}
	sheet := func(id string, price int64, taken Amount, of string) {
		m := Material{ID: id, Name: id, Price: eur(price), Taken: taken, Bought: taken}
		for _, v := range in.Variants {
			if strings.Contains(v.ID, of) {
				m.Uses = append(m.Uses, Use{v.ID, float64(v.Books)})
			}
		}
		in.Materials = append(in.Materials, m)
	}
	row := 252 * measure.Millimetre
	sheet("white", 240, Sheets(45), "W")
	sheet("oat", 190, Sheets(84), "O")
	sheet("liner", 160, Sheets(6), "")
	sheet("board", 520, Sheets(3), "")
	sheet("card", 110, Sheets(1), "")
	sheet("kelp", 2800, Metres(5*row), "K")
	sheet("brickdust", 2400, Metres(4*row), "B")
	sheet("fog", 3100, Metres(3*row), "F")
	return in
}

func worked(t testing.TB, in Input) Release {
	t.Helper()
	r, err := Work(in)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func line(t *testing.T, lines []Line, id string) Money {
	t.Helper()
	for _, l := range lines {
		if l.ID == id {
			return l.Cost
		}
	}
	t.Fatalf("no %s in %+v", id, lines)
	return Money{}
}

// Source: the demo project, by hand. White paper 45 × 2.40 / 14 = 7.714; oat 84 × 1.90
// / 10 = 15.96, so about 8 EUR more (its story, 2). Liner 6 × 1.60 / 24 = 0.40, board
// 3 × 5.20 / 24 = 0.65, card 1.10 / 24 = 0.0458, Kelp 1.26 m × 28 / 10 = 3.528; time
// (84 + 195/24) min × 22 / 60 = 33.779; with overheads and packing 50.267. Price with a
// fifth of profit (50.267 + 0.30) / (1 − 0.04 − 0.2) = 66.536.
func TestTheDemosBooks(t *testing.T) {
	r := worked(t, demo())
	white, oat := r.Variants[0], r.Variants[3]
	for _, c := range []struct {
		of   Of
		id   string
		want int64
	}{{white, "white", 771}, {oat, "oat", 1596}, {white, "liner", 40}, {white, "board", 65}, {white, "card", 5}, {white, "kelp", 353}} {
		if got := line(t, c.of.Materials, c.id); got != eur(c.want) {
			t.Errorf("%s of a book: %v, want %v", c.id, got, eur(c.want))
		}
	}
	if more := line(t, oat.Materials, "oat").Minor - line(t, white.Materials, "white").Minor; more != 825 {
		t.Errorf("the toned book's paper costs %d more", more)
	}
	if got := line(t, white.Times, "bench"); got != eur(3378) || white.Times[0].Minutes != 92.125 {
		t.Errorf("time %v, %v min", got, white.Times[0].Minutes)
	}
	if white.Cost != eur(5027) || white.Wanted != eur(6654) || white.Price != white.Wanted {
		t.Errorf("cost %v, price %v", white.Cost, white.Wanted)
	}
	// 66.54 × 0.04 + 0.30 = 2.9616; 66.54 − 2.9616 − 50.2673 = 13.3111
	if white.Fees != eur(296) || white.Profit != eur(1331) || math.Abs(white.Margin-0.2) > 0.0002 || len(r.Findings) != 0 {
		t.Errorf("fees %v, profit %v, margin %v; %v", white.Fees, white.Profit, white.Margin, r.Findings)
	}
}

// By hand, all 24: paper 108 + 159.60, liner 9.60, board 15.60, card 1.10, cloth
// 35.28 + 24.192 + 23.436 = 376.808 to buy; packing 24 × 1.65 = 39.60; time (195 +
// 2016) × 22 / 60 = 810.70; overheads 60. Cash 416.408, cost 1287.108.
func TestTheDemosRelease(t *testing.T) {
	r := worked(t, demo())
	if r.Books != 24 || r.Cash != eur(41641) || r.Cost != eur(128711) {
		t.Errorf("%d books, cash %v, cost %v", r.Books, r.Cash, r.Cost)
	}
	if r.Takings.Minor-r.Fees.Minor-r.Cost.Minor != r.Profit.Minor && r.Profit.Minor == 0 {
		t.Errorf("%+v", r)
	}
	// a book brings some 68 EUR net, so 19 to have the cost back and 7 the cash
	net := float64(r.Takings.Minor-r.Fees.Minor) / 24
	if r.BreakEven != int(math.Ceil(128710.8/net)) || r.CashBack != int(math.Ceil(41640.8/net)) || r.BreakEven != 19 || r.CashBack != 7 {
		t.Errorf("break even %d, cash back %d; net %v", r.BreakEven, r.CashBack, net)
	}
}

// By hand: one price for all of 68 leaves 68 × 0.96 − 0.30 = 64.98 less the cost.
func TestAnAskedPrice(t *testing.T) {
	in := demo()
	for i := range in.Variants {
		in.Variants[i].Asked = eur(6800)
	}
	r := worked(t, in)
	if got := r.Variants[0]; got.Price != eur(6800) || got.Fees != eur(302) || got.Profit != eur(6498-5027) {
		t.Errorf("%+v", got)
	}
	if len(r.Findings) != 3 { // the three toned ones leave less than is wanted
		t.Errorf("%+v", r.Findings)
	}
	for i := range in.Variants {
		in.Variants[i].Asked = eur(5200)
	}
	for _, f := range worked(t, in).Findings {
		if f.ID != "price-low" || f.Level != Stop {
			t.Errorf("%+v", f)
		}
	}
}

// Fees and profit that take all, or more, leave no price; one step below they leave
// one. By hand: 1 − 0.04 − 0.959 = 0.001, so a thousand times cost and fee.
func TestSharesThatReachOne(t *testing.T) {
	for profit, finds := range map[float64]bool{0.96: true, 0.97: true, 1: true, 0.959: false} {
		in := demo()
		in.Profit = profit
		r := worked(t, in)
		if got := len(r.Findings) == 1 && r.Findings[0].ID == "price-shares" && r.Findings[0].Level == Stop; got != finds {
			t.Errorf("profit %v: %+v", profit, r.Findings)
		}
		if none := r.Variants[0].Wanted == (Money{}); none != finds {
			t.Errorf("profit %v: wanted %v", profit, r.Variants[0].Wanted)
		}
		if !finds && r.Variants[0].Wanted != eur(5056729) {
			t.Errorf("wanted %v", r.Variants[0].Wanted)
		}
	}
}

func TestWhatCannotBePriced(t *testing.T) {
	for name, c := range map[string]struct {
		spoil func(*Input)
		says  string
	}{
		"two currencies":     {func(in *Input) { in.Materials[3].Price.Currency = "GBP" }, "board is in GBP"},
		"another rate":       {func(in *Input) { in.Overheads.Currency = "USD" }, "overheads is in USD"},
		"minus a price":      {func(in *Input) { in.Materials[0].Price.Minor = -1 }, "white: -0.01 EUR"},
		"minus sheets":       {func(in *Input) { in.Materials[0].Taken.Count = -1 }, "white"},
		"used by nobody":     {func(in *Input) { in.Materials[0].Uses = nil }, "white"},
		"used by a stranger": {func(in *Input) { in.Materials[0].Uses[0].Variant = "X" }, "white"},
		"no number":          {func(in *Input) { in.Materials[0].Uses[0].Much = math.NaN() }, "white"},
		"a share of NaN":     {func(in *Input) { in.FeeShare = math.NaN() }, "Shares"},
		"minus a share":      {func(in *Input) { in.Profit = -0.1 }, "Shares"},
		"no books":           {func(in *Input) { in.Variants[0].Books = 0 }, "WK"},
		"twice":              {func(in *Input) { in.Variants[1].ID = "WK" }, "WB"},
		"nothing":            {func(in *Input) { in.Variants = nil }, "nothing"},
		"minus minutes":      {func(in *Input) { in.SetUps[0].Minutes = -1 }, "Minutes"},
		"too much":           {func(in *Input) { in.Rate.Minor = math.MaxInt64 }, "too large"},
	} {
		in := demo()
		c.spoil(&in)
		if _, err := Work(in); err == nil || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%s: %v", name, err)
		} else if known := (*Error)(nil); !errors.As(err, &known) {
			t.Errorf("%s: %T", name, err)
		}
	}
	if _, err := Work(Input{Variants: []Variant{{ID: "a", Books: 1}}}); err == nil {
		t.Error("no currency")
	}
}

// The story's what-ifs by hand: 198 mm high, ten folios a sheet, takes 34 sheets and
// with a twentieth 36: 36 × 2.40 / 14 = 6.17 for 7.71. Boards of 2 mm at 4.30 cost
// 12.90 / 24 = 0.5375 for 0.65, 50.1548 for 50.2673. An hour at 25 for 22 is 92.125 min × 3 / 60 = 4.61 more.
func TestWhatIf(t *testing.T) {
	for name, c := range map[string]struct {
		change func(*Input)
		more   int64
	}{
		"size":  {func(in *Input) { in.Materials[0].Taken = Sheets(36) }, 4872 - 5027},
		"board": {func(in *Input) { in.Materials[3].Price = eur(430) }, 5015 - 5027},
		"rate":  {func(in *Input) { in.Rate = eur(2500) }, 5487 - 5027},
		"none":  {func(in *Input) {}, 0},
	} {
		in := demo()
		two, err := WhatIf(in, c.change)
		was, now, both := two.Of("WK")
		if err != nil || !both || now.Cost.Minor-was.Cost.Minor != c.more {
			t.Errorf("%s: %v, %v, %v", name, was.Cost, now.Cost, err)
		}
		if again := worked(t, in); again.Cost != two.Was.Cost {
			t.Errorf("%s: the input was changed", name)
		}
	}
}

// Nothing is rounded on the way: three books that share one cent cost one cent
// together, and a currency without decimals is rounded to whole units.
func TestRoundingIsLast(t *testing.T) {
	in := Input{Variants: []Variant{{ID: "a", Books: 3}}, Materials: []Material{{ID: "m", Price: eur(1), Taken: Sheets(1), Uses: []Use{{"a", 1}}}}}
	if r := worked(t, in); r.Cost != eur(1) || r.Variants[0].Cost != eur(0) {
		t.Errorf("%v, a book %v", r.Cost, r.Variants[0].Cost)
	}
	for minutes, want := range map[int]int64{1: 0, 2: 0, 3: 1, 8: 1, 9: 2} { // 10 yen an hour: a sixth a minute, half up
		in := Input{Variants: []Variant{{ID: "a", Books: 1, Times: []Time{{"x", "x", minutes}}}}, Rate: Money{Minor: 10, Currency: "JPY"}}
		if got := worked(t, in).Variants[0].Cost; got != (Money{Minor: want, Currency: "JPY"}) {
			t.Errorf("%d min: %v, want %d", minutes, got, want)
		}
	}
}

// By hand, half up: 0.5 → 1, −0.5 → 0, −0.6 → −1, −1.5 → −1.
func TestHalfUp(t *testing.T) {
	w := work{currency: "EUR"}
	for text, want := range map[string]int64{"1/2": 1, "-1/2": 0, "-3/5": -1, "-3/2": -1, "49/100": 0, "7/2": 4} {
		r := decimal(0)
		r.SetString(text)
		if got := w.money(r); got.Minor != want {
			t.Errorf("%s → %d, want %d", text, got.Minor, want)
		}
	}
}

// Whatever is worked out: a wanted price leaves the wanted profit to the rounded cent,
// the parts add up, and the release is the sum of its books; against plain
// floating-point sums.
func TestAnyRelease(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		cents := func(name string, most int64) Money { return eur(rapid.Int64Range(1, most).Draw(t, name)) }
		in := Input{
			Rate: cents("rate", 10000), Overheads: cents("overheads", 1000), FeeFixed: cents("fee", 200),
			FeeShare: float64(rapid.IntRange(0, 40).Draw(t, "fee %")) / 100, Profit: float64(rapid.IntRange(0, 50).Draw(t, "profit %")) / 100,
			SetUps: []Time{{"cut", "cut", rapid.IntRange(0, 300).Draw(t, "set-up")}},
		}
		books, minutes := 0, float64(in.SetUps[0].Minutes)
		for i := range rapid.IntRange(1, 5).Draw(t, "variants") {
			v := Variant{ID: string(rune('a' + i)), Books: rapid.IntRange(1, 40).Draw(t, "books"), Packing: cents("packing", 500),
				Times: []Time{{"cut", "cut", rapid.IntRange(0, 100).Draw(t, "minutes")}}}
			in.Variants = append(in.Variants, v)
			books += v.Books
			minutes += float64(v.Books * v.Times[0].Minutes)
		}
		cost := minutes*float64(in.Rate.Minor)/60 + float64(books)*float64(in.Overheads.Minor)
		for i := range rapid.IntRange(0, 4).Draw(t, "materials") {
			m := Material{ID: string(rune('A' + i)), Price: cents("price", 4000), Taken: Sheets(rapid.Int64Range(0, 200).Draw(t, "sheets"))}
			for _, v := range in.Variants {
				m.Uses = append(m.Uses, Use{v.ID, rapid.Float64Range(0.01, 9).Draw(t, "use")})
			}
			in.Materials = append(in.Materials, m)
			cost += float64(m.Taken.Count * m.Price.Minor)
		}
		for _, v := range in.Variants {
			cost += float64(v.Books) * float64(v.Packing.Minor)
		}
		r, err := Work(in)
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(float64(r.Cost.Minor)-cost) > 0.51+cost*1e-12 {
			t.Errorf("cost %v, want %v", r.Cost, cost)
		}
		takings := int64(0)
		for i, v := range r.Variants {
			price := float64(v.Wanted.Minor)
			left := price*(1-in.FeeShare) - float64(in.FeeFixed.Minor) - float64(v.Cost.Minor)
			if math.Abs(left-price*in.Profit) > 1.6 {
				t.Errorf("%+v leaves %v of %v", v, left, price)
			}
			lines := v.Overheads.Minor + v.Packing.Minor
			for _, l := range append(v.Materials, v.Times...) {
				lines += l.Cost.Minor
			}
			if d := lines - v.Cost.Minor; d > int64(len(v.Materials)+1) || -d > int64(len(v.Materials)+1) {
				t.Errorf("lines come to %d, cost %v", lines, v.Cost)
			}
			takings += int64(in.Variants[i].Books) * v.Price.Minor
		}
		if r.Takings.Minor != takings || r.Books != books {
			t.Errorf("takings %v, want %d", r.Takings, takings)
		}
	})
}
