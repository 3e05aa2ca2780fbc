package main

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"path/filepath"
	"strconv"
	"strings"
	"time"

	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/project"
	"grainwise/model/sheets"
	"grainwise/render/pdf"
	"grainwise/render/raster"
	"grainwise/render/scene"
	"grainwise/render/svg"
	"grainwise/render/view"
)

// The frame of a drawing in design px, and what --width may ask for.
const (
	frameWidth  = 1200
	frameHeight = 800
	leastPixels = 100
	mostPixels  = 10_000
)

// drawCommand draws a book: gw draw FILE --view VIEW --out F.png|F.pdf|F.svg
// [--width PIXELS] [--studio FILE] [--with FILE] [--papers A,B] [--coverings C,D],
// or lists the views: gw draw --list.
func drawCommand(args []string, out, notes io.Writer) (int, error) {
	a, err := parse(args, []string{"view", "out", "width", "set", "studio", "variant", "with", "papers", "coverings"}, []string{"list"})
	if err != nil {
		return exitInput, err
	}
	if a.has("list") {
		return exitDone, listViews(a, out)
	}
	drawing, err := wantedDrawing(a)
	if err != nil {
		return exitInput, err
	}
	p, studio, err := openIn(a)
	if err != nil {
		return exitInput, err
	}
	var b bytes.Buffer
	drawing.title = strings.TrimPrefix(p.Name+", "+drawing.view.Label(), ", ")
	in := inputOf(p)
	if in.Pinned, in.PinnedName, err = a.pinned(); err != nil {
		return exitInput, err
	}
	logo, err := view.LogoOf(studio.Showing)
	if err != nil {
		return exitInput, err
	}
	in.Offer = view.OfferOf(p.Offer, studio.Showing, logo)
	draw := drawing.view.Draw
	switch drawing.view.ID {
	case "mock-up":
		if a.has("papers") || a.has("coverings") {
			books, err := combined(a, p)
			if err != nil {
				return exitInput, err
			}
			in.Height = view.ContactHeight(len(books), frameHeight)
			draw = func(in view.Input) *scene.Scene { return view.ContactSheet(in, books) }
		}
	case "sizes":
		in.Sizes = new(sheets.SizeMap)
		*in.Sizes = sheets.Sizes(context.Background(), in.Book, mapSizes)
	case "cutting":
		if in.Cuttings, err = cuttingsOf(p.Book(), studio.Bench()); err != nil {
			return exitInput, err
		}
		noteUnproved(notes, in.Cuttings)
	}
	if err := drawing.write(&b, draw(in), drawing); err != nil {
		return exitInput, err
	}
	return exitDone, project.WriteFile(drawing.file, b.Bytes())
}

// pinned is the book of the design that this one is compared with, nil for none.
func (a arguments) pinned() (*book.Book, string, error) {
	all, err := a.compared(project.Studio{})
	switch {
	case err != nil || len(all) == 0:
		return nil, "", err
	case len(all) > 1:
		return nil, "", inputError("gw.twice", "option", "--with")
	}
	return &all[0].Book, all[0].Name, nil
}

// mapSizes is how many sizes a map has each way.
const mapSizes = 90

// cuttingsOf plans everything that is cut for a design's copies.
func cuttingsOf(b book.Book, bench sheets.Bench) ([]sheets.Cutting, error) {
	var all []sheets.Cutting
	for _, job := range sheets.Jobs(b, b.Resolved.Copies) {
		ctx, cancel := context.WithTimeout(context.Background(), usualSeconds*time.Second)
		c, err := job.Plan(ctx, bench, nil)
		cancel()
		if err != nil {
			return nil, inputError("cutting.noPlan", "name", job.Material.Name)
		}
		all = append(all, c)
	}
	return all, nil
}

// noteUnproved says in one line which of the plans drawn may not be the best.
func noteUnproved(notes io.Writer, all []sheets.Cutting) {
	var unproved []string
	for _, c := range all {
		if c.Trouble == nil && !c.Plan.Proved() {
			unproved = append(unproved, c.Material.Name)
		}
	}
	if len(unproved) > 0 {
		complain(notes, inputError("gw.unproved", "names", strings.Join(unproved, ", ")))
	}
}

// listViews prints one view a line, its id first.
func listViews(a arguments, out io.Writer) error {
	if err := a.noFiles(); err != nil {
		return err
	}
	for _, v := range view.All() {
		if _, err := fmt.Fprintf(out, "%-14s %s\n", v.ID, v.Label()); err != nil {
			return err
		}
	}
	return nil
}

// inputOf is the whole drawing in the unit that the book is cut in.
func inputOf(p project.Project) view.Input {
	b := p.Book()
	return view.Input{
		Book: b, Marks: view.MarksOf(check.Standing(p.Findings(b, project.Studio{}))), System: p.Decisions.Design.CutIn, Name: p.Name,
		Width: frameWidth, Height: frameHeight,
		Dimensions: true, Grain: true, Title: true,
	}
}

// drawing is what to draw, and where to.
type drawing struct {
	view  view.View
	title string
	file  string
	width int // of a picture, in pixels
	write writer
}

// writer writes a scene in one form of file.
type writer func(w io.Writer, s *scene.Scene, d drawing) error

// writers are the forms of file by their ending.
func writers() map[string]writer {
	return map[string]writer{
		".png": func(w io.Writer, s *scene.Scene, d drawing) error { return raster.WritePNG(w, s, d.width) },
		".pdf": func(w io.Writer, s *scene.Scene, d drawing) error {
			return pdf.Write(w, pdf.Options{Title: d.title}, s)
		},
		".svg": func(w io.Writer, s *scene.Scene, d drawing) error { return svg.Write(w, d.title, s) },
	}
}

func wantedDrawing(a arguments) (d drawing, err error) {
	if !a.has("view") {
		return d, inputError("gw.wantView", "names", viewNames())
	}
	var known bool
	if d.view, known = view.Find(a.value("view")); !known {
		return d, inputError("gw.unknownView", "found", a.value("view"), "names", viewNames())
	}
	if d.file = a.value("out"); d.file == "" {
		return d, inputError("gw.missingOut")
	}
	ending := strings.ToLower(filepath.Ext(d.file))
	if d.write, known = writers()[ending]; !known {
		return d, inputError("gw.wantOut", "found", d.file)
	}
	d.width, err = widthOf(a)
	if err == nil && a.has("width") && ending != ".png" {
		err = inputError("gw.widthOfPNG")
	}
	return d, err
}

func widthOf(a arguments) (int, error) {
	if !a.has("width") {
		return frameWidth, nil
	}
	width, err := strconv.Atoi(a.value("width"))
	if err != nil || width < leastPixels || width > mostPixels {
		return 0, inputError("gw.wantWidth", "found", a.value("width"),
			"least", strconv.Itoa(leastPixels), "most", strconv.Itoa(mostPixels))
	}
	return width, nil
}

func viewNames() string {
	var names []string
	for _, v := range view.All() {
		names = append(names, v.ID)
	}
	return strings.Join(names, ", ")
}
