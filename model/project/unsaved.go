package project

import (
	"bytes"
	"fmt"
	"time"
	"unicode/utf8"

	"grainwise/assets/words"
)

// Unsaved is work that stands in no file of the maker's yet.
type Unsaved struct {
	Project Project
	Path    string    // its file; empty for a project never saved
	Base    Stamp     // what that file held when the work on it began
	Time    time.Time // when the work was as it is here
}

const (
	unsavedFormat  = "grainwise-unsaved"
	unsavedVersion = 1
)

// encode puts the project, as its file would hold it, into an envelope. What
// would not open again is refused, as saving refuses it.
func (u Unsaved) encode() ([]byte, error) {
	inner, err := u.Project.encodeWhole(u.Path)
	if err != nil {
		return nil, err
	}
	path := u.Path
	if !utf8.ValidString(path) {
		path = "" // no text can hold it: better asked for again than wrong
	}
	var b bytes.Buffer
	fmt.Fprintf(&b, "{\n\"format\": %s,\n\"version\": %d,\n", jsonText(unsavedFormat), unsavedVersion)
	fmt.Fprintf(&b, "\"path\": %s,\n\"base\": %s,\n", jsonText(path), jsonText(u.Base.text()))
	fmt.Fprintf(&b, "\"time\": %s,\n", jsonText(u.Time.UTC().Format(time.RFC3339)))
	fmt.Fprintf(&b, "\"project\": %s}\n", inner)
	return b.Bytes(), nil
}

// decodeUnsaved is the inverse of encode.
func decodeUnsaved(data []byte, file string) (Unsaved, *Problem) {
	s := source{file, data}
	entries, problem := s.readWhole()
	if problem == nil {
		problem = s.identify(entries, unsavedFormat, unsavedVersion)
	}
	if problem == nil {
		problem = s.known(entries, "format", "version", "path", "base", "time", "project")
	}
	var u Unsaved
	for _, read := range []func(object, *Unsaved) *Problem{s.unsavedPath, s.unsavedBase, s.unsavedTime, s.unsavedProject} {
		if problem == nil {
			problem = read(entries, &u)
		}
	}
	return u, problem
}

const longestPath = 32_767 // letters, as systems limit it

func (s source) unsavedPath(entries object, u *Unsaved) (problem *Problem) {
	u.Path, _, problem = s.text(entries, "path", longestPath)
	return problem
}

func (s source) unsavedBase(entries object, u *Unsaved) *Problem {
	text, at, problem := s.text(entries, "base", 1000)
	if problem != nil {
		return problem
	}
	base, ok := parseStamp(text)
	if !ok {
		return s.damaged(at, "base", words.Say("project.want.stamp"))
	}
	u.Base = base
	return nil
}

func (s source) unsavedTime(entries object, u *Unsaved) *Problem {
	text, at, problem := s.text(entries, "time", 100)
	if problem != nil {
		return problem
	}
	moment, err := time.Parse(time.RFC3339, text)
	if err != nil {
		return s.damaged(at, "time", words.Say("project.want.time"))
	}
	u.Time = moment
	return nil
}

func (s source) unsavedProject(entries object, u *Unsaved) *Problem {
	f, ok := entries.find("project")
	if !ok {
		return &Problem{Kind: Damaged, File: s.file, Place: "project", Reason: words.Say("project.want.object")}
	}
	p, problem := source{s.file, f.raw}.project()
	u.Project = p
	return problem
}
