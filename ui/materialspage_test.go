package ui

import (
	"bytes"
	"encoding/json"
	"fmt"
	"image"
	"image/color"
	"image/png"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/model/stock"
	"grainwise/ui/controls"
)

// openMaterials is the demo's window with the page of materials on show, and a
// shelf of its own in a folder.
func openMaterials(t *testing.T, change ...func(*Ports)) *Window {
	t.Helper()
	folder := t.TempDir()
	w := openDemo(t, append([]func(*Ports){func(p *Ports) { p.Shelf = project.ShelfIn(folder) }}, change...)...)
	w.onWindow = func(do func()) { do() }
	w.turnPage(materialsAt)
	return w
}

// shown are the names in the table, heads in brackets.
func (p *materialsPage) named() []string {
	var names []string
	for _, r := range p.table.Rows() {
		if r.Cells == nil {
			names = append(names, "["+r.Head+"]")
		} else {
			names = append(names, r.Cells[nameColumn])
		}
	}
	return names
}

func (p *materialsPage) says() string { return strings.Join(texts(p.summary.list.Objects), "\n") }

func (p *materialsPage) pick(t *testing.T, kind stock.Kind, name string) {
	t.Helper()
	p.choose(materialID{kind, name})
	if p.chosen.name != name {
		t.Fatalf("%s is not in the table: %v", name, p.named())
	}
}

// sheetSays is what the topmost sheet says; empty without one.
func (w *Window) sheetSays() string {
	if len(w.sheets) == 0 {
		return ""
	}
	return strings.Join(textsOf(w.sheets[len(w.sheets)-1].popup), " ")
}

func TestTheShelfIsSearchedAndSorted(t *testing.T) {
	w := openMaterials(t)
	p := w.shelfPage
	if names := p.named(); names[0] != "[Paper]" || len(names) != 35+len(stock.Kinds()) {
		t.Fatalf("%d rows: %v", len(names), names)
	}
	p.search.SetText("TWILL cloth unbacked")
	if names := p.named(); !slices.Equal(names, nil) {
		t.Errorf("“cloth” is no word of it: %v", names)
	}
	if said := strings.Join(textsOf(p.empty), " "); !p.empty.Visible() || !strings.Contains(said, "TWILL cloth unbacked") || p.table.Object().Visible() {
		t.Errorf("an empty search says %q", said)
	}
	p.search.SetText("twill UNBACKED")
	if names := p.named(); !slices.Equal(names, []string{"[Covering]", "Slackwater"}) {
		t.Errorf("found %v", names)
	}
	p.all.OnTapped()
	if p.search.Text != "" || p.empty.Visible() {
		t.Error("all is not all")
	}
	p.search.SetText("drawing")
	p.table.OnSort(thicknessColumn)
	up := p.named()
	p.table.OnSort(thicknessColumn)
	if down := p.named(); !slices.Equal(up, []string{"[Paper]", "Tidewrack Drawing 80 lb", "Ebbwhite Drawing 170"}) || down[1] != up[2] {
		t.Errorf("up %v, down %v", up, down)
	}
}

// The worked figures are the demo's own, computed apart here by the model: another
// paper before it is chosen, then taken in one step.
func TestWhatChangesIsSaidBefore(t *testing.T) {
	w := openMaterials(t)
	p := w.shelfPage
	p.pick(t, stock.Paper, "Marramstone Oat 180")
	before := w.session.Book()
	d := w.session.Decisions()
	d.Design.Paper.Material = "Marramstone Oat 180"
	after := book.Compute(book.Resolve(d, stock.Default()))
	said := p.says()
	for _, want := range []string{
		"0.22 → 0.24 mm",
		fmt.Sprintf("%.2f → %.2f", before.Block.SpineThickness.MM(), after.Block.SpineThickness.MM()),
		fmt.Sprintf("%.0f g → %.0f g", before.Mass.Total(), after.Mass.Total()),
		fmt.Sprintf("%.2f → %.2f", before.Use.SheetsABook, after.Use.SheetsABook),
		fmt.Sprintf("%v → %v", before.Use.Cost, after.Use.Cost),
	} {
		if !strings.Contains(said, want) {
			t.Errorf("%q is not said:\n%s", want, said)
		}
	}
	if w.step() != "" {
		t.Fatal("looking is a step")
	}
	p.summary.use.OnTapped()
	if got := w.session.Book().Resolved.Stock.Paper.Name; got != "Marramstone Oat 180" || w.step() != "Marramstone Oat 180 for Paper" {
		t.Errorf("paper %q, step %q", got, w.step())
	}
	if !strings.Contains(p.says(), "uses it") {
		t.Errorf("in use it says:\n%s", p.says())
	}
	w.undo()
	if w.session.Unsaved() {
		t.Error("one undo is not enough")
	}
}

