package session

import (
	"runtime"
	"strings"
	"testing"
	"time"

	"grainwise/model/batch"
	"grainwise/model/check"
	"grainwise/model/measure"
)

// leave leaves the worst finding as it is.
func leave(t *testing.T, s *Session, reason string) check.Finding {
	t.Helper()
	if len(s.Findings()) == 0 {
		t.Fatal("nothing to leave as it is")
	}
	f := s.Findings()[0]
	s.Leave(f, reason)
	return f
}

func TestLeavingAFindingIsAStep(t *testing.T) {
	s, _ := begin()
	set(t, s, "joint.width", mm(4.5))
	s.Saved(s.Project(), "x.grainwise")
	all := len(s.Findings())
	f := leave(t, s, "A trial.")
	if f.Level != check.Stop || len(s.Findings()) != all-1 || len(s.Left()) != 1 || s.Left()[0].Accepted != "A trial." {
		t.Fatalf("%s: %d findings, left %v", f.Identity(), len(s.Findings()), s.Left())
	}
	if !s.Unsaved() || steps(s) != "Joint left as it is" {
		t.Errorf("unsaved %v, the step is %q", s.Unsaved(), steps(s))
	}
	if !s.Undo() || len(s.Left()) != 0 || len(s.Findings()) != all || s.Unsaved() {
		t.Error("undo takes the answer back")
	}
	if !s.Redo() || len(s.Left()) != 1 || !s.Unsaved() {
		t.Error("redo gives it again")
	}
	s.SayAgain(s.Left()[0])
	if len(s.Left()) != 0 || s.Unsaved() || steps(s) != "Joint said again" {
		t.Errorf("left %v, unsaved %v, the step is %q", s.Left(), s.Unsaved(), steps(s))
	}
	s.SayAgain(f)
	if steps(s) != "Joint said again" || len(s.Project().Accepted) != 0 {
		t.Error("there was no answer to take back")
	}
}

// An answer goes with the project, lapses with a worse value, and comes back.
func TestAnAnswerLapsesAndComesBack(t *testing.T) {
	s, now := begin()
	set(t, s, "joint.width", mm(4.5))
	leave(t, s, "A trial.")
	step := func(v float64) {
		*now = now.Add(time.Hour)
		set(t, s, "joint.width", mm(v))
	}
	step(4)
	if len(s.Left()) != 0 || s.Findings()[0].Lapsed == nil {
		t.Fatalf("a narrower joint: %+v", s.Findings()[0])
	}
	if said := s.Findings()[0].Again(measure.Style{Decimals: 2}); !strings.Contains(said, "4.5 mm; now it is 4 mm") {
		t.Errorf("it says %q", said)
	}
	step(8) // gone
	if len(s.Project().Accepted) != 1 || len(s.Left()) != 0 {
		t.Error("the answer is kept though the finding is gone")
	}
	step(4.5)
	if len(s.Left()) != 1 {
		t.Error("the value came back, the answer did not")
	}
	again := New(s.Project(), "")
	if len(again.Left()) != 1 || again.Unsaved() {
		t.Error("the answer does not go with the project")
	}
	step(4)
	leave(t, s, "Another trial.")
	if answers := s.Project().Accepted; len(answers) != 1 || answers[0].Reason != "Another trial." {
		t.Errorf("answers %v", answers)
	}
}

// The answers of a state stay as they were, whatever comes later.
func TestAStateIsNotChangedAfterwards(t *testing.T) {
	s, _ := begin()
	set(t, s, "joint.width", mm(4.5))
	set(t, s, "covering.turnIn", mm(8))
	first := leave(t, s, "One.")
	second := leave(t, s, "Two.")
	s.SayAgain(first)
	for _, want := range [][]string{{first.ID, second.ID}, {first.ID}, {}} {
		s.Undo()
		answers := s.Project().Accepted
		for i := range max(len(want), len(answers)) {
			if i >= len(want) || i >= len(answers) || answers[i].ID != want[i] {
				t.Fatalf("answers %v, want those to %v", answers, want)
			}
		}
	}
	p := s.Project()
	p.Accepted = append(p.Accepted, check.Acceptance{ID: "x"})
	if len(s.Project().Accepted) != 0 {
		t.Error("a copy of the project changes the session")
	}
}

