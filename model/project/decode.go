package project

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Limits of the texts in a file; they keep damage out, no more.
const (
	longestName  = 120
	longestNotes = 100_000
)

var byteOrderMark = []byte("\xef\xbb\xbf")

// Decode reads a project from a file's text. Missing decisions take the
// defaults of the file's own rounding system. Whatever is wrong gives a
// [*Problem] that names file, place and what was expected.
func Decode(data []byte, file string) (Project, error) {
	s := source{file, bytes.TrimPrefix(data, byteOrderMark)}
	p, problem := s.project()
	if problem != nil {
		return Project{}, problem
	}
	return p, nil
}

func (s source) project() (Project, *Problem) {
	entries, problem := s.readWhole()
	if problem == nil {
		problem = s.identify(entries, fileFormat, fileVersion)
	}
	if problem == nil {
		problem = s.known(entries, "format", "version", "name", "design", "measured", "shelf", "notes")
	}
	if problem != nil {
		return Project{}, problem
	}
	var p Project
	for _, read := range []func(object, *Project) *Problem{s.name, s.shelf, s.design, s.measured, s.notes} {
		if problem := read(entries, &p); problem != nil {
			return Project{}, problem
		}
	}
	return p, nil
}

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

func (s source) name(entries object, p *Project) (problem *Problem) {
	var at int
	p.Name, at, problem = s.text(entries, "name", longestName)
	if problem == nil && strings.ContainsFunc(p.Name, unicode.IsControl) {
		return s.damaged(at, "name", words.Say("project.want.text", words.With{"most": longestName}))
	}
	return problem
}

func (s source) notes(entries object, p *Project) (problem *Problem) {
	p.Notes, _, problem = s.text(entries, "notes", longestNotes)
	return problem
}

// shelf reads the materials; a file without any has those of the program.
func (s source) shelf(entries object, p *Project) *Problem {
	f, ok := entries.find("shelf")
	if !ok {
		p.Shelf = stock.Default()
		return nil
	}
	materials, problem := s.readArray(f)
	if problem != nil {
		return problem
	}
	wrapped := slices.Concat([]byte(`{"materials":`), f.raw, []byte("}"))
	shelf, err := stock.Decode(wrapped, "shelf")
	if err != nil {
		return s.damaged(faultAt(err, f, materials), "", err.Error())
	}
	p.Shelf = shelf
	return nil
}

// faultAt is where the material stands that the error names by its number.
func faultAt(err error, shelf field, materials []field) int {
	var i int
	if n, _ := fmt.Sscanf(err.Error(), "shelf: materials[%d]", &i); n == 1 && i < len(materials) {
		return materials[i].at
	}
	return shelf.at
}

func (s source) design(entries object, p *Project) *Problem {
	f, ok := entries.find("design")
	if !ok {
		return &Problem{Kind: Damaged, File: s.file, Place: "design", Reason: words.Say("project.want.design")}
	}
	design, problem := s.readObject(f)
	if problem != nil {
		return problem
	}
	params := chosen()
	p.Decisions = defaultsOf(design)
	if problem := s.apply(design, params, "", &p.Decisions); problem != nil {
		return problem
	}
	return s.shelved(design, params, p)
}

// defaultsOf are those of the system that the entries themselves are cut in.
func defaultsOf(entries object) book.Decisions {
	system := measure.Metric
	if f, ok := entries.find("rounding.system"); ok && string(f.raw) == `"inch"` {
		system = measure.Imperial
	}
	return book.Defaults(system)
}

// shelved refuses a design whose materials the file's shelf does not have.
func (s source) shelved(design object, params []book.Param, p *Project) *Problem {
	for _, param := range params {
		if err := onShelf(param, param.Get(p.Decisions), p.Shelf); err != nil {
			f, _ := design.find(param.Key)
			return s.refused(f, err)
		}
	}
	return nil
}

func (s source) measured(entries object, p *Project) *Problem {
	f, ok := entries.find("measured")
	if !ok {
		return nil
	}
	measures, problem := s.readObject(f)
	if problem != nil {
		return problem
	}
	return s.apply(measures, taken(), measuredPrefix, &p.Decisions)
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
