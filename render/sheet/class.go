package sheet

import (
	"context"
	"slices"
	"strings"
	"sync"
	"time"

	"grainwise/assets/words"
	"grainwise/model/lists"
	"grainwise/model/making"
	"grainwise/model/sheets"
)

// spareSets is how many sets a class has besides the students': one to show on, one
// to spare.
const spareSets = 2

// sets is how many sets of material a class takes.
func (in Input) sets() int { return in.Students + spareSets }

// places is where someone works: the students' and the teacher's.
func (in Input) places() int { return in.Students + 1 }

// classPack is what a class needs to make this book: kit, material, samples, time.
func classPack(in Input) Document {
	f := newFlow(in.Printer.format())
	w := f.width()
	class := in.ofClass()
	f.add(in.classTitle(w))
	f.add(in.classRules(w)...)
	f.add(in.classKit(w)...)
	f.add(class.classCut(w)...)
	f.add(class.classBuying(w)...)
	f.add(in.classSamples(w)...)
	f.add(in.classTiming(w)...)
	return f.document(in, words.Say("paper.class-pack"))
}

// ofClass is the same design made as many times as the class has sets, planned anew.
func (in Input) ofClass() Input {
	in.Book.Resolved.Copies = in.sets()
	in.Cuttings = planInBrief(sheets.Jobs(in.Book, in.sets()))
	return in
}

// How long a page may take to plan all its sheets: by searchTime no plan is improved any
// more, and one that is not put in order by planTime is done without.
const (
	searchTime = 60 * time.Millisecond
	planTime   = 120 * time.Millisecond
)

// planInBrief plans jobs with what is found in a short time; those without a plan by
// then are left out.
func planInBrief(jobs []sheets.Job) []sheets.Cutting {
	search, done := context.WithTimeout(context.Background(), searchTime)
	wait, over := context.WithTimeout(context.Background(), planTime)
	found := make(chan sheets.Cutting, len(jobs))
	var work sync.WaitGroup
	for _, j := range jobs {
		work.Go(func() {
			if c, err := j.Plan(search, sheets.Bench{}, nil); err == nil {
				found <- c
			}
		})
	}
	go func() {
		work.Wait()
		done()
		over()
	}()
	<-wait.Done()
	all := make([]sheets.Cutting, len(found))
	for i := range all {
		all[i] = <-found
	}
	return all
}

func (in Input) classTitle(w float64) block {
	line := words.Say("class.of", words.With{"students": in.Students, "sets": in.sets()})
	if in.Students == 1 {
		line = words.Say("class.ofOne", words.With{"sets": in.sets()})
	}
	return stacked(lines(in.title(), titleStyle(), w), lines(line, bold(), w), lines(words.Say("class.sets"), body(), w))
}

// classRules are what comes before all else, and the usual care in full.
func (in Input) classRules(w float64) []block {
	all := []block{lines(words.Say("class.rules"), bold(), w)}
	all[0].gap = 3
	for _, c := range making.Cautions() {
		if in.needs(c) {
			all = append(all, care(c.Text(), w))
		}
	}
	return all
}

// needs says whether any step of the book asks for a care.
func (in Input) needs(c making.Caution) bool {
	return slices.ContainsFunc(making.Steps(in.Book), func(s making.Step) bool { return slices.Contains(s.Cautions, c) })
}

// roomTools are the tools that a class shares; every place has its own of the others.
func roomTools() []string {
	return []string{"cutter", "machine", "callipers", "chisel", "pressing-boards", "press", "rods"}
}

// classKit is the tools at each place, and those of the room.
func (in Input) classKit(w float64) []block {
	place := List{Title: words.Say("class.kit.place", words.With{"places": in.places()})}
	room := List{Title: words.Say("class.kit.room"), Note: words.Say("class.kit.note", words.With{"sets": in.sets()})}
	for _, t := range making.Kit(in.Book) {
		if slices.Contains(roomTools(), t.ID) {
			room.Lines = append(room.Lines, t.Text(in.style()))
			continue
		}
		place.Lines = append(place.Lines, t.Text(in.style()))
	}
	return chapter(Chapter{Title: words.Say("class.kit.title"), Lists: []List{place, room}}, w)
}

// classCut is every piece for all sets.
func (in Input) classCut(w float64) []block {
	all := in.partsTable(w)
	all[0] = heading(words.Say("class.cut.title", words.With{"sets": in.copies(), "unit": in.unit()}), headStyle(), w)
	return all
}

// classBuying is what all sets take, and which material no plan was found for.
func (in Input) classBuying(w float64) []block {
	rows := lists.Shopping(in.Book, in.Cuttings, in.copies())
	sets := words.With{"sets": in.copies()}
	all := append([]block{heading(words.Say("class.buy.title", sets), headStyle(), w)}, in.shoppingTable(rows, w)...)
	if names := lists.Unpriced(rows, lists.NoPlan); len(names) > 0 {
		all = append(all, lines(words.Say("class.buy.noPlan", sets, words.With{"names": strings.Join(names, ", ")}), bold(), w))
	}
	return append(all, lines(words.Say("class.buy.note"), quiet(), w))
}
