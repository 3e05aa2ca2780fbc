package sheet

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/assets/words"
	"grainwise/model/book/booktest"
	"grainwise/model/making"
	"grainwise/model/measure"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

// written are a drawing's texts, a line each.
func written(s *scene.Scene) string {
	var all []string
	for _, item := range s.Items {
		if t, is := item.(scene.Text); is {
			all = append(all, t.String)
		}
	}
	return strings.Join(all, "\n") + "\n"
}

// outside says what of a drawing lies off its sheet.
func outside(s *scene.Scene) string {
	const hair = 0.5 // a line's half width, and a head's point
	for _, item := range s.Items {
		for _, path := range pathsOf(item) {
			for _, p := range path {
				if p.X < -hair || p.Y < -hair || p.X > s.Width+hair || p.Y > s.Height+hair || !path.Finite() {
					return "a line leaves the drawing"
				}
			}
		}
	}
	return ""
}

// Every step that is to be shown has a drawing, for every book: its texts stand
// free, nothing leaves it, and it is told in words.
func TestDrawingsOfEveryBook(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := Input{
			Book: booktest.Books().Draw(t, "book"), Left: rapid.Bool().Draw(t, "left"),
			System: rapid.SampledFrom([]measure.System{measure.Metric, measure.Imperial}).Draw(t, "system"),
		}
		for _, s := range making.Steps(in.Book) {
			p := in.picture(s)
			if (p.Scene != nil) != (s.Drawing != "") {
				t.Fatalf("%s has no drawing of its own", s.ID)
			}
			if p.Scene == nil {
				continue
			}
			if trouble := draft.TextTrouble(p.Scene) + outside(p.Scene); trouble != "" {
				t.Errorf("%s: %s", s.ID, trouble)
			}
			if p.Means == "" || strings.HasPrefix(p.Means, "guide.") {
				t.Errorf("%s is told as %q", s.ID, p.Means)
			}
		}
	})
}

// Every drawing of the bench stands in the table, and every row of it is told.
func TestTableOfDrawings(t *testing.T) {
	for _, d := range []making.Drawing{
		making.DrawFolding, making.DrawGathering, making.DrawValleys, making.DrawStations, making.DrawSewing, making.DrawLayingOut,
		making.DrawCuttingCorners, making.DrawTurningIn, making.DrawCasingIn, making.DrawPressing, making.DrawLabel,
	} {
		if !slices.ContainsFunc(allDrawn(), func(row drawn) bool { return row.of == d && row.steps == nil }) {
			t.Errorf("%s is not drawn", d)
		}
	}
	for _, row := range allDrawn() {
		if _, has := words.Lookup("guide.picture." + row.means); !has {
			t.Errorf("%s is not told", row.means)
		}
	}
}

// The demo's drawings have its numbers. Source: its table, computed by hand, and for
// the corner 18·2 − 4·√2 = 30.3 (18 turned in, the cut 4 off at 45°).
func TestDrawingsOfTheDemo(t *testing.T) {
	in := demoSet(t)
	want := map[string][]string{
		"fold-folios": {"150", "210"}, "gather": {"4 ×", "6 ×", "1.76"}, "fold-pleats": {"10", "1.8"},
		"mark-pleats": {"150.9", "172.6", "259.7", "161.8", "248.8"}, "sew-machine": {"20", "190", "4.5"},
		"lay-out": {"149", "16", "9", "34", "216", "18"}, "cut-corners": {"4", "45°", "30.3"},
		"mark-casing": {"4", "3"}, "groove": {"2.5"},
	}
	for _, s := range making.Steps(in.Book) {
		p := in.picture(s)
		for _, number := range want[s.ID] {
			if !strings.Contains(written(p.Scene), number+"\n") {
				t.Errorf("the drawing of %s lacks %s: %q", s.ID, number, written(p.Scene))
			}
		}
		delete(want, s.ID)
	}
	if len(want) > 0 {
		t.Errorf("the demo has no step %v", want)
	}
}

// firstPlace is where a drawing's first line or face begins.
func firstPlace(s *scene.Scene) scene.Point {
	if f, is := s.Items[0].(scene.Face); is {
		return f.Outline[0]
	}
	return s.Items[0].(scene.Stroke).Paths[0][0]
}

// A left hand's drawing is the same seen in a mirror, its texts written as ever.
func TestMirroredDrawings(t *testing.T) {
	in := demoSet(t)
	left := in
	left.Left = true
	mirrored := 0
	for _, s := range making.Steps(in.Book) {
		a, b := in.picture(s), left.picture(s)
		if a.Scene == nil {
			continue
		}
		if written(a.Scene) != written(b.Scene) {
			t.Errorf("%s: %q, mirrored %q", s.ID, written(a.Scene), written(b.Scene))
		}
		p, q := firstPlace(a.Scene), firstPlace(b.Scene)
		want := p.X
		if s.Handed {
			want = a.Scene.Width - p.X
			mirrored++
		}
		if d := q.X - want; d*d > 1e-9 || p.Y != q.Y {
			t.Errorf("%s: a place %v lies at %v for the left hand", s.ID, p, q)
		}
	}
	if mirrored < 3 {
		t.Errorf("%d drawings are mirrored", mirrored)
	}
}

// The thread passes every hole that it comes to, reaches every station, covers the
// fold on both sides but for one stretch, and comes home. The usual way through five
// holes: out at the middle, in, out at the end, in, past the middle and so on (from
// memory; it is taught so everywhere).
func TestPamphletWay(t *testing.T) {
	want := []pass{{2, 3, false}, {3, 4, true}, {4, 3, false}, {3, 1, true}, {1, 0, false}, {0, 1, true}, {1, 2, false}}
	if got := pamphletWay(5); !slices.Equal(got, want) {
		t.Errorf("five stations: %v", got)
	}
	for n := 2; n <= 25; n++ {
		way := pamphletWay(n)
		seen := map[int]bool{}
		for i, p := range way {
			seen[p.from], seen[p.to] = true, true
			if i == 0 {
				continue
			}
			if before := way[i-1]; before.to != p.from || before.inside == p.inside {
				t.Errorf("%d stations: %v follows %v", n, p, before)
			}
		}
		if len(seen) != n || way[0].inside || way[0].from != way[len(way)-1].to {
			t.Errorf("%d stations: %v", n, way)
		}
	}
}
