package main

import (
	"context"
	"path/filepath"

	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/render/papers"
	"grainwise/render/sheet"
)

// paperSet is the papers of one design, and the folder that they go to.
type paperSet struct {
	folder string
	in     sheet.Input
	order  papers.Order
	files  []papers.File
}

// paperSets are the papers asked for: of the base design, or with --variant and
// --group of what is cut alike among their books, each in a folder of its own
// where there is more than one.
func (a arguments) paperSets(folder string) ([]paperSet, project.Studio, error) {
	date, err := a.date()
	if err != nil {
		return nil, project.Studio{}, err
	}
	p, studio, err := a.openBase()
	if err != nil {
		return nil, studio, err
	}
	if studio.Printing, err = a.printing(studio.Printing); err != nil {
		return nil, studio, err
	}
	all, err := a.projects(p, folder)
	if err != nil {
		return nil, studio, err
	}
	var made []paperSet
	for _, one := range all {
		set := paperSet{folder: one.folder}
		if set.in, set.order, err = a.papers(one.project, studio, date); err != nil {
			return nil, studio, err
		}
		if set.files, err = papers.Files(context.Background(), set.in, set.order, nil); err != nil {
			return nil, studio, err
		}
		made = append(made, set)
	}
	return made, studio, nil
}

// openBase reads project and studio without taking a variant of it, and without
// settings.
func (a arguments) openBase() (project.Project, project.Studio, error) {
	plain := arguments{files: a.files, options: map[string][]string{"studio": a.options["studio"]}}
	return openIn(plain)
}

type projectIn struct {
	project project.Project
	folder  string
}

// projects are the designs whose papers are wanted, each with its folder. The
// settings are taken by each of them.
func (a arguments) projects(p project.Project, folder string) ([]projectIn, error) {
	all := []projectIn{{p, folder}}
	if a.has("variant") || a.has("group") {
		sets, err := p.SetsOf(a.value("variant"), a.value("group"))
		if err != nil {
			return nil, err
		}
		all = nil
		style := measure.Style{System: p.Decisions.Design.CutIn, Decimals: 1}
		for _, s := range sets {
			one := projectIn{p.Of(s), folder}
			if len(sets) > 1 {
				one.folder = filepath.Join(folder, project.FileName(project.SetName(s, style), ""))
			}
			all = append(all, one)
		}
	}
	for i := range all {
		if err := setAll(&all[i].project, a.options["set"]); err != nil {
			return nil, err
		}
	}
	return all, nil
}
