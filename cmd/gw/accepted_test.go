package main

import (
	"encoding/json"
	"os"
	"strings"
	"testing"

	"grainwise/model/book"
	"grainwise/model/check"
	"grainwise/model/project"
)

// leftAsItIs is a file of a book whose every finding its maker leaves as it is.
func leftAsItIs(t *testing.T, settings ...string) string {
	t.Helper()
	file := made(t, settings...)
	p, err := project.Open(file)
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range p.Findings(p.Book(), project.Studio{}) {
		p.Accepted = check.With(p.Accepted, f.Accept("Meant so."))
	}
	if err := project.Save(file, p); err != nil {
		t.Fatal(err)
	}
	return file
}

// lines reads the findings that check prints.
func lines(t *testing.T, args ...string) (exit int, all []map[string]any) {
	t.Helper()
	exit, out, complaints := gw(append([]string{"check"}, args...)...)
	for _, line := range strings.Split(strings.TrimSpace(out), "\n") {
		var f map[string]any
		if err := json.Unmarshal([]byte(line), &f); err != nil {
			t.Fatalf("%v: %s%s", err, line, complaints)
		}
		all = append(all, f)
	}
	return exit, all
}

// Source: the contract: an accepted finding is reported with its reason and no
// longer counts for the exit status; it does again when it is worse.
func TestAcceptedFindings(t *testing.T) {
	file := leftAsItIs(t, "--set", "joint.width=4.5")
	exit, all := lines(t, file)
	if exit != exitDone || all[0]["level"] != "stop" || len(all) < 2 {
		t.Errorf("exit %d, %v", exit, all)
	}
	for _, f := range all {
		if _, lapsed := f["lapsed"]; f["accepted"] != "Meant so." || lapsed {
			t.Errorf("%v", f)
		}
	}
	if exit, _, _ := gw("plan", file); exit != exitDone {
		t.Errorf("plan: exit %d", exit)
	}
	exit, all = lines(t, file, "--set", "joint.width=4")
	if said, _ := all[0]["lapsed"].(string); exit != exitStop || all[0]["accepted"] != "" || !strings.Contains(said, "at 4.5 mm; now it is 4 mm") {
		t.Errorf("a narrower joint: exit %d, %v", exit, all[0])
	}
	if exit, _ := lines(t, file, "--set", "joint.width=4.6"); exit != exitDone {
		t.Errorf("a wider joint: exit %d", exit)
	}
}

// What is left as it is has no mark in the drawing.
func TestAcceptedFindingsAreNotMarked(t *testing.T) {
	open := func(file string) project.Project {
		p, err := project.Open(file)
		if err != nil {
			t.Fatal(err)
		}
		return p
	}
	set := []string{"--set", "board.turned=yes"}
	if marks := inputOf(open(made(t, set...))).Marks; marks[book.PartBoard] != check.Stop {
		t.Errorf("marks %v", marks)
	}
	if marks := inputOf(open(leftAsItIs(t, set...))).Marks; len(marks) > 0 {
		t.Errorf("marks %v", marks)
	}
}

// A damaged answer is bad input: one line that names it, and no plan.
func TestDamagedAnswerIsRefused(t *testing.T) {
	file := leftAsItIs(t)
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	bad := strings.Replace(string(data), `"level": "note"`, `"level": "hint"`, 1)
	if err := os.WriteFile(file, []byte(bad), 0o600); err != nil {
		t.Fatal(err)
	}
	exit, out, complaints := gw("check", file)
	if exit != exitInput || out != "" || !strings.Contains(complaints, `level: "hint": expected one of: stop, check, note`) || strings.Count(complaints, "\n") != 1 {
		t.Errorf("exit %d, %q, %q", exit, out, complaints)
	}
}
