package controls

import (
	"image"
	"testing"

	"fyne.io/fyne/v2/test"

	"grainwise/ui/look"
)

// A card draws its picture when it opens and when its finding is another one,
// not each time its figures change: a drag would pay for it.
func TestACardDrawsItsPictureOnce(t *testing.T) {
	test.NewTempApp(t)
	drawn := map[string]int{}
	card := NewCard()
	card.Draw = func(name string) image.Image {
		drawn[name]++
		return image.NewRGBA(image.Rect(0, 0, 4, 3))
	}
	w := test.NewTempWindow(t, card)
	w.Resize(card.MinSize())
	state := CardState{Level: look.Stop, Word: "Stop", Sentence: "Across.", Picture: "grain"}
	card.SetState(state)
	if len(drawn) != 0 || card.picture.Visible() {
		t.Error("a closed card draws a picture")
	}
	closed := card.HeightFor(268)
	state.Open = true
	for _, found := range []string{"1 mm", "2 mm", "3 mm"} {
		state.Found = found
		card.SetState(state)
	}
	state.Picture = "swell"
	card.SetState(state)
	if drawn["grain"] != 1 || drawn["swell"] != 1 || !card.picture.Visible() {
		t.Errorf("drawn %v", drawn)
	}
	if high := card.HeightFor(268); high < closed+cardPictureHeight {
		t.Errorf("open it is %v high, closed %v: no room for the picture", high, closed)
	}
}
