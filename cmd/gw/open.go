package main

import (
	"fmt"
	"strings"

	"grainwise/model/measure"
	"grainwise/model/project"
)

// openWith reads the project that the arguments name, or a variant of it, and
// takes their --set.
func openWith(a arguments) (project.Project, error) {
	file, err := a.oneFile()
	if err != nil {
		return project.Project{}, err
	}
	p, err := project.Open(file)
	if err == nil && a.has("variant") {
		p, err = p.Variant(a.value("variant"))
		err = inOption("variant", err)
	}
	if err != nil {
		return p, err
	}
	return p, setAll(&p, a.options["set"])
}

// openIn reads the studio of --studio as well; without one nothing is known of
// the maker's tools.
func openIn(a arguments) (p project.Project, studio project.Studio, err error) {
	if a.has("studio") {
		if studio, err = project.OpenStudio(a.value("studio")); err != nil {
			return p, studio, err
		}
	}
	p, err = openWith(a)
	return p, studio, err
}

// inOption says which option an error is about.
func inOption(name string, err error) error {
	if err == nil {
		return nil
	}
	return fmt.Errorf("--%s %w", name, err)
}

// setAll takes KEY=VALUE settings in their order; bare numbers are millimetres.
func setAll(p *project.Project, sets []string) error {
	for _, set := range sets {
		key, value, err := splitSet(set)
		if err != nil {
			return err
		}
		if err := p.Set(key, value, measure.Metric); err != nil {
			return setError(set, err)
		}
	}
	return nil
}

func splitSet(set string) (key, value string, err error) {
	key, value, ok := strings.Cut(set, "=")
	if !ok {
		return "", "", inputError("gw.wantSet", "found", set)
	}
	return strings.TrimSpace(key), strings.TrimSpace(value), nil
}
