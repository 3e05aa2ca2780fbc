package main

import (
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// Bad input: exit 2, one line that says what, nothing printed, nothing written.
func TestBadInput(t *testing.T) {
	folder := t.TempDir()
	good := filepath.Join(folder, "good.json")
	done(t, "new", "--out", good)
	damaged := filepath.Join(folder, "damaged.json")
	text, err := os.ReadFile(good)
	if err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(damaged, []byte(strings.Replace(string(text), `"page.width": 150`, `"page.width": "wide"`, 1)), 0o644); err != nil {
		t.Fatal(err)
	}
	newer := filepath.Join(folder, "newer.json")
	if err := os.WriteFile(newer, []byte(strings.Replace(string(text), `"version": `, `"version": 9`, 1)), 0o644); err != nil {
		t.Fatal(err)
	}
	out := filepath.Join(folder, "out.json")
	for _, c := range []struct {
		args []string
		says []string
	}{
		{[]string{"pack"}, []string{"pack", "no such command"}},
		{[]string{"plan"}, []string{"file is missing"}},
		{[]string{"plan", ""}, []string{"file is missing"}},
		{[]string{"plan", good, good}, []string{"too many"}},
		{[]string{"plan", good, "--fast"}, []string{"--fast"}},
		{[]string{"plan", good, "-x"}, []string{"-x"}},
		{[]string{"plan", good, "--set"}, []string{"--set"}},
		{[]string{"plan", good, "--set", "page.width"}, []string{"KEY=VALUE"}},
		{[]string{"plan", good, "--set", "page.width=wide"}, []string{"page.width", "wide"}},
		{[]string{"plan", good, "--set", "page.width=10 m"}, []string{"page.width", "10 m", "60 to 420 mm"}},
		{[]string{"plan", good, "--set", "sections.count=0"}, []string{"sections.count", "1 to 40"}},
		{[]string{"plan", good, "--set", "sections.count=2.5"}, []string{"sections.count", "a whole number, 1 to 40"}},
		{[]string{"plan", good, "--set", "page.widht=150"}, []string{"page.widht", "page.width"}},
		{[]string{"plan", good, "--set", "paper=Nobody's Laid"}, []string{"Nobody's Laid", "Ebbwhite Drawing 170"}},
		{[]string{"plan", good, "--set", "page.width=wi\nde"}, []string{"page.width"}},
		{[]string{"plan", filepath.Join(folder, "none.json")}, []string{"none.json", "no such file"}},
		{[]string{"plan", folder}, []string{folder, "not a file"}},
		{[]string{"plan", damaged}, []string{"damaged.json", "line 8", "page.width", "wide", "60 to 420 mm"}},
		{[]string{"check", damaged}, []string{"damaged.json", "line 8", "page.width", "wide", "60 to 420 mm"}},
		{[]string{"plan", newer}, []string{"newer.json", "A newer version of the program can open it"}},
		{[]string{"check", newer}, []string{"newer.json", "A newer version of the program can open it"}},
		{[]string{"new", "--out", out, "--set", "page.width=wide"}, []string{"page.width", "wide"}},
		{[]string{"new", "--out", out, "--format", "brick"}, []string{"brick", "pocket", "demo"}},
		{[]string{"new", "--out", out, "--out", out}, []string{"--out", "twice"}},
		{[]string{"new", "--out", out, "spare"}, []string{"spare"}},
		{[]string{"new", "--out", filepath.Join(folder, "nowhere", "out.json")}, []string{"out.json", "could not be saved"}},
		{[]string{"keys", "all"}, []string{"all"}},
		{[]string{"keys", "--json=yes"}, []string{"--json=yes"}},
	} {
		exit, printed, complaint := gw(c.args...)
		if exit != exitInput || printed != "" || strings.Count(complaint, "\n") != 1 {
			t.Errorf("gw %q: exit %d, printed %q, said %q", c.args, exit, printed, complaint)
		}
		for _, say := range c.says {
			if !strings.Contains(complaint, say) {
				t.Errorf("gw %q says %q, not %q", c.args, complaint, say)
			}
		}
	}
	if _, err := os.Lstat(out); !os.IsNotExist(err) {
		t.Errorf("bad input wrote a file: %v", err)
	}
}

func TestHelp(t *testing.T) {
	if out := done(t, "help"); !strings.Contains(out, "gw plan FILE") {
		t.Errorf("help is %q", out)
	}
	exit, out, usage := gw()
	if exit != exitInput || out != "" || !strings.Contains(usage, "gw plan FILE") {
		t.Errorf("without arguments: exit %d, %q, %q", exit, out, usage)
	}
	for _, c := range commands(io.Discard) {
		if !strings.Contains(usage, "gw "+c.name) {
			t.Errorf("the usage does not know %s", c.name)
		}
	}
}
