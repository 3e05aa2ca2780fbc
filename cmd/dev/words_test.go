package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// wordKey is a key, or the beginning of one, that code passes to words.Say or words.Lookup.
type wordKey struct {
	text      string
	beginning bool // more is appended to it when the program runs
	place     token.Position
}

// wordKeys finds the keys in one file: those written in the call itself.
func wordKeys(name string, text any) ([]wordKey, error) {
	files := token.NewFileSet()
	file, err := parser.ParseFile(files, name, text, 0)
	if err != nil {
		return nil, err
	}
	local := localName(file, module+"assets/words")
	if local == "" {
		return nil, nil
	}
	var keys []wordKey
	ast.Inspect(file, func(node ast.Node) bool {
		if call, is := node.(*ast.CallExpr); is && asksForWords(call, local) {
			if text, beginning, found := literal(call.Args[0]); found {
				keys = append(keys, wordKey{text, beginning, files.Position(call.Pos())})
			}
		}
		return true
	})
	return keys, nil
}

// localName is what a file calls an imported package, "" if it does not import it.
func localName(file *ast.File, imported string) string {
	for _, spec := range file.Imports {
		if spec.Path.Value != strconv.Quote(imported) {
			continue
		}
		if spec.Name != nil {
			return spec.Name.Name
		}
		return imported[strings.LastIndex(imported, "/")+1:]
	}
	return ""
}

// asksForWords tells a call of Say or Lookup of the package known by that name.
func asksForWords(call *ast.CallExpr, local string) bool {
	function, is := call.Fun.(*ast.SelectorExpr)
	if !is || len(call.Args) == 0 {
		return false
	}
	from, is := function.X.(*ast.Ident)
	return is && from.Name == local && (function.Sel.Name == "Say" || function.Sel.Name == "Lookup")
}

// literal reads "key" and the beginning of "key" + more.
func literal(argument ast.Expr) (text string, beginning, found bool) {
	switch e := argument.(type) {
	case *ast.BasicLit:
		text, err := strconv.Unquote(e.Value)
		return text, false, err == nil
	case *ast.BinaryExpr:
		text, _, found := literal(e.X)
		return text, true, found
	}
	return "", false, false
}

// textKeys is the keys of one translation file, in its order.
func textKeys(data []byte) ([]string, error) {
	decoder := json.NewDecoder(bytes.NewReader(data))
	if start, err := decoder.Token(); err != nil || start != json.Delim('{') {
		return nil, fmt.Errorf("not one object of key and text: %v %v", start, err)
	}
	var keys []string
	for decoder.More() {
		key, err := decoder.Token()
		if err != nil {
			return nil, err
		}
		var text string
		if err := decoder.Decode(&text); err != nil {
			return nil, fmt.Errorf("%v: %w", key, err)
		}
		keys = append(keys, key.(string))
	}
	if _, err := decoder.Token(); err != nil {
		return nil, err
	}
	return keys, nil
}

// twice is the keys that stand in more than one place, with those places.
func twice(keysOf map[string][]string) []string {
	places := map[string][]string{}
	for file, keys := range keysOf {
		for _, key := range keys {
			places[key] = append(places[key], file)
		}
	}
	var double []string
	for key, files := range places {
		if len(files) > 1 {
			slices.Sort(files)
			double = append(double, key+" in "+strings.Join(files, " and "))
		}
	}
	slices.Sort(double)
	return double
}

// english reads every key of the English files, by file.
func english(t *testing.T) map[string][]string {
	names, err := filepath.Glob("../../assets/lang/en/*.json")
	if err != nil || len(names) == 0 {
		t.Fatalf("no English files: %v", err)
	}
	keysOf := map[string][]string{}
	for _, name := range names {
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		if keysOf[filepath.Base(name)], err = textKeys(data); err != nil {
			t.Fatalf("%s: %v", name, err)
		}
	}
	return keysOf
}

// lacks tells whether the files have no text for a key.
func (k wordKey) lacks(keysOf map[string][]string) bool {
	for _, keys := range keysOf {
		for _, key := range keys {
			if key == k.text || k.beginning && strings.HasPrefix(key, k.text) {
				return false
			}
		}
	}
	return true
}

func TestEveryKeyInTheCodeHasAText(t *testing.T) {
	files, err := goFiles("../..")
	if err != nil {
		t.Fatal(err)
	}
	keysOf := english(t)
	for _, name := range files {
		if strings.HasSuffix(name, "_test.go") {
			continue // a test may ask for a key that is not there
		}
		keys, err := wordKeys(filepath.Join("../..", name), nil)
		if err != nil {
			t.Fatal(err)
		}
		for _, key := range keys {
			if key.lacks(keysOf) {
				t.Errorf("%s:%d: no English text for %q", name, key.place.Line, key.text)
			}
		}
	}
}

func TestNoKeyStandsTwice(t *testing.T) {
	for _, double := range twice(english(t)) {
		t.Error(double)
	}
}

// The finders themselves, on made-up code and files.
func TestWordFindersFind(t *testing.T) {
	const code = `package p
import say "grainwise/assets/words"
var a = say.Say("one.key")
var b, _ = say.Lookup("two." + a + ".end")
var c = say.Say(a)
var d = other.Say("not.ours")
`
	keys, err := wordKeys("made-up.go", code)
	if err != nil {
		t.Fatal(err)
	}
	if len(keys) != 2 || keys[0].text != "one.key" || keys[0].beginning || keys[1].text != "two." || !keys[1].beginning {
		t.Fatalf("got %+v", keys)
	}
	texts := map[string][]string{"a.json": {"one.key", "two.x.end"}}
	for _, key := range keys {
		if key.lacks(texts) {
			t.Errorf("%q is said to be lacking", key.text)
		}
	}
	for _, key := range []wordKey{{text: "one"}, {text: "two."}, {text: "three.", beginning: true}} {
		if !key.lacks(texts) {
			t.Errorf("%+v is said to be there", key)
		}
	}
	inOne, err := textKeys([]byte(`{"k": "a", "l": "b", "k": "c"}`))
	if err != nil {
		t.Fatal(err)
	}
	got := twice(map[string][]string{"a.json": inOne, "b.json": {"l", "m"}})
	if want := []string{"k in a.json and a.json", "l in a.json and b.json"}; !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
	for _, bad := range []string{`[]`, `{"k": 1}`, `{"k": "a"`, ``} {
		if _, err := textKeys([]byte(bad)); err == nil {
			t.Errorf("%s is accepted", bad)
		}
	}
}
