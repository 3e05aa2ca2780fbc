package main

import (
	"slices"
	"strings"
	"testing"
)

func TestEveryPlatformHasAListForEachPurpose(t *testing.T) {
	for _, f := range []family{debian, fedora, arch, macos, windows} {
		for _, p := range purposes() {
			list, there := packages()[f][p]
			if !there {
				t.Errorf("%s has no list to %s", f, p)
			}
			for _, name := range list {
				if name == "" || name != strings.TrimSpace(name) {
					t.Errorf("%s, %s: bad name %q", f, p, name)
				}
			}
		}
		if len(packages()[f][toBuild]) == 0 {
			t.Errorf("%s needs nothing to build: cgo needs a compiler everywhere", f)
		}
	}
}

func TestNeededNamesEachOnce(t *testing.T) {
	names := needed(debian, purposes()...)
	for i, name := range names {
		if slices.Contains(names[:i], name) {
			t.Errorf("%s is named twice", name)
		}
	}
	for _, name := range []string{"libgtk-3-dev", "xvfb", "adwaita-icon-theme"} {
		if !slices.Contains(names, name) {
			t.Errorf("%s is not among the packages for all purposes", name)
		}
	}
	if slices.Contains(needed(debian, toBuild, toRun), "xvfb") {
		t.Error("running the window wants test tools")
	}
}

func TestMissing(t *testing.T) {
	has := func(name string) bool { return name == "gcc" || name == "git" }
	got := missing([]string{"gcc", "xvfb", "git", "openbox"}, has)
	if want := []string{"xvfb", "openbox"}; !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
	if got := missing([]string{"gcc"}, has); got != nil {
		t.Errorf("got %q, want none", got)
	}
}
