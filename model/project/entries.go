package project

import (
	"encoding/json"
	"errors"
	"slices"
	"strconv"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
)

// identify looks whose file it is and of which version, before anything else.
func (s source) identify(entries object, format string, version int) *Problem {
	var found string
	if f, ok := entries.find("format"); !ok || json.Unmarshal(f.raw, &found) != nil || found != format {
		return &Problem{Kind: Foreign, File: s.file, Place: "format",
			Reason: words.Say("project.foreign", words.With{"format": format})}
	}
	f, ok := entries.find("version")
	if !ok {
		return &Problem{Kind: Damaged, File: s.file, Place: "version", Reason: words.Say("project.want.version")}
	}
	switch n, err := strconv.ParseUint(string(f.raw), 10, 32); {
	case err != nil || n == 0:
		return s.damaged(f.at, "version", words.Say("project.want.version"))
	case n > uint64(version):
		return &Problem{Kind: Newer, File: s.file, Place: "version",
			Reason: words.Say("project.newer", words.With{"found": n, "known": version})}
	}
	return nil
}

// known refuses entries that the file's form does not have.
func (s source) known(entries object, names ...string) *Problem {
	for _, f := range entries {
		if !slices.Contains(names, f.name) {
			return s.unknown(f, names)
		}
	}
	return nil
}

func (s source) unknown(f field, names []string) *Problem {
	e := unknownKey(f.name, names)
	return s.damaged(f.at, f.name, e.Text+": "+e.Want)
}

// text reads an entry that is a text of limited length; none is empty.
func (s source) text(entries object, name string, most int) (text string, at int, problem *Problem) {
	f, ok := entries.find(name)
	if !ok {
		return "", 0, nil
	}
	if err := json.Unmarshal(f.raw, &text); err != nil || f.raw[0] != '"' || len([]rune(text)) > most {
		return "", f.at, s.damaged(f.at, name, words.Say("project.want.text", words.With{"most": most}))
	}
	return text, f.at, nil
}

// defaultsOf are those of the system that the entries themselves are cut in.
func defaultsOf(entries object) book.Decisions {
	system := measure.Metric
	if f, ok := entries.find("rounding.system"); ok && string(f.raw) == `"inch"` {
		system = measure.Imperial
	}
	return book.Defaults(system)
}

// chosen are the parameters that a maker decides, taken those that are measured.
func chosen() []book.Param { return paramsWhere(func(p book.Param) bool { return !p.Measure }) }

func taken() []book.Param { return paramsWhere(func(p book.Param) bool { return p.Measure }) }

func paramsWhere(want func(book.Param) bool) []book.Param {
	return slices.DeleteFunc(book.Params(), func(p book.Param) bool { return !want(p) })
}

// apply sets every entry, in the order of the table whatever that of the file:
// some keys set others with them. The prefix is what the names leave out.
func (s source) apply(entries object, params []book.Param, prefix string, d *book.Decisions) *Problem {
	names := keysOf(params)
	for i := range names {
		names[i] = strings.TrimPrefix(names[i], prefix)
	}
	if problem := s.known(entries, names...); problem != nil {
		return problem
	}
	for i, param := range params {
		f, ok := entries.find(names[i])
		if !ok {
			continue
		}
		v, err := readEntry(param, f.raw)
		if err == nil {
			err = param.Set(d, v)
		}
		if err != nil {
			return s.refused(f, err)
		}
	}
	return nil
}

// refused puts the error of a parameter at its place in the file.
func (s source) refused(f field, err error) *Problem {
	var e *book.ValueError
	if !errors.As(err, &e) {
		return s.damaged(f.at, f.name, err.Error())
	}
	return s.damaged(f.at, e.Key, clipped(e.Text)+": "+e.Want)
}
