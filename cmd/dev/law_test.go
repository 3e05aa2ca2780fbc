package main

import (
	"go/parser"
	"go/token"
	"path"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// The import law: cmd → ui → render → model, and inside model
// measure ← stock ← book ← cutting ← batch ← check ← project (making stands beside
// check). It holds for tests too, and for files of every build tag.

const module = "grainwise/"

// article is what one folder, with the folders below it, may import.
type article struct {
	folder string
	ours   []string // of this project: these folders and those below them
	never  []string // of others: these packages and those below them
	alone  bool     // nothing but the standard library
}

// law is every folder that may hold a package. The most precise entry counts.
func law() []article {
	const (
		fyne    = "fyne.io"
		driver  = "fyne.io/fyne/v2/app"
		dialogs = "github.com/sqweek/dialog"
	)
	windowless := []string{fyne, dialogs}
	// A model works with numbers and words: pictures, colours and faces are for those who draw.
	modelNever := []string{fyne, dialogs, "image", "golang.org/x/image", "github.com/fogleman/gg",
		"codeberg.org/go-pdf/fpdf", "github.com/xuri/excelize", "grainwise/assets/fonts", "grainwise/assets/icon"}
	model := func(name string, left ...string) article {
		ours := []string{"assets"}
		for _, l := range left {
			ours = append(ours, "model/"+l)
		}
		return article{folder: "model/" + name, ours: ours, never: modelNever}
	}
	return []article{
		{folder: "cmd/grainwise", ours: []string{"ui", "render", "model", "assets"}},
		{folder: "cmd/gw", ours: []string{"render", "model", "assets"}, never: windowless},
		{folder: "cmd/dev", alone: true},
		{folder: "ui", ours: []string{"render", "model", "assets"}, never: []string{driver, dialogs}},
		{folder: "render", ours: []string{"model", "assets"}, never: windowless},
		model("measure"),
		model("stock", "measure"),
		model("book", "measure", "stock"),
		model("cutting", "measure", "stock", "book"),
		model("sheets", "measure", "stock", "book", "cutting"),
		model("lists", "measure", "stock", "book", "cutting", "sheets"),
		model("opening", "measure", "stock", "book"),
		model("warp", "measure", "stock", "book"),
		model("fit", "measure", "stock", "book"),
		model("making", "measure", "stock", "book"),
		model("ical", "measure"),
		model("schedule", "measure", "stock", "book", "making", "ical"),
		model("price", "measure"),
		model("post", "measure", "stock", "book"),
		model("batch", "measure", "stock", "book", "cutting", "sheets", "opening", "warp", "fit", "making", "schedule", "price", "post"),
		model("check", "measure", "stock", "book", "cutting", "sheets", "opening", "warp", "fit", "making", "schedule", "price", "post", "batch"),
		model("compare", "measure", "stock", "book", "cutting", "sheets", "batch", "check"),
		model("project", "measure", "stock", "book", "cutting", "sheets", "opening", "warp", "fit", "making", "schedule", "price", "post", "batch", "check"),
		{folder: "assets", alone: true},
		{folder: "assets/fonts", alone: true},
		{folder: "assets/icon", alone: true},
		{folder: "assets/words", ours: []string{"assets"}, never: windowless},
	}
}

// within tells whether a folder is the outer one or lies below it.
func within(folder, outer string) bool {
	return folder == outer || strings.HasPrefix(folder, outer+"/")
}

// articleOf finds what holds for a folder; model, cmd and assets list their packages
// one by one, so a folder beside them has no article.
func articleOf(folder string) (article, bool) {
	var found article
	for _, a := range law() {
		if within(folder, a.folder) && len(a.folder) > len(found.folder) {
			found = a
		}
	}
	if found.folder == "assets" && folder != "assets" {
		return article{}, false
	}
	return found, found.folder != ""
}

// breach says how an import in a package of that folder breaks the law, or "".
func breach(folder, imported string) string {
	a, known := articleOf(folder)
	if !known {
		return "the import law does not know this folder"
	}
	for _, never := range a.never {
		if within(imported, never) {
			return a.folder + " never imports " + never
		}
	}
	if inner, ours := strings.CutPrefix(imported, module); ours {
		return breachInside(a, inner)
	}
	if a.alone && !standard(imported) {
		return a.folder + " imports the standard library only"
	}
	return ""
}

// breachInside judges an import of one of our own folders.
func breachInside(a article, imported string) string {
	if within(imported, a.folder) && a.folder != "assets" {
		return ""
	}
	for _, ours := range a.ours {
		if within(imported, ours) {
			return ""
		}
	}
	return a.folder + " may not import " + imported
}

// standard tells a standard package: its first element is no host's name.
func standard(imported string) bool {
	first, _, _ := strings.Cut(imported, "/")
	return !strings.Contains(first, ".") && first != strings.TrimSuffix(module, "/")
}

func TestImportLaw(t *testing.T) {
	const root = "../.."
	files, err := goFiles(root)
	if err != nil {
		t.Fatal(err)
	}
	if len(files) < 10 {
		t.Fatalf("only %d Go files found under %s", len(files), root)
	}
	for _, name := range files {
		file, err := parser.ParseFile(token.NewFileSet(), filepath.Join(root, name), nil, parser.ImportsOnly)
		if err != nil {
			t.Fatal(err)
		}
		if _, known := articleOf(path.Dir(name)); !known {
			t.Errorf("%s: the import law does not know this folder", name)
		}
		for _, spec := range file.Imports {
			imported, err := strconv.Unquote(spec.Path.Value)
			if err != nil {
				t.Fatal(err)
			}
			if why := breach(path.Dir(name), imported); why != "" {
				t.Errorf("%s imports %s: %s", name, imported, why)
			}
		}
	}
}

// Each clause of the law must be able to fail: these imports break them one by one.
func TestLawCatchesEveryBreach(t *testing.T) {
	for _, c := range []struct{ folder, imported string }{
		{"ui", "grainwise/cmd/grainwise"},
		{"render/view", "grainwise/ui"},
		{"render", "grainwise/cmd/gw"},
		{"model/book", "grainwise/render/scene"},
		{"model/book", "grainwise/ui/history"},
		{"model/measure", "grainwise/model/stock"},
		{"model/stock", "grainwise/model/book"},
		{"model/book", "grainwise/model/cutting"},
		{"model/cutting", "grainwise/model/batch"},
		{"model/batch", "grainwise/model/check"},
		{"model/check", "grainwise/model/project"},
		{"model/cutting", "grainwise/model/warp"},
		{"model/sheets", "grainwise/model/lists"},
		{"model/lists", "github.com/xuri/excelize/v2"},
		{"model/warp", "grainwise/model/opening"},
		{"model/making", "grainwise/model/check"},
		{"model/making", "grainwise/model/sheets"},
		{"model/schedule", "grainwise/model/batch"},
		{"model/book", "grainwise/model/making"},
		{"model/book/deep", "grainwise/model/check"},
		{"model/book", "grainwise/assets/fonts"},
		{"model/book", "image"},
		{"model/book", "image/color"},
		{"model/check", "golang.org/x/image/font"},
		{"model/project", "fyne.io/fyne/v2"},
		{"render/raster", "fyne.io/fyne/v2/canvas"},
		{"render/raster", "github.com/sqweek/dialog"},
		{"cmd/gw", "fyne.io/fyne/v2/app"},
		{"cmd/gw", "grainwise/ui/history"},
		{"cmd/gw", "grainwise/cmd/dev"},
		{"cmd/grainwise", "grainwise/cmd/gw"},
		{"ui", "fyne.io/fyne/v2/app"},
		{"ui/panel", "github.com/sqweek/dialog"},
		{"cmd/dev", "grainwise/assets"},
		{"cmd/dev", "golang.org/x/image/font"},
		{"assets", "grainwise/model/measure"},
		{"assets", "grainwise/assets/words"},
		{"assets/fonts", "grainwise/assets"},
		{"assets/icon", "golang.org/x/image/draw"},
		{"assets/words", "grainwise/model/measure"},
		{"assets/words", "fyne.io/fyne/v2"},
		{"model", "fmt"},
		{"model/elsewhere", "fmt"},
		{"cmd/elsewhere", "fmt"},
		{"assets/elsewhere", "fmt"},
		{"util", "fmt"},
		{".", "fmt"},
	} {
		if breach(c.folder, c.imported) == "" {
			t.Errorf("%s may import %s, it must not", c.folder, c.imported)
		}
	}
}

func TestLawAllowsWhatIsRight(t *testing.T) {
	for _, c := range []struct{ folder, imported string }{
		{"cmd/grainwise", "fyne.io/fyne/v2/app"},
		{"cmd/grainwise", "github.com/sqweek/dialog"},
		{"cmd/grainwise", "grainwise/ui"},
		{"cmd/grainwise", "grainwise/assets/icon"},
		{"cmd/gw", "grainwise/render/view"},
		{"ui", "fyne.io/fyne/v2/widget"},
		{"ui", "fyne.io/fyne/v2/driver/desktop"},
		{"ui/panel", "grainwise/ui"},
		{"ui", "grainwise/model/project"},
		{"render/raster", "github.com/fogleman/gg"},
		{"render/raster", "grainwise/render/scene"},
		{"render/view", "grainwise/model/check"},
		{"model/project", "grainwise/model/measure"},
		{"model/batch", "grainwise/model/fit"},
		{"model/making", "grainwise/model/book"},
		{"model/check", "grainwise/assets/words"},
		{"model/measure", "math/big"},
		{"model/measure", "imageless/thing"},
		{"assets/words", "grainwise/assets"},
		{"assets", "embed"},
		{"cmd/dev", "go/parser"},
	} {
		if why := breach(c.folder, c.imported); why != "" {
			t.Errorf("%s imports %s: %s", c.folder, c.imported, why)
		}
	}
}
