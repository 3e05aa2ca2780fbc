package main

import (
	"bytes"
	"context"
	"errors"
	"io"
	"time"

	"grainwise/model/batch"
	"grainwise/model/check"
	"grainwise/model/lists"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/render/table"
)

// batchCommand prints what a whole batch takes: gw batch FILE [--set KEY=VALUE]...
// [--studio FILE] [--import F.csv] [--save FILE] [--export F.csv] [--date DAY]
// [--lost DAY] [--calendar F.ics]
// [--close NAME] [--again].
func batchCommand(args []string, out io.Writer) (int, error) {
	a, err := parse(args, []string{"set", "studio", "import", "save", "export", "date", "lost", "calendar", "close"}, []string{"again"})
	if err != nil {
		return exitInput, err
	}
	p, studio, err := openIn(a)
	if err == nil && a.has("import") {
		p.Batch, err = project.ImportOrders(a.value("import"), p)
	}
	if err != nil {
		return exitInput, err
	}
	made, work, err := a.batchOf(p, studio)
	if err != nil {
		return exitInput, err
	}
	if a.has("save") {
		err = a.save(p, work)
	} else {
		_, err = a.closed(p, work, measure.Date{})
	}
	if err == nil && a.has("calendar") {
		err = exportCalendar(a.value("calendar"), p, work)
	}
	if err == nil && a.has("export") {
		err = exportOrders(a.value("export"), p)
	}
	if err != nil {
		return exitInput, err
	}
	return exitDone, writeJSON(out, made)
}

// save writes the project, closed or begun anew where that is asked for.
func (a arguments) save(p project.Project, w batch.Work) error {
	day, err := a.day()
	if err == nil {
		p, err = a.closed(p, w, day)
	}
	if err != nil {
		return err
	}
	return project.Save(a.value("save"), p)
}

// day is that of --date, or today.
func (a arguments) day() (measure.Date, error) {
	day, err := a.date()
	if err == nil && day.IsZero() {
		day = measure.DayOf(time.Now())
	}
	return day, err
}

// exportCalendar writes the plan for a calendar; a batch without one has none.
func exportCalendar(path string, p project.Project, w batch.Work) error {
	if w.Plan == nil {
		return inputError("gw.noPlan")
	}
	return project.WriteFile(path, w.Plan.Calendar(p.Name, p.CalendarBase()).Text(time.Now()))
}

func exportOrders(path string, p project.Project) error {
	var b bytes.Buffer
	if err := table.CSV(&b, table.Orders(p.Batch.Orders)); err != nil {
		return err
	}
	return project.WriteFile(path, b.Bytes())
}

// batchPlan is the contract of `gw batch`: lengths in millimetres, masses in grams,
// amounts of money as text with their currency.
type batchPlan struct {
	Books    int            `json:"books"`
	Measured int            `json:"measured"` // of their blocks
	Variants []variantPlan  `json:"variants"`
	Groups   []groupPlan    `json:"groups"` // by spine piece width
	Outliers []outlierPlan  `json:"outliers"`
	Needs    []needPlan     `json:"needs"`
	CutSpare []batch.Cut    `json:"cutUnused"` // cut pieces that no book takes at their size
	Cash     []string       `json:"toBuy"`     // what all that is to be bought costs, a sum a currency
	Plan     *schedulePlan  `json:"plan"`      // null where nothing is left to make
	Costs    *costPlan      `json:"costs"`     // null where no price is known
	Post     *postPlan      `json:"post"`      // null without parcels or a table of the post
	Records  []batch.Record `json:"records"`   // of closed batches
	Findings []finding      `json:"findings"`  // of the batch; those of its books are `gw check`'s
}

type variantPlan struct {
	Name    string   `json:"name"` // empty: the base design
	Copies  int      `json:"copies"`
	Asked   string   `json:"asked,omitempty"`
	Refused []string `json:"refused,omitempty"` // settings that the base design does not take
	Stops   []string `json:"stops"`             // findings that stop a book of it; see `gw check --variant`
}

type groupPlan struct {
	Name     string    `json:"name"`
	Width    number    `json:"spineWidth"`
	Copies   int       `json:"copies"`
	Measured int       `json:"measured"`
	Sets     []setPlan `json:"sets"`
}

// setPlan is books of one variant that are cut alike.
type setPlan struct {
	Variant string     `json:"variant"`
	Copies  int        `json:"copies"`
	Spine   number     `json:"spineThickness"`
	ToCut   casePlan   `json:"toCut"`
	Mass    number     `json:"mass"`
	Books   []bookPlan `json:"books"`
}

type bookPlan struct {
	Order string `json:"order"`
	Copy  int    `json:"copy"`
}