// A finding that a material would bring is told before it is chosen.
func TestNewFindingsAreSaidBefore(t *testing.T) {
	w := openMaterials(t)
	w.shelfPage.pick(t, stock.Paper, "Brackmud Grey 120")
	if said := w.shelfPage.says(); !strings.Contains(said, "never been tested") {
		t.Errorf("it says\n%s", said)
	}
}

// A thread sets the diameter that the design keeps; the figures follow from it.
func TestAThreadSetsItsDiameter(t *testing.T) {
	w := openMaterials(t)
	p := w.shelfPage
	p.pick(t, stock.Thread, "Samphire linen 25/3")
	if !strings.Contains(p.says(), "0.28 → 0.5 mm") {
		t.Errorf("it says\n%s", p.says())
	}
	p.summary.use.OnTapped()
	if got := w.session.Book().Sewing.ThreadDiameter; got != measure.MM(0.5) {
		t.Errorf("the thread is %v", got.MM())
	}
}

func (f *materialForm) enter(t *testing.T, name, text string) {
	t.Helper()
	field := f.find(name)
	if field == nil {
		t.Fatalf("no field %s", name)
	}
	f.put(field, text)
}

// form opens the form and remembers it.
func (w *Window) formOf(t *testing.T, open func()) *materialForm {
	t.Helper()
	open()
	if len(w.sheets) == 0 {
		t.Fatal("no form is open")
	}
	e, is := w.win.Canvas().Focused().(*formEntry)
	if !is {
		t.Fatalf("the focus is on %T", w.win.Canvas().Focused())
	}
	return e.form
}

func TestAMaterialIsAddedChangedCopiedAndDeleted(t *testing.T) {
	w := openMaterials(t)
	p := w.shelfPage
	p.pick(t, stock.Covering, "Kelp")
	f := w.formOf(t, func() { p.openForm(stock.Material{}, false) })
	if f.now.Kind != stock.Covering {
		t.Errorf("a new %s", f.now.Kind)
	}
	for name, text := range map[string]string{
		"name": "Glasswort", "rollWidth": "38 in", "thickness": "10 layers = 4.2 mm", "grammage": "60 lb text", "price": "19.50 EUR",
		"colour": "#0a1B2c", "weave": "twill", "backed": "yes", "grain": "long", "frontTest": "PVA: nothing comes through.",
	} {
		f.enter(t, name, text)
	}
	f.keep()
	m, there := w.session.Own().Find(stock.Covering, "Glasswort")
	if !there {
		t.Fatalf("not kept: %v", texts(f.list.Objects))
	}
	if m.RollWidth != 38*measure.Inch || m.Stack != (stock.Stack{Count: 10, Height: measure.MM(4.2)}) || m.Thickness != measure.MM(0.42) ||
		m.Pounds.String() != "60 lb text" || m.Price.Per != stock.PerMetre || m.Colour != "#0a1B2c" || m.Weave != stock.Twill || !m.Backed || m.GlueTested {
		t.Errorf("%+v", m)
	}
	if m.Price.On != measure.DayOf(w.session.Now()) {
		t.Errorf("priced on %v", m.Price.On)
	}
	if file, err := w.ports.Shelf.Open(); err != nil || len(file.Materials) != 36 {
		t.Errorf("the file holds %d, %v", len(file.Materials), err)
	}
	if p.chosen.name != "Glasswort" || len(w.sheets) != 0 {
		t.Error("the new one is not chosen")
	}

	f = w.formOf(t, p.summary.edit)
	f.enter(t, "thickness", "0.44")
	f.keep()
	if m, _ := w.session.Own().Find(stock.Covering, "Glasswort"); m.Thickness != measure.MM(0.44) || m.Stack.Count != 0 || m.RollWidth != 38*measure.Inch {
		t.Errorf("changed to %+v", m)
	}
	p.summary.copy.OnTapped()
	p.pick(t, stock.Covering, "Glasswort")
	p.summary.copy.OnTapped()
	if p.chosen.name != "Glasswort, copy 2" {
		t.Errorf("a second copy is %q", p.chosen.name)
	}
	p.summary.remove.OnTapped()
	if _, there := w.session.Own().Find(stock.Covering, "Glasswort, copy 2"); there || len(w.sheets) > 0 {
		t.Error("what no book uses is not deleted at once")
	}
	for range 5 {
		w.undo()
	}
	if file, err := w.ports.Shelf.Open(); err != nil || !file.Equal(stock.Default()) {
		t.Errorf("undone, the file holds %d, %v", len(file.Materials), err)
	}
	w.redo()
	if file, _ := w.ports.Shelf.Open(); len(file.Materials) != 36 {
		t.Errorf("done again, it holds %d", len(file.Materials))
	}
}

