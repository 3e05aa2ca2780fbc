package project

import (
	"encoding/json"
	"errors"
	"slices"
	"strconv"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/check"
	"grainwise/model/measure"
)

// Printing is how a studio prints its papers. What is empty or 0 was not chosen,
// and has a default.
type Printing struct {
	Page     string        // of the printer: see [Pages]
	Bars     check.Printer // what its check bars measured
	Hand     string        // of the maker: see [Hands]
	DPI      int           // of PNG pictures
	Students int           // of a class
}

// Pages are the printer's papers, and Hands what a maker may work with; the
// first is the default.
func Pages() []string { return []string{"a4", "letter"} }

// Hands are the words of a maker's hand.
func Hands() []string { return []string{"right", "left"} }

// What may be asked of papers.
const (
	LeastDPI, UsualDPI, MostDPI     = 30, 300, 1200
	UsualStudents, MostStudents int = 6, 200
)

// PageIn is the printer's page; where none was chosen, that of the system of
// units.
func (p Printing) PageIn(system measure.System) string {
	switch {
	case p.Page != "":
		return p.Page
	case system == measure.Imperial:
		return "letter"
	}
	return Pages()[0]
}

// Left says whether the maker works with the left hand.
func (p Printing) Left() bool { return p.Hand == "left" }

// Resolution is that of PNG pictures.
func (p Printing) Resolution() int { return chosenOr(p.DPI, UsualDPI) }

// Class is how many students a class has.
func (p Printing) Class() int { return chosenOr(p.Students, UsualStudents) }

func chosenOr(chosen, usual int) int {
	if chosen > 0 {
		return chosen
	}
	return usual
}

// printed is one entry of the table of printing: its key in files, its value as
// it stands there, empty if it was not chosen, and how it is read.
type printed struct {
	key  string
	text func(Printing) string
	read func(p *Printing, raw []byte) error
}

func printingTable() []printed {
	return []printed{
		oneOf("page", Pages(), func(p *Printing) *string { return &p.Page }),
		barOf("barAcross", func(p *Printing) *measure.Length { return &p.Bars.Plain.Across }),
		barOf("barDown", func(p *Printing) *measure.Length { return &p.Bars.Plain.Down }),
		barOf("correctedAcross", func(p *Printing) *measure.Length { return &p.Bars.Again.Across }),
		barOf("correctedDown", func(p *Printing) *measure.Length { return &p.Bars.Again.Down }),
		oneOf("hand", Hands(), func(p *Printing) *string { return &p.Hand }),
		wholeOf("dpi", LeastDPI, MostDPI, func(p *Printing) *int { return &p.DPI }),
		wholeOf("students", 1, MostStudents, func(p *Printing) *int { return &p.Students }),
	}
}

func oneOf(key string, choices []string, at func(*Printing) *string) printed {
	return printed{key, func(p Printing) string {
		if word := *at(&p); word != "" {
			return jsonText(word)
		}
		return ""
	}, func(p *Printing, raw []byte) error {
		if json.Unmarshal(raw, at(p)) != nil || !slices.Contains(choices, *at(p)) {
			return errors.New(words.Say("studio.want.oneOf", words.With{"choices": strings.Join(choices, ", ")}))
		}
		return nil
	}}
}

func barOf(key string, at func(*Printing) *measure.Length) printed {
	return printed{key, func(p Printing) string {
		if bar := *at(&p); bar > 0 {
			return measure.FileForm(bar)
		}
		return ""
	}, func(p *Printing, raw []byte) (err error) {
		if *at(p), err = measure.ParseFileForm(string(raw)); err != nil || !barRange(*at(p)) {
			return errors.New(wantedBar(measure.Metric))
		}
		return nil
	}}
}

func wholeOf(key string, least, most int, at func(*Printing) *int) printed {
	return printed{key, func(p Printing) string {
		if n := *at(&p); n > 0 {
			return strconv.Itoa(n)
		}
		return ""
	}, func(p *Printing, raw []byte) (err error) {
		*at(p), err = ParseWhole(string(raw), least, most)
		return err
	}}
}

// ParseWhole reads a whole number as it is typed.
func ParseWhole(text string, least, most int) (int, error) {
	n, err := strconv.Atoi(strings.TrimSpace(text))
	if err != nil || n < least || n > most {
		return 0, errors.New(words.Say("studio.want.whole", words.With{"least": least, "most": most}))
	}
	return n, nil
}

// ParseBar reads what a check bar measured, as a maker types it; an empty text
// is a bar that was not measured. Where sizes are shown in inches, what is not
// said in millimetres is of the bar of 4 in; the result is what the bar of 100 mm
// measures on the same page.
func ParseBar(text string, shown measure.System) (measure.Length, error) {
	if strings.TrimSpace(text) == "" {
		return 0, nil
	}
	bar, err := measure.ParseLength(text, shown)
	if shown == measure.Imperial && !strings.Contains(text, "m") {
		bar = bar.Times(check.Bar.MM() / check.InchBar.MM())
	}
	if err != nil || !barRange(bar) {
		return 0, errors.New(wantedBar(shown))
	}
	return bar, nil
}

func barRange(bar measure.Length) bool { return bar >= check.LeastBar && bar <= check.MostBar }

func wantedBar(shown measure.System) string {
	style := measure.Style{System: shown, Decimals: 2}
	return words.Say("studio.want.bar", words.With{
		"low": style.Format(BarShown(check.LeastBar, shown)), "high": style.WithUnit(BarShown(check.MostBar, shown)),
	})
}

// BarShown is what the bar that is measured in a system came to, where that of
// 100 mm measures so much: in inches that of 4 in.
func BarShown(bar measure.Length, shown measure.System) measure.Length {
	if shown == measure.Imperial {
		return bar.Times(check.InchBar.MM() / check.Bar.MM())
	}
	return bar
}

// lines are what was chosen, one a line.
func (p Printing) lines() []string {
	var lines []string
	for _, entry := range printingTable() {
		if text := entry.text(p); text != "" {
			lines = append(lines, jsonText(entry.key)+": "+text)
		}
	}
	return lines
}

// printing reads how papers are printed.
func (s source) printing(in field) (p Printing, problem *Problem) {
	entries, problem := s.readObject(in)
	if problem != nil {
		return p, problem
	}
	var keys []string
	for _, entry := range printingTable() {
		keys = append(keys, entry.key)
		f, there := entries.find(entry.key)
		if !there {
			continue
		}
		if err := entry.read(&p, f.raw); err != nil {
			return Printing{}, s.damaged(f.at, entry.key, clipped(string(f.raw))+": "+err.Error())
		}
	}
	return p, s.known(entries, keys...)
}
