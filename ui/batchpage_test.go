package ui

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"grainwise/model/batch"
	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/ui/controls"
)

// openBatch is the demo's window with the page of the batch on show; everything is
// reckoned at once on the test's goroutine.
func openBatch(t testing.TB, change ...func(*Ports)) *Window {
	t.Helper()
	folder := t.TempDir()
	w := openDemo(t, append([]func(*Ports){func(p *Ports) { p.Studio = project.StudioIn(folder) }}, change...)...)
	w.onWindow = func(do func()) { do() }
	w.makePage(batchAt)
	w.batchPage.strip.pane.Stop()
	w.turnPage(batchAt)
	return w
}

// saysOfBatch is all that the right column says.
func (w *Window) saysOfBatch() string {
	return strings.Join(texts(w.batchPage.summary.list.Objects), "\n")
}

// cellOf is what stands in the row of an order.
func (w *Window) cellOf(t testing.TB, id, column string) string {
	t.Helper()
	o := w.batchPage.orders
	for row, at := range o.rows {
		for i, c := range o.columns {
			if at == id && c.name == column {
				return o.cell(row, i).Text
			}
		}
	}
	t.Fatalf("no %s of order %s", column, id)
	return ""
}

// enter types a text into a cell of the orders and says what is wrong with it.
func (w *Window) enter(t testing.TB, id, column, text string) string {
	t.Helper()
	o := w.batchPage.orders
	for row, at := range o.rows {
		for i, c := range o.columns {
			if at == id && c.name == column {
				return o.table.OnTake(row, i, text)
			}
		}
	}
	t.Fatalf("no %s of order %s", column, id)
	return ""
}

func key(name fyne.KeyName) *fyne.KeyEvent { return &fyne.KeyEvent{Name: name} }

// Source: the demo's story: 24 books in 19 parcels, sheets with 5 % spoilage,
// cloth by rows, 3 boards, and the two groups of spine pieces.
func TestTheDemosBatch(t *testing.T) {
	w := openBatch(t)
	said := w.saysOfBatch()
	for _, want := range []string{
		"24 books in 24 orders and 19 parcels", "Ebbwhite Drawing 170\n108.00 EUR", "Marramstone Oat 180\n159.60 EUR",
		"16 mm wide\n0 of 14 measured", "17 mm wide\n0 of 10 measured", "No price is known of: PVA", "Promise",
	} {
		if !strings.Contains(said, want) {
			t.Errorf("the summary lacks %q:\n%s", want, said)
		}
	}
	needs := w.batchPage.tables[2].(*needsTable)
	needs.show()
	for i, n := range needs.needs {
		for material, want := range map[string]string{"Ebbwhite Drawing 170": "45", "Marramstone Oat 180": "84", "Groynes 2.5": "3", "Saltgrass 120": "6", "Kelp": "1.30 m"} {
			if got := needs.cell(i, needBuy).Text; n.Material == material && got != want {
				t.Errorf("%s: %s to buy, want %s", material, got, want)
			}
		}
	}
	counts := w.batchPage.strip.counts.State()
	if got := fmt.Sprint(counts.Cells); got != "[[6 5 3] [4 3 3]]" {
		t.Errorf("counts %s", got)
	}
}

// An order added by the keyboard: its text, its books, and what they take; every
// entry is a step to undo.
func TestAnOrderByKeyboard(t *testing.T) {
	w := openBatch(t)
	body := w.batchPage.orders.table.Body()
	w.win.Canvas().Focus(body)
	body.TypedKey(key(fyne.KeyInsert))
	if id := w.batchPage.orders.cursor(); id != "20" || len(w.session.Batch().Orders) != 25 {
		t.Fatalf("order %q of %d", id, len(w.session.Batch().Orders))
	}
	test.Type(body, "S")
	entry := w.win.Canvas().Focused()
	test.Type(entry, "altmarsh")
	entry.TypedKey(key(fyne.KeyTab))
	w.win.Canvas().Focus(body)
	if got := w.cellOf(t, "20", "customer"); got != "Saltmarsh" {
		t.Errorf("customer %q", got)
	}
	if said := w.enter(t, "20", "count", "8"); said != "" {
		t.Error(said)
	}
	// 22 white books: 22 × 24 folios at 8 a sheet are 66 sheets, and 5 % of them.
	if said := w.saysOfBatch(); !strings.Contains(said, "32 books") || !strings.Contains(said, "Ebbwhite Drawing 170\n168.00 EUR") {
		t.Errorf("with 8 books more:\n%s", said)
	}
	if w.step() != "Order 20, Books" {
		t.Errorf("the step is %q", w.step())
	}
	w.undo()
	w.undo()
	w.undo()
	if len(w.session.Batch().Orders) != 24 || !strings.Contains(w.saysOfBatch(), "108.00 EUR") || w.session.Unsaved() {
		t.Error("undo does not lead back to the demo")
	}
}

