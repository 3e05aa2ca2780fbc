package ui

import (
	"strings"

	"grainwise/assets/words"
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/model/project"
)

// readStudio takes over the sizes of the maker's tools; a file that cannot be
// read is said.
func (w *Window) readStudio() {
	studio, err := w.ports.Studio.Read()
	if err != nil {
		w.complain(err)
	}
	w.session.SetStudio(studio)
}

// toolsSheet asks for the sizes of the maker's tools.
func (w *Window) toolsSheet() {
	system := w.session.System()
	style := measure.Style{System: system, Decimals: 3} // is read back as the same
	now := w.session.Studio().Tools
	var rows []studioRow
	for _, tool := range check.ToolTable() {
		shown := ""
		if size := *tool.At(&now); size > 0 {
			shown = style.Format(size)
		}
		rows = append(rows, studioRow{
			key: tool.Key, label: words.Say("tool." + tool.Key), unit: system.Label(), shown: shown, hint: words.Say("tools.none"),
			take: func(studio *project.Studio, text string) error {
				size, err := project.ParseTool(text, tool, system)
				if err == nil {
					*tool.At(&studio.Tools) = size
				}
				return err
			},
		})
	}
	w.openStudioForm(words.Say("tools.title"), words.Say("tools.text"), rows)
}

// limitsSheet asks for the limits that the studio sets for itself; an empty one
// is the usual.
func (w *Window) limitsSheet() {
	system, own := w.session.System(), w.session.Studio().Limits
	var rows []studioRow
	heads := limitHeads()
	for _, limit := range check.LimitTable() {
		shown := ""
		if v, set := own[limit.Key]; set {
			shown = project.LimitText(limit, v, system)
		}
		rows = append(rows, studioRow{
			key: limit.Key, head: heads[limit.Key], label: words.Say("limit." + limit.Key), unit: project.LimitUnit(limit, system), shown: shown,
			hint: project.LimitText(limit, limit.Usual, system),
			take: func(studio *project.Studio, text string) error {
				v, set, err := project.ParseLimit(text, limit, system)
				if err == nil {
					*studio = studio.WithLimit(limit.Key, v, set)
				}
				return err
			},
		})
	}
	w.openStudioForm(words.Say("limits.title"), words.Say("limits.text"), rows)
}

// limitHeads are the heads of the limits, by the first limit under each.
func limitHeads() map[string]string {
	return map[string]string{
		"crackAcross":  words.Say("limits.head.sections"),
		"threadLeaf":   words.Say("limits.head.sewing"),
		"setBackLeast": words.Say("limits.head.joint"),
		"oddShare":     words.Say("limits.head.measures"),
		"squareLeast":  words.Say("limits.head.boards"),
		"turnInUnder":  words.Say("limits.head.covering"),
		"sheetUsed":    words.Say("limits.head.sheets"),
		"leverMost":    words.Say("limits.head.book"),
	}
}

// unchanged says whether an entry still shows what it began with; then its value
// stays, whatever was rounded for showing it.
func (r studioRow) unchanged(text string) bool { return strings.TrimSpace(text) == r.shown }
