package project

import (
	"math/big"

	"grainwise/assets/words"
	"grainwise/model/cutting"
)

// exact turns the numbers of an instance into whole ones of their common unit.
func (s source) exact(d draftInstance) (Instance, *Problem) {
	sizes, costs, values := []*big.Rat{d.kerf, d.trim[0], d.trim[1], d.trim[2], d.trim[3]}, []*big.Rat{}, []*big.Rat{}
	for _, sheet := range d.sheets {
		sizes, costs = append(sizes, sheet.width, sheet.height), append(costs, sheet.cost)
	}
	if d.roll != nil {
		sizes = append(sizes, d.roll.width, d.roll.unit)
	}
	for _, p := range d.pieces {
		sizes = append(sizes, p.width, p.height)
		if d.value {
			values = append(values, p.value)
		}
	}
	i := Instance{Value: d.value, Unit: commonUnit(sizes), Cost: commonUnit(costs), Worth: commonUnit(values)}
	if len(d.sheets) == 1 && d.sheets[0].cost.Sign() > 0 {
		i.Cost = d.sheets[0].cost // of one size every sheet counts as one
	}
	return s.filled(i, d)
}

func (s source) filled(i Instance, d draftInstance) (Instance, *Problem) {
	w := wholes{unit: i.Unit}
	trim := cutting.Trim{Left: w.of(d.trim[0]), Right: w.of(d.trim[1]), Top: w.of(d.trim[2]), Bottom: w.of(d.trim[3])}
	i.Job.Kerf = w.of(d.kerf)
	costs, worth, one := wholes{unit: i.Cost}, wholes{unit: i.Worth}, wholes{unit: big.NewRat(1, 1)}
	for _, sheet := range d.sheets {
		stock := int64(cutting.Unlimited)
		if sheet.count != nil {
			stock = max(one.of(sheet.count), 0)
			if sheet.count.Sign() < 0 || !sheet.count.IsInt() {
				return i, s.damaged(sheet.at, "count", words.Say("instance.want.whole"))
			}
		}
		i.Job.Sheets = append(i.Job.Sheets, cutting.Sheet{
			ID: sheet.id, Width: w.of(sheet.width), Height: w.of(sheet.height), Trim: trim, Cost: costs.of(sheet.cost), Stock: stock,
		})
	}
	if i.Stack = one.of(d.stack); i.Stack < 1 {
		return i, s.damaged(0, "stack", words.Say("instance.want.stack"))
	}
	for _, p := range d.pieces {
		piece := cutting.Piece{ID: p.id, Width: w.of(p.width), Height: w.of(p.height), Turn: p.turn}
		if p.count != nil {
			if p.count.Sign() < 0 || !p.count.IsInt() {
				return i, s.damaged(p.at, "count", words.Say("instance.want.whole"))
			}
			piece.Count = one.of(p.count)
		}
		if d.value {
			piece.Value = worth.of(p.value)
		}
		i.Job.Pieces = append(i.Job.Pieces, piece)
	}
	if d.roll != nil {
		i.Roll = &cutting.Roll{Width: w.of(d.roll.width), Unit: w.of(d.roll.unit), Pieces: i.Job.Pieces, Kerf: i.Job.Kerf}
	}
	if w.lost || costs.lost || worth.lost || one.lost {
		return i, s.damaged(0, "", words.Say("instance.tooMuch"))
	}
	return i, nil
}

// commonUnit is the power of ten that all numbers are whole multiples of.
func commonUnit(numbers []*big.Rat) *big.Rat {
	digits := 0
	for _, r := range numbers {
		n, _ := r.FloatPrec()
		digits = max(digits, n)
	}
	ten := new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(digits)), nil)
	return new(big.Rat).SetFrac(big.NewInt(1), ten)
}

// wholes counts units; lost says that a number was too great for it.
type wholes struct {
	unit *big.Rat
	lost bool
}

func (w *wholes) of(r *big.Rat) int64 {
	n := new(big.Rat).Quo(r, w.unit)
	if !n.IsInt() || !n.Num().IsInt64() {
		w.lost = true
		return 0
	}
	return n.Num().Int64()
}
