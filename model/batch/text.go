package batch

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"grainwise/assets/words"
)

// want is the fault of an entry, with name, value pairs for the blanks of what
// was expected.
func want(place, key string, blanks ...any) error {
	with := words.With{}
	for i := 0; i+1 < len(blanks); i += 2 {
		with[blanks[i].(string)] = blanks[i+1]
	}
	return &Fault{place, words.Say(key, with)}
}

// mark is a short text that is not empty and has no space at its ends.
func mark(text string, most int) bool {
	return text != "" && text == strings.TrimSpace(text) && plainText(text, most)
}

// plainText is one line of limited length.
func plainText(text string, most int) bool {
	return utf8.RuneCountInString(text) <= most && utf8.ValidString(text) && !strings.ContainsFunc(text, unicode.IsControl)
}

// note is a text of several lines.
func note(text string) bool {
	control := func(r rune) bool { return unicode.IsControl(r) && r != '\n' }
	return utf8.RuneCountInString(text) <= longestNote && utf8.ValidString(text) && !strings.ContainsFunc(text, control)
}

func joined[T ~string](all []T) string {
	names := make([]string, len(all))
	for i, one := range all {
		names[i] = string(one)
	}
	return strings.Join(names, ", ")
}

// variantNames are the variants that there are, few of them.
func (b Batch) variantNames() string {
	const most = 12
	var names []string
	for i, v := range b.Variants {
		if i == most {
			names = append(names, "…")
			break
		}
		names = append(names, v.Name)
	}
	if len(names) == 0 {
		return words.Say("project.nothing")
	}
	return strings.Join(names, "; ")
}
