package ui

import (
	"context"
	"path/filepath"
	"slices"

	"grainwise/assets/words"
	"grainwise/model/batch"
	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/model/sheets"
	"grainwise/render/papers"
	printed "grainwise/render/sheet"
	"grainwise/ui/controls"
)

// printGroup asks for a folder and writes the papers of the cursor's group into it: a
// folder for each of its sets, which are cut alike.
func (p *batchPage) printGroup(sets []batch.Set) {
	w := p.window
	w.askPath(func(d Dialogs) (string, error) { return d.Folder(w.beginning()) }, w.toolkitFolder, func(folder string) {
		jobs := p.paperJobs(sets, folder)
		steps := 0
		for _, j := range jobs {
			steps += len(j.order.Kinds)
		}
		p.output.run(steps, func(ctx context.Context, told func(int)) (string, error) {
			return folder, writeAll(ctx, jobs, told)
		}, func(folder string) {
			w.ask(words.Say("papers.saved"), words.Say("batch.papers.saved", words.With{"sets": len(jobs), "folder": folder}),
				answer{words.Say("papers.showFolder"), controls.Framed, func() { p.output.view(folder, "") }},
				answer{words.Say("sheet.close"), controls.Solid, nil})
		})
	})
}

// paperJob is the papers of one set, and where they go.
type paperJob struct {
	in     printed.Input
	order  papers.Order
	folder string
	copies int
	bench  sheets.Bench
}

// paperJobs are the papers of some sets, with those left out that few print.
func (p *batchPage) paperJobs(sets []batch.Set, folder string) []paperJob {
	s := p.window.session
	whole, studio, style := s.Project(), s.Studio(), measure.Style{System: s.System(), Decimals: 1, Denominator: 32}
	var jobs []paperJob
	for _, set := range sets {
		one := whole.Of(set)
		j := paperJob{folder: filepath.Join(folder, project.FileName(whole.Name+", "+project.SetName(set, style), "")), copies: set.Copies(), bench: studio.Bench()}
		j.in = printed.Input{
			Book: set.Book, Name: one.Name, Revision: one.Revision(), Date: p.today(), Findings: one.Findings(set.Book, studio),
			Notes: whole.Notes, System: s.System(), Printer: printed.PrinterOf(studio.Printing, s.System()),
			Left: studio.Printing.Left(), Students: studio.Printing.Class(),
		}
		for _, k := range printed.For(j.in) {
			if !slices.Contains(untickedAtFirst(), k.ID) {
				j.order.Kinds = append(j.order.Kinds, k)
			}
		}
		jobs = append(jobs, j)
	}
	return jobs
}

// writeAll plans how each set is cut, lays its papers out and writes them.
func writeAll(ctx context.Context, jobs []paperJob, told func(int)) error {
	done := 0
	for _, j := range jobs {
		planner := batch.Planner{Bench: j.bench, Allowed: planTime}
		for _, job := range sheets.Jobs(j.in.Book, j.copies) {
			c, err := planner.Plan(ctx, job)
			if err != nil {
				return err
			}
			j.in.Cuttings = append(j.in.Cuttings, c)
		}
		files, err := papers.Files(ctx, j.in, j.order, func(n int) { told(done + n) })
		if err != nil {
			return err
		}
		if err := papers.WriteAll(ctx, j.folder, files); err != nil {
			return err
		}
		done += len(j.order.Kinds)
	}
	return nil
}