// What cannot be is said and changes nothing; the text stays to be mended.
func TestWrongEntriesAreSaid(t *testing.T) {
	w := openBatch(t)
	was := w.session.Batch()
	for _, c := range []struct{ column, text, want string }{
		{"count", "none", "whole number from 1 to 1000"}, {"count", "0", "whole number from 1 to 1000"},
		{"id", "02", "stands here a second time"}, {"id", "", "1 to 60 letters"}, {"orderedOn", "2026-02-30", "day"},
	} {
		if said := w.enter(t, "01", c.column, c.text); !strings.Contains(said, c.want) {
			t.Errorf("%s %q says %q", c.column, c.text, said)
		}
	}
	if !w.session.Batch().Equal(was) || w.session.Unsaved() {
		t.Error("something changed all the same")
	}
	grid := w.batchPage.orders.table
	w.win.Canvas().Focus(grid.Body())
	grid.Go(0, 4)
	test.Type(grid.Body(), "x")
	entry := w.win.Canvas().Focused()
	entry.TypedKey(key(fyne.KeyReturn))
	if grid.Problem() == "" || w.win.Canvas().Focused() != entry {
		t.Fatal("a wrong count is taken")
	}
	w.win.Canvas().Focus(grid.Body())
	if grid.Problem() == "" {
		t.Error("what is wrong is forgotten when the cell is left")
	}
	grid.Body().TypedKey(key(fyne.KeyReturn))
	if got := w.win.Canvas().Focused().(interface{ SelectedText() string }).SelectedText(); got != "x" {
		t.Errorf("opened again, the cell holds %q", got)
	}
	w.win.Canvas().Focused().TypedKey(key(fyne.KeyEscape))
	if grid.Problem() != "" || w.win.Canvas().Focused() != grid.Body() {
		t.Error("Esc does not put the old text back")
	}
}

// Words are found in any column, states sift, heads sort, and one head pressed
// again turns the order round.
func TestOrdersAreFoundSiftedAndSorted(t *testing.T) {
	w := openBatch(t)
	o := w.batchPage.orders
	o.tools.find.SetText("umber")
	if len(o.rows) != 2 || !strings.Contains(o.tools.said.Text(), "2 of 24 orders") {
		t.Errorf("%v, %q", o.rows, o.tools.said.Text())
	}
	o.tools.find.SetText("")
	o.table.ChooseRows(1, 2, 3)
	o.tools.move.OnChoose(1)
	o.tools.states.OnChoose(2)
	if fmt.Sprint(o.rows) != "[02 03 04]" {
		t.Errorf("being made: %v", o.rows)
	}
	o.showAll()
	for i, c := range o.columns {
		if c.name == "customer" {
			o.table.OnSort(i)
		}
	}
	if first := o.rows[3]; first != "05" { // three without a customer come first
		t.Errorf("by customer: %v", o.rows)
	}
	o.table.OnSort(1)
	if o.rows[0] != "06a" && o.rows[0] != "17" {
		t.Errorf("turned round: %v", o.rows)
	}
	if last := o.rows[len(o.rows)-1]; w.cellOf(t, last, "customer") != "" {
		t.Errorf("turned round, %s is last", last)
	}
	w.batchPage.strip.counts.OnPick(1, 2)
	if len(o.rows) != 3 || !strings.Contains(o.tools.said.Text(), "Marramstone Oat 180 × Fog") {
		t.Errorf("Oat in Fog: %v, %q", o.rows, o.tools.said.Text())
	}
}

