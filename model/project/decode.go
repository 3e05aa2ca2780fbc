package project

import (
	"bytes"
	"fmt"
	"slices"
	"strings"
	"unicode"

	"grainwise/assets/words"
	"grainwise/model/book"
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
		problem = s.known(entries, append(batchNames(), "format", "version", "name", "design", "measured", "shelf", "accepted", "notes")...)
	}
	if problem != nil {
		return Project{}, problem
	}
	var p Project
	for _, read := range []func(object, *Project) *Problem{s.name, s.shelf, s.design, s.measured, s.accepted, s.batch, s.notes} {
		if problem := read(entries, &p); problem != nil {
			return Project{}, problem
		}
	}
	return p, nil
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
	shelf, problem := s.materials(f)
	p.Shelf = shelf
	return problem
}

// materials reads a list of materials.
func (s source) materials(f field) (stock.Shelf, *Problem) {
	materials, problem := s.readArray(f)
	if problem != nil {
		return stock.Shelf{}, problem
	}
	wrapped := slices.Concat([]byte(`{"materials":`), f.raw, []byte("}"))
	shelf, err := stock.Decode(wrapped, "shelf")
	if err != nil {
		return stock.Shelf{}, s.damaged(faultAt(err, f, materials), "", err.Error())
	}
	return shelf, nil
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
	complete(design, params, p)
	return s.shelved(design, params, p)
}

// complete finds a material for each that the design does not name: the usual
// one, another of its kind, or the program's own where the shelf has none.
func complete(design object, params []book.Param, p *Project) {
	for _, param := range params {
		_, named := design.find(param.Key)
		if v := param.Get(p.Decisions); named || onShelf(param, v, p.Shelf) == nil {
			continue
		}
		if others := p.Shelf.OfKind(param.Stock); len(others) > 0 {
			param.Set(&p.Decisions, book.WordValue(others[0].Name)) // any name is admitted
		} else if m, ok := stock.Default().Find(param.Stock, param.Get(p.Decisions).Word); ok {
			p.Shelf.Materials = append(p.Shelf.Materials, m)
		}
	}
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
