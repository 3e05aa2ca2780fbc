package project

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/check"
	"grainwise/model/measure"
	"grainwise/model/sheets"
)

// Studio is what holds for every book of one maker: it is no part of a project.
// Where it is the zero Studio, nothing was entered.
type Studio struct {
	Tools    check.Tools
	Limits   check.Limits // of the checks, where they are not the usual ones
	Printing Printing
	Offcuts  []sheets.Offcut // in stock, used before new sheets
	Showing  Showing         // to customers
}

// Bench is what the studio's sheets are cut on, and what it has kept of others.
func (s Studio) Bench() sheets.Bench {
	return sheets.Bench{Capacity: s.Tools.Capacity, LeastOffcut: s.Tools.LeastOffcut, Kept: s.Offcuts}
}

// The name and version of a studio's file, and what a tool's size may be.
const (
	studioFormat  = "grainwise-studio"
	studioVersion = 1
	mostTool      = 5000 * measure.Millimetre
)

// StudioFile keeps the studio in a file of the program's own.
type StudioFile struct{ path string }

// StudioIn keeps it in a folder, which is made when it is first saved.
func StudioIn(folder string) StudioFile { return StudioFile{filepath.Join(folder, "studio.json")} }

// Read reads the studio; without a file nothing was entered. A damaged file is
// set aside under another name, which the [*Problem] says.
func (f StudioFile) Read() (Studio, error) {
	data, problem := readFile(f.path)
	if problem != nil && errors.Is(problem, fs.ErrNotExist) {
		return Studio{}, nil
	}
	if problem != nil {
		return Studio{}, problem
	}
	studio, problem := decodeStudio(data, f.path)
	switch {
	case problem == nil:
		return studio, nil
	case problem.Kind == Newer:
		return Studio{}, problem // whole, only not for us
	}
	return Studio{}, setAside(f.path, "project.studioAside", problem)
}

// Write saves the studio, wholly or not at all. One that is of a newer version
// of the program stays as it is.
func (f StudioFile) Write(s Studio) error {
	if _, err := f.Read(); err != nil {
		return err
	}
	if err := os.MkdirAll(filepath.Dir(f.path), 0o777); err != nil {
		return unwritable(f.path, err)
	}
	return WriteFile(f.path, s.encode())
}

// OpenStudio reads a studio from a file that is named; nothing is set aside.
func OpenStudio(path string) (Studio, error) {
	data, problem := readFile(path)
	if problem != nil {
		return Studio{}, problem
	}
	studio, problem := decodeStudio(data, path)
	if problem != nil {
		return Studio{}, problem
	}
	return studio, nil
}

// encode writes what was entered, sizes in millimetres, and the limits that were
// set, one a line.
func (s Studio) encode() []byte {
	var lines []string
	for _, tool := range check.ToolTable() {
		if size := *tool.At(&s.Tools); size > 0 {
			lines = append(lines, jsonText(tool.Key)+": "+measure.FileForm(size))
		}
	}
	var b bytes.Buffer
	fmt.Fprintf(&b, "{\n  \"format\": %s,\n  \"version\": %d,\n", jsonText(studioFormat), studioVersion)
	fmt.Fprintf(&b, "  \"tools\": %s", block("{}", lines))
	if own := s.limitLines(); len(own) > 0 {
		fmt.Fprintf(&b, ",\n  \"limits\": %s", block("{}", own))
	}
	if chosen := s.Printing.lines(); len(chosen) > 0 {
		fmt.Fprintf(&b, ",\n  \"printing\": %s", block("{}", chosen))
	}
	if kept := s.offcutLines(); len(kept) > 0 {
		fmt.Fprintf(&b, ",\n  \"offcuts\": %s", block("[]", kept))
	}
	if shown := s.Showing.lines(); len(shown) > 0 {
		fmt.Fprintf(&b, ",\n  \"showing\": %s", block("{}", shown))
	}
	b.WriteString("\n}\n")
	return b.Bytes()
}

