package sheet

import (
	"strings"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/compare"
	"grainwise/render/draft"
	"grainwise/render/scene"
	"grainwise/render/view"
)

// comparison is this design beside those pinned: the closed books at one scale,
// what differs, what is the same, and what only some are warned of.
func comparison(in Input) Document {
	designs := in.designs()
	f := newFlow(in.Printer.format())
	w := f.width()
	f.add(lines(words.Say("comparison.title"), titleStyle(), w))
	f.add(in.besideEachOther(designs, w))
	rows := compare.Rows(designs, in.System)
	f.add(in.differences(designs, rows, w)...)
	if same := sameInAll(rows); same != "" {
		f.add(stacked(lines(words.Say("comparison.same"), quiet(), w), lines(same, small(), w)))
	}
	f.add(in.onlySome(designs, w, f.bottom-f.y)...)
	return f.document(in, words.Say("paper.comparison"))
}

// designs are this one and those it is compared with.
func (in Input) designs() []compare.Design {
	this := compare.Design{Name: in.title(), Book: in.Book, Findings: check.Standing(in.Findings)}
	return append([]compare.Design{this}, in.Compared[:min(len(in.Compared), compare.Most-1)]...)
}

// nameRoom is the column of the figures' names, mm.
const nameRoom = 36.0

func designRoom(designs []compare.Design, w float64) float64 {
	return (w - nameRoom) / float64(len(designs))
}

// besideEachOther are the closed books over their columns.
func (in Input) besideEachOther(designs []compare.Design, w float64) block {
	const height = 40.0
	width := designRoom(designs, w)
	var books []book.Book
	for _, d := range designs {
		books = append(books, d.Book)
	}
	f := view.ThumbFrame{Width: width / scene.Px, Height: height / scene.Px, Ground: white}
	f.Scale = view.ThumbScale(books, f.Width, f.Height)
	return block{height: height, gap: 2, draw: func(l leaf, p at) {
		for i, d := range designs {
			l.place(view.Thumb(d.Book, f), at{X: p.X + nameRoom + float64(i)*width, Y: p.Y})
		}
	}}
}

// letter stands for a design where its name has no room.
func letter(i int) string { return string(rune('A' + i)) }

func lettered(i int, name string) string { return letter(i) + " " + name }

// differences is a row for each figure that differs; what is unlike this design's
// stands in bold.
func (in Input) differences(designs []compare.Design, rows []compare.Row, w float64) []block {
	columns := []column{{name: words.Say("comparison.unit", words.With{"unit": in.System.Label()}), width: nameRoom, style: small()}}
	for i, d := range designs {
		columns = append(columns, column{name: lettered(i, d.Name), width: designRoom(designs, w), align: scene.Middle, style: small()})
	}
	differing := compare.Differing(rows)
	if len(differing) == 0 {
		return append(table(columns, nil, w), lines(words.Say("comparison.alike"), body(), w))
	}
	all := table(columns, nil, w)
	for _, r := range differing {
		all = append(all, differenceRow(columns, r, w))
	}
	return all
}

func differenceRow(columns []column, r compare.Row, w float64) block {
	own := append([]column(nil), columns...)
	cells := []cell{{text: r.Name}}
	for i, v := range r.Values {
		if v != r.Values[0] {
			own[i+1].style.font = scene.SansBold
		}
		cells = append(cells, cell{text: v})
	}
	return tableRow(own, cells, w)
}

// sameInAll tells the other figures in a line.
func sameInAll(rows []compare.Row) string {
	var said []string
	for _, r := range rows {
		if !r.Differs && len(r.Values) > 0 && r.Values[0] != compare.None {
			said = append(said, words.Say("comparison.one", words.With{"name": r.Name, "value": r.Values[0]}))
		}
	}
	return strings.Join(said, "; ")
}

// onlySome are the findings that not all designs have, a dot under those that do:
// the worst of them, as many as the page has room for.
func (in Input) onlySome(designs []compare.Design, w, room float64) []block {
	told := compare.Findings(designs, in.System)
	if len(told) == 0 {
		return nil
	}
	const dots = 12.0
	columns := []column{{name: words.Say("comparison.warned"), style: small()}}
	for i := range designs {
		columns = append(columns, column{name: letter(i), width: dots, align: scene.Middle, style: small()})
	}
	var rows [][]cell
	for _, t := range told {
		row := []cell{{text: t.Level.Label() + ": " + t.Text}}
		for _, has := range t.In {
			row = append(row, dot(has))
		}
		rows = append(rows, row)
	}
	return asMany(table(columns, rows, w), room, w)
}

// asMany keeps as many rows of a table as there is room for, and tells how many
// more there are.
func asMany(rows []block, room, w float64) []block {
	more := func(n int) block { return lines(counted("comparison.more", int64(n)), small(), w) }
	used := rows[0].gap + rows[0].height + more(0).gap + more(0).height
	kept := 1
	for kept < len(rows) && used+rows[kept].height <= room {
		used += rows[kept].height
		kept++
	}
	switch left := len(rows) - kept; {
	case left == 0:
		return rows
	case kept == 1:
		return []block{more(left)}
	default:
		return append(rows[:kept:kept], more(left))
	}
}

// dot is a full dot, or nothing.
func dot(full bool) cell {
	return cell{draw: func(l leaf, p at, width, height float64) {
		if full {
			l.Dot(px(at{X: p.X + width/2, Y: p.Y + height/2}), 1.1/scene.Px, draft.Ink)
		}
	}}
}