// What is chosen is doubled, moved on and taken out; each is one step to undo.
func TestOrdersAreDoneWithTogether(t *testing.T) {
	w := openBatch(t)
	o := w.batchPage.orders
	body := o.table.Body().(fyne.Shortcutable)
	o.table.ChooseRows(0, 1)
	o.duplicate()
	if n := len(w.session.Batch().Orders); n != 26 || w.cellOf(t, o.rows[25], "customer") != "Oakwhistle" {
		t.Errorf("%d orders", n)
	}
	w.undo()
	body.TypedShortcut(&fyne.ShortcutSelectAll{})
	o.move(batch.Making)
	if w.cellOf(t, "19", "state") != "being made" || w.step() != "24 orders being made" {
		t.Errorf("state %q, step %q", w.cellOf(t, "19", "state"), w.step())
	}
	o.remove()
	if len(w.session.Batch().Orders) != 0 || !o.empty.Visible() || o.table.Object().Visible() {
		t.Error("all taken out, the page does not say what to do")
	}
	w.undo()
	w.undo()
	if w.session.Unsaved() || o.empty.Visible() {
		t.Error("undone, it is not the demo again")
	}
}

// A variant is set otherwise in its row; what it does not set follows the design.
func TestVariantsAreEdited(t *testing.T) {
	w := openBatch(t)
	w.batchPage.turnTo("variants")
	v := w.batchPage.tables[1].(*variantsTable)
	if said := v.table.Fixed(0, variantPaper); !strings.Contains(said, "Design page") {
		t.Errorf("the design's own row says %q", said)
	}
	v.add()
	row := len(v.all) - 1
	for column, text := range map[int]string{variantName: "Fog, wide ribbon", variantCloth: "Fog", variantRibbon: "12", variantAsked: "58"} {
		if said := v.table.OnTake(row, column, text); said != "" {
			t.Errorf("%q: %s", text, said)
		}
	}
	got, _ := w.session.Batch().FindVariant("Fog, wide ribbon")
	if d, refused := got.Patch.Apply(w.session.Decisions()); d.Design.Covering.Material != "Fog" || d.Design.Paper != w.session.Decisions().Design.Paper || len(refused) > 0 {
		t.Errorf("the patch is %v", got.Patch)
	}
	if got.Asked != (measure.Money{Minor: 5800, Currency: "EUR"}) {
		t.Errorf("asked %v", got.Asked)
	}
	if said := v.table.OnTake(row, variantAsked, "cheap"); said == "" {
		t.Error("any price is taken")
	}
	if v.cell(row, variantPaper).Text != "Ebbwhite Drawing 170" || !v.cell(row, variantPaper).Quiet {
		t.Error("the paper does not follow the design")
	}
	v.table.Go(1, 0)
	v.settingSheet()
	if len(w.sheets) != 1 {
		t.Error("no sheet for another setting")
	}
	w.typedKey(key(fyne.KeyEscape))
	height, _ := book.Lookup("page.height")
	for _, key := range settingKeys() {
		if p, known := book.Lookup(key); !known || !batch.Patchable(p) {
			t.Errorf("%s is no setting of a variant", key)
		}
	}
	if said := v.setting(height, "198 mm"); said != "" || !strings.Contains(v.cell(1, variantOther).Text, "198") {
		t.Errorf("a lower page: %q, %q", said, v.cell(1, variantOther).Text)
	}
	if v.setting(height, "tall") == "" {
		t.Error("any height is taken")
	}
	if said := v.setting(height, ""); said != "" || v.cell(1, variantOther).Text != "" {
		t.Errorf("given back: %q, %q", said, v.cell(1, variantOther).Text)
	}
	v.takeOut() // ordered
	if len(w.sheets) != 1 || len(w.session.Batch().Variants) != 9 {
		t.Error("a variant that is ordered is taken out")
	}
	w.typedKey(key(fyne.KeyEscape))
}

// Source: the demo's story: a white block measured at 14.1 mm moves that book to
// the group of 17 mm.
func TestAMeasuredSpineMovesItsBook(t *testing.T) {
	w := openBatch(t)
	w.batchPage.turnTo("spines")
	s := w.batchPage.tables[3].(*spinesTable)
	row := 0
	for i, r := range s.rows {
		if r.Order == "12" {
			row = i
		}
	}
	if said := s.table.OnTake(row, spineFound, "14.1"); said != "" {
		t.Fatal(said)
	}
	if said := w.saysOfBatch(); !strings.Contains(said, "17 mm wide\n1 of 11 measured") || !strings.Contains(said, "16 mm wide\n0 of 13 measured") {
		t.Error(said)
	}
	if at, _ := s.table.At(); s.rows[at].Order == "" || s.rows[at].group == "" {
		t.Error("the cursor is lost")
	}
	for text, want := range map[string]string{"thick": "Not a size", "-1": "", "400": "300 mm"} {
		if said := s.table.OnTake(row, spineFound, text); said == "" || !strings.Contains(said, want) {
			t.Errorf("%q says %q", text, said)
		}
	}
	w.undo()
	if said := w.saysOfBatch(); !strings.Contains(said, "16 mm wide\n0 of 14 measured") {
		t.Error(said)
	}
}

