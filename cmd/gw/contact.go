package main

import (
	"strconv"
	"strings"

	"grainwise/model/book"
	"grainwise/model/project"
	"grainwise/model/stock"
	"grainwise/render/view"
)

// everything is the word for all of a kind that the project's shelf has.
const everything = "all"

// combined are the books of a contact sheet: every paper named in every covering
// named. A kind that is not named keeps the project's own.
func combined(a arguments, p project.Project) ([]book.Book, error) {
	papers, err := namedOf(a, "papers", p, stock.Paper, p.Decisions.Design.Paper.Material)
	if err != nil {
		return nil, err
	}
	coverings, err := namedOf(a, "coverings", p, stock.Covering, p.Decisions.Design.Covering.Material)
	if err != nil {
		return nil, err
	}
	if n := len(papers) * len(coverings); n > view.MostContacts {
		return nil, inputError("gw.contacts", "count", strconv.Itoa(n), "most", strconv.Itoa(view.MostContacts))
	}
	return book.Combine(p.Decisions, p.Shelf, papers, coverings), nil
}

func namedOf(a arguments, option string, p project.Project, kind stock.Kind, own string) ([]string, error) {
	var all []string
	for _, m := range p.Shelf.OfKind(kind) {
		all = append(all, m.Name)
	}
	switch a.value(option) {
	case "":
		return []string{own}, nil
	case everything:
		return all, nil
	}
	var names []string
	for name := range strings.SplitSeq(a.value(option), ",") {
		name = strings.TrimSpace(name)
		if _, ok := p.Shelf.Find(kind, name); !ok {
			return nil, inputError("gw.notOnShelf", "option", option, "found", name, "names", strings.Join(all, ", "))
		}
		names = append(names, name)
	}
	return names, nil
}
