package check

import "testing"

// Source: checks.md, measure-first: always a note in check and plan; a stop in
// papers, batch and the Sheets page for 5 books or more.
func TestEstimatesStopABatch(t *testing.T) {
	note := []Finding{{ID: "measure-first", Level: Note}, {ID: "square-format", Level: Note}}
	for _, c := range []struct {
		copies int
		want   Level
	}{{1, Note}, {4, Note}, {5, Stop}, {24, Stop}} {
		got := Batched(note, c.copies)
		if got[0].Level != c.want || got[1].Level != Note {
			t.Errorf("%d books: %s, %s", c.copies, got[0].Level, got[1].Level)
		}
	}
	if note[0].Level != Note {
		t.Error("the book's own finding was changed")
	}
}
