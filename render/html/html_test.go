package html_test

import (
	"bytes"
	"encoding/xml"
	"io"
	"strconv"
	"strings"
	"testing"

	"golang.org/x/net/html"
	"golang.org/x/net/html/atom"
	"pgregory.net/rapid"

	"grainwise/model/book/booktest"
	"grainwise/model/making"
	"grainwise/model/measure"
	page "grainwise/render/html"
	"grainwise/render/sheet"
)

// written is the guide of a design as a page.
func written(t interface{ Fatal(...any) }, in sheet.Input) []byte {
	for _, k := range sheet.All() {
		if k.ID != "guide" {
			continue
		}
		var b bytes.Buffer
		if err := page.Write(&b, *k.Make(in).Article); err != nil {
			t.Fatal(err)
		}
		return b.Bytes()
	}
	t.Fatal("there is no guide")
	return nil
}

// nodes are all elements of a page, as a browser would read it (golang.org/x/net/html
// follows the WHATWG's parsing rules).
func nodes(t interface{ Fatal(...any) }, text []byte) []*html.Node {
	root, err := html.Parse(bytes.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	var all []*html.Node
	for n := range root.Descendants() {
		if n.Type == html.ElementNode {
			all = append(all, n)
		}
	}
	return all
}

func attribute(n *html.Node, key string) string {
	for _, a := range n.Attr {
		if a.Key == key {
			return a.Val
		}
	}
	return ""
}

// The page stands by itself: no script, nothing from outside, every reference in it
// to an id that is there once.
func TestPageStandsByItself(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := sheet.Input{Book: booktest.Books().Draw(t, "book"), Name: rapid.String().Draw(t, "name"), System: measure.Imperial, Left: true}
		text := written(t, in)
		ids, wanted := map[string]int{}, map[string]bool{}
		for _, n := range nodes(t, text) {
			switch n.Data {
			case "script", "link", "img", "image", "use", "iframe", "object", "embed", "base":
				t.Errorf("the page has a %s", n.Data)
			}
			for _, a := range n.Attr {
				check(t, n.Data, a, ids, wanted)
			}
		}
		for id, times := range ids {
			if times > 1 {
				t.Errorf("id %s stands %d times", id, times)
			}
		}
		for id := range wanted {
			if ids[id] == 0 {
				t.Errorf("nothing has the id %s", id)
			}
		}
		if lower := bytes.ToLower(text); bytes.Contains(lower, []byte("@import")) || bytes.Contains(lower, []byte("@font-face")) {
			t.Error("the style brings something along")
		}
	})
}

// check notes ids and what refers to them.
func check(t *rapid.T, element string, a html.Attribute, ids map[string]int, wanted map[string]bool) {
	switch {
	case a.Key == "id":
		ids[a.Val]++
	case a.Key == "href" || a.Key == "src" || a.Key == "srcset" || a.Key == "data":
		if !strings.HasPrefix(a.Val, "#") {
			t.Errorf("%s refers to %q", element, a.Val)
		}
		wanted[strings.TrimPrefix(a.Val, "#")] = true
	case a.Key == "aria-labelledby":
		wanted[a.Val] = true
	case a.Key == "clip-path":
		wanted[strings.TrimSuffix(strings.TrimPrefix(a.Val, "url(#"), ")")] = true
	case strings.HasPrefix(a.Key, "on"):
		t.Errorf("%s has %s", element, a.Key)
	}
}

// Every step of the book stands on the page under its number, each drawing with what
// it shows, and the drawings are well-formed XML (encoding/xml).
func TestPageHoldsEveryStep(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := sheet.Input{Book: booktest.Books().Draw(t, "book"), Name: "Low Water"}
		text := written(t, in)
		numbers := map[string]string{}
		drawings := 0
		for _, n := range nodes(t, text) {
			if id := attribute(n, "id"); n.DataAtom == atom.Li && strings.HasPrefix(id, "step-") {
				numbers[strings.TrimPrefix(id, "step-")] = attribute(n, "value")
			}
			if n.Data == "svg" {
				drawings++
				if n.FirstChild == nil || attribute(n, "role") != "img" {
					t.Error("a drawing is not told")
				}
			}
		}
		shown := 1 // the finished book
		for i, s := range making.Steps(in.Book) {
			if numbers[s.ID] != strconv.Itoa(i+1) {
				t.Errorf("step %s has number %q, want %d", s.ID, numbers[s.ID], i+1)
			}
			if s.Drawing != "" {
				shown++
			}
		}
		if drawings != shown {
			t.Errorf("%d drawings, want %d", drawings, shown)
		}
		wellFormed(t, string(text))
	})
}

// wellFormed reads every drawing as XML.
func wellFormed(t *rapid.T, text string) {
	for {
		start := strings.Index(text, "<svg")
		if start < 0 {
			return
		}
		end := strings.Index(text[start:], "</svg>") + start + len("</svg>")
		d := xml.NewDecoder(strings.NewReader(text[start:end]))
		for {
			_, err := d.Token()
			if err == io.EOF {
				break
			}
			if err != nil {
				t.Fatal(err)
			}
		}
		text = text[end:]
	}
}

// It has what a page must have: a language, a title, an encoding, colours for dark
// surroundings and a style for print.
func TestPageHead(t *testing.T) {
	text := written(t, sheet.Input{Book: booktest.Books().Example(1), Name: "A <b> & \"c\""})
	all := nodes(t, text)
	if attribute(all[0], "lang") == "" || !bytes.HasPrefix(text, []byte("<!DOCTYPE html>")) {
		t.Error("no language or no document type")
	}
	for _, want := range []string{`<meta charset="utf-8">`, "prefers-color-scheme: dark", "@media print", "<title>A &lt;b&gt; &amp; &#34;c&#34;"} {
		if !bytes.Contains(text, []byte(want)) {
			t.Errorf("the page lacks %q", want)
		}
	}
}
