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
	m.reader.SetText(passages(said))
}

// passages are paragraphs as the reader shows them.
func passages(said []describe.Paragraph) []controls.Passage {
	all := make([]controls.Passage, len(said))
	for i, p := range said {
		all[i] = controls.Passage{Head: p.Head, Lines: p.Lines}
	}
	return all
}

func (m *middle) toggleWords() { m.showWords = !m.showWords; m.changed() }
