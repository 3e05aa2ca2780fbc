package project

import "testing"

// Papers of one design carry one mark, whatever they are called; another size
// gives another.
func TestRevision(t *testing.T) {
	p := Demo()
	first := p.Revision()
	if len(first) != 5 {
		t.Fatalf("revision %q", first)
	}
	p.Name, p.Notes = "Another name", "Notes"
	if p.Revision() != first {
		t.Error("a name changes the revision")
	}
	p.Decisions.Design.Page.Height++
	if p.Revision() == first {
		t.Error("a size does not change the revision")
	}
}
