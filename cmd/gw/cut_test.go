package main

import (
	"encoding/json"
	"math/big"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"grainwise/model/cutting"
	"grainwise/model/project"
)

// asked writes an instance to a file.
func asked(t *testing.T, text string) string {
	t.Helper()
	file := filepath.Join(t.TempDir(), "instance.json")
	if err := os.WriteFile(file, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	return file
}

func answer(t *testing.T, text string) cutAnswer {
	t.Helper()
	var a cutAnswer
	if err := json.Unmarshal([]byte(done(t, "cut", asked(t, text))), &a); err != nil {
		t.Fatal(err)
	}
	return a
}

// Source: the contract's own example, and common practice: a strip lost off one
// edge, then three parallel cuts that give four equal strips.
func TestCutStrips(t *testing.T) {
	a := answer(t, `{"sheet":{"width":22,"height":30,"count":null},"trim":{"left":0,"right":0,"top":1,"bottom":0},"kerf":0,
	 "pieces":[{"id":"strip","width":22,"height":7.25,"count":48,"turn":false}],"value":null}`)
	if a.Sheets != 12 || a.LowerBound != "12" || !a.Proved || a.Proof != "certificate" {
		t.Errorf("%+v", a)
	}
	if a.Certificate.Weights["strip"] != 1 || a.Certificate.Best != 4.0 {
		t.Errorf("certificate %+v", a.Certificate)
	}
	if len(a.Steps) != 2 || a.Steps[0].Stop != "1" || a.Steps[0].Cuts != 1 || !a.Steps[0].Waste || a.Steps[1].Stop != "7.25" || a.Steps[1].Cuts != 3 {
		t.Errorf("steps %+v", a.Steps)
	}
	if len(a.Layouts) != 1 || len(a.Layouts[0].Placed) != 4 || a.Layouts[0].Placed[3].Y != "21.75" {
		t.Errorf("layouts %+v", a.Layouts)
	}
}

// Source: the demo's cloth: "two cases across the roll, Kelp 5 rows".
func TestCutRoll(t *testing.T) {
	a := answer(t, `{"roll":{"width":980,"unit":100},"pieces":[{"id":"covering","width":368,"height":252,"count":10}]}`)
	if a.Rows != 5 || a.Length != "1300" || a.Cost != "1260" || a.LowerBound != "1260" || !a.Proved {
		t.Errorf("%+v", a)
	}
}

// By hand: three pieces of 2 stand in one column and two of 3 in the other, so
// one row of 6, longer than any piece, holds all.
func TestCutRollIntoLongRows(t *testing.T) {
	a := answer(t, `{"roll":{"width":2},"pieces":[{"id":"a","width":1,"height":2,"count":3},{"id":"b","width":1,"height":3,"count":2}]}`)
	if a.Rows != 1 || a.Cost != "6" || a.LowerBound != "6" || !a.Proved || a.RowsUpTo != "" || a.Said == "" {
		t.Errorf("%+v", a)
	}
}

// What is not proved says by how much it may be too long, and what is proved.
func TestWhatIsSaidOfARoll(t *testing.T) {
	s := newScale(project.Instance{Unit: big.NewRat(1, 2)})
	a := s.roll(cutting.RollPlan{Plan: cutting.Plan{Cost: 3939, LowerBound: 3655}, Length: 4000, RowsUpTo: 666, RowsLeast: 3939})
	if a.Proved || a.LowerBound != "1827.5" || a.RowsUpTo != "333" ||
		a.Said != "A plan may be shorter by 142 at most. No plan with rows up to 333 is shorter." {
		t.Errorf("%+v", a)
	}
	a = s.roll(cutting.RollPlan{Plan: cutting.Plan{Cost: 3939, LowerBound: 3655}, Length: 4000, RowsUpTo: 666, RowsLeast: 3900})
	if a.RowsUpTo != "" || a.RowsTried != "333" || a.RowsLeast != "1950" ||
		a.Said != "A plan may be shorter by 142 at most. No plan with rows up to 333 is shorter by more than 19.5." {
		t.Errorf("%+v", a)
	}
}

// Several sizes: the least cost. Ten pieces of 5 × 5 go on two small sheets of
// six, 2 × 1.2, or on one large one of sixteen at 2.5: counted by hand.
func TestCutSeveralSizes(t *testing.T) {
	a := answer(t, `{"sheets":[{"id":"large","width":20,"height":20,"cost":2.5},{"id":"small","width":15,"height":10,"cost":1.2}],
	 "pieces":[{"id":"a","width":5,"height":5,"count":10}]}`)
	if a.Cost != "2.4" || a.Sheets != 2 || a.Layouts[0].Sheet != "small" || !a.Proved {
		t.Errorf("%+v", a)
	}
	limited := answer(t, `{"sheets":[{"id":"large","width":20,"height":20,"cost":2.5},{"id":"small","width":15,"height":10,"cost":1.2,"count":1}],
	 "pieces":[{"id":"a","width":5,"height":5,"count":10}]}`)
	if limited.Cost != "2.5" || limited.Sheets != 1 {
		t.Errorf("with one small sheet: %+v", limited)
	}
}

func TestCutMostValuable(t *testing.T) {
	a := answer(t, `{"sheet":{"width":10,"height":10},"pieces":[{"id":"a","width":5,"height":5},{"id":"b","width":10,"height":5}],"value":{"a":1.5,"b":2.5}}`)
	if a.Value != "6" || a.Made["a"] != 4 || a.Made["b"] != 0 {
		t.Errorf("%+v", a)
	}
}

// Bad questions: exit 2, one line that names file, piece and by how much.
func TestBadCuts(t *testing.T) {
	for _, c := range []struct {
		text string
		says []string
	}{
		{`{"sheet":{"width":22,"height":30},"pieces":[{"id":"a","width":30,"height":7.25,"count":1}]}`, []string{"piece a", "by 8 wide and 0 high", "turned it would fit"}},
		{`{"sheet":{"width":22,"height":30},"pieces":[{"id":"a","width":31,"height":7.25,"count":1,"turn":true}]}`, []string{"too large", "by 0 wide and 1 high"}},
		{`{"sheet":{"width":22,"height":30},"pieces":[{"id":"a","width":0,"height":7.25,"count":1}]}`, []string{"piece a", "above 0"}},
		{`{"sheet":{"width":22,"height":-30},"pieces":[{"id":"a","width":1,"height":7.25,"count":1}]}`, []string{"sheet 1", "above 0"}},
		{`{"sheet":{"width":22,"height":30},"trim":{"left":30},"pieces":[{"id":"a","width":1,"height":7.25,"count":1}]}`, []string{"lost strips"}},
		{`{"sheet":{"width":22,"height":30,"count":2},"pieces":[{"id":"a","width":11,"height":15,"count":9}]}`, []string{"stock is too small", "2 sheets", "at least 3"}},
		{`{"sheet":{"width":22,"height":30},"pieces":[{"id":"a","width":11,"height":15,"count":1e12}]}`, []string{"beyond"}},
	} {
		file := asked(t, c.text)
		said := refused(t, "cut", file)
		for _, want := range append(c.says, file) {
			if !strings.Contains(said, want) {
				t.Errorf("%s: %q lacks %q", c.text, said, want)
			}
		}
	}
	file := asked(t, `{"sheet":{"width":22,"height":30},"pieces":[{"id":"a","width":11,"height":15,"count":1000000}]}`)
	if a := done(t, "cut", file, "--seconds", "5"); !strings.Contains(a, `"sheets":250000`) {
		t.Errorf("a million pieces: %.200s", a)
	}
	refused(t, "cut", file, "--seconds", "soon")
}

// refused runs a command that takes its input for bad, and gives its one line.
func refused(t *testing.T, args ...string) string {
	t.Helper()
	exit, out, said := gw(args...)
	if exit != exitInput || out != "" || strings.Count(said, "\n") != 1 {
		t.Errorf("%v: exit %d, printed %q, said %q", args, exit, out, said)
	}
	return said
}
