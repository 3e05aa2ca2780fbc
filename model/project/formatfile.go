package project

import (
	"bytes"
	"encoding/json"
	"fmt"

	"grainwise/assets/words"
	"grainwise/model/book"
)

// The name and version of a file of formats.
const (
	formatsFormat  = "grainwise-formats"
	formatsVersion = 1
)

// decodeFormats reads a file of formats.
func decodeFormats(data []byte, file string) ([]Format, *Problem) {
	s := source{file, bytes.TrimPrefix(data, byteOrderMark)}
	entries, problem := s.readWhole()
	if problem == nil {
		problem = s.identify(entries, formatsFormat, formatsVersion)
	}
	if problem == nil {
		problem = s.known(entries, "format", "version", "formats")
	}
	if problem != nil {
		return nil, problem
	}
	list, ok := entries.find("formats")
	if !ok {
		return nil, &Problem{Kind: Damaged, File: file, Place: "formats", Reason: words.Say("project.want.list")}
	}
	elements, problem := s.readArray(list)
	if problem != nil {
		return nil, problem
	}
	var all []Format
	for _, e := range elements {
		f, problem := s.format(e)
		if problem == nil && indexOf(all, f.Name) >= 0 {
			problem = s.damaged(e.at, "name", words.Say("project.formatThere"))
		}
		if problem != nil {
			return nil, problem
		}
		all = append(all, f)
	}
	return all, nil
}

func (s source) format(in field) (Format, *Problem) {
	entries, problem := s.readObject(in)
	if problem == nil {
		problem = s.known(entries, "name", "settings")
	}
	if problem != nil {
		return Format{}, problem
	}
	name, ok := entries.find("name")
	var f Format
	if !ok || json.Unmarshal(name.raw, &f.Name) != nil || checkFormatName(f.Name) != nil {
		return f, s.damaged(in.at, "name", words.Say("project.want.formatName", words.With{"most": longestFormatName}))
	}
	settings, ok := entries.find("settings")
	if !ok {
		return f, s.damaged(in.at, "settings", words.Say("project.want.object"))
	}
	patch, problem := s.readObject(settings)
	if problem != nil {
		return f, problem
	}
	d := defaultsOf(patch)
	if problem := s.apply(patch, formatParams(), "", &d); problem != nil {
		return f, problem
	}
	return FromDesign(f.Name, d.Design), nil
}

// encodeFormats writes what decodeFormats reads, one key a line.
func encodeFormats(all []Format) []byte {
	var b bytes.Buffer
	fmt.Fprintf(&b, "{\n  \"format\": %s,\n  \"version\": %d,\n  \"formats\": [", jsonText(formatsFormat), formatsVersion)
	for i, f := range all {
		if i > 0 {
			b.WriteByte(',')
		}
		fmt.Fprintf(&b, "\n    {\n      \"name\": %s,\n      \"settings\": {", jsonText(f.Name))
		for j, s := range f.Settings {
			p, ok := book.Lookup(s.Key)
			if !ok {
				continue // Apply refuses it; Save does not get here with one
			}
			if j > 0 {
				b.WriteByte(',')
			}
			fmt.Fprintf(&b, "\n        %s", entryLine(p.Key, p, s.Value))
		}
		b.WriteString("\n      }\n    }")
	}
	b.WriteString("\n  ]\n}\n")
	return b.Bytes()
}
