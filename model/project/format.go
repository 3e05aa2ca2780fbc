package project

import (
	"errors"
	"slices"
	"strconv"
	"strings"
	"sync"
	"unicode"

	"grainwise/assets"
	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
)

// Format is a favourite: the sizes and ways of a kind of book, without its
// materials. A patch that says every key it can hold.
type Format struct {
	Name     string // of a built-in one its id, as in `gw new --format`
	Yours    bool   // saved by the user
	Settings []Setting
}

// Setting is one key of a format and its value, in the order of the table.
type Setting struct {
	Key   string
	Value book.Value
}

// Label is the name to show.
func (f Format) Label() string {
	if f.Yours {
		return f.Name
	}
	return words.Say("format." + f.Name)
}

// Apply gives a design the format's sizes and leaves its materials alone.
func (f Format) Apply(design book.Design) (book.Design, error) {
	d := book.Decisions{Design: design}
	for _, s := range f.Settings {
		p, ok := book.Lookup(s.Key)
		if !ok || !ofFormat(p) {
			return design, &book.ValueError{Key: clipped(s.Key), Text: quoted(f.Name), Want: words.Say("project.formatKey")}
		}
		if err := p.Set(&d, s.Value); err != nil {
			return design, err
		}
	}
	return d.Design, nil
}

// FromDesign makes a favourite of a design.
func FromDesign(name string, design book.Design) Format {
	d := book.Decisions{Design: design}
	f := Format{Name: name, Yours: true}
	for _, p := range formatParams() {
		f.Settings = append(f.Settings, Setting{p.Key, p.Get(d)})
	}
	return f
}

// formatParams are the parameters that a format says.
func formatParams() []book.Param { return paramsWhere(ofFormat) }

// ofFormat tells what belongs to a kind of book from what belongs to its
// materials, to the maker's hand or to one job.
func ofFormat(p book.Param) bool {
	return !p.Measure && p.Kind != book.KindMaterial && !slices.Contains(notOfFormat(), p.Key)
}

func notOfFormat() []string {
	return []string{
		"copies", // of one job
		"paper.thickness", "paper.grammage", "paper.grain", "paper.turned", "paper.sheetLength", "paper.sheetWidth", "paper.deckle",
		"paper.lostEdges", "paper.lostEdges.left", "paper.lostEdges.right", "paper.lostEdges.top", "paper.lostEdges.bottom",
		"interleaf.thickness", "liner.thickness", "liner.grain", "liner.turned",
		"endpaper.thickness", "endpaper.grain", "endpaper.turned",
		"board.thickness", "board.grain", "board.turned", "spine.thickness",
		"covering.thickness", "covering.grain", "covering.turned",
		"sewing.threadCrush", "joint.bendLoss", "liner.pasteStretch", // of hand and material, found by measuring
	}
}

const builtInFile = "formats.json"

// BuiltIn returns the formats that ship with the program, in the order of the
// gallery. Keys that their file leaves out have the defaults of their system.
func BuiltIn() []Format {
	all := builtIn()
	copied := slices.Clone(all)
	for i := range copied {
		copied[i].Settings = slices.Clone(all[i].Settings)
	}
	return copied
}

// FindBuiltIn finds a built-in format by its id.
func FindBuiltIn(id string) (Format, bool) {
	i := slices.IndexFunc(builtIn(), func(f Format) bool { return f.Name == id })
	if i < 0 {
		return Format{}, false
	}
	return BuiltIn()[i], true
}

var builtIn = sync.OnceValue(func() []Format {
	data, err := assets.Files.ReadFile(builtInFile)
	if err != nil {
		panic(err) // embedded: it was there when we compiled
	}
	all, problem := decodeFormats(data, builtInFile)
	if problem != nil {
		panic(problem)
	}
	for i := range all {
		all[i].Yours = false
	}
	return all
})

// System is the one in whose sizes the format was made.
func (f Format) System() measure.System {
	i := slices.IndexFunc(f.Settings, func(s Setting) bool { return s.Key == "rounding.system" })
	if i < 0 {
		return measure.Metric
	}
	system, _ := measure.ParseSystem(f.Settings[i].Value.Word) // the table admits no other words
	return system
}

const longestFormatName = 60

// checkFormatName refuses names that a list cannot show.
func checkFormatName(name string) error {
	if name == "" || name != strings.TrimSpace(name) || len([]rune(name)) > longestFormatName ||
		strings.ContainsFunc(name, unicode.IsControl) || strings.ToValidUTF8(name, "") != name {
		return errors.New(words.Say("project.want.formatName", words.With{"most": strconv.Itoa(longestFormatName)}))
	}
	return nil
}
