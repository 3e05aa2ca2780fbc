package post

import "grainwise/model/measure"

// Mover is a parcel that another way of making or packing its books sends into
// another band.
type Mover struct{ Was, Now Packed }

// Movers packs parcels as they are and as they would be, the same ones in the same
// order, and lists those whose band changes.
func (t Table) Movers(was, now []Parcel, packing, other Packing, style measure.Style) ([]Mover, error) {
	if len(was) != len(now) {
		return nil, wrong("", "post.want.same")
	}
	var all []Mover
	for i := range was {
		a, err := t.Pack(was[i], packing, style)
		if err != nil {
			return nil, err
		}
		b, err := t.Pack(now[i], other, style)
		if err != nil {
			return nil, err
		}
		if !same(a.Band, b.Band) {
			all = append(all, Mover{a, b})
		}
	}
	return all, nil
}

func same(a, b *Band) bool { return a == b || a != nil && b != nil && *a == *b }

// All packs every parcel and sums what sending them costs; parcels that no band takes
// add nothing.
func (t Table) All(parcels []Parcel, packing Packing, style measure.Style) ([]Packed, Money, error) {
	var all []Packed
	var sum Money
	for _, p := range parcels {
		packed, err := t.Pack(p, packing, style)
		if err != nil {
			return nil, Money{}, err
		}
		all = append(all, packed)
		if packed.Band == nil {
			continue
		}
		if sum, err = sum.Add(packed.Band.Price); err != nil {
			return nil, Money{}, err
		}
	}
	return all, sum, nil
}