// Stock is drawn upon, packs are bought whole, spoilage is set on a sheet.
func TestStockAndSpoilage(t *testing.T) {
	w := openBatch(t)
	w.batchPage.turnTo("needs")
	n := w.batchPage.tables[2].(*needsTable)
	if said := n.table.OnTake(0, needStock, "20"); said != "" {
		t.Fatal(said)
	}
	if said := n.table.OnTake(0, needPack, "10"); said != "" {
		t.Fatal(said)
	}
	if got := n.cell(0, needBuy).Text; got != "30" { // 45 − 20 in packs of 10
		t.Errorf("%s sheets to buy", got)
	}
	for _, wrong := range []string{"-3", "many"} {
		if said := n.table.OnTake(0, needStock, wrong); said == "" {
			t.Errorf("%q is taken", wrong)
		}
	}
	w.batchPage.buyingSheet()
	w.win.Canvas().Focused().(*sheetEntry).SetText("0")
	w.win.Canvas().Focused().(*sheetEntry).OnSubmitted("")
	if got := n.cell(0, needNeeded).Text; got != "42" || w.step() != "Spoilage and spares" { // the demo's 42 net
		t.Errorf("%s sheets needed, step %q", got, w.step())
	}
}

// table is a table of the page by its id.
func (w *Window) batchTable(t testing.TB, id string) batchTable {
	t.Helper()
	w.batchPage.turnTo(id)
	if w.batchPage.table().id() != id {
		t.Fatalf("no table %s", id)
	}
	return w.batchPage.table()
}

// Source: the demo: three rounds of 8 in the press, 195 + 24 × 84 minutes of hands
// and ten for a ribbon and an elastic, from Monday the 16th on; by hand the work ends
// on the eighth working day at the soonest, the 25th.
func TestThePlanOfTheDemo(t *testing.T) {
	w := openBatch(t)
	plan := w.batchTable(t, "plan").(*planTable)
	said := plan.said.Text()
	for _, want := range []string{"37 h 1 min", "3 rounds", "3 working days to spare"} {
		if !strings.Contains(said, want) {
			t.Errorf("the plan lacks %q: %s", want, said)
		}
	}
	if end := w.batchPage.reckoning.made.plan().End.Day; end.Compare(measure.Date{Year: 2026, Month: 2, Day: 25}) < 0 {
		t.Errorf("it ends %v", end)
	}
	if plan.cell(0, planDay).Text != "Monday 2026-02-16" || plan.cell(0, planFrom).Text != "09:00" {
		t.Errorf("it begins %s %s", plan.cell(0, planDay).Text, plan.cell(0, planFrom).Text)
	}
	file := filepath.Join(t.TempDir(), "plan.ics")
	w.ports.Dialogs = dialogs{file, nil}
	plan.saveCalendar()
	if text, err := os.ReadFile(file); err != nil || !strings.HasPrefix(string(text), "BEGIN:VCALENDAR") || !strings.Contains(string(text), "20260216T090000") {
		t.Errorf("the calendar is %.80q, %v", text, err)
	}
	was := w.batchPage.reckoning.made.plan().Promise
	plan.lose(1)
	if len(w.sheets) != 1 {
		t.Fatal("nothing is said of a lost day")
	}
	w.typedKey(key(fyne.KeyEscape))
	w.batchPage.takeOff(plan.days[1])
	if now := w.batchPage.reckoning.made.plan().Promise; now.Compare(was) <= 0 {
		t.Errorf("with a day off the promise is %v, before it was %v", now, was)
	}
	w.undo()
	if w.batchPage.reckoning.made.plan().Promise != was || w.session.Unsaved() {
		t.Error("undone, the day is still off")
	}
}

