package sheet

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/assets/words"
	"grainwise/model/book/booktest"
	"grainwise/model/making"
)

// lessonsOf are an article's steps in order.
func lessonsOf(a Article) []Lesson {
	var all []Lesson
	for _, c := range a.Chapters {
		all = append(all, c.Steps...)
	}
	return all
}

// Every step of the bench is taught, numbered through, and with its numbers: the
// demo's are those of its table, computed by hand (covering 368 × 252, liner
// 410.6 × 210, seam 20 to 190).
func TestGuideTeachesEveryStep(t *testing.T) {
	in := demoSet(t)
	steps := making.Steps(in.Book)
	lessons := lessonsOf(in.article())
	if len(lessons) != len(steps) {
		t.Fatalf("%d steps are taught, %d are made", len(lessons), len(steps))
	}
	all := ""
	for i, l := range lessons {
		if l.Number != i+1 || l.ID != steps[i].ID || l.Do == "" || l.How == "" {
			t.Errorf("step %d: %+v", i+1, l)
		}
		all += l.Do + " " + l.How + "\n"
	}
	for _, want := range []string{"368 × 252 mm", "410.6 × 210 mm", "20 mm to 190 mm", "16 mm", "9 mm"} {
		if !strings.Contains(all, want) {
			t.Errorf("no step says %q", want)
		}
	}
}

// A guide is read stage by stage: a caution stands in full once in each stage that
// needs it.
func TestGuideCautionsStandInEachStage(t *testing.T) {
	in := demoSet(t)
	taught := map[string]Lesson{}
	for _, l := range lessonsOf(in.article()) {
		taught[l.ID] = l
	}
	seen := map[making.Stage]map[making.Caution]int{}
	for _, s := range making.Steps(in.Book) {
		if seen[s.Stage] == nil {
			seen[s.Stage] = map[making.Caution]int{}
		}
		for _, c := range s.Cautions {
			seen[s.Stage][c] += strings.Count(strings.Join(taught[s.ID].Cautions, "\n"), c.Text())
		}
	}
	for stage, cautions := range seen {
		for c, times := range cautions {
			if times != 1 {
				t.Errorf("%s: the caution of %s stands in full %d times", stage, c, times)
			}
		}
	}
}

// What the left hand does otherwise is said at every step where the hand matters,
// and nowhere for the right hand.
func TestGuideForTheLeftHand(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := booktest.Books().Draw(t, "book")
		for _, left := range []bool{true, false} {
			lessons := lessonsOf(Input{Book: b, Left: left}.article())
			for i, s := range making.Steps(b) {
				_, written := words.Lookup("guide.left." + s.ID)
				if s.Handed != written || (lessons[i].Hand != "") != (left && s.Handed) {
					t.Errorf("%s: handed %v, written %v, said %q", s.ID, s.Handed, written, lessons[i].Hand)
				}
			}
		}
	})
}
