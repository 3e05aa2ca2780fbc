package project

import (
	"bytes"
	"encoding/json"
	"errors"
	"strconv"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
)

// autoWord stands in files for a decision that is left to the program.
const autoWord = "auto"

// entryText is a parameter's value as files keep it: lengths as numbers of
// millimetres, yes and no as true and false, words in quotes.
func entryText(p book.Param, v book.Value) string {
	switch {
	case v.Auto:
		return jsonText(autoWord)
	case p.Kind.IsLength():
		return measure.FileForm(v.Length)
	case p.Kind.IsNumber():
		return strconv.FormatFloat(v.Number+0, 'f', -1, 64) // + 0: never "-0"
	case p.Kind == book.KindSwitch:
		return strconv.FormatBool(v.Word == "yes")
	}
	return jsonText(v.Word)
}

// readEntry is the inverse of entryText; the error says what was expected.
func readEntry(p book.Param, raw []byte) (book.Value, error) {
	v, ok := entryValue(p, raw)
	if !ok {
		return v, &book.ValueError{Key: p.Key, Text: clipped(string(raw)), Want: wanted(p)}
	}
	err := p.Admit(v)
	var refused *book.ValueError
	if errors.As(err, &refused) {
		return v, &book.ValueError{Key: p.Key, Text: clipped(string(raw)), Want: refused.Want}
	}
	return v, err
}

func entryValue(p book.Param, raw []byte) (v book.Value, ok bool) {
	var word string
	if err := json.Unmarshal(raw, &word); err == nil && raw[0] == '"' {
		if word == autoWord && p.Derivable {
			return book.AutoValue, true
		}
		return book.WordValue(word), !p.Kind.IsNumber() && p.Kind != book.KindSwitch
	}
	switch {
	case p.Kind.IsLength():
		l, err := measure.ParseFileForm(string(raw))
		return book.LengthValue(l), err == nil
	case p.Kind.IsNumber():
		n, err := strconv.ParseFloat(string(raw), 64)
		return book.NumberValue(n + 0), err == nil
	case p.Kind == book.KindSwitch && string(raw) == "true":
		return book.WordValue("yes"), true
	case p.Kind == book.KindSwitch && string(raw) == "false":
		return book.WordValue("no"), true
	}
	return v, false
}

// wanted says what a file's entry may be.
func wanted(p book.Param) string {
	switch {
	case p.Kind == book.KindSwitch:
		return words.Say("project.want.switch")
	case p.Kind.IsLength():
		return words.Say("project.want.length", words.With{"range": p.Wanted(measure.Metric)})
	case p.Kind.IsNumber():
		return words.Say("project.want.number", words.With{"range": p.Wanted(measure.Metric)})
	}
	return words.Say("project.want.word", words.With{"words": p.Wanted(measure.Metric)})
}

// jsonText is a text in quotes, as people would write it.
func jsonText(text string) string {
	var b bytes.Buffer
	encoder := json.NewEncoder(&b)
	encoder.SetEscapeHTML(false)
	if err := encoder.Encode(text); err != nil {
		panic(err) // a string always encodes
	}
	return string(bytes.TrimSuffix(b.Bytes(), []byte("\n")))
}