// 200 steps to undo take 20 MB at most, the answers and what a step is called
// included.
func TestStepsAreSmall(t *testing.T) {
	s, now := begin()
	set(t, s, "joint.width", mm(4.5))
	set(t, s, "covering.turnIn", mm(8))
	set(t, s, "square.head", mm(1))
	for len(s.Findings()) > 0 {
		leave(t, s, strings.Repeat("For this reason. ", 40))
	}
	heap := func() uint64 {
		runtime.GC()
		runtime.GC()
		var m runtime.MemStats
		runtime.ReadMemStats(&m)
		return m.HeapAlloc
	}
	before := heap()
	const steps = 200
	for i := range steps {
		*now = now.Add(time.Hour)
		if i%10 == 0 {
			s.SayAgain(s.Left()[0])
			leave(t, s, strings.Repeat("For another reason. ", 40))
			continue
		}
		set(t, s, "page.height", mm(211+float64(i%2)))
	}
	grown := int64(heap()) - int64(before)
	t.Logf("%d bytes a step", grown/steps)
	if grown > 20<<20 || grown <= 0 {
		t.Errorf("%d steps take %d bytes", steps, grown)
	}
	runtime.KeepAlive(s)
}

// Notes are typed letter by letter: one step, until there is a pause. The design
// has its own steps, and both come back in their order.
func TestNotesAreSteps(t *testing.T) {
	s, now := begin()
	at := s.Notes()
	for _, text := range []string{"t", "th", "thin"} {
		s.SetNotes(text)
	}
	if undo, _ := s.Steps(); undo != "Notes" || !s.Unsaved() {
		t.Errorf("the step is %q", undo)
	}
	set(t, s, "page.height", mm(211))
	*now = now.Add(time.Minute)
	s.SetNotes("thinner")
	s.Undo()
	if s.Notes() != "thin" || s.Book().Resolved.Page.Height != measure.MM(211) {
		t.Errorf("notes %q, a page of %v", s.Notes(), s.Book().Resolved.Page.Height)
	}
	s.Undo()
	s.Undo()
	if s.Notes() != at || s.Unsaved() {
		t.Errorf("notes %q", s.Notes())
	}
}

func TestBatchesAreSteps(t *testing.T) {
	s, now := begin()
	was := s.Batch()
	note := func(text string) {
		b, err := s.Batch().WithOrders(batch.Order{ID: "x", Customer: text, Kind: batch.Customer, Count: 1, State: batch.Ordered})
		if err != nil {
			t.Fatal(err)
		}
		s.SetBatch(b, "order x", "Order x")
	}
	for _, text := range []string{"A", "Ad", "Addlemoor"} {
		note(text)
	}
	set(t, s, "page.height", mm(211))
	*now = now.Add(time.Minute)
	note("Umberlow")
	customer := func() string { o := s.Batch().Orders; return o[len(o)-1].Customer }
	if undo, _ := s.Steps(); undo != "Order x" || !s.Unsaved() || customer() != "Umberlow" {
		t.Errorf("the step is %q", undo)
	}
	s.Undo()
	if customer() != "Addlemoor" || s.Book().Resolved.Page.Height != measure.MM(211) {
		t.Errorf("%s, a page of %v", customer(), s.Book().Resolved.Page.Height)
	}
	s.Undo()
	s.Undo()
	if !s.Batch().Equal(was) || s.Unsaved() {
		t.Errorf("%d orders", len(s.Batch().Orders))
	}
	s.Redo()
	if customer() != "Addlemoor" {
		t.Error(customer())
	}
}