// What a sheet asks of the work is read in words, or said to be wrong.
func TestDaysAndDatesAreRead(t *testing.T) {
	if days, problem := readDays("Mon, tuesday fr"); problem != "" || fmt.Sprint(days) != "[mon tue fri]" {
		t.Errorf("%v, %q", days, problem)
	}
	if _, problem := readDays("Mon Someday"); !strings.Contains(problem, "Someday") {
		t.Errorf("it says %q", problem)
	}
	if _, problem := readDates("2026-02-30"); problem == "" {
		t.Error("the 30th of February is a day")
	}
	if share, problem := readPercent("4,5 %"); share != 0.045 || problem != "" {
		t.Errorf("%v, %q", share, problem)
	}
	if _, problem := readPercent("100"); problem == "" {
		t.Error("all of the price can be fees")
	}
}

// Source: the demo, by hand: a white book's materials are 12.32 and its time 33.78, so
// that with 4.15 besides it costs some 50.26, and a fifth of profit asks (50.26 + 0.30) /
// 0.76 = 66.53.
func TestThePricesOfTheDemo(t *testing.T) {
	w := openBatch(t)
	prices := w.batchTable(t, "prices").(*pricesTable)
	for column, want := range map[int]string{priceMaterials: "12.32", priceTime: "33.78", priceOther: "4.15", priceCost: "50.26", priceWanted: "66.53", priceMargin: "20 %"} {
		if got := prices.cell(0, column).Text; got != want {
			t.Errorf("column %d: %s, want %s", column, got, want)
		}
	}
	if said := prices.table.OnTake(0, priceAsked, "40"); said != "" {
		t.Fatal(said)
	}
	low := slices.ContainsFunc(w.batchPage.found.found, func(f check.Finding) bool { return f.ID == "price-low" && f.Level == check.Stop })
	if !prices.cell(0, priceProfit).Trouble || !low || w.step() != "Price of Ebbwhite, Kelp" {
		t.Errorf("a price below cost is not said; the step is %q", w.step())
	}
	w.undo()
	w.batchPage.whatIfSheet()
	w.typedKey(key(fyne.KeyEscape))
	if len(w.sheets) != 0 || w.session.Unsaved() {
		t.Error("trying leaves something behind")
	}
}

// Source: the demo: 19 parcels; a toned book, packed, lies near 500 g (its story, 5).
func TestTheParcelsOfTheDemo(t *testing.T) {
	w := openBatch(t)
	parcels := w.batchTable(t, "parcels").(*parcelsTable)
	if len(parcels.packed) != 19 || !strings.Contains(parcels.said.Text(), "19 parcels") {
		t.Errorf("%d parcels, %s", len(parcels.packed), parcels.said.Text())
	}
	for row, p := range parcels.packed {
		if p.Parcel.ID == "10" && !parcels.cell(row, parcelMass).Trouble {
			t.Errorf("a toned book of %s is not said to be near its band", parcels.cell(row, parcelMass).Text)
		}
	}
	p := w.batchPage
	post := w.session.Batch().Post
	if read, problem := p.readPost(bandsText(post.Bands), p.slotsText(post.Slots), "88", "3"); problem != "" || !read.Equal(post) {
		t.Errorf("read again, the table is %+v, %q", read, problem)
	}
	for _, wrong := range []string{"home; 500", "home; much; 4 EUR", "home; 500; cheap"} {
		if _, problem := p.readPost("home; 100; 2 EUR\n"+wrong, "", "", ""); !strings.Contains(problem, "Line 2") {
			t.Errorf("%q says %q", wrong, problem)
		}
	}
	file := filepath.Join(t.TempDir(), "list.txt")
	w.ports.Dialogs = dialogs{file, nil}
	parcels.saveList()
	if text, err := os.ReadFile(file); err != nil || !strings.Contains(string(text), "Vireo-Tamsel") || !strings.Contains(string(text), "Labels") {
		t.Errorf("the list is %q, %v", text, err)
	}
}

// A finding of the batch is left as it is for a reason, and said again.
func TestFindingsOfTheBatchAreLeft(t *testing.T) {
	w := openBatch(t)
	f := w.batchPage.found
	if len(f.found) < 3 || f.found[0].ID != "measure-first" {
		t.Fatalf("found %v", f.found)
	}
	f.cards[0].OnPrimary()
	if w.batchPage.table().id() != "spines" {
		t.Error("the remedy does not lead to the measures")
	}
	all := len(f.found)
	w.session.Leave(f.found[1], "A template for each.")
	if len(f.found) != all-1 || len(f.left) != 1 {
		t.Errorf("%d found, %d left", len(f.found), len(f.left))
	}
	w.undo()
	if len(f.found) != all || len(f.left) != 0 {
		t.Error("undo does not say it again")
	}
}

