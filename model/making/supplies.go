package making

import (
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
)

// Supply is a material with what one book takes of it. How many sheets the
// pieces of several copies take is planned by package sheets.
type Supply struct {
	ID     string      // the text: pieces, strips, thread or adhesive
	Part   book.PartID // of pieces and strips
	Stock  string      // its name on the shelf, "" where it is not kept there
	Count  int         // of pieces or strips
	Length Length      // of thread, or of all strips together
	Grams  float64     // of adhesive, as it is spread
	Blanks map[string]any
}

// Text says it in a line.
func (s Supply) Text(style measure.Style) string {
	return words.Say("making.supply."+s.ID, shown(s.Blanks, style))
}

// Supplies lists what one book takes, in the order of making.
func Supplies(b book.Book) []Supply {
	var all []Supply
	for _, p := range b.Parts {
		all = append(all, pieces(p))
	}
	thread := Supply{ID: "thread", Length: b.Sewing.ThreadPerBook, Blanks: with{
		"thick": thick(b.Sewing.ThreadDiameter), "run": run(b.Sewing.ThreadPerBook),
	}}
	return append(all, thread, adhesive(b))
}

func pieces(p book.Part) Supply {
	s := Supply{ID: "pieces", Part: p.ID, Stock: p.Stock, Count: p.Count, Blanks: with{
		"name": words.Say("part." + p.Word), "count": p.Count, "size": Size{p.Width, p.Height}, "stock": p.Stock, "grain": grainOf(p),
	}}
	if strip(p.ID) {
		long, wide := max(p.Height, p.Width), min(p.Height, p.Width)
		s.ID, s.Length = "strips", Length(p.Count)*long
		s.Blanks["length"], s.Blanks["width"], s.Blanks["run"] = long, wide, run(s.Length)
	}
	return s
}

func adhesive(b book.Book) Supply {
	grams := b.WetAdhesive()
	return Supply{ID: "adhesive", Stock: adhesiveName(b), Grams: grams, Blanks: with{"stock": adhesiveName(b), "grams": grammes(grams)}}
}
