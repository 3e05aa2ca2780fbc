package project

import (
	"bytes"
	"compress/gzip"
	"errors"
	"fmt"
	"io"
	"math/rand/v2"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
)

// variant is one way in which a file may come to harm.
type variant struct {
	name string
	data []byte
}

// variants is 400 and more damaged copies of the demo, half of them with answers
// to findings, the same ones each time.
func variants(t testing.TB) []variant {
	random := rand.New(rand.NewPCG(7, 24))
	return append(variantsOf(encoded(t, Demo()), random), variantsOf(encoded(t, answered()), random)...)
}

func variantsOf(good []byte, random *rand.Rand) []variant {
	var all []variant
	add := func(name string, data []byte) { all = append(all, variant{name, data}) }
	for i := range 60 {
		flipped := bytes.Clone(good)
		at, bit := random.IntN(len(good)), random.IntN(8)
		flipped[at] ^= 1 << bit
		add(fmt.Sprintf("%d byte %d bit %d", i, at, bit), flipped)
	}
	for i := range 30 {
		at := random.IntN(len(good))
		add(fmt.Sprintf("%d cut at %d", i, at), good[:at])
	}
	for i := range 20 {
		from := random.IntN(len(good))
		to := min(from+1+random.IntN(300), len(good))
		add(fmt.Sprintf("%d hole %d to %d", i, from, to), append(bytes.Clone(good[:from]), good[to:]...))
	}
	return append(append(all, lineVariants(good, random)...), edited(good)...)
}

// lineVariants loses, doubles and swaps whole lines.
func lineVariants(good []byte, random *rand.Rand) []variant {
	var all []variant
	lines := strings.SplitAfter(string(good), "\n")
	join := func(parts ...[]string) []byte {
		var b strings.Builder
		for _, p := range parts {
			b.WriteString(strings.Join(p, ""))
		}
		return []byte(b.String())
	}
	for i := range 25 {
		n := random.IntN(len(lines) - 1)
		all = append(all,
			variant{fmt.Sprintf("%d line %d lost", i, n+1), join(lines[:n], lines[n+1:])},
			variant{fmt.Sprintf("%d line %d twice", i, n+1), join(lines[:n+1], lines[n:])})
	}
	return all
}

// edited puts other values where the demo has its own.
func edited(good []byte) []variant {
	var all []variant
	text := string(good)
	for _, entry := range []string{
		`"version": 1`, `"name": "Low Water"`, `"page.width": 150`, `"paper": "Ebbwhite Drawing 170"`, `"paper.turned": false`,
		`"sections.count": 6`, `"sewing.threadCrush": 0.6`, `"board.width": "auto"`, `"liner.tornEdges": "none"`,
		`"spine.kind": "card"`, `"measured": {}`, `"thickness":0.22`, `"grammage":170`, `"amount":"2.40 EUR"`, `"colour":"#FFFDF7"`,
	} {
		key, _, _ := strings.Cut(entry, ":")
		for _, value := range []string{
			"null", "NaN", "-1", "1e400", "99999999999999999999999999", "0.1234567890123", `""`, `"\u0000"`, "[]", `{"a":[{"b":[[{}]]}]}`, "true",
		} {
			all = append(all, variant{key + " " + value, []byte(strings.Replace(text, entry, key+": "+value, 1))})
		}
	}
	deep := strings.Repeat("[", 20_000) + strings.Repeat("]", 20_000)
	return append(all,
		variant{"mark", append([]byte("\xef\xbb\xbf"), good...)},
		variant{"returns", bytes.ReplaceAll(good, []byte("\n"), []byte("\r\n"))},
		variant{"zeros", append(bytes.Clone(good), make([]byte, 500)...)},
		variant{"zero first", append([]byte{0}, good...)},
		variant{"more after the end", append(bytes.Clone(good), good...)},
		variant{"letters after the end", append(bytes.Clone(good), "end"...)},
		variant{"empty", nil},
		variant{"blank", []byte(" \n\t\n")},
		variant{"only zeros", make([]byte, 4096)},
		variant{"deep", []byte(strings.Replace(text, `"measured": {}`, `"measured": `+deep, 1))},
		variant{"latin", bytes.Replace(good, []byte("Low Water"), []byte("Low W\xe4ter"), 1)},
		variant{"wide letters", wide(text)},
	)
}

// wide is the text in UTF-16, as some editors save it.
func wide(text string) []byte {
	data := []byte{0xff, 0xfe}
	for _, r := range text {
		data = append(data, byte(r), byte(r>>8))
	}
	return data
}

// A place is a line and column, or the name of an entry that is not there.
var placed = regexp.MustCompile(`^damaged\.json: (line \d+, column \d+|format|version|design|formats)`)

// Every damaged variant is refused with file, place and reason, or opens as a
// project whose own file fits the schema.
func TestDamagedVariants(t *testing.T) {
	schema := compiled(t, Schema)
	all := variants(t)
	if len(all) < 400 {
		t.Fatalf("only %d variants", len(all))
	}
	opened := 0
	for _, v := range all {
		p, err := Decode(v.data, "damaged.json")
		if err == nil {
			opened++
			opensAsAProject(t, schema, v, p)
			continue
		}
		refusedProperly(t, v, err)
	}
	t.Logf("%d variants, %d opened", len(all), opened)
	if opened == 0 || opened > len(all)/3 {
		t.Errorf("%d of %d variants opened", opened, len(all))
	}
}