// What is wrong is said below its field, and nothing is kept.
func TestAWrongEntryIsSaidBesideItsField(t *testing.T) {
	for _, c := range []struct{ field, text, says string }{
		{"name", "", "1 to 80"},
		{"name", "Groynes 2.0", "same name"},
		{"thickness", "thick", "20 leaves = 4.4 mm"},
		{"thickness", "25", "at most 20 mm"},
		{"grammage", "80 lb", "80 lb text"},
		{"price", "12", "12.31 EUR"},
		{"priceDate", "1.2.2026", "2026-03-01"},
		{"colour", "green", "#24443A"},
		{"sheetWidth", "2000", "long side"},
		{"rollWidth", "500", "either a sheet"},
	} {
		w := openMaterials(t)
		w.shelfPage.pick(t, stock.Board, "Groynes 2.5")
		f := w.formOf(t, w.shelfPage.summary.edit)
		f.enter(t, c.field, c.text)
		f.keep()
		said := strings.Join(textsOf(f.trouble), " ")
		if !strings.Contains(said, c.says) || w.step() != "" || len(w.sheets) != 1 {
			t.Errorf("%s %q: %q", c.field, c.text, said)
		}
	}
}

// Another kind asks for other facts; what it cannot have is let go of, and what was
// typed stays.
func TestAnotherKindAsksForOtherFacts(t *testing.T) {
	w := openMaterials(t)
	p := w.shelfPage
	p.pick(t, stock.Covering, "Kelp")
	p.summary.copy.OnTapped()
	f := w.formOf(t, p.summary.edit)
	f.enter(t, "name", "Kelp thread")
	f.kind.OnChoose(slices.Index(stock.Kinds(), stock.Thread))
	if f.find("grammage") != nil || f.find("weave") != nil || f.find("number") == nil {
		t.Error("a thread is asked for its weave")
	}
	f.enter(t, "number", "18/3")
	f.enter(t, "thickness", "20 turns = 12 mm")
	f.keep()
	m, there := w.session.Own().Find(stock.Thread, "Kelp thread")
	if !there || m.Thickness != measure.MM(0.6) || m.Number != (stock.Number{Lea: 18, Ply: 3}) || m.RollWidth != 0 || m.Weave != "" || m.Price.Per != stock.PerMetre || m.Colour != "#24443A" {
		t.Errorf("%+v", m)
	}
	if _, still := w.session.Own().Find(stock.Covering, "Kelp, copy"); still {
		t.Error("the cloth is there still")
	}
	f = w.formOf(t, p.summary.edit)
	f.kind.OnChoose(slices.Index(stock.Kinds(), stock.Adhesive))
	f.keep()
	if said := strings.Join(textsOf(f.trouble), " "); !strings.Contains(said, "spread") && !strings.Contains(said, "more than 0") {
		t.Errorf("an adhesive without facts: %q", said)
	}
}

// What a book uses is deleted only after its maker was told; the book keeps it.
func TestDeletingWhatIsInUse(t *testing.T) {
	other := filepath.Join(t.TempDir(), "Other book"+Ending)
	if err := project.Save(other, project.Demo()); err != nil {
		t.Fatal(err)
	}
	w := openMaterials(t)
	if err := w.ports.Recent.Add(other); err != nil {
		t.Fatal(err)
	}
	p := w.shelfPage
	p.pick(t, stock.Covering, "Kelp")
	before := w.session.Book()
	p.summary.remove.OnTapped()
	said := w.sheetSays()
	if !strings.Contains(said, "Covering") || !strings.Contains(said, "Other book") || !strings.Contains(said, "own copy") {
		t.Errorf("asked %q", said)
	}
	w.button(t, "Delete").OnTapped()
	if _, there := w.session.Own().Find(stock.Covering, "Kelp"); there {
		t.Fatal("it is there still")
	}
	if w.session.Book().Mass != before.Mass || !strings.Contains(p.says(), "your shelf does not") {
		t.Errorf("the book changed, or it is not said:\n%s", p.says())
	}
	p.summary.put.OnTapped()
	if m, there := w.session.Own().Find(stock.Covering, "Kelp"); !there || m.Colour != "#24443A" {
		t.Error("it is not back on the shelf")
	}
}

