package post

import (
	"strconv"

	"grainwise/assets/words"
	"grainwise/model/measure"
)

// Near is how close to a limit is worth a word: a fiftieth of a band's mass, and a
// millimetre of a slot.
const (
	NearMass = 0.02
	NearSlot = measure.Millimetre
)

// Pack lays out one parcel and picks the cheapest band that takes it; of several the
// one listed first, and the fewest piles. An [Error] says what of the input is no
// parcel or table.
func (t Table) Pack(p Parcel, packing Packing, style measure.Style) (Packed, error) {
	if err := t.check(); err != nil {
		return Packed{}, err
	}
	if err := p.check(packing); err != nil {
		return Packed{}, err
	}
	packed := Packed{Parcel: p, Grams: packing.grams(p.Books)}
	for _, b := range p.Books {
		packed.Books += b.Count
	}
	for i, a := range arrangements(p.Books) {
		size := a.size(packing.Padding)
		band := t.cheapest(p.Zone, packed.Grams, size)
		if i == 0 || band != nil && (packed.Band == nil || band.Price.Minor < packed.Band.Price.Minor) {
			packed.Piles, packed.Size, packed.Band = a.piles, size, band
		}
	}
	packed.spare(t)
	packed.find(style)
	return packed, nil
}

func (t Table) cheapest(zone string, grams float64, s Size) *Band {
	var best *Band
	for i := range t.Bands {
		if b := &t.Bands[i]; b.takes(zone, grams, s) && (best == nil || b.Price.Minor < best.Price.Minor) {
			best = b
		}
	}
	return best
}

// spare says how far from its limits a parcel is, and what would move it.
func (p *Packed) spare(t Table) {
	for _, s := range t.Slots {
		passes := Passes{Slot: s, Passes: within(p.Size, s.Length, s.Width, s.Thickness)}
		if s.Thickness > 0 {
			passes.Spare = s.Thickness - p.Size.Thickness
		}
		p.Slots = append(p.Slots, passes)
	}
	price := Money{}
	if b := p.Band; b != nil {
		price = b.Price
		p.Spare = Spare{Grams: spareGrams(b.Most, p.Grams), Thickness: spareOf(b.Thickness, p.Size.Thickness), Girth: spareOf(b.Girth, p.Size.Girth())}
		copied := *b
		p.Band = &copied
	}
	for _, b := range t.Bands {
		if b.Zone != p.Parcel.Zone || !b.fits(p.Size) {
			continue
		}
		step := Step{Band: b, Price: Money{Minor: b.Price.Minor - price.Minor, Currency: b.Price.Currency}}
		switch {
		case b.Most > 0 && p.Grams > b.Most && (p.Band == nil || b.Price.Minor < price.Minor):
			step.Grams = p.Grams - b.Most
			if p.Lighter == nil || step.Grams < p.Lighter.Grams {
				p.Lighter = &step
			}
		case p.Band != nil && p.Band.Most > 0 && b.Price.Minor > price.Minor && (b.Most == 0 || b.Most > p.Band.Most):
			step.Grams = p.Band.Most - p.Grams
			if p.Heavier == nil || b.Price.Minor < p.Heavier.Band.Price.Minor {
				p.Heavier = &step
			}
		}
	}
}

func spareGrams(most, grams float64) float64 {
	if most == 0 {
		return 0
	}
	return most - grams
}

func spareOf(limit, is Length) Length {
	if limit == 0 {
		return 0
	}
	return limit - is
}

// find tells what is tight: a mass within a fiftieth below its band's limit or above
// that of a cheaper one, a thickness within a millimetre of a slot, no band at all.
func (p *Packed) find(style measure.Style) {
	add := func(id, key string, blanks words.With) {
		blanks["to"], blanks["mass"] = p.Parcel.To, Grams(p.Grams)
		p.Findings = append(p.Findings, Finding{id, words.Say(key, blanks)})
	}
	if p.Band == nil {
		add("post-none", "post.none", words.With{"zone": p.Parcel.Zone, "size": p.Size.Text(style)})
	}
	if b := p.Band; b != nil && b.Most > 0 && p.Spare.Grams < NearMass*b.Most && p.Heavier != nil {
		add("post-band", "post.near", words.With{"band": b.Name, "most": Grams(b.Most), "spare": Grams(p.Spare.Grams), "price": p.Heavier.Price})
	}
	if l := p.Lighter; l != nil && l.Grams <= NearMass*l.Band.Most {
		add("post-band", "post.over", words.With{"band": l.Band.Name, "most": Grams(l.Band.Most), "over": Grams(l.Grams)})
	}
	for _, s := range p.Slots {
		if s.Slot.Thickness > 0 && s.Spare <= NearSlot && s.Spare >= -NearSlot {
			add("post-band", "post.slot", words.With{"slot": s.Slot.Name, "thick": style.WithUnit(p.Size.Thickness), "limit": style.WithUnit(s.Slot.Thickness)})
		}
	}
}

// Grams writes a mass to a tenth of a gram.
func Grams(g float64) string { return strconv.FormatFloat(g, 'f', 1, 64) + " g" }

// Text writes a size, longest side first.
func (s Size) Text(style measure.Style) string {
	return style.Format(s.Length) + " × " + style.Format(s.Width) + " × " + style.WithUnit(s.Thickness)
}
