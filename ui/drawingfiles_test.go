package ui

import (
	"image"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"grainwise/model/measure"
	"grainwise/model/project"
)

// endings are those of the files in a folder, in their order.
func endings(t *testing.T, folder string) string {
	t.Helper()
	entries, err := os.ReadDir(folder)
	if err != nil {
		t.Fatal(err)
	}
	all := ""
	for _, e := range entries {
		all += filepath.Ext(e.Name())
	}
	return all
}

// The drawing on show and a contact sheet are saved in three forms, each in a folder
// of its own.
func TestDrawingsAreSaved(t *testing.T) {
	folder := t.TempDir()
	w := openDemo(t, func(p *Ports) { p.Dialogs = dialogs{folder, nil} })
	w.saveDrawing()
	w.button(t, "Close").OnTapped()
	if got := endings(t, filepath.Join(folder, "Low Water, Taken apart")); got != ".pdf.png.svg" {
		t.Errorf("the drawing's files: %s", got)
	}
	w.contactSheet()
	w.button(t, "Save…").OnTapped()
	w.button(t, "Close").OnTapped()
	if got := endings(t, filepath.Join(folder, "Low Water, contact sheet")); got != ".pdf.png.svg" {
		t.Errorf("the contact sheet's files: %s", got)
	}
}

// What a customer is told goes into the project, one step to undo; what cannot be
// understood is said and changes nothing.
func TestTheCustomerIsTold(t *testing.T) {
	w := openDemo(t, func(p *Ports) { p.Studio = project.StudioIn(t.TempDir()) })
	form := func(entries ...string) *studioForm {
		f := w.customerSheet()
		for i, text := range entries {
			f.entries[i].SetText(text)
		}
		f.keep()
		return f
	}
	f := form("Ebb", "pencil", "58 euros", "")
	if len(w.sheets) != 1 || !strings.Contains(f.trouble.Text(), "Price") || w.session.Offer() != (project.Offer{}) {
		t.Errorf("a price in words: %q, %+v", f.trouble.Text(), w.session.Offer())
	}
	f.sheet.close()
	form("Ebb", "pencil", "58.00 EUR", "2027-03-14", "Curlew Slack Bindery", "over the boat-shed")
	want := project.Offer{Title: "Ebb", Media: "pencil", Price: measure.Money{Minor: 5800, Currency: "EUR"}, Ready: measure.Date{Year: 2027, Month: 3, Day: 14}}
	if got := w.session.Offer(); got != want || len(w.sheets) != 0 {
		t.Errorf("%+v, %d sheets", got, len(w.sheets))
	}
	if in := w.middle.input(); in.Offer.Studio != "Curlew Slack Bindery" || in.Offer.Price != "58.00 EUR" || in.Offer.Ready != "14 March 2027" {
		t.Errorf("the drawing is told %+v", in.Offer)
	}
	w.undo()
	if w.session.Offer() != (project.Offer{}) || w.session.Studio().Showing.Name == "" {
		t.Error("undo takes back what is of the project, and nothing else")
	}
}

// A studio's picture is taken in and taken away; a file that is none is said, and
// the picture that was there stays.
func TestTheStudiosPicture(t *testing.T) {
	path := filepath.Join(t.TempDir(), "mark.png")
	file, err := os.Create(path)
	if err != nil {
		t.Fatal(err)
	}
	if err := png.Encode(file, image.NewGray(image.Rect(0, 0, 40, 20))); err != nil {
		t.Fatal(err)
	}
	file.Close()
	w := openDemo(t, func(p *Ports) { p.Dialogs, p.Studio = dialogs{path, nil}, project.StudioIn(t.TempDir()) })
	w.logoSheet()
	kept := w.session.Studio().Showing
	if logo := w.middle.input().Offer.Logo; len(kept.Logo) == 0 || logo == nil || logo.Bounds().Dx() != 40 {
		t.Fatal("the picture is not taken")
	}
	if err := os.WriteFile(path, []byte("no picture any more"), 0o600); err != nil {
		t.Fatal(err)
	}
	w.logoSheet()
	w.button(t, "Take another…").OnTapped()
	w.button(t, "Close").OnTapped()
	if !w.session.Studio().Showing.Equal(kept) {
		t.Error("a bad file has taken the place of the picture")
	}
	w.logoSheet()
	w.button(t, "Take it away").OnTapped()
	if len(w.session.Studio().Showing.Logo) != 0 || w.middle.input().Offer.Logo != nil {
		t.Error("the picture is still there")
	}
}
