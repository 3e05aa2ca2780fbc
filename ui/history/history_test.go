package history

import (
	"fmt"
	"testing"
	"time"
)

var noon = time.Date(2026, 3, 1, 12, 0, 0, 0, time.UTC)

func after(d time.Duration) time.Time { return noon.Add(d) }

func arrow(from, to int) string { return fmt.Sprintf("%d → %d", from, to) }

func TestStepsWithOneMarkJoinWhileTheyAreClose(t *testing.T) {
	var h History[int]
	h.Record(1, 2, "height", after(0), arrow)
	h.Record(2, 3, "height", after(Patience), arrow)
	h.Record(3, 4, "height", after(2*Patience+1), arrow)
	if undo, _ := h.Next(); undo != "3 → 4" {
		t.Errorf("the last step is %q", undo)
	}
	for _, want := range []int{3, 1} {
		if got, ok := h.Undo(); !ok || got != want {
			t.Errorf("undo gives %d %v, want %d", got, ok, want)
		}
	}
	if _, ok := h.Undo(); ok {
		t.Error("there was nothing more to undo")
	}
}

func TestADragIsOneStepHoweverLong(t *testing.T) {
	var h History[int]
	h.Record(1, 2, "height", after(0), arrow)
	h.Hold()
	h.Record(2, 3, "height", after(1), arrow)
	h.Record(3, 9, "height", after(time.Hour), arrow)
	h.Release()
	h.Record(9, 10, "height", after(time.Hour+1), arrow)
	for _, want := range []int{9, 2, 1} {
		if got, _ := h.Undo(); got != want {
			t.Errorf("undo gives %d, want %d", got, want)
		}
	}
}

func TestOtherMarksStartSteps(t *testing.T) {
	var h History[int]
	h.Record(1, 2, "height", after(0), arrow)
	h.Record(2, 4, "width", after(1), arrow)
	h.Record(4, 5, "", after(3), arrow)
	h.Record(5, 6, "", after(4), arrow)
	for _, want := range []int{5, 4, 2, 1} {
		if got, _ := h.Undo(); got != want {
			t.Errorf("undo gives %d, want %d", got, want)
		}
	}
}

func TestWhatLeadsBackIsForgotten(t *testing.T) {
	var h History[int]
	h.Record(1, 2, "height", after(0), arrow)
	h.Record(2, 1, "height", after(1), arrow)
	h.Record(1, 1, "", after(2), arrow)
	if undo, redo := h.Next(); undo != "" || redo != "" {
		t.Errorf("steps left: %q, %q", undo, redo)
	}
}

func TestRedoGoesForwardUntilSomethingChanges(t *testing.T) {
	var h History[int]
	h.Record(1, 2, "", after(0), arrow)
	h.Record(2, 3, "", after(1), arrow)
	h.Undo()
	h.Undo()
	if got, _ := h.Redo(); got != 2 {
		t.Errorf("redo gives %d, want 2", got)
	}
	if undo, redo := h.Next(); undo != "1 → 2" || redo != "2 → 3" {
		t.Errorf("next are %q and %q", undo, redo)
	}
	h.Record(2, 7, "", after(2), arrow)
	if _, ok := h.Redo(); ok {
		t.Error("a change must drop what was undone")
	}
}

// The oldest steps go when there are too many; the newest stay in their order.
func TestSoManySteps(t *testing.T) {
	var h History[int]
	for i := range Most + 20 {
		h.Record(i, i+1, "", after(time.Duration(i)), arrow)
	}
	steps := 0
	for {
		if _, ok := h.Undo(); !ok {
			break
		}
		steps++
	}
	if _, redo := h.Next(); steps != Most || redo != "20 → 21" {
		t.Errorf("%d steps, the oldest %q", steps, redo)
	}
}
