package ui

import (
	"grainwise/render/describe"
	"grainwise/ui/controls"
)

// inWordsNow brings the description up to date; hidden, it costs nothing.
func (m *middle) inWordsNow() {
	m.wordsChip.SetOn(m.showWords)
	setVisible(m.pane, !m.showWords)
	if setVisible(m.reader, m.showWords); !m.showWords {
		return
	}
	said := describe.Words(describe.Input{
		View: m.views[m.at].ID, Name: m.session.Project().Name, Book: m.session.Book(),
		Findings: m.session.Findings(), System: m.session.System(),
	})
	passages := make([]controls.Passage, len(said))
	for i, p := range said {
		passages[i] = controls.Passage{Head: p.Head, Lines: p.Lines}
	}
	m.reader.SetText(passages)
}

func (m *middle) toggleWords() { m.showWords = !m.showWords; m.changed() }
