package project

import (
	"bytes"
	"encoding/base64"
	"encoding/json"
	"errors"
	"slices"

	"grainwise/assets/words"
)

// Showing is how a studio shows itself to customers. What is empty is not shown.
type Showing struct {
	Name string
	Line string // of its own: a place, a word
	Logo []byte // a picture as a file holds it, PNG or JPEG
}

// The longest texts of a studio, in letters, and the largest picture, in bytes.
const (
	LongestStudio = 60
	LongestLine   = 120
	LargestLogo   = 2 << 20
)

// Equal tells whether two studios show themselves alike.
func (s Showing) Equal(o Showing) bool {
	return s.Name == o.Name && s.Line == o.Line && bytes.Equal(s.Logo, o.Logo)
}

// lines are what was entered, one a line.
func (s Showing) lines() []string {
	var lines []string
	if s.Name != "" {
		lines = append(lines, `"name": `+jsonText(s.Name))
	}
	if s.Line != "" {
		lines = append(lines, `"line": `+jsonText(s.Line))
	}
	if len(s.Logo) > 0 {
		lines = append(lines, `"logo": `+jsonText(base64.StdEncoding.EncodeToString(s.Logo)))
	}
	return lines
}

// Check returns what is wrong with the texts or the picture's file, or nil.
func (s Showing) Check() error {
	if _, problem := s.fault(); problem != "" {
		return errors.New(problem)
	}
	return nil
}

// fault says which text is too long, or what of the picture is no picture's file;
// what is in it is for those to judge who draw it.
func (s Showing) fault() (key, problem string) {
	switch {
	case !shortLine(s.Name, LongestStudio):
		return "name", words.Say("project.want.text", words.With{"most": LongestStudio})
	case !shortLine(s.Line, LongestLine):
		return "line", words.Say("project.want.text", words.With{"most": LongestLine})
	case len(s.Logo) > LargestLogo, len(s.Logo) > 0 && !pictured(s.Logo):
		return "logo", words.Say("studio.want.logo")
	}
	return "", ""
}

// pictured tells what begins as PNG (ISO/IEC 15948, 5.2) or as JPEG (ITU-T T.81,
// B.2.1: the marker SOI, and the next one) does.
func pictured(data []byte) bool {
	return slices.ContainsFunc([]string{"\x89PNG\r\n\x1a\n", "\xff\xd8\xff"}, func(start string) bool {
		return bytes.HasPrefix(data, []byte(start))
	})
}

// showing reads how the studio shows itself.
func (s source) showing(in field) (show Showing, problem *Problem) {
	entries, problem := s.readObject(in)
	if problem == nil {
		problem = s.known(entries, "name", "line", "logo")
	}
	if problem != nil {
		return show, problem
	}
	for _, read := range []struct {
		key  string
		into any
	}{{"name", &show.Name}, {"line", &show.Line}, {"logo", &show.Logo}} {
		f, there := entries.find(read.key)
		if there && json.Unmarshal(f.raw, read.into) != nil {
			return Showing{}, s.damaged(f.at, read.key, words.Say("studio.want."+read.key))
		}
	}
	if key, wrong := show.fault(); key != "" {
		f, _ := entries.find(key)
		return Showing{}, s.damaged(f.at, key, wrong)
	}
	return show, nil
}
