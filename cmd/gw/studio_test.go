package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// studioFile is a studio with a cutter of so many millimetres.
func studioFile(t *testing.T, text string) string {
	t.Helper()
	file := filepath.Join(t.TempDir(), "studio.json")
	if err := os.WriteFile(file, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	return file
}

// The demo's folio is 300 wide, its covering 368: a cutter of 299 takes neither,
// one of 430 all.
func TestPlanAndCheckKnowTheStudio(t *testing.T) {
	file := made(t, "--format", "demo")
	small := studioFile(t, `{"format":"grainwise-studio","version":1,"tools":{"longestCut":299}}`)
	large := studioFile(t, `{"format":"grainwise-studio","version":1,"tools":{"longestCut":430}}`)
	for _, command := range []string{"check", "plan"} {
		exit, out, complaints := gw(command, file, "--studio", small)
		if exit != exitDone || complaints != "" || !strings.Contains(out, "tool-reach") || !strings.Contains(out, "Folio, 300 mm × 210 mm: a cut is longer") {
			t.Errorf("%s: exit %d, %s%s", command, exit, out, complaints)
		}
		for _, args := range [][]string{{command, file, "--studio", large}, {command, file}} {
			if exit, out, _ := gw(args...); exit != exitDone || strings.Contains(out, "tool-reach") {
				t.Errorf("%v: exit %d, %s", args, exit, out)
			}
		}
	}
}

// The demo's squares are 3 mm: too small for a studio that wants 3.5.
func TestCheckGoesByTheStudiosLimits(t *testing.T) {
	file := made(t, "--format", "demo")
	own := studioFile(t, `{"format":"grainwise-studio","version":1,"limits":{"squareLeast":3.5}}`)
	exit, out, complaints := gw("check", file, "--studio", own)
	if exit != exitDone || complaints != "" || !strings.Contains(out, `"square-small"`) || !strings.Contains(out, `"limit":3.5`) {
		t.Errorf("exit %d, %s%s", exit, out, complaints)
	}
}

func TestABadStudioIsRefused(t *testing.T) {
	file := made(t)
	for text, says := range map[string]string{
		`{"format":"grainwise-studio","version":1,"tools":{"longestCut":"wide"}}`: `longestCut: "wide": expected 10 to 5000 mm`,
		`{"format":"grainwise-studio","version":3}`:                               "newer version",
		``: "empty",
	} {
		studio := studioFile(t, text)
		exit, out, complaints := gw("check", file, "--studio", studio)
		if exit != exitInput || out != "" || !strings.Contains(complaints, says) || strings.Count(complaints, "\n") != 1 {
			t.Errorf("%s: exit %d, %q, %q", text, exit, out, complaints)
		}
		if _, err := os.Stat(studio); err != nil {
			t.Error("a file that was only named is set aside")
		}
	}
	if exit, _, complaints := gw("check", file, "--studio", filepath.Join(t.TempDir(), "none.json")); exit != exitInput || complaints == "" {
		t.Errorf("no such file: exit %d, %q", exit, complaints)
	}
}

// The demo's 24 books take 72 sheets of white, eight folios each (24 · 24 / 8);
// two that are kept are two fewer.
func TestPlanUsesWhatTheStudioKeeps(t *testing.T) {
	file := made(t, "--format", "demo")
	kept := studioFile(t, `{"format":"grainwise-studio","version":1,"offcuts":[
	 {"name":"A","material":"Ebbwhite Drawing 170","length":1000,"width":700,"grain":"long","count":2}]}`)
	for _, c := range []struct {
		args []string
		want string
	}{{nil, `"sheets": 72`}, {[]string{"--studio", kept}, `"sheets": 70`}} {
		if exit, out, complaints := gw(append([]string{"plan", file}, c.args...)...); exit != exitDone || !strings.Contains(out, c.want) {
			t.Errorf("%v: exit %d, no %s: %s", c.args, exit, c.want, complaints)
		}
	}
}
