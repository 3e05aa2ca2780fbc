package sheet

import (
	"grainwise/assets/words"
	"grainwise/model/lists"
	"grainwise/model/making"
	"grainwise/render/scene"
)

// guide teaches how the book is made, on pages and as one text.
func guide(in Input) Document {
	a := in.article()
	d := in.printedGuide(a)
	d.Article = &a
	return d
}

// article is the guide before it is laid out.
func (in Input) article() Article {
	const width, height = 66.0, 62.0
	return Article{
		Title:    in.title(),
		Lead:     in.guideLead(),
		Finished: Picture{in.finished(width/scene.Px, height/scene.Px), words.Say("guide.finished", words.With{"name": in.title()})},
		Figures:  in.guideFigures(),
		Chapters: append([]Chapter{in.materials(), in.tools()}, in.stages()...),
	}
}

// guideLead says what the paper is, and for whom.
func (in Input) guideLead() []string {
	all := []string{words.Say("guide.of")}
	if in.copies() > 1 {
		all[0] = words.Say("guide.ofMany", words.With{"copies": in.copies()})
	}
	all = append(all, words.Say("guide.first"))
	if in.Left {
		all = append(all, words.Say("guide.left"))
	}
	return all
}

// guideFigures are the finished book's sizes.
func (in Input) guideFigures() []Figure {
	b := in.Book
	r := b.Resolved
	all := []Figure{
		{"bench.page", in.by(r.Page.Width, r.Page.Height)},
		{"bench.sections", words.Say("bench.sectionsOf", words.With{"sections": r.Sections.Count, "folios": r.Sections.Folios})},
		{"bench.leaves", words.Say("bench.leavesOf", words.With{"leaves": b.Block.Leaves, "pages": b.Block.Pages})},
		{"bench.spine", in.sized(b.Block.SpineThickness)},
		{"bench.foreEdge", in.sized(b.Block.ForeEdgeThickness)},
		{"bench.closed", in.by(b.Closed.Width, b.Closed.Height)},
	}
	for i := range all {
		all[i].Name = words.Say(all[i].Name)
	}
	return all
}

// materials are what one book takes, and what is to be bought for all copies.
func (in Input) materials() Chapter {
	one := List{Title: words.Say("guide.materials.one")}
	for _, s := range making.Supplies(in.Book) {
		one.Lines = append(one.Lines, s.Text(in.style()))
	}
	buy := List{
		Title: counted("guide.materials.copies", int64(in.copies())),
		Lines: in.buying(lists.Shopping(in.Book, in.Cuttings, in.copies())),
		Note:  words.Say("guide.materials.note"),
	}
	return Chapter{ID: "materials", Title: words.Say("guide.materials.title"), Lists: []List{one, buy}}
}

func (in Input) tools() Chapter {
	all := List{}
	for _, t := range making.Kit(in.Book) {
		all.Lines = append(all.Lines, t.Text(in.style()))
	}
	return Chapter{ID: "tools", Title: words.Say("guide.tools.title"), Lists: []List{all}}
}

// stages are the steps, a chapter a stage. Each stage is read by itself, so a
// caution stands in full in each that needs it.
func (in Input) stages() []Chapter {
	var all []Chapter
	var met map[making.Caution]int
	for i, s := range making.Steps(in.Book) {
		if len(all) == 0 || all[len(all)-1].ID != string(s.Stage) {
			title := words.Say("guide.stage", words.With{"number": len(all) + 1, "name": s.Stage.Name()})
			all = append(all, Chapter{ID: string(s.Stage), Title: title})
			met = map[making.Caution]int{}
		}
		c := &all[len(all)-1]
		c.Steps = append(c.Steps, in.lesson(i+1, s, met))
	}
	return all
}

func (in Input) lesson(n int, s making.Step, met map[making.Caution]int) Lesson {
	l := Lesson{
		ID: s.ID, Number: n, Do: s.Short(in.style()), How: s.How(in.style()), Cautions: cautions(s, n, met), Picture: in.picture(s),
	}
	if wait := s.Wait.Text(); wait != "" {
		l.Wait = words.Say("guide.wait", words.With{"wait": wait})
	}
	if in.Left && s.Handed {
		l.Hand = words.Say("guide.hand", words.With{"text": words.Say("guide.left." + s.ID)})
	}
	return l
}

// buying says what is to be bought, a line a material.
func (in Input) buying(rows []lists.ShoppingRow) []string {
	var all []string
	for _, r := range rows {
		key, with := "guide.buy", words.With{"material": r.Material, "amount": in.toBuy(r)}
		if with["size"] = in.shoppingSize(r); with["size"] != "" {
			key = "guide.buy.of"
		}
		if r.Lack == lists.NoPlan {
			key = "guide.buy.noPlan"
		}
		all = append(all, words.Say(key, with))
	}
	return all
}
