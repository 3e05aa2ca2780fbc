package project

import (
	"encoding/json"
	"fmt"
	"maps"
	"slices"

	"grainwise/assets/words"
	"grainwise/model/measure"
	"grainwise/model/sheets"
	"grainwise/model/stock"
)

// mostOffcuts bounds the offcuts that a studio keeps, and how many of one.
const (
	mostOffcuts     = 500
	mostOfOneKind   = 9999
	leastOffcutSide = measure.Millimetre
)

// Equal says whether two studios are the same.
func (s Studio) Equal(o Studio) bool {
	return s.Tools == o.Tools && maps.Equal(s.Limits, o.Limits) && s.Printing == o.Printing && slices.Equal(s.Offcuts, o.Offcuts) &&
		s.Showing.Equal(o.Showing)
}

// Keep adds an offcut to those in stock, under a number of its own.
func (s Studio) Keep(o sheets.Offcut) Studio {
	taken := map[string]bool{}
	for _, k := range s.Offcuts {
		taken[k.Name] = true
	}
	for n := 1; ; n++ {
		if name := fmt.Sprint(n); !taken[name] {
			s.Offcuts = append(slices.Clone(s.Offcuts), sheets.Offcut{
				Name: name, Material: o.Material, Length: o.Length, Width: o.Width, Grain: o.Grain, Times: o.Times,
			})
			return s
		}
	}
}

// Drop takes an offcut out of those in stock.
func (s Studio) Drop(name string) Studio {
	s.Offcuts = slices.DeleteFunc(slices.Clone(s.Offcuts), func(o sheets.Offcut) bool { return o.Name == name })
	return s
}

// offcutLines are the offcuts in stock, one a line.
func (s Studio) offcutLines() []string {
	var lines []string
	for _, o := range s.Offcuts {
		lines = append(lines, fmt.Sprintf(`{"name": %s, "material": %s, "length": %s, "width": %s, "grain": %s, "count": %d}`,
			jsonText(o.Name), jsonText(o.Material), measure.FileForm(o.Length), measure.FileForm(o.Width), jsonText(string(o.Grain)), o.Times))
	}
	return lines
}

// offcuts reads the offcuts in stock.
func (s source) offcuts(in field) ([]sheets.Offcut, *Problem) {
	list, problem := s.readArray(in)
	if problem != nil {
		return nil, problem
	}
	if len(list) > mostOffcuts {
		return nil, s.damaged(in.at, in.name, words.Say("studio.want.offcuts", words.With{"most": mostOffcuts}))
	}
	var all []sheets.Offcut
	names := map[string]bool{}
	for _, f := range list {
		o, problem := s.offcut(f)
		if problem != nil {
			return nil, problem
		}
		if names[o.Name] {
			return nil, s.damaged(f.at, "name", words.Say("project.double"))
		}
		names[o.Name] = true
		all = append(all, o)
	}
	return all, nil
}

func (s source) offcut(in field) (o sheets.Offcut, problem *Problem) {
	e, problem := s.readObject(in)
	if problem == nil {
		problem = s.known(e, "name", "material", "length", "width", "grain", "count")
	}
	if problem != nil {
		return o, problem
	}
	if o.Name, problem = s.someText(in, e, "name", longestName, false); problem != nil {
		return o, problem
	}
	if o.Material, problem = s.someText(in, e, "material", longestName, false); problem != nil {
		return o, problem
	}
	grain, problem := s.someText(in, e, "grain", longestName, false)
	if problem != nil {
		return o, problem
	}
	if o.Grain = stock.Grain(grain); !slices.Contains(stock.Grains(), o.Grain) {
		return o, s.damaged(in.at, "grain", words.Say("studio.want.grain"))
	}
	for _, side := range []struct {
		name string
		to   *measure.Length
	}{{"length", &o.Length}, {"width", &o.Width}} {
		f, _ := e.find(side.name)
		l, err := measure.ParseFileForm(string(f.raw))
		if err != nil || l < leastOffcutSide || l > mostTool {
			return o, s.damaged(in.at, side.name, words.Say("studio.want.offcutSize"))
		}
		*side.to = l
	}
	f, _ := e.find("count")
	if json.Unmarshal(f.raw, &o.Times) != nil || o.Times < 1 || o.Times > mostOfOneKind {
		return o, s.damaged(in.at, "count", words.Say("studio.want.offcutCount", words.With{"most": mostOfOneKind}))
	}
	return o, nil
}
