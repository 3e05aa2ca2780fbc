package project

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"

	"grainwise/assets/words"
)

// LongestFileName is how many bytes a file's name has at most, its ending with
// them: file systems hold 255, and a draft's name is longer than the file's.
const LongestFileName = 120

// FileName makes of any text, as a project's name, the name of a file that Linux,
// macOS and Windows all hold, with an ending of our own such as ".pdf". Two texts
// may come to one name; see [FileSet].
//
// Source of what Windows refuses: Microsoft, "Naming Files, Paths, and
// Namespaces".
func FileName(text, ending string) string {
	stem := cleanStem(text)
	if stem == "" {
		stem = cleanStem(words.Say("project.untitled"))
	}
	if device(stem) {
		stem = "_" + stem
	}
	return shortened(stem, LongestFileName-len(ending)) + ending
}

// cleanStem is a text without what no file's name may hold, composed as Unicode's
// form C, for macOS knows both forms as one.
func cleanStem(text string) string {
	var b strings.Builder
	last := rune(0)
	for _, r := range norm.NFC.String(strings.ToValidUTF8(text, "-")) {
		switch {
		case unicode.Is(unicode.Cf, r), r == utf8.RuneError:
			continue // nobody sees these, or anything in them
		case refused(r):
			r = '-'
		case unicode.IsSpace(r):
			r = ' '
		}
		if r != last || r != '-' && r != ' ' {
			b.WriteRune(r)
		}
		last = r
	}
	return trimmed(norm.NFC.String(b.String()))
}

// refused tells what separates folders anywhere, what Windows refuses, and what
// is no sign of writing, which macOS may refuse.
func refused(r rune) bool { return !unicode.IsGraphic(r) || strings.ContainsRune(`<>:"/\|?*`, r) }

// trimmed takes off what hides a file, what a command takes for an option, and
// what Windows drops.
func trimmed(stem string) string {
	return strings.TrimRight(strings.TrimLeft(stem, " .-~"), " .-")
}

// device tells a name that Windows keeps for a device, whatever follows its first
// point.
func device(stem string) bool {
	name, _, _ := strings.Cut(stem, ".")
	name = strings.ToUpper(strings.TrimRight(name, " "))
	switch name {
	case "CON", "PRN", "AUX", "NUL", "CONIN$", "CONOUT$":
		return true
	}
	port, numbered := strings.CutPrefix(name, "COM")
	if !numbered {
		port, numbered = strings.CutPrefix(name, "LPT")
	}
	return numbered && utf8.RuneCountInString(port) == 1 && strings.Contains("0123456789¹²³", port)
}

// shortened keeps whole letters, with the marks upon them, up to so many bytes.
func shortened(stem string, most int) string {
	if len(stem) <= most {
		return stem
	}
	end := max(most, 0)
	for end > 0 && !norm.NFC.PropertiesString(stem[end:]).BoundaryBefore() {
		end--
	}
	for end > 0 && !utf8.RuneStart(stem[end]) {
		end--
	}
	return trimmed(stem[:end])
}
