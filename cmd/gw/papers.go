package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/render/papers"
	"grainwise/render/sheet"
)

// papersCommand writes every printed page of a design: gw papers FILE --out DIR.
// It prints the finding about the printer's scale, if there is one.
func papersCommand(args []string, out, notes io.Writer) (int, error) {
	a, err := parse(args, []string{"out", "only", "page", "across", "down", "students", "dpi", "date", "set", "studio", "variant", "group", "with"}, []string{"list", "left", "right", "png"})
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
	sets, studio, err := a.paperSets(folder)
	if err != nil {
		return exitInput, err
	}
	said, found := []check.Finding{}, check.ScaleOff(studio.Printing.Bars)
	for _, set := range sets {
		if err := papers.WriteAll(context.Background(), set.folder, set.files); err != nil {
			return exitInput, err
		}
		if lacking := set.in.Lacking(); lacking != "" {
			complain(notes, inputError("papers.lacking", "letters", lacking))
		}
		said = append(said, estimated(set.in)...)
	}
	// An estimate is said and no more: papers of it are for trying, and the exit
	// status of a stop is that of check and plan, and of a scale that is off.
	return exitOf(found), printFindings(append(found, said...), out)
}

// estimated is the stop of a batch whose thickness is only estimated.
func estimated(in sheet.Input) []check.Finding {
	return slices.DeleteFunc(slices.Clone(check.Batched(in.Findings, in.Book.Resolved.Copies)), func(f check.Finding) bool {
		return f.ID != "measure-first" || f.Level != check.Stop || f.Accepted != ""
	})
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

// papers is how one design is printed, and what is wanted of it.
func (a arguments) papers(p project.Project, studio project.Studio, date measure.Date) (in sheet.Input, order papers.Order, err error) {
	printing := studio.Printing
	b, system := p.Book(), p.Decisions.Design.CutIn
	cuttings, err := cuttingsOf(b, studio.Bench())
	if err != nil {
		return in, order, err
	}
	in = sheet.Input{
		Book: b, Name: p.Name, Revision: p.Revision(), Date: date, Findings: p.Findings(b, studio), Notes: p.Notes,
		System: system, Cuttings: cuttings, Printer: sheet.PrinterOf(printing, system), Left: printing.Left(), Students: printing.Students,
	}
	if in.Compared, err = a.compared(studio); err != nil {
		return in, order, err
	}
	if a.has("png") || a.has("dpi") {
		order.DPI = printing.Resolution()
	}
	order.Lists = !a.has("only")
	order.Kinds, err = a.only(in)
	return in, order, err
}

// only is the papers asked for, each once; all of this design without an answer.
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
		if !slices.ContainsFunc(some, func(k sheet.Kind) bool { return k.ID == kinds[i].ID }) {
			some = append(some, kinds[i])
		}
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

// printing is the studio's, where no option says otherwise. A bar that an option
// tells was measured just now: what the studio's corrected page measured is past.
func (a arguments) printing(p project.Printing) (project.Printing, error) {
	if id := a.value("page"); id != "" {
		if !slices.Contains(project.Pages(), id) {
			return p, inputError("gw.wantPage", "found", id)
		}
		p.Page = id
	}
	if a.has("left") && a.has("right") {
		return p, inputError("gw.bothHands")
	}
	for _, hand := range project.Hands() {
		if a.has(hand) {
			p.Hand = hand
		}
	}
	if a.has("across") || a.has("down") {
		p.Bars.Again = check.Bars{}
	}
	plain := &p.Bars.Plain
	return p, errors.Join(
		a.barLength("across", &plain.Across), a.barLength("down", &plain.Down),
		a.whole("students", 0, project.MostStudents, &p.Students),
		a.whole("dpi", project.LeastDPI, project.MostDPI, &p.DPI),
	)
}

// barLength takes what a check bar of 100 mm measured, if the option is given.
func (a arguments) barLength(name string, to *measure.Length) error {
	if !a.has(name) {
		return nil
	}
	bar, err := project.ParseBar(a.value(name), measure.Metric)
	if err != nil || bar == 0 {
		return inputError("gw.wantBar", "option", "--"+name, "found", a.value(name))
	}
	*to = bar
	return nil
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

// whole takes an option's whole number, if it is given.
func (a arguments) whole(name string, least, most int, to *int) error {
	if !a.has(name) {
		return nil
	}
	n, err := project.ParseWhole(a.value(name), least, most)
	if err != nil {
		return inputError("gw.wantWhole", "option", "--"+name, "found", a.value(name), "least", strconv.Itoa(least), "most", strconv.Itoa(most))
	}
	*to = n
	return nil
}
