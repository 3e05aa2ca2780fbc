package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// pageSize is that of a PDF as pdfinfo (poppler) tells it.
func pageSize(t *testing.T, folder string) string {
	t.Helper()
	out, err := exec.Command("pdfinfo", filepath.Join(folder, "sewing-template.pdf")).CombinedOutput()
	if err != nil {
		t.Skip("pdfinfo: ", err)
	}
	for _, line := range strings.Split(string(out), "\n") {
		if strings.HasPrefix(line, "Page size:") {
			return strings.TrimSpace(strings.TrimPrefix(line, "Page size:"))
		}
	}
	return ""
}

// The studio's printer is taken, the command's own options win. Source of the
// sizes: pdfinfo, which names A4 and Letter itself.
func TestPapersKnowTheStudiosPrinter(t *testing.T) {
	file := made(t) // one book: a batch would say that it is estimated
	studio := studioFile(t, `{"format":"grainwise-studio","version":1,"printing":{"page":"letter","barAcross":97,"barDown":100,"dpi":72,"hand":"left"}}`)
	for _, c := range []struct {
		args        []string
		size, found string
		files       int
	}{
		{nil, "A4", "", 2},
		{[]string{"--studio", studio}, "letter", `"id":"scale-off","level":"note"`, 2},
		{[]string{"--studio", studio, "--page", "a4", "--across", "100"}, "A4", "", 2},
		{[]string{"--studio", studio, "--png"}, "letter", "scale-off", 3},
	} {
		folder := filepath.Join(t.TempDir(), "papers")
		out := done(t, append([]string{"papers", file, "--out", folder, "--only", "sewing-template"}, c.args...)...)
		if !strings.Contains(out, c.found) || c.found == "" && out != "" {
			t.Errorf("%v: printed %q", c.args, out)
		}
		if size := pageSize(t, folder); !strings.Contains(size, c.size) {
			t.Errorf("%v: %s", c.args, size)
		}
		if files, err := os.ReadDir(folder); err != nil || len(files) != c.files {
			t.Errorf("%v: %d files, %v", c.args, len(files), err)
		}
	}
}

// A corrected page that is still off is a stop: the papers are made, and the
// exit status says so.
func TestPapersStopAtAWrongScale(t *testing.T) {
	file := made(t)
	studio := studioFile(t, `{"format":"grainwise-studio","version":1,"printing":{"barAcross":97,"correctedAcross":99.5}}`)
	folder := t.TempDir()
	exit, out, complaints := gw("papers", file, "--out", folder, "--studio", studio, "--only", "sewing-template")
	if exit != exitStop || complaints != "" || !strings.Contains(out, `"level":"stop"`) || !strings.Contains(out, "99.5 mm") {
		t.Errorf("exit %d, %q, %q", exit, out, complaints)
	}
	if files, err := os.ReadDir(folder); err != nil || len(files) != 2 {
		t.Errorf("%d files, %v", len(files), err)
	}
	for _, args := range [][]string{{"--left", "--right"}, {"--across", "0"}, {"--across", "wide"}, {"--page", "a3"}, {"--students", "-1"}, {"--dpi", "29"}} {
		if exit, _, complaints := gw(append([]string{"papers", file, "--out", folder}, args...)...); exit != exitInput || strings.Count(complaints, "\n") != 1 {
			t.Errorf("%v: exit %d, %q", args, exit, complaints)
		}
	}
}

// A paper that is named twice is made once.
func TestAPaperNamedTwice(t *testing.T) {
	folder := t.TempDir()
	done(t, "papers", made(t), "--out", folder, "--only", "shopping-list,shopping-list")
	if files, err := os.ReadDir(folder); err != nil || len(files) != 1 || files[0].Name() != "shopping-list.pdf" {
		t.Errorf("%v, %v", files, err)
	}
}
