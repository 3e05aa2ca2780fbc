package main

import (
	"context"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/render/papers"
	"grainwise/render/sheet"
)

// What may be asked of papers.
const (
	leastDPI, mostDPI = 30, 1200
	mostStudents      = 200
)

// papersCommand writes every printed page of a design: gw papers FILE --out DIR.
func papersCommand(args []string, out io.Writer) (int, error) {
	a, err := parse(args, []string{"out", "only", "page", "across", "down", "students", "dpi", "date", "set", "studio"}, []string{"list", "left"})
	if err != nil {
		return exitInput, err
	}
	if a.has("list") {
		return exitDone, listPapers(a, out)
	}
	folder := a.value("out")
	if folder == "" {
		return exitInput, inputError("gw.missingDir")
	}
	in, order, err := a.papers()
	if err != nil {
		return exitInput, err
	}
	files, err := papers.Files(context.Background(), in, order, nil)
	if err != nil {
		return exitInput, err
	}
	return exitDone, writeAll(folder, files)
}

func listPapers(a arguments, out io.Writer) error {
	if err := a.noFiles(); err != nil {
		return err
	}
	for _, k := range sheet.All() {
		if _, err := fmt.Fprintf(out, "%-18s %s\n", k.ID, k.Label()); err != nil {
			return err
		}
	}
	return nil
}

// papers reads the design and what is wanted of it.
func (a arguments) papers() (in sheet.Input, order papers.Order, err error) {
	printer, err := a.printer()
	if err != nil {
		return in, order, err
	}
	date, err := a.date()
	if err != nil {
		return in, order, err
	}
	students, err := a.whole("students", 0, mostStudents)
	if err != nil {
		return in, order, err
	}
	if order.DPI, err = a.whole("dpi", leastDPI, mostDPI); err != nil {
		return in, order, err
	}
	p, studio, err := openIn(a)
	if err != nil {
		return in, order, err
	}
	b := p.Book()
	cuttings, err := cuttingsOf(b)
	if err != nil {
		return in, order, err
	}
	in = sheet.Input{
		Book: b, Name: p.Name, Revision: p.Revision(), Date: date, Findings: p.Findings(b, studio), Notes: p.Notes,
		System: p.Decisions.Design.CutIn, Cuttings: cuttings, Printer: printer, Left: a.has("left"), Students: students,
	}
	order.Kinds, err = a.only(in)
	return in, order, err
}

// only is the papers asked for, all of this design without an answer.
func (a arguments) only(in sheet.Input) ([]sheet.Kind, error) {
	kinds := sheet.For(in)
	if !a.has("only") {
		return kinds, nil
	}
	var some []sheet.Kind
	for _, id := range strings.Split(a.value("only"), ",") {
		i := slices.IndexFunc(kinds, func(k sheet.Kind) bool { return k.ID == strings.TrimSpace(id) })
		if i < 0 {
			return nil, inputError("gw.unknownPaper", "found", id, "names", paperNames(kinds))
		}
		some = append(some, kinds[i])
	}
	return some, nil
}

func paperNames(kinds []sheet.Kind) string {
	var names []string
	for _, k := range kinds {
		names = append(names, k.ID)
	}
	return strings.Join(names, ", ")
}

func (a arguments) printer() (p sheet.Printer, err error) {
	p.Format = sheet.Formats()[0]
	if id := a.value("page"); id != "" {
		if p.Format = sheet.FormatOf(id); p.Format.ID != id {
			return p, inputError("gw.wantPage", "found", id)
		}
	}
	if p.Across, err = a.barLength("across"); err != nil {
		return p, err
	}
	p.Down, err = a.barLength("down")
	return p, err
}

// barLength is what a check bar of 100 mm measured, 0 where it was not.
func (a arguments) barLength(name string) (measure.Length, error) {
	if !a.has(name) {
		return 0, nil
	}
	l, err := measure.ParseLength(a.value(name), measure.Metric)
	if err != nil || l < sheet.LeastBar || l > sheet.MostBar {
		return 0, inputError("gw.wantBar", "option", "--"+name, "found", a.value(name))
	}
	return l, nil
}

func (a arguments) date() (measure.Date, error) {
	if !a.has("date") {
		return measure.Date{}, nil
	}
	d, err := measure.ParseDate(a.value("date"))
	if err != nil {
		return d, inputError("gw.wantDate", "found", a.value("date"))
	}
	return d, nil
}

// whole is an option's whole number, 0 where it is not given.
func (a arguments) whole(name string, least, most int) (int, error) {
	if !a.has(name) {
		return 0, nil
	}
	n, err := strconv.Atoi(a.value(name))
	if err != nil || n < least || n > most {
		return 0, inputError("gw.wantWhole", "option", "--"+name, "found", a.value(name), "least", strconv.Itoa(least), "most", strconv.Itoa(most))
	}
	return n, nil
}

// writeAll writes files into a folder, which is made where it is not there.
func writeAll(folder string, files []papers.File) error {
	if err := os.MkdirAll(folder, 0o777); err != nil {
		return inputError("gw.noFolder", "folder", folder, "why", err.Error())
	}
	for _, f := range files {
		if err := project.WriteFile(filepath.Join(folder, f.Name), f.Data); err != nil {
			return err
		}
	}
	return nil
}
