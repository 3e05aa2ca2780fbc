package main

import (
	"bytes"
	"encoding/xml"
	"errors"
	"image/png"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"grainwise/model/cutting"
	"grainwise/model/sheets"
	"grainwise/model/stock"
	"grainwise/render/view"
)

// looksRight holds a file to the form that its ending promises.
var looksRight = map[string]func(*testing.T, []byte){
	".png": func(t *testing.T, data []byte) {
		if size, err := png.DecodeConfig(bytes.NewReader(data)); err != nil || size.Width != 1200 || size.Height != 800 {
			t.Errorf("%d × %d: %v", size.Width, size.Height, err)
		}
	},
	".pdf": func(t *testing.T, data []byte) {
		if !bytes.HasPrefix(data, []byte("%PDF-1.")) || !bytes.HasSuffix(bytes.TrimSpace(data), []byte("%%EOF")) {
			t.Error("no PDF")
		}
	},
	".svg": func(t *testing.T, data []byte) {
		decoder := xml.NewDecoder(bytes.NewReader(data))
		for {
			if _, err := decoder.Token(); errors.Is(err, io.EOF) {
				break
			} else if err != nil {
				t.Fatal(err)
			}
		}
		if !bytes.Contains(data, []byte("<svg")) {
			t.Error("no SVG")
		}
	},
}

// Every listed view draws as all three.
func TestDrawEveryListedView(t *testing.T) {
	listed := strings.Split(strings.TrimSpace(done(t, "draw", "--list")), "\n")
	if len(listed) != len(view.All()) || len(listed) == 0 {
		t.Fatalf("%d views listed of %d", len(listed), len(view.All()))
	}
	project := made(t, "--format", "demo")
	for _, line := range listed {
		id := strings.Fields(line)[0]
		for ending, check := range looksRight {
			file := filepath.Join(t.TempDir(), id+ending)
			if out := done(t, "draw", project, "--view", id, "--out", file); out != "" {
				t.Errorf("drawing printed %q", out)
			}
			data, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			check(t, data)
		}
	}
}

// The same drawing twice is the same file, and another design another one.
func TestDrawFollowsTheDesign(t *testing.T) {
	project := made(t, "--format", "demo")
	draw := func(set string) []byte {
		file := filepath.Join(t.TempDir(), "flat.png")
		done(t, "draw", project, "--view", "laid-flat", "--out", file, "--set", set, "--width", "600")
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		if size, err := png.DecodeConfig(bytes.NewReader(data)); err != nil || size.Width != 600 || size.Height != 400 {
			t.Errorf("%d × %d: %v", size.Width, size.Height, err)
		}
		return data
	}
	one, again, other := draw("page.width=150"), draw("page.width=150"), draw("page.width=190")
	if !bytes.Equal(one, again) {
		t.Error("the same drawing differs")
	}
	if bytes.Equal(one, other) {
		t.Error("another width draws the same")
	}
}

func TestDrawRefuses(t *testing.T) {
	folder := t.TempDir()
	file, out := made(t), filepath.Join(folder, "a.png")
	for _, c := range []struct {
		args []string
		says string
	}{
		{[]string{file, "--out", out}, "taken-apart"},
		{[]string{file, "--out", out, "--view", "x-ray"}, "x-ray"},
		{[]string{file, "--view", "laid-flat"}, "--out is missing"},
		{[]string{file, "--view", "laid-flat", "--out="}, "--out is missing"},
		{[]string{file, "--view", "laid-flat", "--out", filepath.Join(folder, "a.gif")}, "a.gif"},
		{[]string{file, "--view", "laid-flat", "--out", out, "--width", "0"}, "100 to 10000"},
		{[]string{file, "--view", "laid-flat", "--out", out, "--width", "wide"}, "wide"},
		{[]string{file, "--view", "laid-flat", "--out", filepath.Join(folder, "a.svg"), "--width", "900"}, "--width"},
		{[]string{file, "--view", "laid-flat", "--out", out, "--set", "page.width=1"}, "60 to 420 mm"},
		{[]string{filepath.Join(folder, "none.json"), "--view", "laid-flat", "--out", out}, "no such file"},
		{[]string{"--view", "laid-flat", "--out", out}, "missing"},
		{[]string{file, "--view", "laid-flat", "--out", filepath.Join(folder, "no", "a.png")}, "could not be saved"},
		{[]string{file, "--list"}, "too many"},
	} {
		exit, printed, complaint := gw(slices.Concat([]string{"draw"}, c.args)...)
		if exit != exitInput || printed != "" || strings.Count(complaint, "\n") != 1 || !strings.Contains(complaint, c.says) {
			t.Errorf("gw draw %q: exit %d, printed %q, said %q", c.args, exit, printed, complaint)
		}
	}
	if left, err := os.ReadDir(folder); err != nil || len(left) > 0 {
		t.Errorf("bad input left %v: %v", left, err)
	}
}

// A plan drawn that is not proved is noted in one line; proved ones are not.
func TestUnprovedPlanIsNoted(t *testing.T) {
	named := func(name string, proof cutting.Proof) sheets.Cutting {
		return sheets.Cutting{Job: sheets.Job{Material: stock.Material{Name: name}}, Plan: cutting.Plan{Proof: proof}}
	}
	var notes bytes.Buffer
	noteUnproved(&notes, []sheets.Cutting{named("Oat", cutting.BySearch)})
	if notes.Len() > 0 {
		t.Errorf("noted %q", notes.String())
	}
	noteUnproved(&notes, []sheets.Cutting{named("Oat", cutting.BySearch), named("Kelp", cutting.Unproved)})
	if said := notes.String(); strings.Count(said, "\n") != 1 || !strings.Contains(said, "Kelp") || strings.Contains(said, "Oat") {
		t.Errorf("noted %q", said)
	}
}
