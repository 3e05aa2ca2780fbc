package session

import (
	"testing"
	"time"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/project"
)

// begin is the demo book with a clock that the test moves.
func begin() (*Session, *time.Time) {
	s := New(project.Demo(), "")
	now := time.Date(2026, 3, 1, 14, 2, 0, 0, time.UTC)
	s.Now = func() time.Time { return now }
	return s, &now
}

func mm(v float64) book.Value { return book.LengthValue(measure.MM(v)) }

func set(t *testing.T, s *Session, key string, v book.Value) {
	t.Helper()
	if err := s.Set(key, v); err != nil {
		t.Fatal(err)
	}
}

func steps(s *Session) string {
	undo, _ := s.Steps()
	return undo
}

func TestADragIsOneNamedStep(t *testing.T) {
	s, now := begin()
	s.Hold("page.height")
	for h := 211.0; h <= 236; h++ {
		*now = now.Add(time.Second)
		set(t, s, "page.height", mm(h))
	}
	if key := s.Moving(); key != "page.height" {
		t.Errorf("moving %q", key)
	}
	s.Release()
	if got, want := steps(s), "Page height 210 → 236 mm"; got != want {
		t.Errorf("the step is %q, want %q", got, want)
	}
	set(t, s, "page.height", mm(237))
	if got, want := steps(s), "Page height 236 → 237 mm"; got != want {
		t.Errorf("after the drag: %q, want %q", got, want)
	}
	s.Undo()
	s.Undo()
	if s.Book().Block.Height != measure.MM(210) || s.Unsaved() {
		t.Error("undo leads back to where the demo began")
	}
}

func TestArrowKeysJoinByFieldAndTime(t *testing.T) {
	s, now := begin()
	set(t, s, "page.width", mm(151))
	*now = now.Add(time.Second)
	set(t, s, "page.width", mm(152))
	*now = now.Add(time.Second)
	set(t, s, "page.height", mm(211))
	if got := steps(s); got != "Page height 210 → 211 mm" {
		t.Errorf("last step %q", got)
	}
	s.Undo()
	if got := steps(s); got != "Page width 150 → 152 mm" {
		t.Errorf("first step %q", got)
	}
}

func TestListenersHearOnceAndOnlyOfChanges(t *testing.T) {
	s, _ := begin()
	heard := 0
	s.Listen(func() { heard++ })
	set(t, s, "page.width", mm(160))
	set(t, s, "page.width", mm(160))
	s.SetSystem(measure.Imperial)
	s.SetSystem(measure.Imperial)
	if heard != 2 {
		t.Errorf("heard %d times, want 2", heard)
	}
}

func TestARefusedValueChangesNothing(t *testing.T) {
	s, _ := begin()
	before := s.Decisions()
	for key, v := range map[string]book.Value{"page.width": mm(10_000), "paper.turned": book.WordValue("perhaps"), "page.depth": mm(1)} {
		if err := s.Set(key, v); err == nil {
			t.Errorf("%s took %v", key, v)
		}
	}
	if s.Decisions() != before || steps(s) != "" {
		t.Error("something changed all the same")
	}
}

func TestAProjectIsShownInTheUnitItIsCutIn(t *testing.T) {
	s, _ := begin()
	for _, system := range []measure.System{measure.Imperial, measure.Metric} {
		s.SetSystem(measure.Metric)
		s.Replace(project.New(system), "")
		if s.System() != system {
			t.Errorf("cut in %v, shown in %v", system, s.System())
		}
	}
}

func TestTheUnitShownMovesNoSize(t *testing.T) {
	s, _ := begin()
	parts, before := s.Book().Parts, s.Decisions()
	s.SetSystem(measure.Imperial)
	if s.Decisions() != before || s.Unsaved() {
		t.Error("the design changed with the unit")
	}
	for i, p := range s.Book().Parts {
		if p != parts[i] {
			t.Errorf("%s: %v, was %v", p.ID, p, parts[i])
		}
	}
}

func TestATypedSizeIsNamedAndChecked(t *testing.T) {
	s, _ := begin()
	set(t, s, "joint.width", mm(5))
	if got := steps(s); got != "Joint auto → 5 mm" {
		t.Errorf("the step is %q", got)
	}
	if len(s.Findings()) == 0 || s.Findings()[0].Key != "joint.width" {
		t.Errorf("a joint of 5 mm is not the worst finding: %v", s.Findings())
	}
}

func TestSavedIsWhatTheFileHolds(t *testing.T) {
	s, now := begin()
	set(t, s, "page.width", mm(160))
	if !s.Unsaved() {
		t.Error("a change is not saved")
	}
	s.Saved(s.Project(), "x.grainwise")
	*now = now.Add(time.Hour)
	set(t, s, "page.width", mm(170))
	if !s.Undo() || s.Unsaved() || s.Path() != "x.grainwise" {
		t.Error("undo leads back to what was saved")
	}
	s.Undo()
	if !s.Unsaved() {
		t.Error("before the save is not what the file holds")
	}
	if !s.Redo() || s.Unsaved() {
		t.Error("redo leads to what was saved")
	}
}

func TestSeveralSettingsAreCounted(t *testing.T) {
	s, _ := begin()
	d := s.Decisions()
	d.Design.Page.Width, d.Design.Page.Height = measure.MM(200), measure.MM(120)
	s.Apply("", d)
	if got := steps(s); got != "2 settings" {
		t.Errorf("the step is %q", got)
	}
	if got, want := Name(s.Book(), measure.Metric), "Landscape 200 × 120 mm"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}
