// Package describe says in words what the drawings show: the parts from bottom
// to top with sizes and grain, how they stand to each other, and what is wrong
// with which. It is for whoever cannot see the drawing, or wants to read it.
package describe

import (
	"slices"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/render/draft"
)

// Input is what is put into words.
type Input struct {
	View     string // the drawing's id
	Name     string // the project's, may be empty
	Book     book.Book
	Findings []check.Finding
	System   measure.System // of the sizes said
}

// Paragraph is a heading and its sentences, one a line.
type Paragraph struct {
	Head  string
	Lines []string
}

// Words is the whole description, in the order of reading.
func Words(in Input) []Paragraph {
	all := []Paragraph{in.whole(), in.drawing(), in.parts(), in.block(), in.cased(), in.troubles()}
	return slices.DeleteFunc(all, func(p Paragraph) bool { return len(p.Lines) == 0 })
}

// Text is the description as plain text: a heading, its lines, an empty line.
func Text(paragraphs []Paragraph) string {
	var out strings.Builder
	for i, p := range paragraphs {
		if i > 0 {
			out.WriteString("\n")
		}
		out.WriteString(p.Head + "\n")
		for _, line := range p.Lines {
			out.WriteString(line + "\n")
		}
	}
	return out.String()
}

// whole is the book in three sentences.
func (in Input) whole() Paragraph {
	r, b := in.Book.Resolved, in.Book
	head := in.Name
	if head == "" {
		head = words.Say("describe.book")
	}
	return Paragraph{head, []string{
		words.Say("describe.page", words.With{
			"width": in.size(r.Page.Width), "height": in.size(r.Page.Height), "leaves": b.Block.Leaves, "pages": b.Block.Pages}),
		words.Say("describe.closed", words.With{
			"width": in.size(b.Closed.Width), "height": in.size(b.Closed.Height), "thick": in.size(b.Closed.Thickness)}),
		in.kind("structure", string(r.Structure)),
		in.kind("covering", string(r.Covering.Kind)),
	}}
}

// kind is one choice with what it means, where the words have that.
func (in Input) kind(what, id string) string {
	name := words.Say("word." + id)
	if meaning, known := words.Lookup("describe." + what + "." + id); known {
		name += ": " + meaning
	}
	return words.Say("describe."+what, words.With{"kind": name})
}

// drawing says what the drawing on show is like, of this structure where that
// looks different.
func (in Input) drawing() Paragraph {
	meaning, known := words.Lookup("describe.view." + in.View + "." + string(in.Book.Resolved.Structure))
	if !known {
		meaning, known = words.Lookup("describe.view." + in.View)
	}
	if !known {
		return Paragraph{}
	}
	return Paragraph{words.Say("describe.drawing", words.With{"name": words.Say("view." + in.View)}), []string{meaning}}
}

// parts goes through what is cut, the lowest first: the reverse of the making.
func (in Input) parts() Paragraph {
	p := Paragraph{Head: words.Say("describe.parts")}
	for _, part := range slices.Backward(in.Book.Parts) {
		p.Lines = append(p.Lines, in.part(part))
	}
	return p
}

func (in Input) part(p book.Part) string {
	said := words.With{
		"name": words.Say("part." + p.Word), "count": p.Count, "stock": p.Stock,
		"width": in.size(p.Width), "height": in.size(p.Height), "grain": words.Say("describe.grain." + string(p.Grain)),
	}
	key := "describe.pieces"
	if p.Count == 1 {
		key = "describe.piece"
	}
	line := words.Say(key, said)
	if meaning, known := words.Lookup("describe.what." + string(p.ID)); known {
		line += " " + meaning
	}
	return line
}

// troubles are the findings, each with the part that it is seen on.
func (in Input) troubles() Paragraph {
	p := Paragraph{Head: words.Say("describe.troubles")}
	for _, f := range in.Findings {
		line := words.Say("describe.trouble", words.With{
			"level": f.Level.Label(), "part": words.Say("part." + string(f.Part)), "text": f.Text(in.fine())})
		if wanted := f.Wanted(in.fine()); wanted != "" {
			line += " " + words.Say("describe.wanted", words.With{"wanted": wanted})
		}
		p.Lines = append(p.Lines, line)
	}
	if len(in.Findings) == 0 {
		p.Lines = []string{words.Say("describe.noTrouble")}
	}
	return p
}

// size is a length with its unit, as the drawings show it.
func (in Input) size(l measure.Length) string { return draft.Sizes(in.System).WithUnit(l) }

// fine is how a finding's lengths are said.
func (in Input) fine() measure.Style {
	return measure.Style{System: in.System, Decimals: 2, Denominator: 64}
}
