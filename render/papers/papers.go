// Package papers makes files of the printed papers: PDF, SVG for what is laid on
// the work, HTML for what is read as one text, PNG where it is asked for.
package papers

import (
	"bytes"
	"context"
	"fmt"
	"math"
	"time"

	"grainwise/model/lists"
	"grainwise/model/measure"
	"grainwise/render/html"
	"grainwise/render/pdf"
	"grainwise/render/raster"
	"grainwise/render/scene"
	"grainwise/render/sheet"
	"grainwise/render/svg"
	"grainwise/render/table"
)

// File is one file to be written.
type File struct {
	Name string // with its ending
	Data []byte
}

// Order is what files are wanted.
type Order struct {
	Kinds []sheet.Kind
	Lists bool // parts and shopping for spreadsheets as well
	DPI   int  // of PNG pictures of every page; 0 for none
}

// Files makes them, telling how many papers are done. It stops between two papers
// when ctx is done, with its error.
func Files(ctx context.Context, in sheet.Input, o Order, done func(int)) ([]File, error) {
	var all []File
	for i, k := range o.Kinds {
		made, err := sheet.Make(ctx, in, []sheet.Kind{k}, nil)
		if err != nil {
			return nil, err
		}
		for _, d := range made {
			files, err := filesOf(ctx, in, d, o)
			if err != nil {
				return nil, err
			}
			all = append(all, files...)
		}
		if done != nil {
			done(i + 1)
		}
	}
	if !o.Lists {
		return all, nil
	}
	sheets, err := spreadsheets(in)
	return append(all, sheets...), err
}

// spreadsheets are the lists of parts and of what to buy: each as CSV, both in one
// workbook.
func spreadsheets(in sheet.Input) ([]File, error) {
	copies := max(in.Book.Resolved.Copies, 1)
	parts := table.Parts(lists.Parts(in.Book, copies), in.System)
	shopping, err := table.Shopping(lists.Shopping(in.Book, in.Cuttings, copies), in.System)
	if err != nil {
		return nil, err
	}
	var all []File
	for _, f := range []struct {
		name  string
		write func(*bytes.Buffer) error
	}{
		{"parts.csv", func(b *bytes.Buffer) error { return table.CSV(b, parts) }},
		{"shopping.csv", func(b *bytes.Buffer) error { return table.CSV(b, shopping) }},
		{"lists.xlsx", func(b *bytes.Buffer) error { return table.XLSX(b, parts, shopping) }},
	} {
		var b bytes.Buffer
		if err := f.write(&b); err != nil {
			return nil, err
		}
		all = append(all, File{f.name, b.Bytes()})
	}
	return all, nil
}

// Bound is the papers in one PDF, in their order, for the viewer to print.
func Bound(in sheet.Input, documents []sheet.Document) ([]byte, error) {
	var pages []*scene.Scene
	for _, d := range documents {
		pages = append(pages, d.Pages...)
	}
	return written(in, in.Name, pages)
}

func filesOf(ctx context.Context, in sheet.Input, d sheet.Document, o Order) ([]File, error) {
	data, err := written(in, d.Name+", "+in.Name, d.Pages)
	if err != nil {
		return nil, err
	}
	all := []File{{d.ID + ".pdf", data}}
	if d.Whole != nil {
		var b bytes.Buffer
		if err := svg.Write(&b, d.Name+", "+in.Name, d.Whole); err != nil {
			return nil, err
		}
		all = append(all, File{d.ID + ".svg", b.Bytes()})
	}
	if d.Article != nil {
		var b bytes.Buffer
		if err := html.Write(&b, *d.Article); err != nil {
			return nil, err
		}
		all = append(all, File{d.ID + ".html", b.Bytes()})
	}
	if o.DPI == 0 {
		return all, nil
	}
	pictures, err := pictures(ctx, d, o.DPI)
	return append(all, pictures...), err
}

func written(in sheet.Input, title string, pages []*scene.Scene) ([]byte, error) {
	var b bytes.Buffer
	err := pdf.Write(&b, pdf.Options{Title: title, Date: midnight(in.Date)}, pages...)
	return b.Bytes(), err
}

// midnight is when a day starts; no day is no time.
func midnight(d measure.Date) time.Time {
	if d.IsZero() {
		return time.Time{}
	}
	return time.Date(d.Year, time.Month(d.Month), d.Day, 0, 0, 0, 0, time.UTC)
}

// pictures are the pages as PNG.
func pictures(ctx context.Context, d sheet.Document, dpi int) ([]File, error) {
	var all []File
	for i, page := range d.Pages {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		var b bytes.Buffer
		if err := raster.WritePNG(&b, page, int(math.Round(page.Width/25.4*float64(dpi)))); err != nil {
			return nil, err
		}
		name := d.ID
		if len(d.Pages) > 1 {
			name += fmt.Sprintf("-%d", i+1)
		}
		all = append(all, File{name + ".png", b.Bytes()})
	}
	return all, nil
}
