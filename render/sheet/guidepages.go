package sheet

import (
	"fmt"

	"grainwise/assets/words"
	"grainwise/render/scene"
)

// printedGuide lays the guide out on pages.
func (in Input) printedGuide(a Article) Document {
	f := newFlow(in.Printer.format())
	w := f.width()
	f.add(lines(a.Title, titleStyle(), w))
	for _, line := range a.Lead {
		f.add(lines(line, body(), w))
	}
	f.add(made(a, w))
	for _, c := range a.Chapters {
		f.add(chapter(c, w)...)
	}
	return f.document(in, words.Say("paper.guide"))
}

// made is the finished book beside its sizes.
func made(a Article, w float64) block {
	var figures []block
	wide := w - a.Finished.Scene.Width - 8
	for i := 0; i < len(a.Figures); i += 2 {
		var cells []block
		for _, f := range a.Figures[i:min(i+2, len(a.Figures))] {
			value := lines(f.Value, number(), wide/2-2)
			value.gap = 0
			cells = append(cells, stacked(lines(f.Name, quiet(), wide/2-2), value))
		}
		figures = append(figures, inRow(cells, wide/2+2))
	}
	return beside(shown(a.Finished), stacked(figures...), a.Finished.Scene.Width, 8)
}

// shown is a picture in its place.
func shown(p Picture) block {
	return block{height: p.Scene.Height, gap: 3, draw: func(l leaf, at0 at) { l.place(p.Scene, at0) }}
}

func chapter(c Chapter, w float64) []block {
	all := []block{heading(c.Title, headStyle(), w)}
	for _, l := range c.Lists {
		all = append(all, listBlocks(l, w)...)
	}
	for _, s := range c.Steps {
		all = append(all, lessonBlocks(s, w)...)
	}
	return all
}

func listBlocks(l List, w float64) []block {
	var all []block
	if l.Title != "" {
		title := lines(l.Title, bold(), w)
		title.gap, title.stay = 3, true
		all = append(all, title)
	}
	for _, line := range l.Lines {
		all = append(all, listed(line, w))
	}
	if l.Note != "" {
		all = append(all, lines(l.Note, quiet(), w))
	}
	return all
}

// listed is a line behind a short dash.
func listed(text string, w float64) block {
	const dash = 5.0
	b := indented(lines(text, body(), w-dash), dash)
	draw := b.draw
	b.draw = func(l leaf, p at) {
		y := p.Y + body().first() - body().capHeight()/2
		l.line(0.25, at{X: p.X + 0.5, Y: y}, at{X: p.X + 2.8, Y: y})
		draw(l, p)
	}
	return b
}

// indented is a block so far in from the left.
func indented(b block, by float64) block {
	draw := b.draw
	b.draw = func(l leaf, p at) { draw(l, at{X: p.X + by, Y: p.Y}) }
	return b
}

// The least room for a text beside a drawing, and the air between them, mm.
const (
	leastBeside = 80.0
	besideAir   = 6.0
)

// lessonBlocks are a step's text with its drawing beside it, or below where that is
// wide; what the step asks for stands with it.
func lessonBlocks(s Lesson, w float64) []block {
	room := w - numberWide
	pictured := s.Picture.Scene != nil
	wide := pictured && room-s.Picture.Scene.Width-besideAir < leastBeside
	if pictured && !wide {
		room -= s.Picture.Scene.Width + besideAir
	}
	text := taught(s, room)
	if pictured && !wide {
		text = beside(text, shown(s.Picture), room, besideAir)
	}
	all := []block{numberedBy(s.Number, text)}
	if wide {
		all[0].stay = true
		all = append(all, indented(shown(s.Picture), numberWide))
	}
	for _, c := range s.Cautions {
		all[len(all)-1].stay = true
		all = append(all, indented(care(c, w-numberWide), numberWide))
	}
	return all
}

// taught is what a step says.
func taught(s Lesson, room float64) block {
	all := []block{lines(s.Do, bold(), room), lines(s.How, body(), room)}
	if s.Hand != "" {
		all = append(all, lines(s.Hand, bold(), room))
	}
	if s.Wait != "" {
		all = append(all, lines(s.Wait, bold(), room))
	}
	return stacked(all...)
}

// numberedBy sets a step's number before its text.
func numberedBy(n int, text block) block {
	return block{height: text.height, gap: 5, draw: func(l leaf, p at) {
		l.write(at{X: p.X + numberWide - 4, Y: p.Y + bold().first()}, fmt.Sprint(n), number(), scene.End)
		text.draw(l, at{X: p.X + numberWide, Y: p.Y})
	}}
}

// care is a caution, with a bar at its side.
func care(text string, w float64) block {
	const air = 3.0
	b := indented(lines(text, quiet(), w-air), air)
	draw := b.draw
	height := b.height
	b.draw = func(l leaf, p at) {
		l.line(0.6, at{X: p.X + 0.3, Y: p.Y + 0.4}, at{X: p.X + 0.3, Y: p.Y + height - 0.4})
		draw(l, p)
	}
	b.gap = 2
	return b
}
