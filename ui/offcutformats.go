package ui

import (
	"slices"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/project"
	"grainwise/model/sheets"
)

// mostOffcutFormats is how many formats are named for one offcut.
const mostOffcutFormats = 3

// formatsOf says which favourite formats an offcut would still give folios for;
// empty where it gives none.
func (w *Window) formatsOf(o sheets.Offcut) string {
	formats := project.BuiltIn()
	if own, err := w.ports.Favourites.List(); err == nil {
		formats = slices.Concat(own, formats)
	}
	var given []string
	for _, f := range formats {
		d, err := f.Apply(w.session.Decisions().Design)
		if err != nil {
			continue
		}
		if n := o.Folios(d.Page); n > 0 && len(given) < mostOffcutFormats {
			given = append(given, words.Say("sheets.offcut.format", words.With{"name": f.Label(), "count": n}))
		}
	}
	if len(given) == 0 {
		return ""
	}
	return words.Say("sheets.offcut.formats", words.With{"formats": strings.Join(given, ", ")})
}

// folioCount says "8 ×" beside a size.
func folioCount(folios int) string { return words.Say("growth.folios", words.With{"count": folios}) }
