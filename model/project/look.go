package project

import (
	"bytes"
	"errors"
	"slices"
	"strconv"
	"strings"

	"grainwise/model/book"
	"grainwise/model/stock"
)

// Look is what this version can read of a file that a later one has written.
// It is there to be looked at: saved, it would lose what is left out.
type Look struct {
	Project Project
	LeftOut []string // the entries that are not shown, in the file's order
}

// LookAt reads a file of a later version as far as it can. Other files give the
// error, if any, that Open gives.
func LookAt(path string) (Look, error) {
	data, problem := readFile(path)
	if problem != nil {
		return Look{}, problem
	}
	p, err := Decode(data, path)
	var reason *Problem
	if !errors.As(err, &reason) || reason.Kind != Newer {
		return Look{Project: p}, err
	}
	return lookAt(data, path, reason)
}

func lookAt(data []byte, path string, newer *Problem) (Look, error) {
	s := source{path, bytes.TrimPrefix(data, byteOrderMark)}
	entries, problem := s.readWhole()
	if problem != nil {
		return Look{}, problem
	}
	if _, ok := entries.find("design"); !ok {
		return Look{}, newer // nothing of it that we know
	}
	var l Look
	known := object{
		{name: "format", raw: []byte(jsonText(fileFormat))},
		{name: "version", raw: []byte(strconv.Itoa(fileVersion))},
	}
	if _, ok := entries.find("shelf"); ok {
		known = append(known, field{name: "shelf", raw: l.materials(s, entries)})
	}
	var shelf Project
	if problem := s.shelf(known, &shelf); problem != nil {
		return Look{}, newer
	}
	known = append(known,
		field{name: "design", raw: l.parameters(s, entries, "design", chosen(), "", shelf.Shelf)},
		field{name: "measured", raw: l.parameters(s, entries, "measured", taken(), measuredPrefix, shelf.Shelf)})
	p, err := l.others(entries, known, path)
	if err != nil {
		return Look{}, newer
	}
	l.Project = p
	return l, nil
}

// others adds the entries that make no file strange to us.
func (l *Look) others(entries, known object, path string) (Project, error) {
	p, err := Decode(known.text(), path)
	for _, f := range entries {
		if _, done := known.find(f.name); done {
			continue
		}
		with := append(known[:len(known):len(known)], f)
		if more, err := Decode(with.text(), path); err == nil {
			known, p = with, more
		} else {
			l.LeftOut = append(l.LeftOut, clipped(f.name))
		}
	}
	return p, err
}

// text writes an object's entries.
func (o object) text() []byte {
	lines := make([]string, len(o))
	for i, f := range o {
		lines[i] = jsonText(f.name) + ": " + string(f.raw)
	}
	return []byte("{" + strings.Join(lines, ",\n") + "}")
}

// materials are those that the shelf can hold, one by one.
func (l *Look) materials(s source, entries object) []byte {
	f, _ := entries.find("shelf")
	all, problem := s.readArray(f)
	if problem != nil {
		return []byte("[]")
	}
	var known []string
	for _, m := range all {
		more := append(known[:len(known):len(known)], string(m.raw))
		if _, err := stock.Decode([]byte(`{"materials":[`+strings.Join(more, ",")+"]}"), "shelf"); err == nil {
			known = more
		} else {
			l.LeftOut = append(l.LeftOut, clipped(string(m.raw)))
		}
	}
	return []byte("[" + strings.Join(known, ",") + "]")
}

// parameters are the entries that our table knows, with values that it admits.
func (l *Look) parameters(s source, entries object, name string, params []book.Param, prefix string, shelf stock.Shelf) []byte {
	f, _ := entries.find(name)
	all, problem := s.readObject(f)
	if problem != nil {
		return []byte("{}")
	}
	d := defaultsOf(all)
	var known object
	for _, entry := range all {
		i := slices.IndexFunc(params, func(p book.Param) bool { return p.Key == prefix+entry.name })
		if i >= 0 && s.apply(object{entry}, params, prefix, &d) == nil &&
			onShelf(params[i], params[i].Get(d), shelf) == nil {
			known = append(known, entry)
		} else {
			l.LeftOut = append(l.LeftOut, clipped(entry.name))
		}
	}
	return known.text()
}
