package papers

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"image"
	"image/png"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/pdfcpu/pdfcpu/pkg/api"
	"github.com/pdfcpu/pdfcpu/pkg/pdfcpu/model"

	"grainwise/model/measure"
	"grainwise/model/project"
	"grainwise/model/sheets"
	"grainwise/render/pdf"
	"grainwise/render/scene"
	"grainwise/render/sheet"
)

// inputOf is what the papers of a project are made from.
func inputOf(t testing.TB, p project.Project) sheet.Input {
	t.Helper()
	b := p.Book()
	in := sheet.Input{
		Book: b, Name: p.Name, Revision: p.Revision(), Date: measure.Date{Year: 2026, Month: 3, Day: 1},
		Findings: p.Findings(b, project.Studio{}), Notes: p.Notes, System: p.Decisions.Design.CutIn, Students: 6,
	}
	for _, job := range sheets.Jobs(b, b.Resolved.Copies) {
		c, err := job.Plan(context.Background(), sheets.Bench{}, nil)
		if err != nil {
			t.Fatal(err)
		}
		in.Cuttings = append(in.Cuttings, c)
	}
	return in
}

// demo is the demo's book, as 24 copies.
func demo(t testing.TB, set ...string) sheet.Input {
	t.Helper()
	p := project.Demo()
	for _, s := range append([]string{"copies=24"}, set...) {
		key, value, _ := strings.Cut(s, "=")
		if err := p.Set(key, value, measure.Metric); err != nil {
			t.Fatal(err)
		}
	}
	return inputOf(t, p)
}

// linked is a link-stitched book on tapes with a quarter covering, in inches.
func linked(t testing.TB) sheet.Input {
	return demo(t, "structure=link-stitched", "covering.kind=quarter", "rounding.system=inch", "page.width=9 in", "page.height=12 in")
}

// tool is the path of a program of poppler; without it the test is left out.
func tool(t *testing.T, name string) string {
	t.Helper()
	path, err := exec.LookPath(name)
	if err != nil {
		t.Skip(name + " is not installed: nothing was checked")
	}
	return path
}

// kept writes a file for other programs.
func kept(t *testing.T, name string, data []byte) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), name)
	if err := os.WriteFile(path, data, 0o666); err != nil {
		t.Fatal(err)
	}
	return path
}

func output(t *testing.T, name string, args ...string) string {
	t.Helper()
	out, err := exec.Command(name, args...).Output()
	var exit *exec.ExitError
	if errors.As(err, &exit) {
		t.Fatalf("%s %s: %s", name, args, exit.Stderr)
	}
	if err != nil {
		t.Fatal(err)
	}
	return string(out)
}

// allPDFs are the PDFs of every paper of a few designs on both printers' papers.
func allPDFs(t *testing.T, check func(name, path string, d sheet.Document)) {
	t.Helper()
	for _, in := range []sheet.Input{demo(t), linked(t)} {
		for _, f := range sheet.Formats() {
			in.Printer.Format = f
			in.Left = f.ID == "letter"
			documents, err := sheet.Make(context.Background(), in, sheet.For(in), nil)
			if err != nil {
				t.Fatal(err)
			}
			for _, d := range documents {
				data, err := Bound(in, []sheet.Document{d})
				if err != nil {
					t.Fatal(err)
				}
				check(string(in.Book.Resolved.Structure)+" "+f.ID+" "+d.ID, kept(t, d.ID+".pdf", data), d)
			}
		}
	}
}

// Sources: ISO 216 (A4 is 210 × 297 mm) and ANSI/ASME Y14.1 (Letter is 8½ × 11 in),
// read from the files by poppler's pdfinfo, upright or turned, to a hundredth of a
// millimetre; 72 points are an inch.
func TestPageSizesByPdfinfo(t *testing.T) {
	pdfinfo := tool(t, "pdfinfo")
	allPDFs(t, func(name, path string, d sheet.Document) {
		seen := 0
		for _, line := range strings.Split(output(t, pdfinfo, "-l", "9999", path), "\n") {
			fields := strings.Fields(line)
			if len(fields) < 6 || fields[0] != "Page" || fields[2] != "size:" {
				continue
			}
			seen++
			w, h := points(t, fields[3]), points(t, fields[5])
			if w > h {
				w, h = h, w
			}
			a4 := near(w, 210, 0.01) && near(h, 297, 0.01)
			letter := near(w, 8.5*25.4, 0.01) && near(h, 11*25.4, 0.01)
			if strings.Contains(name, " a4 ") && !a4 || strings.Contains(name, " letter ") && !letter {
				t.Errorf("%s: a page is %.3f × %.3f mm", name, w, h)
			}
		}
		if seen != len(d.Pages) || seen == 0 {
			t.Errorf("%s: pdfinfo sees %d pages, %d were made", name, seen, len(d.Pages))
		}
	})
}