type outlierPlan struct {
	bookPlan
	Variant string `json:"variant"`
	Found   number `json:"found"`
	Usual   number `json:"usual"`
}

func (a arguments) batchOf(p project.Project, studio project.Studio) (made batchPlan, w batch.Work, err error) {
	day, err := a.day()
	if err != nil {
		return made, w, err
	}
	planner := batch.Planner{Bench: studio.Bench(), Allowed: usualSeconds * time.Second}
	w, err = planner.Work(context.Background(), p.Decisions, p.Shelf, p.Batch, today(day), nil)
	if err != nil {
		return made, w, err
	}
	for _, trouble := range w.Troubles {
		return made, w, errors.New(a.files[0] + ": " + trouble.Part + ": " + trouble.Text)
	}
	made = batchPlan{
		Books: w.Copies(), Measured: w.Measured(), Variants: variantsOf(p, studio, w), Groups: []groupPlan{}, Outliers: []outlierPlan{},
		Needs: []needPlan{}, CutSpare: append([]batch.Cut{}, w.Unused...), Findings: findingsOf(p.BatchFindings(w, studio)),
		Plan: scheduleOf(w.Plan, batch.Schedule(w.Sets, p.Batch, day).Lots), Costs: costsOf(w), Post: postOf(w), Records: append([]batch.Record{}, p.Batch.Records...),
	}
	if made.Plan != nil {
		if made.Plan.Lost, err = a.lost(w); err != nil {
			return made, w, err
		}
	}
	for _, g := range w.Groups {
		made.Groups = append(made.Groups, groupOf(g))
	}
	for _, o := range w.Outliers {
		made.Outliers = append(made.Outliers, outlierPlan{bookPlan{o.Order, o.Number}, o.Variant, mm(o.Found), mm(o.Usual)})
	}
	for _, n := range w.Needs {
		made.Needs = append(made.Needs, needOf(n))
	}
	made.Cash, err = totals(w.Needs)
	return made, w, err
}

// lost is what the day of --lost changes; nil without one.
func (a arguments) lost(w batch.Work) (*lostPlan, error) {
	if !a.has("lost") {
		return nil, nil
	}
	day, err := measure.ParseDate(a.value("lost"))
	if err != nil {
		return nil, inputError("gw.wantDay", "option", "--lost", "found", a.value("lost"))
	}
	change, err := w.Plan.LostDay(context.Background(), day)
	if err != nil {
		return nil, err
	}
	return lostOf(day, change), nil
}

func variantsOf(p project.Project, studio project.Studio, w batch.Work) []variantPlan {
	all := []variantPlan{}
	for _, v := range append([]batch.Variant{{}}, p.Batch.Variants...) {
		plan := variantPlan{Name: v.Name, Asked: moneyText(v.Asked), Stops: []string{}}
		for _, s := range w.Sets {
			if s.Variant == v.Name {
				plan.Copies += s.Copies()
				plan.Refused = s.Refused
				plan.Stops = append(plan.Stops, stopsOf(p, studio, s)...)
			}
		}
		if v.Name != "" || plan.Copies > 0 {
			all = append(all, plan)
		}
	}
	return all
}

// stopsOf are the ids of the stops that stand against a set's book.
func stopsOf(p project.Project, studio project.Studio, s batch.Set) []string {
	var ids []string
	for _, f := range check.Standing(p.Findings(s.Book, studio)) {
		if f.Level == check.Stop {
			ids = append(ids, f.ID)
		}
	}
	return ids
}

func groupOf(g batch.Group) groupPlan {
	plan := groupPlan{Name: g.Name, Width: mm(g.Width), Copies: g.Copies(), Measured: g.Measured(), Sets: []setPlan{}}
	for _, s := range g.Sets {
		set := setPlan{
			Variant: s.Variant, Copies: s.Copies(), Spine: mm(s.Book.Block.SpineThickness),
			ToCut: caseOf(s.Book.ToCut), Mass: number(s.Book.Mass.Total()), Books: []bookPlan{},
		}
		for _, c := range s.Books {
			set.Books = append(set.Books, bookPlan{c.Order, c.Number})
		}
		plan.Sets = append(plan.Sets, set)
	}
	return plan
}

// moneyText is an amount as text, nothing where none is known.
func moneyText(m measure.Money) string {
	if m.Currency == "" {
		return ""
	}
	return m.String()
}

// totals is what the needs cost that have a price, one sum a currency.
func totals(needs []batch.Need) ([]string, error) {
	var rows []lists.ShoppingRow
	for _, n := range needs {
		if n.Cost.Currency != "" {
			rows = append(rows, lists.ShoppingRow{Cost: n.Cost})
		}
	}
	sums, err := lists.Totals(rows)
	all := []string{}
	for _, m := range sums {
		all = append(all, m.String())
	}
	return all, err
}
