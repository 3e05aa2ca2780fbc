package price

import "slices"

// Two is a release as it is and as it would be.
type Two struct{ Was, Now Release }

// WhatIf works out a release twice: as it is, and with something changed, as another
// sheet's price and use, another board, other minutes, another rate. Change is given a
// copy; in stays as it is.
func WhatIf(in Input, change func(*Input)) (Two, error) {
	was, err := Work(in)
	if err != nil {
		return Two{}, err
	}
	other := in.clone()
	change(&other)
	now, err := Work(other)
	return Two{was, now}, err
}

// Of is one variant's pair; false where it is not on both sides.
func (t Two) Of(variant string) (was, now Of, both bool) {
	i := slices.IndexFunc(t.Was.Variants, func(v Of) bool { return v.ID == variant })
	j := slices.IndexFunc(t.Now.Variants, func(v Of) bool { return v.ID == variant })
	if i < 0 || j < 0 {
		return Of{}, Of{}, false
	}
	return t.Was.Variants[i], t.Now.Variants[j], true
}

func (in Input) clone() Input {
	in.Variants, in.Materials, in.SetUps = slices.Clone(in.Variants), slices.Clone(in.Materials), slices.Clone(in.SetUps)
	for i := range in.Variants {
		in.Variants[i].Times = slices.Clone(in.Variants[i].Times)
	}
	for i := range in.Materials {
		in.Materials[i].Uses = slices.Clone(in.Materials[i].Uses)
	}
	return in
}
