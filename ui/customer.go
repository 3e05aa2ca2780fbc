package ui

import (
	"image"
	"path/filepath"

	"grainwise/assets/words"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/render/photo"
	"grainwise/render/view"
	"grainwise/ui/controls"
)

// customerSheet asks what a customer is told of this book, and of the studio.
func (w *Window) customerSheet() *studioForm {
	offer, show := w.session.Offer(), w.session.Studio().Showing
	price, ready := "", ""
	if offer.Price != (measure.Money{}) {
		price = offer.Price.String()
	}
	if !offer.Ready.IsZero() {
		ready = offer.Ready.String()
	}
	offered := func(key, shown string, read func(text string) error) studioRow {
		return studioRow{
			key: key, label: words.Say("customer." + key), shown: shown, hint: words.Say("customer.hint." + key), wide: true,
			take: func(_ *project.Studio, text string) error {
				if err := read(text); err != nil {
					return err
				}
				return offer.Validate()
			},
		}
	}
	studio := func(key, shown string, at func(*project.Showing) *string) studioRow {
		return studioRow{
			key: key, label: words.Say("customer." + key), shown: shown, wide: true,
			take: func(s *project.Studio, text string) error {
				*at(&s.Showing) = text
				return s.Showing.Check()
			},
		}
	}
	rows := []studioRow{
		offered("title", offer.Title, func(text string) error { offer.Title = text; return nil }),
		offered("media", offer.Media, func(text string) error { offer.Media = text; return nil }),
		offered("price", price, func(text string) (err error) {
			offer.Price = measure.Money{}
			if text != "" {
				offer.Price, err = measure.ParseMoney(text)
			}
			return err
		}),
		offered("ready", ready, func(text string) (err error) {
			offer.Ready = measure.Date{}
			if text != "" {
				offer.Ready, err = measure.ParseDate(text)
			}
			return err
		}),
		studio("name", show.Name, func(s *project.Showing) *string { return &s.Name }),
		studio("line", show.Line, func(s *project.Showing) *string { return &s.Line }),
	}
	rows[0].head, rows[4].head = words.Say("customer.book"), words.Say("customer.studio")
	f := w.openStudioForm(words.Say("customer.sheet"), words.Say("customer.text"), rows)
	f.kept = func() { w.session.SetOffer(offer) }
	return f
}

// logoSheet asks for the studio's picture, or whether to take another.
func (w *Window) logoSheet() {
	if len(w.session.Studio().Showing.Logo) == 0 {
		w.askLogo()
		return
	}
	w.ask(words.Say("customer.logo"), words.Say("customer.logoText"),
		answer{words.Say("sheet.cancel"), controls.Framed, nil},
		answer{words.Say("customer.logoAway"), controls.Framed, func() { w.keepLogo(nil) }},
		answer{words.Say("customer.logoOther"), controls.Solid, w.askLogo})
}

func (w *Window) askLogo() { w.askPicture(w.takeLogo) }

func (w *Window) takeLogo(path string) {
	name := filepath.Base(path)
	w.working(words.Say("materials.reading", words.With{"name": name}), func() (then func()) {
		kept, err := photo.Logo(path, project.LargestLogo)
		return func() {
			if err != nil {
				w.tell(words.Say("customer.logoNot", words.With{"name": name}), sentence(err.Error()))
				return
			}
			w.keepLogo(kept)
		}
	})
}

func (w *Window) keepLogo(data []byte) {
	studio := w.session.Studio()
	studio.Showing.Logo = data
	if err := w.ports.Studio.Write(studio); err != nil {
		w.complain(err)
		return
	}
	w.session.SetStudio(studio)
}

// shownLogo is a studio's picture, read once.
type shownLogo struct {
	of    project.Showing
	image image.Image
}

// offer is what the mock-up tells a customer. A studio's picture that cannot be
// read any more is left out.
func (m *middle) offer() view.Offer {
	show := m.session.Studio().Showing
	if !m.logo.of.Equal(show) {
		logo, _ := view.LogoOf(show)
		m.logo = shownLogo{of: show, image: logo}
	}
	return view.OfferOf(m.session.Offer(), show, m.logo.image)
}
