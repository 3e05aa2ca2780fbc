package project

import (
	"bytes"
	"encoding/json"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"grainwise/assets/words"
	"grainwise/model/check"
)

// Limits of the texts of an answer, in letters; they keep damage out, no more.
const (
	longestMark   = 120
	LongestReason = 2_000 // of why a finding is left as it is
)

// acceptedNames are the entries of one finding that is left as it is.
func acceptedNames() []string {
	return []string{"id", "key", "level", "found", "limit", "unit", "about", "reason"}
}

// acceptedLines are the findings left as they are, one a line.
func acceptedLines(answers []check.Acceptance) []string {
	var lines []string
	for _, a := range answers {
		about := ""
		if a.About != "" {
			about = fmt.Sprintf(`"about": %s, `, jsonText(a.About))
		}
		lines = append(lines, fmt.Sprintf(`{"id": %s, "key": %s, "level": %s, "found": %s, "limit": %s, "unit": %s, %s"reason": %s}`,
			jsonText(a.ID), jsonText(a.Key), jsonText(string(a.Level)), amountText(a.Found), amountText(a.Limit),
			jsonText(string(a.Found.Unit)), about, jsonText(a.Reason)))
	}
	return lines
}

func amountText(q check.Quantity) string {
	return strconv.FormatFloat(q.Amount+0, 'f', -1, 64) // + 0: never "-0"
}

// accepted reads the findings left as they are. Rules and keys that this
// program does not have are kept: another version may know them.
func (s source) accepted(entries object, p *Project) *Problem {
	f, ok := entries.find("accepted")
	if !ok {
		return nil
	}
	all, problem := s.readArray(f)
	if problem != nil {
		return problem
	}
	for _, one := range all {
		a, problem := s.acceptance(one)
		if problem != nil {
			return problem
		}
		if slices.ContainsFunc(p.Accepted, a.SameMatter) {
			return s.damaged(one.at, "accepted", words.Say("project.acceptedTwice"))
		}
		p.Accepted = append(p.Accepted, a)
	}
	return nil
}

func (s source) acceptance(in field) (a check.Acceptance, problem *Problem) {
	entries, problem := s.readObject(in)
	if problem == nil {
		problem = s.known(entries, acceptedNames()...)
	}
	if problem != nil {
		return a, problem
	}
	var level, unit string
	for _, read := range []struct {
		name    string
		into    *string
		most    int
		several bool // of lines
	}{
		{"id", &a.ID, longestMark, false}, {"key", &a.Key, longestMark, false}, {"about", &a.About, longestMark, false},
		{"reason", &a.Reason, LongestReason, true}, {"level", &level, longestMark, false}, {"unit", &unit, longestMark, false},
	} {
		if *read.into, problem = s.someText(in, entries, read.name, read.most, read.several); problem != nil {
			return a, problem
		}
	}
	if a.Level = check.Level(level); !slices.Contains(check.Levels(), a.Level) {
		return a, s.unlike(in, entries, "level", words.Say("project.want.level", words.With{"levels": joined(check.Levels())}))
	}
	a.Found.Unit, a.Limit.Unit = check.Unit(unit), check.Unit(unit)
	if !slices.Contains(check.Units(), a.Found.Unit) {
		return a, s.unlike(in, entries, "unit", words.Say("project.want.unit", words.With{"units": joined(check.Units())}))
	}
	if a.Found.Amount, problem = s.amount(in, entries, "found"); problem == nil {
		a.Limit.Amount, problem = s.amount(in, entries, "limit")
	}
	return a, problem
}

// someText reads a text that must be there; only "about" may be missing.
func (s source) someText(in field, entries object, name string, most int, several bool) (string, *Problem) {
	text, _, problem := s.text(entries, name, most)
	if problem != nil {
		return "", problem
	}
	_, there := entries.find(name)
	control := func(r rune) bool { return unicode.IsControl(r) && !(several && r == '\n') }
	if (there || name != "about") && strings.TrimSpace(text) == "" || strings.ContainsFunc(text, control) {
		return "", s.unlike(in, entries, name, words.Say("project.want.someText", words.With{"most": most}))
	}
	return text, nil
}

func (s source) amount(in field, entries object, name string) (float64, *Problem) {
	f, _ := entries.find(name)
	if n, err := strconv.ParseFloat(string(f.raw), 64); err == nil && json.Valid(f.raw) {
		return n + 0, nil
	}
	return 0, s.unlike(in, entries, name, words.Say("project.want.amount"))
}

// unlike is the problem of an entry that is not what it should be, or is not
// there at all.
func (s source) unlike(in field, entries object, name, want string) *Problem {
	if f, there := entries.find(name); there {
		return s.damaged(f.at, name, clipped(string(bytes.TrimSpace(f.raw)))+": "+want)
	}
	return s.damaged(in.at, name, want)
}

func joined[T ~string](all []T) string {
	var names []string
	for _, one := range all {
		names = append(names, string(one))
	}
	return strings.Join(names, ", ")
}

func acceptedSchema() members {
	mark := members{{"type", "string"}, {"minLength", 1}, {"maxLength", longestMark}}
	number := members{{"type", "number"}}
	properties := map[string]members{
		"id": mark, "key": mark, "about": mark, "found": number, "limit": number,
		"level":  {{"enum", check.Levels()}},
		"unit":   {{"enum", check.Units()}},
		"reason": {{"type", "string"}, {"minLength", 1}, {"maxLength", LongestReason}},
	}
	var listed members
	required := slices.DeleteFunc(acceptedNames(), func(name string) bool { return name == "about" })
	for _, name := range acceptedNames() {
		listed = append(listed, member{name, properties[name]})
	}
	return members{{"type", "object"}, {"required", required}, {"additionalProperties", false}, {"properties", listed}}
}
