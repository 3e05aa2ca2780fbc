package main

import (
	"io"
	"slices"
	"strings"

	"grainwise/model/measure"
	"grainwise/model/project"
)

// demoFormat is the name by which --format gives the demo project.
const demoFormat = "demo"

// newCommand makes a project file: gw new [--format NAME] [--set KEY=VALUE]...
// [--out FILE].
func newCommand(args []string, out io.Writer) (int, error) {
	a, err := parse(args, []string{"format", "set", "out"}, nil)
	if err == nil {
		err = a.noFiles()
	}
	if err != nil {
		return exitInput, err
	}
	p, err := begin(a)
	if err == nil {
		err = setAll(&p, a.options["set"])
	}
	if err != nil {
		return exitInput, err
	}
	if a.has("out") {
		return exitDone, project.Save(a.value("out"), p)
	}
	data, err := p.Encode()
	if err == nil {
		_, err = out.Write(data)
	}
	return exitDone, err
}

// begin is the project before --set.
func begin(a arguments) (project.Project, error) {
	name := a.value("format")
	switch {
	case !a.has("format"):
		return project.New(systemOf(a.options["set"])), nil
	case name == demoFormat:
		return project.Demo(), nil
	}
	f, ok := project.FindBuiltIn(name)
	if !ok {
		return project.Project{}, inputError("gw.unknownFormat", "found", name, "names", strings.Join(formatNames(), ", "))
	}
	p := project.New(f.System())
	design, err := f.Apply(p.Decisions.Design)
	p.Decisions.Design = design
	return p, err
}

// systemOf is the system in whose own sizes a new book starts: the one that
// the settings ask to cut in.
func systemOf(sets []string) measure.System {
	for _, set := range slices.Backward(sets) {
		key, value, err := splitSet(set)
		if err != nil || key != "rounding.system" {
			continue
		}
		if system, err := measure.ParseSystem(value); err == nil {
			return system
		}
	}
	return measure.Metric
}

func formatNames() []string {
	names := []string{demoFormat}
	for _, f := range project.BuiltIn() {
		names = append(names, f.Name)
	}
	return names
}
