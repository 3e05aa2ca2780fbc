package book

import (
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// The constructors below make a table's row out of the place where a decision
// lives; the row's figures are added by the methods after them.

func size(key string, at func(*Decisions) *Length) Param {
	return Param{
		Key: key, Kind: KindLength,
		get: func(d *Decisions) Value { return LengthValue(*at(d)) },
		set: func(d *Decisions, v Value) { *at(d) = v.Length },
	}
}

func autoSize(key string, at func(*Decisions) *Choice[Length], auto func(*Book) Length) Param {
	return Param{
		Key: key, Kind: KindLength, Derivable: true, standard: [2]Value{AutoValue, AutoValue},
		get:  func(d *Decisions) Value { return fromChoice(*at(d), LengthValue) },
		set:  func(d *Decisions, v Value) { *at(d) = toChoice(v, v.Length) },
		auto: func(b *Book) Value { return LengthValue(auto(b)) },
	}
}

// measured is a size found on the block; automatic is its estimate.
func measured(key string, at func(*Decisions) *Choice[Length], estimate func(*Book) Length) Param {
	p := autoSize(key, at, estimate)
	p.Measure = true
	return p.steps(0.1, 1.0/64)
}

func count(key string, at func(*Decisions) *int, standard int) Param {
	return Param{
		Key: key, Kind: KindCount, Step: 1,
		standard: [2]Value{NumberValue(float64(standard)), NumberValue(float64(standard))},
		get:      func(d *Decisions) Value { return NumberValue(float64(*at(d))) },
		set:      func(d *Decisions, v Value) { *at(d) = int(v.Number) },
	}
}

func number(key string, kind ValueKind, at func(*Decisions) *float64, standard float64) Param {
	return Param{
		Key: key, Kind: kind, standard: [2]Value{NumberValue(standard), NumberValue(standard)},
		get: func(d *Decisions) Value { return NumberValue(*at(d)) },
		set: func(d *Decisions, v Value) { *at(d) = v.Number },
	}
}

func autoWeight(key string, at func(*Decisions) *Choice[measure.Grammage], auto func(*Book) measure.Grammage) Param {
	number := func(g measure.Grammage) Value { return NumberValue(float64(g)) }
	return Param{
		Key: key, Kind: KindGrammage, Derivable: true, standard: [2]Value{AutoValue, AutoValue},
		get:  func(d *Decisions) Value { return fromChoice(*at(d), number) },
		set:  func(d *Decisions, v Value) { *at(d) = toChoice(v, measure.Grammage(v.Number)) },
		auto: func(b *Book) Value { return number(auto(b)) },
	}
}

// word is a choice among a few; the first word is the default.
func word[T ~string](key string, at func(*Decisions) *T, all ...T) Param {
	return Param{
		Key: key, Kind: KindWord, Words: plain(all),
		standard: [2]Value{WordValue(all[0]), WordValue(all[0])},
		get:      func(d *Decisions) Value { return WordValue(*at(d)) },
		set:      func(d *Decisions, v Value) { *at(d) = T(v.Word) },
	}
}

func autoGrain(key string, at func(*Decisions) *Choice[stock.Grain], material func(*Materials) *stock.Material) Param {
	return Param{
		Key: key, Kind: KindWord, Words: plain(stock.Grains()), Derivable: true,
		standard: [2]Value{AutoValue, AutoValue},
		get:      func(d *Decisions) Value { return fromChoice(*at(d), WordValue[stock.Grain]) },
		set:      func(d *Decisions, v Value) { *at(d) = toChoice(v, stock.Grain(v.Word)) },
		auto:     func(b *Book) Value { return WordValue(material(&b.Resolved.OnShelf).Grain) },
	}
}

func yesNo(key string, at func(*Decisions) *bool) Param {
	return Param{
		Key: key, Kind: KindSwitch, Words: []string{"no", "yes"},
		standard: [2]Value{WordValue("no"), WordValue("no")},
		get: func(d *Decisions) Value {
			if *at(d) {
				return WordValue("yes")
			}
			return WordValue("no")
		},
		set: func(d *Decisions, v Value) { *at(d) = v.Word == "yes" },
	}
}

func tornEdges(key string, at func(*Decisions) *TornEdges) Param {
	return Param{
		Key: key, Kind: KindEdges, standard: [2]Value{WordValue("none"), WordValue("none")},
		get: func(d *Decisions) Value { return WordValue(at(d).String()) },
		set: func(d *Decisions, v Value) { *at(d), _ = parseEdges(v.Word) }, // Admit has parsed it once
	}
}

func material(key string, kind stock.Kind, at func(*Decisions) *string, standard string) Param {
	return Param{
		Key: key, Kind: KindMaterial, Stock: kind,
		standard: [2]Value{WordValue(standard), WordValue(standard)},
		get:      func(d *Decisions) Value { return WordValue(*at(d)) },
		set:      func(d *Decisions, v Value) { *at(d) = v.Word },
	}
}

// from gives a size its default, in both systems' own terms [mm, in].
func (p Param) from(mm, inch float64) Param {
	p.standard = [2]Value{LengthValue(measure.MM(mm)), LengthValue(measure.Inches(inch))}
	return p
}

// within gives a number its range, on its own scale.
func (p Param) within(low, high float64) Param {
	p.Min, p.Max = low, high
	return p
}

// steps gives a size its steps [mm, in].
func (p Param) steps(mm, inch float64) Param {
	p.Step, p.StepInch = mm, inch
	return p
}

// step gives a plain number its step.
func (p Param) step(s float64) Param {
	p.Step = s
	return p
}

// on names the part that shows a change, where it is not the group's own.
func (p Param) on(part PartID) Param {
	p.Part = part
	return p
}

// thread lets a size be typed as a linen number.
func (p Param) thread() Param {
	p.Kind = KindThread
	return p
}

// stack lets a leaf's thickness be typed as a measured stack of leaves.
func (p Param) stack() Param {
	p.Stack = true
	return p
}

// when names the designs that a row means anything to.
func (p Param) when(applies func(Design) bool) Param {
	p.applies = applies
	return p
}

// offering narrows a choice to the words that suit a design; a word that does
// not is refused, and what is wanted instead is said with the words of unfit.
func (p Param) offering(fitting func(Design) []string, unfit string) Param {
	p.fitting, p.unfit = fitting, unfit
	return p
}

// under files rows in a group; the first so many are its main ones.
func under(group Group, part PartID, main int, rows ...Param) []Param {
	for i := range rows {
		rows[i].Group, rows[i].Main = group, i < main
		if rows[i].Part == "" {
			rows[i].Part = part
		}
	}
	return rows
}

func fromChoice[T any](c Choice[T], wrap func(T) Value) Value {
	if v, ok := c.Get(); ok {
		return wrap(v)
	}
	return AutoValue
}

func toChoice[T any](v Value, typed T) Choice[T] {
	if v.Auto {
		return Auto[T]()
	}
	return Typed(typed)
}

func plain[T ~string](all []T) []string {
	out := make([]string, len(all))
	for i, w := range all {
		out[i] = string(w)
	}
	return out
}
