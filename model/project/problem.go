package project

import (
	"bytes"
	"strings"
	"unicode"

	"grainwise/assets/words"
)

// ProblemKind says what is the matter with a file.
type ProblemKind uint8

// The kinds of problem.
const (
	Damaged    ProblemKind = iota // ours, but not whole or not right
	Foreign                       // of another program
	Newer                         // of a later version of this program
	Unreadable                    // not there, not allowed, too large
	Unwritable                    // could not be saved; the old file is whole
)

// Problem is what keeps a file from being opened or saved.
type Problem struct {
	Kind   ProblemKind
	File   string // as it was asked for
	Place  string // line and key; empty where the whole file is meant
	Reason string // what is wrong and what was expected, in the user's language
	Err    error  // the system's own error, where there is one
}

// Error is one line: file, place, reason.
func (p *Problem) Error() string {
	parts := []string{p.File}
	if p.Place != "" {
		parts = append(parts, p.Place)
	}
	return oneLine(strings.Join(append(parts, p.Reason), ": "))
}

// Unwrap gives the system's error.
func (p *Problem) Unwrap() error { return p.Err }

func oneLine(text string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsControl(r) {
			return ' '
		}
		return r
	}, text)
}

// source is a file's text while it is read: where problems are found.
type source struct {
	file string
	data []byte
}

// damaged is a problem at an offset of the text, about a key if there is one.
func (s source) damaged(offset int, key, reason string) *Problem {
	return &Problem{Kind: Damaged, File: s.file, Place: s.place(offset, key), Reason: reason}
}

func (s source) place(offset int, key string) string {
	before := s.data[:min(max(offset, 0), len(s.data))]
	line := 1 + bytes.Count(before, []byte("\n"))
	column := len([]rune(string(before[bytes.LastIndexByte(before, '\n')+1:]))) + 1
	place := words.Say("project.place", words.With{"line": line, "column": column})
	if key == "" {
		return place
	}
	return place + ", " + clipped(key)
}

// Why is the system's reason alone, or ours where there is none.
func (p *Problem) Why() string {
	if p.Err != nil {
		return cause(p.Err)
	}
	return p.Reason
}