// Closed, a batch is a record; made again, its books are ordered anew with what was
// measured. Each is one step to undo.
func TestABatchIsClosedAndMadeAgain(t *testing.T) {
	w := openBatch(t)
	spines := w.batchTable(t, "spines").(*spinesTable)
	for _, spine := range []string{"13.9", "14", "14.1"} {
		if said := spines.table.OnTake(0, spineFound, spine); said != "" {
			t.Fatal(said)
		}
	}
	records := w.batchTable(t, "records").(*recordsTable)
	if !records.empty.Visible() || !records.again.Disabled() {
		t.Error("without a record there is something to make again")
	}
	w.batchPage.closeSheet()
	entry := w.win.Canvas().Focused().(*sheetEntry)
	entry.SetText("")
	entry.OnSubmitted("")
	if len(w.sheets) != 1 || len(w.session.Batch().Records) != 0 {
		t.Fatal("a batch without a name is closed")
	}
	entry.SetText("Low Water")
	entry.OnSubmitted("")
	if len(w.session.Batch().Records) != 1 || w.step() != "Batch closed" || len(records.record.Books) != 24 {
		t.Fatalf("%d records, step %q", len(w.session.Batch().Records), w.step())
	}
	if said := records.said[0].Text(); !strings.Contains(said, "24 books") || !strings.Contains(said, "37 h 1 min") {
		t.Errorf("the record says %q", said)
	}
	records.makeAgain()
	books := 0
	for _, o := range w.session.Batch().Orders {
		books += o.Count
	}
	if books != 24 || len(w.session.Batch().Blocks) != 0 || w.step() != "Low Water made again" {
		t.Errorf("made again: %d books, step %q", books, w.step())
	}
	w.undo()
	w.undo()
	if len(w.session.Batch().Records) != 0 || len(w.session.Batch().Orders) != 24 {
		t.Error("undone, the batch is still closed")
	}
}

// The papers of a group: a folder for each of its kinds of book.
func TestPapersOfAGroup(t *testing.T) {
	long(t)
	folder := t.TempDir()
	w := openBatch(t, func(p *Ports) { p.Dialogs = dialogs{folder, nil} })
	w.batchPage.printGroup(w.batchPage.reckoning.made.work.Groups[0].Sets[:2])
	made, _ := filepath.Glob(filepath.Join(folder, "*", "*.pdf"))
	folders, _ := filepath.Glob(filepath.Join(folder, "*"))
	if len(folders) != 2 || len(made) < 10 || !strings.Contains(folders[0], "Ebbwhite") {
		t.Errorf("%d papers in %v", len(made), folders)
	}
}