// The shelf changes no book unasked, and the page offers what is new.
func TestNewFactsAreOffered(t *testing.T) {
	w := openMaterials(t)
	p := w.shelfPage
	p.pick(t, stock.Covering, "Kelp")
	f := w.formOf(t, p.summary.edit)
	f.enter(t, "thickness", "0.6")
	f.keep()
	if got := w.session.Book().Resolved.Stock.Covering.Thickness; got != measure.MM(0.45) {
		t.Errorf("the book has it %v thick", got.MM())
	}
	if !strings.Contains(p.says(), "0.45 → 0.6 mm") {
		t.Errorf("it says\n%s", p.says())
	}
	p.summary.use.OnTapped()
	if got := w.session.Book().Resolved.Stock.Covering.Thickness; got != measure.MM(0.6) {
		t.Errorf("taken, the book has it %v thick", got.MM())
	}
}

func TestMaterialsComeInFromATable(t *testing.T) {
	w := openMaterials(t)
	p := w.shelfPage
	path := filepath.Join(t.TempDir(), "cloths.csv")
	os.WriteFile(path, []byte("kind;name;thickness (mm);colour\r\nthread;Dulse;0,4;#A1B2C3\r\nthread;Sandhopper machine thread;0.3;\r\n"), 0o644)
	p.importFrom(path)
	if said := w.sheetSays(); !strings.Contains(said, "1 new, 1 in the place") {
		t.Errorf("asked %q", said)
	}
	w.button(t, "Take them in").OnTapped()
	if m, there := w.session.Own().Find(stock.Thread, "Dulse"); !there || m.Colour != "#A1B2C3" {
		t.Errorf("%+v", m)
	}
	w.undo()
	if !w.session.Own().Equal(stock.Default()) {
		t.Error("one undo does not take all of it back")
	}
	os.WriteFile(path, []byte("kind,name,thickness\nthread,Dulse,0.4\nthread,Wrack,thick\n"), 0o644)
	p.importFrom(path)
	if said := w.sheetSays(); !strings.Contains(strings.ToLower(said), "line 3, column 3") || !w.session.Own().Equal(stock.Default()) {
		t.Errorf("a bad table says %q", said)
	}
}

func TestTheShelfGoesOutAsATable(t *testing.T) {
	path := filepath.Join(t.TempDir(), "shelf")
	w := openMaterials(t, func(p *Ports) { p.Dialogs = dialogs{path, nil} })
	w.shelfPage.export()
	all, err := project.ImportMaterials(path + TableEnding)
	if err != nil || !(stock.Shelf{Materials: all}).Equal(stock.Default()) {
		t.Errorf("%d come back, %v", len(all), err)
	}
}

// A photograph is kept with the shelf, and its colour is taken exactly.
func TestAColourIsPickedFromThePhotograph(t *testing.T) {
	w := openMaterials(t)
	p := w.shelfPage
	picture := image.NewNRGBA(image.Rect(0, 0, 300, 200))
	for y := range 200 {
		for x := range 300 {
			picture.SetNRGBA(x, y, color.NRGBA{0x80, 0x80, 0x80, 0xFF})
		}
	}
	path := filepath.Join(t.TempDir(), "cloth.png")
	var b bytes.Buffer
	png.Encode(&b, picture)
	os.WriteFile(path, b.Bytes(), 0o644)
	p.pick(t, stock.Covering, "Kelp")
	f := w.formOf(t, p.summary.edit)
	w.takePhoto(path, func(name string) { f.now.Photo = name; f.showPhoto() })
	var shown *controls.Photo
	for _, o := range f.panel.Objects {
		if c, is := o.(*fyne.Container); is && len(c.Objects) == 1 {
			if photo, is := c.Objects[0].(*controls.Photo); is {
				shown = photo
			}
		}
	}
	if shown == nil {
		t.Fatal("no photograph in the form")
	}
	shown.TypedKey(&fyne.KeyEvent{Name: fyne.KeyRight})
	shown.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if got := f.find("colour").text(); got != "#808080" {
		t.Errorf("picked %s", got)
	}
	f.keep()
	m, _ := w.session.Own().Find(stock.Covering, "Kelp")
	if m.Colour != "#808080" || !stock.PhotoName(m.Photo) {
		t.Errorf("%+v", m)
	}
	if _, err := os.Stat(w.ports.Shelf.Photo(m.Photo)); err != nil {
		t.Error(err)
	}
	bad := filepath.Join(t.TempDir(), "bad.jpg")
	os.WriteFile(bad, []byte("no picture"), 0o644)
	w.takePhoto(bad, func(string) { t.Error("taken all the same") })
	if said := w.sheetSays(); !strings.Contains(said, "JPEG") {
		t.Errorf("it says %q", said)
	}
}

