package view

import (
	"fmt"
	"image"

	"grainwise/assets/words"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/render/photo"
)

// Offer is what a customer is told of a book beside what the design says. Whatever
// is empty is not shown.
type Offer struct {
	Title        string // on the label and in the caption; empty: the project's name
	Media        string // that the paper suits
	Price, Ready string // ready: the date
	Studio, Line string // the studio's name and a line of its own
	Logo         image.Image
}

// OfferOf puts a project's offer and a studio's own words together, with the studio's
// picture as [LogoOf] reads it.
func OfferOf(o project.Offer, s project.Showing, logo image.Image) Offer {
	out := Offer{Title: o.Title, Media: o.Media, Studio: s.Name, Line: s.Line, Logo: logo}
	if o.Price != (measure.Money{}) {
		out.Price = o.Price.String()
	}
	if !o.Ready.IsZero() {
		out.Ready = words.Say("show.date", words.With{
			"day": o.Ready.Day, "month": words.Say(fmt.Sprintf("show.month.%02d", o.Ready.Month)), "year": o.Ready.Year,
		})
	}
	return out
}

// LogoOf reads a studio's picture, nil where it has none.
func LogoOf(s project.Showing) (image.Image, error) {
	if len(s.Logo) == 0 {
		return nil, nil
	}
	return photo.Decode(s.Logo)
}
