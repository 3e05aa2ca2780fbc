package draft

import (
	"fmt"

	"grainwise/render/scene"
)

// TextTrouble says what is wrong with a drawing's texts: one that leaves the
// sheet, two that overlap, one below the least size. It is empty where all is
// well; every view is tested with it.
func TextTrouble(s *scene.Scene) string {
	boxes := TextBoxes(s)
	texts := textsOf(s)
	page := Box{0, 0, s.Width / scene.Px, s.Height / scene.Px}
	const hair = 0.01
	for i, b := range boxes {
		if !b.Inside(page.Grown(hair)) {
			return fmt.Sprintf("%q leaves the sheet: %+v", texts[i].String, b)
		}
		if texts[i].Size/scene.Px < Least-hair {
			return fmt.Sprintf("%q is %.1f px", texts[i].String, texts[i].Size/scene.Px)
		}
		for j := range i {
			if b.Grown(-hair).Overlaps(boxes[j]) && !oneFraction(texts[j], texts[i]) {
				return fmt.Sprintf("%q %+v and %q %+v overlap", texts[j].String, boxes[j], texts[i].String, b)
			}
		}
	}
	return ""
}

func textsOf(s *scene.Scene) []scene.Text {
	var out []scene.Text
	for _, item := range s.Items {
		if t, is := item.(scene.Text); is {
			out = append(out, t)
		}
	}
	return out
}

// oneFraction tells the raised and the lowered number of one fraction, whose
// boxes touch on either side of the slash.
func oneFraction(a, b scene.Text) bool {
	across := a.At.Y - b.At.Y
	if a.Turn%2 == 1 {
		across = a.At.X - b.At.X
	}
	return a.Turn == b.Turn && a.Font == b.Font && a.Size == b.Size && across != 0 &&
		max(across, -across) <= (overRaise+underDrop)*scene.Px+1e-9
}
