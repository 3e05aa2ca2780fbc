package sketch

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"grainwise/assets"
	"grainwise/render/draft"
	"grainwise/render/scene"
)

func TestLabelsStandInsideAndApart(t *testing.T) {
	page := draft.Box{X0: 1, Y0: 1, X1: Width - 1, Y1: Height - 1}
	for _, n := range All() {
		s := Scene(n, Look{})
		boxes := draft.TextBoxes(s)
		for i, b := range boxes {
			if !b.Inside(page) {
				t.Errorf("%s: a label reaches out of the picture: %+v", n, b)
			}
			for _, other := range boxes[:i] {
				if b.Overlaps(other) {
					t.Errorf("%s: two labels overlap", n)
				}
			}
		}
		if len(boxes) > 3 {
			t.Errorf("%s: %d labels, three are enough", n, len(boxes))
		}
		for _, text := range texts(s) {
			if text.Size/scene.Px < draft.Least {
				t.Errorf("%s: %q is %.1f px, under %d", n, text.String, text.Size/scene.Px, draft.Least)
			}
			if strings.HasPrefix(text.String, "sketch.") {
				t.Errorf("%s: no text for %s", n, text.String)
			}
		}
	}
}

func texts(s *scene.Scene) []scene.Text {
	var out []scene.Text
	for _, item := range s.Items {
		if text, is := item.(scene.Text); is {
			out = append(out, text)
		}
	}
	return out
}

// Every picture means something: it has some accent, and nothing else has it
// but lines and washes; all of it stands on the sheet.
func TestEveryPictureMeansSomethingAndStandsOnTheSheet(t *testing.T) {
	for _, n := range All() {
		s := Scene(n, Look{})
		accent := false
		for _, item := range s.Items {
			var paths []scene.Path
			switch it := item.(type) {
			case scene.Face:
				paths, accent = []scene.Path{it.Outline}, accent || it.Fill == draft.Accent
			case scene.Stroke:
				paths, accent = it.Paths, accent || it.Line.Colour == draft.Accent
			}
			for _, path := range paths {
				if !path.Finite() {
					t.Errorf("%s: a line without end", n)
				}
				for _, at := range path {
					if at.X < 0 || at.Y < 0 || at.X > s.Width || at.Y > s.Height {
						t.Errorf("%s: something stands off the sheet, at %.0f, %.0f px", n, at.X/scene.Px, at.Y/scene.Px)
					}
				}
			}
		}
		if !accent {
			t.Errorf("%s: nothing is in accent", n)
		}
	}
}

func TestDarkSurroundDimsTheSheetOnly(t *testing.T) {
	for _, n := range All() {
		light, dark := Scene(n, Look{}), Scene(n, Look{Dark: true})
		if dark.Ground != draft.GroundDark || light.Ground == dark.Ground {
			t.Errorf("%s: ground %x in dark surroundings", n, dark.Ground)
		}
		if len(light.Items) != len(dark.Items) {
			t.Errorf("%s: another picture in dark surroundings", n)
		}
	}
}

func TestWordlessPicturesHaveNoWordsAndNothingElseLess(t *testing.T) {
	for _, n := range All() {
		with, without := Scene(n, Look{}), Scene(n, Look{Wordless: true})
		if len(texts(without)) > 0 || len(without.Items) != len(with.Items)-len(texts(with)) {
			t.Errorf("%s: without words %d of %d things are left", n, len(without.Items), len(with.Items))
		}
	}
}

// WCAG 2.2, 1.4.6: labels reach 7 : 1 in high contrast. Their ink is black
// then, so it is enough that every label is of that ink.
func TestLabelsAreBlackInHighContrast(t *testing.T) {
	for _, n := range All() {
		for _, text := range texts(Scene(n, Look{Stark: true})) {
			if text.Colour != 0 {
				t.Errorf("%s: %q is %06X", n, text.String, text.Colour)
			}
		}
	}
}

func TestNamesAreUniqueAndUsed(t *testing.T) {
	all := All()
	for i, n := range all {
		if slices.Contains(all[:i], n) {
			t.Errorf("two pictures are called %s", n)
		}
	}
	for about, table := range map[string]map[string]Name{"parameter": ofParam(), "rule": ofRule()} {
		for key, n := range table {
			if Scene(n, Look{}) == nil {
				t.Errorf("%s %s: there is no picture %q", about, key, n)
			}
		}
	}
}

func TestEveryWordIsUsed(t *testing.T) {
	data, err := assets.Files.ReadFile("lang/en/sketch.json")
	if err != nil {
		t.Fatal(err)
	}
	var words map[string]string
	if err := json.Unmarshal(data, &words); err != nil {
		t.Fatal(err)
	}
	used := map[string]bool{}
	for _, n := range All() {
		for _, text := range texts(Scene(n, Look{})) {
			used[text.String] = true
		}
	}
	for key, text := range words {
		if !used[text] {
			t.Errorf("no picture says %s", key)
		}
	}
}
