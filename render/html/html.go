// Package html writes a paper that is read, its text and its drawings, as one page
// that needs nothing else: no script, no file beside it, nothing from the net. It
// is HTML as the WHATWG's living standard has it, the drawings in it as SVG.
package html

import (
	"bytes"
	_ "embed"
	"html/template"
	"io"

	"grainwise/assets/words"
	"grainwise/render/sheet"
	"grainwise/render/svg"
)

//go:embed page.tmpl
var pageText string

// Write writes an article as one page. An error is of the writer, or of a drawing
// that has no size.
func Write(w io.Writer, a sheet.Article) error {
	page, err := template.New("page").Funcs(template.FuncMap{"say": say, "drawing": drawing}).Parse(pageText)
	if err != nil {
		return err
	}
	var b bytes.Buffer
	if err := page.Execute(&b, a); err != nil {
		return err
	}
	_, err = w.Write(b.Bytes())
	return err
}

// say is a text of the words' files.
func say(key string) string { return words.Say(key) }

// drawing is a picture as an element, its ids beginning with id.
func drawing(id string, p sheet.Picture) (template.HTML, error) {
	var b bytes.Buffer
	err := svg.Inline(&b, "drawing-"+id, p.Means, p.Scene)
	return template.HTML(b.String()), err
}