func opensAsAProject(t *testing.T, schema *jsonschema.Schema, v variant, p Project) {
	t.Helper()
	saved := encoded(t, p)
	if err := validate(t, schema, saved); err != nil {
		t.Errorf("%s opens, but saved: %v", v.name, err)
	}
	if again, err := Decode(saved, "again.json"); err != nil || !again.Equal(p) {
		t.Errorf("%s opens, but not again: %v", v.name, err)
	}
}

func refusedProperly(t *testing.T, v variant, err error) {
	t.Helper()
	text := err.Error()
	var problem *Problem
	if !errors.As(err, &problem) || problem.Reason == "" || strings.ContainsAny(text, "\n\r\x00") || len(text) > 500 {
		t.Errorf("%s: %q is no line with a reason", v.name, text)
		return
	}
	whole := len(bytes.TrimSpace(v.data)) == 0
	if !whole && !placed.MatchString(text) {
		t.Errorf("%s: %q has no place", v.name, text)
	}
	for _, foreign := range []string{"invalid character", "json:", "Unmarshal"} {
		if strings.Contains(problem.Place, foreign) {
			t.Errorf("%s: %q", v.name, text)
		}
	}
}

func TestKindsOfProblem(t *testing.T) {
	good := string(encoded(t, Demo()))
	for _, c := range []struct {
		name, text string
		kind       ProblemKind
		says       string
	}{
		{"empty", "", Damaged, "empty"},
		{"picture", "\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR", Foreign, "not a file of this program"},
		{"letter", "Dear Thistlewane,", Foreign, "not a file of this program"},
		{"other JSON", `{"name": "grain", "sheets": 3}`, Foreign, "grainwise-project"},
		{"list", `[1, 2]`, Foreign, ""},
		{"formats", string(encodeFormats(BuiltIn())), Foreign, "grainwise-project"},
		{"newer", strings.Replace(good, `"version": 1`, `"version": 2`, 1), Newer, "newer version of the program"},
		{"newer and unknown", `{"format":"grainwise-project","version":9,"pages":[]}`, Newer, "version 9"},
		{"old", strings.Replace(good, `"version": 1`, `"version": 0`, 1), Damaged, "whole number from 1"},
		{"text version", strings.Replace(good, `"version": 1`, `"version": "1"`, 1), Damaged, "whole number from 1"},
		{"cut", good[:len(good)/2], Damaged, "ends too early"},
		{"twice", strings.Replace(good, `"page.width": 150`, `"page.width": 150, "page.width": 160`, 1), Damaged, "line 8, column 24, page.width: this entry stands here a second time"},
		{"unknown", strings.Replace(good, `"page.width": 150`, `"page.widht": 150`, 1), Damaged, "line 8, column 19, page.widht: no such entry: did you mean page.width?"},
		{"word", strings.Replace(good, `"page.width": 150`, `"page.width": "wide"`, 1), Damaged, `line 8, column 19, page.width: "wide": expected 60 to 420 mm`},
		{"range", strings.Replace(good, `"page.width": 150`, `"page.width": 9000`, 1), Damaged, "line 8, column 19, page.width: 9000: expected 60 to 420 mm"},
		{"material", strings.Replace(good, `"paper": "Ebbwhite`, `"paper": "Whitebb`, 1), Damaged, "Whitebb Drawing 170"},
		{"shelf", strings.Replace(good, `"thickness":0.22`, `"thickness":22`, 1), Damaged, "Ebbwhite Drawing 170”: thickness: 22 mm"},
		{"shelf entry", strings.Replace(good, `"grammage":170`, `"weight":170`, 1), Damaged, "weight"},
		{"trailing", good + "{}", Damaged, "expected nothing"},
	} {
		_, err := Decode([]byte(c.text), "x.json")
		var problem *Problem
		if !errors.As(err, &problem) || problem.Kind != c.kind || !strings.Contains(err.Error(), c.says) || !strings.HasPrefix(err.Error(), "x.json: ") {
			t.Errorf("%s: %v", c.name, err)
		}
	}
}

// FuzzOpen never panics, and what opens saves and opens again as the same.
// fuzzed are texts that a long run of the fuzzer found to go new ways, quoted,
// one a line.
func fuzzed(f *testing.F) [][]byte {
	file, err := os.Open("testdata/fuzzed.txt.gz")
	if err != nil {
		f.Fatal(err)
	}
	defer file.Close()
	packed, err := gzip.NewReader(file)
	if err != nil {
		f.Fatal(err)
	}
	all, err := io.ReadAll(packed)
	if err != nil {
		f.Fatal(err)
	}
	var texts [][]byte
	for line := range strings.Lines(string(all)) {
		text, err := strconv.Unquote(strings.TrimSuffix(line, "\n"))
		if err != nil {
			f.Fatalf("%.60s: %v", line, err)
		}
		texts = append(texts, []byte(text))
	}
	return texts
}

func FuzzOpen(f *testing.F) {
	for _, text := range fuzzed(f) {
		f.Add(text)
	}
	for i, v := range variants(f) {
		if i%9 == 0 {
			f.Add(v.data)
		}
	}
	f.Add(encoded(f, Demo()))
	f.Add([]byte(`{"format":"grainwise-project","version":1,"design":{}}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		p, err := Decode(data, "fuzz.json")
		if err != nil {
			if strings.ContainsAny(err.Error(), "\n\r\x00") {
				t.Fatalf("%q is no line", err)
			}
			return
		}
		p.Book()
		again, err := Decode(encoded(t, p), "again.json")
		if err != nil || !again.Equal(p) {
			t.Fatalf("does not come back: %v", err)
		}
	})
}
