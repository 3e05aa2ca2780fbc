package main

import (
	"slices"
	"strings"
	"unicode"
)

// arguments are what a command was given: files and options, in any order.
type arguments struct {
	files   []string
	options map[string][]string // by name, without its dashes
}

// parse reads arguments; valued options take a value, the others none.
func parse(args []string, valued, plain []string) (arguments, error) {
	a := arguments{options: map[string][]string{}}
	for i := 0; i < len(args); i++ {
		name, isOption := strings.CutPrefix(args[i], "--")
		name, value, joined := strings.Cut(name, "=")
		switch {
		case !isOption && strings.HasPrefix(args[i], "-") && len(args[i]) > 1:
			return a, inputError("gw.unknownOption", "found", args[i])
		case !isOption:
			a.files = append(a.files, args[i])
		case slices.Contains(plain, name) && !joined:
			a.options[name] = append(a.options[name], "")
		case !slices.Contains(valued, name):
			return a, inputError("gw.unknownOption", "found", args[i])
		case joined:
			a.options[name] = append(a.options[name], value)
		case i+1 == len(args):
			return a, inputError("gw.wantValue", "option", args[i])
		default:
			i++
			a.options[name] = append(a.options[name], args[i])
		}
	}
	return a, a.once(valued)
}

// once refuses an option given twice, except those of which there may be several.
func (a arguments) once(valued []string) error {
	for _, name := range valued {
		if name != "set" && name != "with" && len(a.options[name]) > 1 {
			return inputError("gw.twice", "option", "--"+name)
		}
	}
	return nil
}

func (a arguments) has(name string) bool { return len(a.options[name]) > 0 }

// value is an option's value, "" where it was not given.
func (a arguments) value(name string) string {
	if !a.has(name) {
		return ""
	}
	return a.options[name][0]
}

// oneFile is the single file that a command needs.
func (a arguments) oneFile() (string, error) {
	switch {
	case len(a.files) > 1:
		return "", inputError("gw.tooMany", "found", a.files[1])
	case len(a.files) == 0 || a.files[0] == "":
		return "", inputError("gw.wantFile")
	}
	return a.files[0], nil
}

// noFiles refuses files where none are taken.
func (a arguments) noFiles() error {
	if len(a.files) > 0 {
		return inputError("gw.tooMany", "found", a.files[0])
	}
	return nil
}

func oneLine(text string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsControl(r) {
			return ' '
		}
		return r
	}, text)
}