// Every colour that can be typed comes back from shelf, project and table.
func TestColoursRoundTrip(t *testing.T) {
	for _, hex := range []string{"#000000", "#FFFFFF", "#24443A", "#24443a", "#010203", "#FEDCBA"} {
		c := colourOf(hex)
		if got := fmt.Sprintf("#%02X%02X%02X", c.R, c.G, c.B); !strings.EqualFold(got, hex) {
			t.Errorf("%s is shown as %s", hex, got)
		}
		m, _ := stock.Default().Find(stock.Covering, "Kelp")
		m.Colour = hex
		data, _ := json.Marshal(m)
		var again stock.Material
		if json.Unmarshal(data, &again); again.Colour != hex {
			t.Errorf("%s comes back as %s", hex, again.Colour)
		}
	}
}

// Tab reaches everything that can be pressed on the page and in the form, and the
// arrow keys walk the table.
func TestTheMaterialsByKeyboard(t *testing.T) {
	w := openMaterials(t)
	canvas := w.win.Canvas()
	p := w.shelfPage
	p.pick(t, stock.Paper, "Brackmud Grey 120")
	canvas.Unfocus()
	seen := map[fyne.Focusable]bool{}
	for range 200 {
		canvas.FocusNext()
		if f := canvas.Focused(); f == nil || seen[f] {
			break
		} else {
			seen[f] = true
		}
	}
	for _, f := range focusables(w.win.Content()) {
		if !seen[f] {
			t.Errorf("Tab passes %s", about(f))
		}
	}
	canvas.Focus(p.search)
	p.search.TypedKey(&fyne.KeyEvent{Name: fyne.KeyDown})
	if canvas.Focused() != p.table.Body() {
		t.Fatalf("↓ from the search leads to %T", canvas.Focused())
	}
	p.table.Body().TypedKey(&fyne.KeyEvent{Name: fyne.KeyEnd})
	if p.chosen.kind != stock.Thread {
		t.Errorf("the end is %v", p.chosen)
	}
	p.table.Body().TypedKey(&fyne.KeyEvent{Name: fyne.KeyHome})
	p.table.Body().TypedKey(&fyne.KeyEvent{Name: fyne.KeyDown})
	if p.chosen.name != "Ebbwhite Drawing 170" {
		t.Errorf("the second is %v", p.chosen)
	}
	p.table.Body().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if len(w.sheets) != 1 {
		t.Fatal("Enter opens nothing")
	}
	w.escape()
	own := len(w.session.Own().Materials)
	p.pick(t, stock.Paper, "Brackmud Grey 120")
	p.table.Body().TypedKey(&fyne.KeyEvent{Name: fyne.KeyDelete})
	if len(w.session.Own().Materials) != own-1 || len(w.sheets) > 0 {
		t.Error("Delete takes nothing off the shelf")
	}
	p.table.Body().TypedKey(&fyne.KeyEvent{Name: fyne.KeyInsert})
	if len(w.sheets) != 1 {
		t.Error("Insert asks for nothing new")
	}
	w.escape()
	for area, want := range map[int]int{columnArea: columnArea, drawingArea: drawingArea, findingsArea: findingsArea, barArea: barArea} {
		if w.focusArea(area); w.area() != want {
			t.Errorf("area %d: the focus is in %d", area, w.area())
		}
	}
}

// Nothing is clipped at 1280 × 720 and beyond, in both units, with long names.
func TestTheMaterialsFit(t *testing.T) {
	long(t)
	for _, system := range []measure.System{measure.Metric, measure.Imperial} {
		for _, size := range []fyne.Size{{Width: 1280, Height: 694}, {Width: 1600, Height: 1000}, {Width: 1020, Height: 600}} {
			w := openMaterials(t)
			w.setUnit(system)
			w.win.Resize(size)
			for _, item := range w.materials() {
				w.shelfPage.choose(idOf(item.Material))
				for _, trouble := range troublesOfText(w.win.Content()) {
					t.Fatalf("%v, %v, %s: %s", system, size, item.Name, trouble)
				}
			}
		}
	}
}
