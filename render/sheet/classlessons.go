package sheet

import (
	"fmt"
	"slices"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/making"
	"grainwise/render/scene"
)

// sample is what is laid out when a stage is taught, made up to a step: the last of
// these that the book has.
type sample struct {
	id    string
	after []string
}

func samples() []sample {
	return []sample{
		{"section", []string{"fold-folios", "gather"}},
		{"liner", []string{"fold-pleats", "fold-creases"}},
		{"endpapers", []string{"tip-endpapers"}},
		{"block", []string{"sew-machine", "sew-pamphlet", "sew-tapes", "sew-link"}},
		{"case", []string{"turn-in"}},
		{"casedIn", []string{"case-in-first"}},
	}
}

// classSamples are the samples that this book can show.
func (in Input) classSamples(w float64) []block {
	all := []block{heading(words.Say("class.samples.title"), headStyle(), w), lines(words.Say("class.samples.text"), body(), w)}
	columns := []column{
		{width: 46, style: bold()}, {style: body()}, {width: 11, align: scene.Middle, style: body()},
	}
	var rows [][]cell
	for _, s := range samples() {
		n, stage := in.lastStep(s.after)
		if n == 0 {
			continue
		}
		made := words.Say("class.sample.made", words.With{"step": n, "stage": stage.Name()})
		rows = append(rows, []cell{{text: words.Say("class.sample." + s.id)}, {text: words.Say("class.sample."+s.id+".shows") + "\n" + made}, tick()})
	}
	return append(all, table(columns, rows, w)[1:]...)
}

// lastStep is the number and the stage of the last of some steps that the book has; 0
// for none.
func (in Input) lastStep(ids []string) (n int, stage making.Stage) {
	for i, s := range making.Steps(in.Book) {
		if slices.Contains(ids, s.ID) {
			n, stage = i+1, s.Stage
		}
	}
	return n, stage
}

// learning is how many times as long a student takes as a maker at an easy pace, and
// overNight the hours of rest that end a meeting; own reasoning.
const (
	learning  = 2
	overNight = 12
)

// classTiming is how long each stage is shown, done and left to rest.
func (in Input) classTiming(w float64) []block {
	columns := []column{{name: words.Say("class.time.stage"), style: body()}}
	for _, name := range []string{"setUp", "shown", "doing", "rest"} {
		columns = append(columns, column{name: words.Say("class.time." + name), width: 31, align: scene.End, style: body()})
	}
	var rows [][]cell
	var sum making.StageTime
	for _, t := range making.Timing(in.Book, 1) {
		sum.SetUp, sum.Further, sum.Rest = sum.SetUp+t.SetUp, sum.Further+t.Further, sum.Rest+t.Rest
		rows = append(rows, timeRow(t.Stage.Name(), t))
	}
	rows = append(rows, timeRow(words.Say("class.time.all"), sum))
	all := append([]block{heading(words.Say("class.time.title"), headStyle(), w)}, table(columns, rows, w)...)
	for _, note := range in.timeNotes() {
		all = append(all, lines(note, body(), w))
	}
	return all
}

func timeRow(name string, t making.StageTime) []cell {
	rest := "–"
	if t.Rest > 0 {
		rest = words.Say("class.time.hours", words.With{"hours": t.Rest})
	}
	return []cell{{text: name}, {text: minutes(t.SetUp)}, {text: minutes(t.Further)}, {text: minutes(learning * t.Further)}, {text: rest}}
}

func minutes(n int) string {
	return words.Say("class.time.minutes", words.With{"minutes": fmt.Sprint(n)})
}

// timeNotes say what the times mean, who waits for the machine, and over how many
// meetings the work goes.
func (in Input) timeNotes() []string {
	all := []string{words.Say("class.time.note")}
	meetings := 1
	for _, t := range making.Timing(in.Book, 1) {
		if t.Stage == making.StageSew && in.Book.Resolved.Sewing.Method == book.Machine && in.Students > 1 {
			all = append(all, words.Say("class.time.machine", words.With{"minutes": learning * t.Further * in.Students}))
		}
		if t.Rest >= overNight {
			meetings++
		}
	}
	if meetings > 1 {
		all = append(all, words.Say("class.time.meetings", words.With{"hours": overNight, "meetings": meetings}))
	}
	return all
}
