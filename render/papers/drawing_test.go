package papers_test

import (
	"bytes"
	"context"
	"errors"
	"image/png"
	"testing"

	"grainwise/model/book"
	"grainwise/model/project"
	"grainwise/model/stock"
	"grainwise/render/papers"
	"grainwise/render/view"
)

// contact is the demo's contact sheet of so many books.
func contact(n int) (view.Input, []book.Book) {
	p := project.Demo()
	var papersOf, cloths []string
	for _, m := range p.Shelf.OfKind(stock.Paper) {
		papersOf = append(papersOf, m.Name)
	}
	for _, m := range p.Shelf.OfKind(stock.Covering) {
		cloths = append(cloths, m.Name)
	}
	books := book.Combine(p.Decisions, p.Shelf, papersOf, cloths)[:n]
	return view.Input{Book: p.Book(), Name: p.Name, Width: 1200, Height: view.ContactHeight(n, 800)}, books
}

// A contact sheet becomes three files; every step is told once and in order, and
// when it is called off nothing is left.
func TestDrawingIsToldAndCanBeCalledOff(t *testing.T) {
	in, books := contact(3)
	s := view.ContactSheet(in, books)
	var told []int
	files, err := papers.Drawing(context.Background(), "three", s, func(done int) { told = append(told, done) })
	if err != nil || len(files) != 3 || len(books)+papers.DrawingForms != 6 || len(told) != 6 || told[0] != 1 || told[5] != 6 {
		t.Fatalf("%d files, told %v, %v", len(files), told, err)
	}
	size, err := png.DecodeConfig(bytes.NewReader(files[0].Data))
	if err != nil || size.Width != 2400 || size.Height != 1600 {
		t.Errorf("the picture is %v, %v", size, err)
	}
	if !bytes.HasPrefix(files[1].Data, []byte("%PDF-")) || !bytes.HasPrefix(files[2].Data, []byte("<svg")) {
		t.Error("no PDF, or no SVG")
	}
	ctx, cancel := context.WithCancel(context.Background())
	files, err = papers.Drawing(ctx, "three", s, func(done int) {
		if done == 2 {
			cancel()
		}
	})
	if files != nil || !errors.Is(err, context.Canceled) {
		t.Errorf("called off: %d files, %v", len(files), err)
	}
}

// BenchmarkContactSheet makes one of twelve as a picture of 2400 × 1600 px. The wish
// is 1 s for the picture.
func BenchmarkContactSheet(b *testing.B) {
	in, books := contact(12)
	for b.Loop() {
		s := view.ContactSheet(in, books)
		if _, err := papers.Drawing(context.Background(), "twelve", s, nil); err != nil {
			b.Fatal(err)
		}
	}
}