func decodeStudio(data []byte, file string) (Studio, *Problem) {
	s := source{file, bytes.TrimPrefix(data, byteOrderMark)}
	entries, problem := s.readWhole()
	if problem == nil {
		problem = s.identify(entries, studioFormat, studioVersion)
	}
	if problem == nil {
		problem = s.known(entries, "format", "version", "tools", "limits", "printing", "offcuts", "showing")
	}
	if problem != nil {
		return Studio{}, problem
	}
	studio := Studio{}
	if tools, there := entries.find("tools"); there {
		if studio, problem = s.tools(tools); problem != nil {
			return Studio{}, problem
		}
	}
	if own, there := entries.find("limits"); there {
		if studio.Limits, problem = s.limits(own); problem != nil {
			return Studio{}, problem
		}
	}
	if printing, there := entries.find("printing"); there {
		if studio.Printing, problem = s.printing(printing); problem != nil {
			return Studio{}, problem
		}
	}
	if kept, there := entries.find("offcuts"); there {
		if studio.Offcuts, problem = s.offcuts(kept); problem != nil {
			return Studio{}, problem
		}
	}
	if shown, there := entries.find("showing"); there {
		if studio.Showing, problem = s.showing(shown); problem != nil {
			return Studio{}, problem
		}
	}
	return studio, nil
}

func (s source) tools(in field) (studio Studio, problem *Problem) {
	entries, problem := s.readObject(in)
	if problem != nil {
		return studio, problem
	}
	var names []string
	for _, tool := range check.ToolTable() {
		names = append(names, tool.Key)
		f, there := entries.find(tool.Key)
		if !there {
			continue
		}
		size, err := measure.ParseFileForm(string(f.raw))
		if err != nil {
			return Studio{}, s.damaged(f.at, tool.Key, clipped(string(f.raw))+": "+wantedTool(tool, measure.Metric))
		}
		*tool.At(&studio.Tools) = size
	}
	if problem := s.known(entries, names...); problem != nil {
		return Studio{}, problem
	}
	if key, err := studio.check(measure.Metric); err != nil {
		f, there := entries.find(key)
		if !there {
			f = in
		}
		return Studio{}, s.damaged(f.at, key, err.Error())
	}
	return studio, nil
}

// ParseTool reads a tool's size as a maker types it; an empty text is a tool
// that there is not.
func ParseTool(text string, tool check.Tool, shown measure.System) (measure.Length, error) {
	if strings.TrimSpace(text) == "" {
		return 0, nil
	}
	size, err := measure.ParseLength(text, shown)
	if err != nil || size < tool.Least || size > mostTool {
		return 0, errors.New(wantedTool(tool, shown))
	}
	return size, nil
}

func wantedTool(tool check.Tool, shown measure.System) string {
	style := measure.Style{System: shown, Decimals: 1}
	return words.Say("studio.want.size", words.With{"low": style.Format(tool.Least), "high": style.WithUnit(mostTool)})
}

// check says which size is out of range, or is missing beside its other one.
func (s Studio) check(shown measure.System) (key string, err error) {
	for _, tool := range check.ToolTable() {
		if size := *tool.At(&s.Tools); size != 0 && (size < tool.Least || size > mostTool) {
			return tool.Key, errors.New(wantedTool(tool, shown))
		}
	}
	return s.Incomplete()
}

// Incomplete says which side of a mat or a press lacks its other one.
func (s Studio) Incomplete() (key string, err error) {
	for _, pair := range []struct {
		plate         check.Plate
		width, height string
	}{{s.Tools.Mat, "matWidth", "matHeight"}, {s.Tools.Press, "pressWidth", "pressHeight"}} {
		switch {
		case pair.plate.Width > 0 && pair.plate.Height == 0:
			return pair.height, errors.New(words.Say("studio.want.both"))
		case pair.plate.Height > 0 && pair.plate.Width == 0:
			return pair.width, errors.New(words.Say("studio.want.both"))
		}
	}
	return "", nil
}
