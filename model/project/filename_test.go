package project

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"
)

// What Windows refuses is of Microsoft, "Naming Files, Paths, and Namespaces".
var (
	windowsRefuses = regexp.MustCompile(`[\x00-\x1f<>:"/\\|?*]|[ .]$`)
	windowsDevices = regexp.MustCompile(`(?i)^(con|prn|aux|nul|conin\$|conout\$|(com|lpt)[0-9¹²³]) *(\.|$)`)
)

// holds refuses a name that some system does not hold.
func holds(t *testing.T, name, ending string) {
	t.Helper()
	stem, ours := strings.CutSuffix(name, ending)
	switch {
	case !ours || stem == "":
		t.Fatalf("%q is no name with %q", name, ending)
	case len(name) > LongestFileName || !utf8.ValidString(name) || !norm.NFC.IsNormalString(name):
		t.Fatalf("%q has %d bytes, or damaged letters", name, len(name))
	case windowsRefuses.MatchString(name) || windowsDevices.MatchString(name) || strings.HasSuffix(stem, " ") || strings.HasSuffix(stem, "."):
		t.Fatalf("Windows refuses %q", name)
	case strings.HasPrefix(name, ".") || strings.HasPrefix(name, "-") || strings.HasPrefix(name, "~") || filepath.Base(name) != name:
		t.Fatalf("%q is hidden, an option, or a path", name)
	case strings.ContainsAny(name, "\u200b\u202e\ufeff\ufffd"):
		t.Fatalf("%q holds what nobody sees", name)
	}
}

func badNames() []string {
	return []string{
		"", " ", ".", "..", "...", "/", "../../etc/passwd", `C:\temp\x`, "CON", "con", "Nul.txt", "nul .txt", "COM1", "com¹", "LPT9.tar.gz", "CONIN$", "aux.",
		"a\x00b", "a\nb", "a\tb", "-rf", "~", ".hidden", "ends with a dot.", "ends with space ", "no\u00a0break", "\u202efdp.exe", "\ufeff", "\xff\xfe", "\ufffd",
		"a:b", `"quoted"`, "what?", "5*6", "a|b", "<b>", "e\u200d\u0301", strings.Repeat("ü", 100), strings.Repeat("e\u0301\u0323", 100), strings.Repeat("界", 100),
		strings.Repeat(".", 300), strings.Repeat("a ", 60) + ".", "\u2028", "\ue000", "👩‍🎨 sketches",
	}
}

func TestFileNamesOfOddTexts(t *testing.T) {
	for _, text := range badNames() {
		holds(t, FileName(text, ".pdf"), ".pdf")
	}
}

func TestFileNames(t *testing.T) {
	long := strings.Repeat("ü", 58)
	for text, want := range map[string]string{
		"Low Water":                 "Low Water.pdf",
		"Low Water, 2nd: 1/2 \"A\"": "Low Water, 2nd- 1-2 -A.pdf",
		"Skizzenbuch für Zoë":       "Skizzenbuch für Zoë.pdf",
		"Zoe\u0308":                 "Zoë.pdf",
		"con":                       "_con.pdf",
		"Console":                   "Console.pdf",
		"COM10":                     "COM10.pdf",
		"nul.tar":                   "_nul.tar.pdf",
		"../up":                     "up.pdf",
		" .hidden. ":                "hidden.pdf",
		"a\u202eb":                  "ab.pdf",
		"":                          "Untitled book.pdf",
		"???":                       "Untitled book.pdf",
		long + "üü":                 long + ".pdf",
	} {
		if got := FileName(text, ".pdf"); got != want {
			t.Errorf("%q is called %q, want %q", text, got, want)
		}
	}
}

// Whatever the text: every system holds the name, this one for certain, and
// naming the name again changes nothing.
func FuzzFileName(f *testing.F) {
	for _, text := range badNames() {
		f.Add(text)
	}
	folder := f.TempDir()
	f.Fuzz(func(t *testing.T, text string) {
		name := FileName(text, ".csv")
		holds(t, name, ".csv")
		if again := FileName(strings.TrimSuffix(name, ".csv"), ".csv"); again != name {
			t.Fatalf("%q named again is %q", name, again)
		}
		path := filepath.Join(folder, name)
		if err := os.WriteFile(path, nil, 0o600); err != nil {
			t.Fatal(err)
		}
		entries, err := os.ReadDir(folder)
		if err != nil || !slices.ContainsFunc(entries, func(e os.DirEntry) bool { return e.Name() == name }) {
			t.Fatalf("%q is not in its folder: %v", name, err)
		}
		if err := os.Remove(path); err != nil {
			t.Fatal(err)
		}
	})
}
