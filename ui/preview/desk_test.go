package preview

import (
	"image"
	"image/color"
	"testing"

	"grainwise/render/scene"
)

// A page of A4 lies in the middle of the desk, white, and what runs over its edge
// is not seen; by night its white is dimmed, and what is drawn on it stays.
func TestAPageOnItsDesk(t *testing.T) {
	grey, dimmed := color.NRGBA{0xDD, 0xD9, 0xD0, 0xFF}, color.NRGBA{0xE7, 0xE2, 0xD6, 0xFF}
	page := &scene.Scene{Width: 210, Height: 297, Ground: white}
	page.Add(scene.Face{Outline: rectangle(-500, 100, 500, 120), Fill: 0x112233})
	for _, night := range []bool{false, true} {
		desk, paper := Desk{Ground: grey, Edge: color.NRGBA{0, 0, 0, 0xFF}, Shade: color.NRGBA{A: 0x40}}, color.NRGBA{0xFF, 0xFF, 0xFF, 0xFF}
		if night {
			desk.Paper, paper = &dimmed, dimmed
		}
		var d drawer
		shown := d.frame(job{paper: page, desk: desk, port: fitted, device: 1, width: 800, height: 600})
		fit := (600 - 2*deskMargin) / 297
		left := (800 - fit*210) / 2
		for _, c := range []struct {
			at   image.Point
			want color.NRGBA
		}{
			{image.Pt(400, 300-int(fit*100)), paper},
			{image.Pt(int(left)+3, 40), paper},
			{image.Pt(400, int(deskMargin+fit*110)), color.NRGBA{0x11, 0x22, 0x33, 0xFF}},
			{image.Pt(60, int(deskMargin+fit*110)), grey},
			{image.Pt(700, int(deskMargin+fit*110)), grey},
			{image.Pt(5, 5), grey},
		} {
			if got := color.NRGBAModel.Convert(shown.picture.At(c.at.X, c.at.Y)); got != c.want {
				t.Errorf("night %v: at %v %v, want %v", night, c.at, got, c.want)
			}
		}
	}
}

// A bare desk has no page.
func TestABareDesk(t *testing.T) {
	var d drawer
	grey := color.NRGBA{0xDD, 0xD9, 0xD0, 0xFF}
	shown := d.frame(job{paper: &scene.Scene{}, desk: Desk{Ground: grey}, port: fitted, device: 2, width: 400, height: 300})
	for _, at := range []image.Point{{0, 0}, {200, 150}, {399, 299}} {
		if got := color.NRGBAModel.Convert(shown.picture.At(at.X, at.Y)); got != grey {
			t.Errorf("at %v %v", at, got)
		}
	}
}