// Written and read again, the orders are the same; a table that is wrong somewhere
// says where, and nothing of it is taken.
func TestOrdersComeAndGoAsTables(t *testing.T) {
	folder := t.TempDir()
	file := filepath.Join(folder, "orders.csv")
	w := openBatch(t, func(p *Ports) { p.Dialogs = dialogs{file, nil} })
	o := w.batchPage.orders
	o.exportOrders()
	was := w.session.Batch()
	o.importOrders()
	if !w.session.Batch().Equal(was) {
		t.Error("read again, the orders are others")
	}
	if err := os.WriteFile(file, []byte("customer,variant,count\nGullmoor,\"Oat, Fog\",2\nTidewell,\"Oat, Fog\",two\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	o.importOrders()
	said := strings.Join(textsOf(w.win.Canvas().Overlays().Top()), " ")
	if len(w.sheets) != 1 || !strings.Contains(said, "Line 3") || !strings.Contains(said, "count") {
		t.Errorf("it says %q", said)
	}
	if !w.session.Batch().Equal(was) {
		t.Error("half a table was taken")
	}
}

// Nobody has ordered: the page says so, and its button adds the first order.
func TestABatchWithoutOrders(t *testing.T) {
	w := openBatch(t, func(p *Ports) { p.Project = project.New(measure.Metric) })
	o := w.batchPage.orders
	if !o.empty.Visible() || !strings.Contains(w.saysOfBatch(), "No orders") {
		t.Fatal("an empty batch says nothing")
	}
	o.first().(*controls.Button).OnTapped()
	if len(w.session.Batch().Orders) != 1 || o.empty.Visible() {
		t.Error("the first order is not added")
	}
	w.undo()
	if !o.empty.Visible() {
		t.Error("undone, the page does not say so again")
	}
}

// No text of any table is cut off or over another at 1280 × 720, in both units.
func TestTheBatchPageFits(t *testing.T) {
	w := openBatch(t)
	w.win.Resize(fyne.NewSize(1280, 720-26))
	for _, system := range systems {
		w.setUnit(system)
		for i := range w.batchPage.tables {
			w.batchPage.turn(i)
			for _, trouble := range troublesOfText(w.win.Content()) {
				t.Errorf("%s, %v: %s", w.batchPage.table().id(), system, trouble)
			}
		}
	}
}

// Tab reaches every control of the page, and F6 every part of it.
func TestTheBatchPageByKeyboard(t *testing.T) {
	w := openBatch(t)
	canvas := w.win.Canvas()
	for i := range w.batchPage.tables {
		w.batchPage.turn(i)
		seen := map[fyne.Focusable]bool{}
		canvas.Unfocus()
		for range 400 {
			canvas.FocusNext()
			if seen[canvas.Focused()] {
				break
			}
			seen[canvas.Focused()] = true
		}
		for _, f := range focusables(w.batchPage.object) {
			if !seen[f] {
				t.Errorf("%s: Tab passes %s", w.batchPage.table().id(), about(f))
			}
		}
		areasSeen := map[int]bool{}
		for range areas {
			w.nextArea(1)
			areasSeen[w.area()] = true
		}
		if len(areasSeen) != areas || areasSeen[-1] {
			t.Errorf("%s: F6 reaches the areas %v", w.batchPage.table().id(), areasSeen)
		}
	}
}

// many gives the demo so many orders, with long names.
func many(orders int) project.Project {
	p := project.Demo()
	p.Batch.Orders = nil
	for i := range orders {
		p.Batch.Orders = append(p.Batch.Orders, batch.Order{
			ID: fmt.Sprintf("%04d", i+1), Customer: fmt.Sprintf("Saltmarsh-Fennimore of Upper Brackenshaw House, the %dth", i+1), Kind: batch.Customer,
			Variant: p.Batch.Variants[i%len(p.Batch.Variants)].Name, Count: 1 + i%3, Parcel: fmt.Sprint(i / 2), Zone: "home", State: batch.Ordered,
		})
	}
	return p
}

// Of 5 000 orders only those in sight are objects, and each of them is reached.
func TestFiveThousandOrders(t *testing.T) {
	w := openBatch(t, func(p *Ports) { p.Project = many(5000) })
	o := w.batchPage.orders
	if n := len(test.LaidOutObjects(o.box)); n > 900 {
		t.Errorf("%d objects for the rows in sight", n)
	}
	w.win.Canvas().Focus(o.table.Body())
	o.table.Body().(fyne.Shortcutable).TypedShortcut(stroke{fyne.KeyEnd, control}.shortcut())
	if o.cursor() != "5000" {
		t.Errorf("Ctrl+End stands on %s", o.cursor())
	}
	if shown := strings.Join(textsOf(o.box), " "); !strings.Contains(shown, "5000") {
		t.Error("the last order is not in sight")
	}
	if said := w.enter(t, "5000", "count", "9"); said != "" || w.cellOf(t, "5000", "count") != "9" {
		t.Error(said)
	}
}

// What an edit, a step and a search cost with 5 000 orders.
func BenchmarkFiveThousandOrders(b *testing.B) {
	w := openBatch(b, func(p *Ports) { p.Project = many(5000) })
	w.batchPage.reckoning.apart = func(func() func()) {} // off the window's goroutine
	o := w.batchPage.orders
	body := o.table.Body()
	w.win.Canvas().Focus(body)
	b.Run("step", func(b *testing.B) {
		for b.Loop() {
			body.TypedKey(key(fyne.KeyPageDown))
		}
	})
	n := 0
	b.Run("edit", func(b *testing.B) {
		for b.Loop() {
			n++
			if said := w.enter(b, "0001", "count", fmt.Sprint(1+n%9)); said != "" {
				b.Fatal(said)
			}
		}
	})
	b.Run("find", func(b *testing.B) {
		for b.Loop() {
			n++
			o.tools.find.SetText(fmt.Sprint("house ", n%7))
		}
	})
}