func points(t *testing.T, text string) float64 {
	t.Helper()
	n, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return n * 25.4 / 72
}

func near(a, b, within float64) bool { return a-b <= within && b-a <= within }

// Every face is embedded, as a subset, by poppler's pdffonts.
func TestFontsAreEmbedded(t *testing.T) {
	pdffonts := tool(t, "pdffonts")
	allPDFs(t, func(name, path string, _ sheet.Document) {
		lines := strings.Split(strings.TrimSpace(output(t, pdffonts, path)), "\n")
		if len(lines) < 3 {
			t.Fatalf("%s: pdffonts lists no face", name)
		}
		at := strings.Index(lines[0], "emb")
		for _, line := range lines[2:] {
			if len(line) < at+3 || strings.TrimSpace(line[at:at+3]) != "yes" {
				t.Errorf("%s: not embedded: %s", name, line)
			}
		}
	})
}

// pdfcpu finds nothing against ISO 32000 in any paper.
func TestPdfcpuValidates(t *testing.T) {
	api.DisableConfigDir()
	allPDFs(t, func(name, path string, _ sheet.Document) {
		strict := model.NewDefaultConfiguration()
		strict.ValidationMode = model.ValidationStrict
		if err := api.ValidateFile(path, strict); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	})
}

// dpi of the rasters that are compared.
const dpi = 150

// popplers has poppler paint one page, in grey.
func popplers(t *testing.T, path string, page, dpi int) *image.Gray {
	t.Helper()
	out := strings.TrimSuffix(path, ".pdf") + fmt.Sprintf("-%d", page)
	n := strconv.Itoa(page)
	output(t, tool(t, "pdftocairo"), "-png", "-gray", "-singlefile", "-r", strconv.Itoa(dpi), "-f", n, "-l", n, path, out)
	data, err := os.ReadFile(out + ".png")
	if err != nil {
		t.Fatal(err)
	}
	picture, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	grey, is := picture.(*image.Gray)
	if !is {
		t.Fatalf("poppler painted %T", picture)
	}
	return grey
}

// The tiles of a template, laid on each other by their places, show what the
// undivided drawing shows: both painted by poppler, compared pixel by pixel in each
// tile's window, with a pixel's play for the raster's rounding.
func TestTilesMatchTheUndividedDrawing(t *testing.T) {
	in := demo(t, "page.width=210", "page.height=297")
	for _, k := range sheet.For(in) {
		d := k.Make(in)
		if d.Whole == nil || len(d.Pages) < 2 {
			continue
		}
		whole := painted(t, d.Whole)
		for i, shown := range d.Windows {
			tile := painted(t, d.Pages[i])
			if n := unlike(whole, tile, shown); n > 0 {
				t.Errorf("%s, page %d: %d pixels differ", k.ID, i+1, n)
			}
		}
		if len(d.Windows) != len(d.Pages) {
			t.Errorf("%s: %d windows on %d pages", k.ID, len(d.Windows), len(d.Pages))
		}
	}
}

func painted(t *testing.T, s *scene.Scene) *image.Gray {
	t.Helper()
	var b bytes.Buffer
	if err := pdf.Write(&b, pdf.Options{}, s); err != nil {
		t.Fatal(err)
	}
	return popplers(t, kept(t, "page.pdf", b.Bytes()), 1, dpi)
}

// unlike counts the pixels of a window whose ink is not found within a pixel of
// the same place in the undivided drawing, or the other way round.
func unlike(whole, tile *image.Gray, w sheet.Window) int {
	px := func(mm float64) int { return int(mm * dpi / 25.4) }
	const inside = 1.0 // mm: the window's very edge is masked
	n := 0
	for y := px(w.Page.Y + inside); y < px(w.Page.Y+w.Height-inside); y++ {
		for x := px(w.Page.X + inside); x < px(w.Page.X+w.Width-inside); x++ {
			u, v := x-px(w.Page.X)+px(w.Whole.X), y-px(w.Page.Y)+px(w.Whole.Y)
			if !inkNear(tile, x, y, whole.GrayAt(u, v).Y) || !inkNear(whole, u, v, tile.GrayAt(x, y).Y) {
				n++
			}
		}
	}
	return n
}

// inkNear says whether a picture is at least nearly as dark as a grey within two
// pixels of a place.
func inkNear(im *image.Gray, x, y int, grey uint8) bool {
	const dark, play = 110, 2
	if grey > dark {
		return true // paper, or the soft edge of a line
	}
	for dy := -play; dy <= play; dy++ {
		for dx := -play; dx <= play; dx++ {
			if p := image.Pt(x+dx, y+dy); p.In(im.Rect) && im.GrayAt(p.X, p.Y).Y < 200 {
				return true
			}
		}
	}
	return false
}
