package main

import (
	"os"
	"path/filepath"
	"regexp"
	"testing"

	"grainwise/model/project"
	"grainwise/ui"
)

// The platform is told the same by both.
func TestFyneAppNamesTheSameProgram(t *testing.T) {
	text, err := os.ReadFile("../../FyneApp.toml")
	if err != nil {
		t.Fatal(err)
	}
	for key, want := range map[string]string{"ID": appID, "Version": version} {
		found := regexp.MustCompile(`(?m)^` + key + ` = "(.*)"$`).FindSubmatch(text)
		if found == nil || string(found[1]) != want {
			t.Errorf("%s is %q there, %q here", key, found, want)
		}
	}
}

func TestABareStartShowsTheDemo(t *testing.T) {
	p := ports(nil)
	if !p.Project.Equal(project.Demo()) || p.Path != "" || p.Trouble != nil {
		t.Errorf("a bare start: path %q, trouble %v", p.Path, p.Trouble)
	}
}

func TestAFileIsOpenedOrSaidToBeBad(t *testing.T) {
	file := filepath.Join(t.TempDir(), "a"+ui.Ending)
	if p := ports([]string{file}); p.Trouble == nil || p.Path != "" || !p.Project.Equal(project.Demo()) {
		t.Errorf("a file that is not there: path %q, trouble %v", p.Path, p.Trouble)
	}
	made := project.Demo()
	made.Name = "Another"
	if err := project.Save(file, made); err != nil {
		t.Fatal(err)
	}
	if p := ports([]string{file}); p.Trouble != nil || p.Path != file || p.Project.Name != "Another" {
		t.Errorf("a good file: path %q, trouble %v, %q", p.Path, p.Trouble, p.Project.Name)
	}
}
