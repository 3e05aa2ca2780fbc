package project

import (
	"bytes"
	"encoding/json"
	"errors"
	"strconv"
	"strings"
	"unicode/utf8"

	"grainwise/assets/words"
)

// field is one entry of a JSON object and where its value stands in the file.
type field struct {
	name string
	at   int
	raw  []byte
}

// object is a JSON object's entries in their order.
type object []field

func (o object) find(name string) (field, bool) {
	for _, f := range o {
		if f.name == name {
			return f, true
		}
	}
	return field{}, false
}

// readWhole checks that the text is one JSON object without double entries at
// any depth, and reads its outermost entries.
func (s source) readWhole() (object, *Problem) {
	if len(bytes.TrimSpace(s.data)) == 0 {
		return nil, &Problem{Kind: Damaged, File: s.file, Reason: words.Say("project.empty")}
	}
	if !utf8.Valid(s.data) {
		return nil, s.notText()
	}
	var value json.RawMessage
	if err := json.Unmarshal(s.data, &value); err != nil {
		return nil, s.notJSON(err)
	}
	if value[0] != '{' {
		return nil, s.damagedOrForeign(0, words.Say("project.want.object"))
	}
	if name, at, found := firstDouble(s.data); found {
		return nil, s.damaged(at, name, words.Say("project.double"))
	}
	return s.readObject(field{raw: s.data, at: 0})
}

// notText blames the first byte that is no UTF-8.
func (s source) notText() *Problem {
	at := 0
	for at < len(s.data) {
		r, size := utf8.DecodeRune(s.data[at:])
		if r == utf8.RuneError && size == 1 {
			break
		}
		at += size
	}
	return s.damagedOrForeign(at, words.Say("project.notText"))
}

func (s source) notJSON(err error) *Problem {
	var syntax *json.SyntaxError
	if !errors.As(err, &syntax) || int(syntax.Offset) >= len(s.data) {
		return s.damagedOrForeign(len(s.data), words.Say("project.cutShort"))
	}
	at := max(int(syntax.Offset)-1, 0)
	if strings.Contains(syntax.Error(), "after top-level value") {
		return s.damagedOrForeign(at, words.Say("project.afterEnd"))
	}
	found, _ := utf8.DecodeRune(s.data[at:])
	return s.damagedOrForeign(at, words.Say("project.notJSON", words.With{"found": strconv.QuoteRune(found)}))
}

// damagedOrForeign is a problem of the text as a whole: it is one of our files
// where it names itself so.
func (s source) damagedOrForeign(at int, reason string) *Problem {
	p := s.damaged(at, "", reason)
	if !bytes.Contains(s.data, []byte(`"grainwise-`)) {
		p.Kind, p.Reason = Foreign, words.Say("project.notOurs")
	}
	return p
}

// readObject reads the entries of an object inside a whole, valid text.
func (s source) readObject(in field) (object, *Problem) {
	decoder := json.NewDecoder(bytes.NewReader(in.raw))
	if start, _ := decoder.Token(); start != json.Delim('{') {
		return nil, s.damaged(in.at, in.name, words.Say("project.want.object"))
	}
	var entries object
	for decoder.More() {
		name, err := decoder.Token()
		if err != nil {
			return nil, s.damaged(in.at, in.name, err.Error())
		}
		var raw json.RawMessage
		if err := decoder.Decode(&raw); err != nil {
			return nil, s.damaged(in.at, in.name, err.Error())
		}
		at := in.at + int(decoder.InputOffset()) - len(raw)
		entries = append(entries, field{name.(string), at, raw})
	}
	return entries, nil
}

// readArray reads the elements of an array inside a whole, valid text.
func (s source) readArray(in field) ([]field, *Problem) {
	decoder := json.NewDecoder(bytes.NewReader(in.raw))
	if start, _ := decoder.Token(); start != json.Delim('[') {
		return nil, s.damaged(in.at, in.name, words.Say("project.want.list"))
	}
	var all []field
	for decoder.More() {
		var raw json.RawMessage
		if err := decoder.Decode(&raw); err != nil {
			return nil, s.damaged(in.at, in.name, err.Error())
		}
		at := in.at + int(decoder.InputOffset()) - len(raw)
		all = append(all, field{in.name, at, raw})
	}
	return all, nil
}

// firstDouble finds an entry that an object of a valid text has twice.
func firstDouble(data []byte) (name string, at int, found bool) {
	type level struct {
		seen  map[string]bool // nil in an array
		value bool            // a value comes next, not a name
	}
	var open []level
	decoder := json.NewDecoder(bytes.NewReader(data))
	decoder.UseNumber()
	for {
		token, err := decoder.Token()
		if err != nil {
			return "", 0, false
		}
		if token == json.Delim('}') || token == json.Delim(']') {
			open = open[:len(open)-1]
			continue
		}
		if here := len(open) - 1; here >= 0 && open[here].seen != nil {
			if name, isText := token.(string); isText && !open[here].value {
				if open[here].seen[name] {
					return name, int(decoder.InputOffset()) - len(name) - len(`""`), true
				}
				open[here].seen[name] = true
			}
			open[here].value = !open[here].value
		}
		switch token {
		case json.Delim('{'):
			open = append(open, level{seen: map[string]bool{}})
		case json.Delim('['):
			open = append(open, level{})
		}
	}
}
