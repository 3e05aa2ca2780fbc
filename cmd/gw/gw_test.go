package main

import (
	"bytes"
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"grainwise/model/book"
	"grainwise/model/project"
)

// gw runs the command as main does.
func gw(args ...string) (exit int, stdout, stderr string) {
	var out, complaints bytes.Buffer
	exit = run(args, &out, &complaints)
	return exit, out.String(), complaints.String()
}

// done runs a command that must succeed and returns its result.
func done(t *testing.T, args ...string) string {
	t.Helper()
	exit, out, complaints := gw(args...)
	if exit != exitDone || complaints != "" {
		t.Fatalf("gw %s: exit %d: %s", strings.Join(args, " "), exit, complaints)
	}
	return out
}

// made makes a project file and returns its name.
func made(t *testing.T, args ...string) string {
	t.Helper()
	file := filepath.Join(t.TempDir(), "book.json")
	if out := done(t, append([]string{"new", "--out", file}, args...)...); out != "" {
		t.Fatalf("new with --out printed %q", out)
	}
	return file
}

// planned is the plan as a program reads it: nested objects of names.
func planned(t *testing.T, args ...string) map[string]any {
	t.Helper()
	_, out, complaints := gw(append([]string{"plan"}, args...)...)
	var plan map[string]any
	if err := json.Unmarshal([]byte(out), &plan); err != nil {
		t.Fatalf("%v: %s", err, complaints)
	}
	return plan
}

// at follows a path of names and places, "liner.valleys.1".
func at(t *testing.T, value any, path string) any {
	t.Helper()
	for _, step := range strings.Split(path, ".") {
		switch v := value.(type) {
		case map[string]any:
			value = v[step]
		case []any:
			i := int(step[0] - '0')
			if i >= len(v) {
				t.Fatalf("%s: only %d", path, len(v))
			}
			value = v[i]
		default:
			t.Fatalf("%s: nothing at %s", path, step)
		}
	}
	return value
}

func same(t *testing.T, plan map[string]any, path string, want, within float64) {
	t.Helper()
	got, ok := at(t, plan, path).(float64)
	if !ok || math.Abs(got-want) > within+1e-9 {
		t.Errorf("%s is %v, want %v", path, at(t, plan, path), want)
	}
}

// Source: the plan example of the design, the demo's white book, every number.
func TestPlanOfTheDemo(t *testing.T) {
	plan := planned(t, made(t, "--format", "demo"))
	for path, want := range map[string]float64{
		"block.leaves": 48, "block.pages": 96,
		"block.openings.inside": 47, "block.openings.oneSheet": 6, "block.openings.inSections": 42,
		"block.sectionThickness": 1.76, "block.foreEdgeThickness": 10.86, "block.spineThickness": 13.368,
		"block.swell": 1.231, "block.creep.0": 0.66, "block.creep.1": 1.037, "block.width": 151.037, "block.height": 210,
		"exact.spineWidth": 15.868, "exact.jointWidth": 8.943, "exact.setBack": 5, "exact.boardHeight": 216,
		"exact.boardWidth": 149.037, "exact.coveringHeight": 252, "exact.cornerCut": 3.75,
		"toCut.spineWidth": 16, "toCut.jointWidth": 9, "toCut.setBack": 5.043, "toCut.boardHeight": 216,
		"toCut.boardWidth": 149, "toCut.coveringHeight": 252, "toCut.coveringWidth": 368, "toCut.cornerCut": 4,
		"squares.head": 3, "squares.tail": 3, "squares.foreEdge": 3.006, "squares.foreEdgeRange.0": 3.006,
		"liner.width": 410.56, "liner.height": 210, "liner.valleys.0": 150.88, "liner.valleys.1": 172.64, "liner.ridges.0": 161.76,
		"casingIn.foreEdge": 4.043, "casingIn.head": 3, "casingIn.tail": 3,
		"sewing.seam.0": 20, "sewing.seam.1": 190,
		"parts.0.count": 24, "parts.0.height": 210, "parts.0.width": 300,
	} {
		same(t, plan, path, want, 0)
	}
	// The example prints two decimals of these. 149 + √(8.1² − 1.184²) − 0.4 − 151.037 is 5.576, not 5.57.
	same(t, plan, "exact.coveringWidth", 367.83, 0.005)
	same(t, plan, "squares.foreEdgeRange.1", 5.57, 0.01)
	for path, want := range map[string]string{
		"parts.0.id": "folio", "parts.0.name": "Folio", "parts.0.stock": "Ebbwhite Drawing 170", "parts.0.grain": "height",
	} {
		if got := at(t, plan, path); got != want {
			t.Errorf("%s is %v, want %s", path, got, want)
		}
	}
}

// Source: the demo's table, white and toned.
func TestPlanOfBothPapers(t *testing.T) {
	file := made(t, "--format", "demo")
	white, oat := planned(t, file), planned(t, file, "--set", "paper=Marramstone Oat 180")
	for _, row := range []struct {
		path       string
		white, oat float64
		within     float64
	}{
		{"block.sectionThickness", 1.76, 1.92, 0},
		{"block.foreEdgeThickness", 10.86, 11.82, 0},
		{"block.spineThickness", 13.37, 14.33, 0.005},
		{"block.swell", 1.23, 1.21, 0.005},
		{"block.creep.0", 0.66, 0.72, 0},
		{"block.creep.1", 1.04, 1.13, 0.005},
		{"toCut.spineWidth", 16, 17, 0},
		{"toCut.jointWidth", 9, 9, 0},
		{"toCut.boardWidth", 149, 149, 0},
		{"toCut.boardHeight", 216, 216, 0},
		{"toCut.coveringWidth", 368, 369, 0},
		{"toCut.coveringHeight", 252, 252, 0},
		{"liner.width", 410.6, 411.5, 0.05},
		{"liner.height", 210, 210, 0},
		{"sheets.foliosASheet", 8, 3, 0},
		{"sheets.foliosASheetTurned", 9, 4, 0},
	} {
		same(t, white, row.path, row.white, row.within)
		same(t, oat, row.path, row.oat, row.within)
	}
}

// The plan of a file is that of the model: what the window shows.
func TestPlanSaysWhatTheModelSays(t *testing.T) {
	for _, f := range project.BuiltIn() {
		file := made(t, "--format", f.Name)
		p, err := project.Open(file)
		if err != nil {
			t.Fatal(err)
		}
		b, plan := p.Book(), planned(t, file)
		same(t, plan, "toCut.coveringWidth", b.ToCut.CoveringWidth.MM(), 0.0005)
		same(t, plan, "closedSize.thickness", b.Closed.Thickness.MM(), 0.0005)
		same(t, plan, "mass.total", b.Mass.Total(), 0.0005)
		if parts := at(t, plan, "parts").([]any); len(parts) != len(b.Parts) {
			t.Errorf("%s: %d parts, want %d", f.Name, len(parts), len(b.Parts))
		}
	}
}

// What a book has not is null in its plan, and its keys are there all the same.
// The sizes are those of the model's worked link-stitched book.
func TestPlanOfALinkedBook(t *testing.T) {
	linked := planned(t, made(t, "--set", "structure=link-stitched", "--set", "sewing.method=link-on-tapes", "--set", "covering.kind=quarter"))
	for path, want := range map[string]float64{
		"block.foreEdgeThickness": 11.16, "block.spineThickness": 13.28, "toCut.coveringWidth": 94, "toCut.sideWidth": 140,
		"toCut.sideHeight": 252, "endpapers.count": 2, "endpapers.width": 300, "endpapers.leafWidth": 150, "tapes.at.0": 74,
		"tapes.length": 83.5, "mull.width": 73, "mull.height": 190, "sewing.stations.1": 68, "sewing.threadPerBook": 1966,
		"mass.endpapers": 15.12, "mass.liner": 0,
	} {
		same(t, linked, path, want, 0)
	}
	pleated := planned(t, made(t))
	for _, c := range []struct {
		plan any
		none []string
	}{{linked, []string{"liner"}}, {pleated, []string{"endpapers", "tapes", "mull"}}} {
		for _, key := range c.none {
			if got := at(t, c.plan, key); got != nil {
				t.Errorf("%s is %v, want null", key, got)
			}
		}
	}
	if at(t, linked, "structure") != "link-stitched" || at(t, pleated, "structure") != "pleated-liner" {
		t.Error("the plan does not name its structure")
	}
}

// A method that does not suit is refused in words, exit 2, and the structure
// brings its own along.
func TestMethodsFollowTheStructure(t *testing.T) {
	for _, sets := range [][]string{
		{"sewing.method=link"}, {"structure=link-stitched", "sewing.method=machine"},
		{"structure=link-stitched", "structure=pleated-liner", "sewing.method=link-on-tapes"},
	} {
		args := []string{"new"}
		for _, set := range sets {
			args = append(args, "--set", set)
		}
		exit, out, complaint := gw(args...)
		if exit != exitInput || out != "" || !strings.Contains(complaint, "sewing.method=") || !strings.Contains(complaint, "does not suit this structure") {
			t.Errorf("%v: exit %d: %s", sets, exit, complaint)
		}
	}
	text := done(t, "new", "--set", "structure=link-stitched")
	if !strings.Contains(text, `"sewing.method": "link"`) {
		t.Error("the method does not follow the structure")
	}
}

func TestEmptyListsAreLists(t *testing.T) {
	byHand := planned(t, made(t, "--format", "pamphlet"))
	if got := at(t, byHand, "sewing.seam").([]any); len(got) != 0 {
		t.Errorf("a pamphlet has the seam %v", got)
	}
	if got := at(t, byHand, "sewing.stations").([]any); len(got) < 3 {
		t.Errorf("a pamphlet has the stations %v", got)
	}
	if got := at(t, byHand, "liner.ridges").([]any); len(got) != 0 {
		t.Errorf("a flat liner has the ridges %v", got)
	}
}

func TestExitTellsOfAStop(t *testing.T) {
	file := made(t, "--format", "demo")
	for _, c := range []struct {
		args []string
		want int
	}{
		{[]string{"plan", file}, exitDone},
		{[]string{"check", file}, exitDone},
		{[]string{"plan", file, "--set", "paper.turned=yes"}, exitStop},
		{[]string{"plan", "--set=paper.turned=yes", file}, exitStop},
		{[]string{"check", made(t, "--set", "paper.turned=yes")}, exitStop},
		{[]string{"check", made(t, "--set", "joint.width=3")}, exitStop},
	} {
		exit, out, complaints := gw(c.args...)
		if exit != c.want || out == "" || complaints != "" {
			t.Errorf("gw %v: exit %d, want %d: %s", c.args, exit, c.want, complaints)
		}
	}
}

// Each line of check is an object with the contract's entries, and a remedy's
// settings can be given to --set as they are printed.
func TestFindingsCanBePutRight(t *testing.T) {
	file := made(t, "--set", "paper.turned=yes", "--set", "rounding.system=inch", "--set", "joint.width=1/8in")
	exit, out, _ := gw("check", file)
	if exit != exitStop {
		t.Fatalf("exit %d", exit)
	}
	remedies := 0
	for _, line := range strings.Split(strings.TrimSpace(out), "\n") {
		var f map[string]any
		if err := json.Unmarshal([]byte(line), &f); err != nil {
			t.Fatal(err)
		}
		for _, name := range []string{"id", "level", "part", "key", "found", "limit", "unit", "text", "why", "remedy", "accepted"} {
			if _, ok := f[name]; !ok {
				t.Errorf("%s has no %s", f["id"], name)
			}
		}
		if f["remedy"] == nil {
			continue
		}
		remedies++
		args := []string{"check", file}
		for key, value := range at(t, f, "remedy.set").(map[string]any) {
			args = append(args, "--set", key+"="+value.(string))
		}
		_, after, complaints := gw(args...)
		if complaints != "" || strings.Contains(after, line) {
			t.Errorf("gw %v leaves %s %s", args, f["id"], complaints)
		}
	}
	if remedies < 2 {
		t.Errorf("%d remedies for a book with two faults", remedies)
	}
}

func TestNewPrintsOrSaves(t *testing.T) {
	printed := done(t, "new", "--set", "page.width=5 7/8in", "--set", "page.height=200")
	p, err := project.Decode([]byte(printed), "printed")
	if err != nil {
		t.Fatal(err)
	}
	if w, h := p.Decisions.Design.Page.Width.Inches(), p.Decisions.Design.Page.Height.MM(); w != 5.875 || h != 200 {
		t.Errorf("%v in by %v mm", w, h)
	}
	saved, err := os.ReadFile(made(t, "--set", "page.width=5 7/8in", "--set", "page.height=200"))
	if err != nil || string(saved) != printed {
		t.Errorf("saved and printed differ: %v", err)
	}
	if demo, err := project.Decode([]byte(done(t, "new", "--format", "demo")), "demo"); err != nil || !demo.Equal(project.Demo()) {
		t.Errorf("--format demo is not the demo: %v", err)
	}
}

// Source: the inch defaults of the parameter table: 5 7/8 by 8 1/4 in, squares 1/8, turn-in 3/4.
func TestNewInInches(t *testing.T) {
	plan := planned(t, made(t, "--set", "rounding.system=inch"))
	same(t, plan, "block.height", 8.25*25.4, 0)
	same(t, plan, "parts.0.width", 2*5.875*25.4, 0)
	same(t, plan, "toCut.boardHeight", 8.5*25.4, 0)
	width := at(t, plan, "toCut.coveringWidth").(float64) / 25.4 * 16
	if math.Abs(width-math.Round(width)) > 0.001 {
		t.Errorf("the covering is %v sixteenths wide", width)
	}
	// Only what is cut changes when an existing design is asked to cut in inches.
	same(t, planned(t, made(t), "--set", "rounding.system=inch"), "block.height", 210, 0)
}

func TestKeysListsTheTable(t *testing.T) {
	lines := strings.Split(strings.TrimSuffix(done(t, "keys"), "\n"), "\n")
	params := book.Params()
	if len(lines) != len(params) {
		t.Fatalf("%d lines for %d keys", len(lines), len(params))
	}
	height := slices.IndexFunc(params, func(p book.Param) bool { return p.Key == "page.height" })
	column := strings.Index(lines[height], "60..450")
	for i, p := range params {
		fields := strings.Fields(lines[i])
		if fields[0] != p.Key || !strings.HasSuffix(lines[i], p.Meaning()) {
			t.Errorf("line %d is %q, want the key %s", i+1, lines[i], p.Key)
		}
		runes := []rune(lines[i])
		if runes[column] == ' ' || runes[column-1] != ' ' {
			t.Errorf("%q: the range does not start in column %d", lines[i], column)
		}
	}
	var facts []map[string]any
	if err := json.Unmarshal([]byte(done(t, "keys", "--json")), &facts); err != nil || len(facts) != len(params) {
		t.Fatalf("%d facts: %v", len(facts), err)
	}
	// Source: the parameter table: page width 150 mm or 5 7/8 in, 60 to 420.
	for _, f := range facts {
		if f["key"] == "page.width" && (f["default"] != "150" || f["defaultInch"] != "149.225" || f["min"] != 60.0 || f["max"] != 420.0) {
			t.Errorf("page.width: %v", f)
		}
	}
}

// What keys prints as a default can be given to --set.
func TestDefaultsCanBeSet(t *testing.T) {
	var args []string
	for _, p := range book.Params() {
		args = append(args, "--set", p.Key+"="+valueText(p, p.Default(0)))
	}
	if done(t, append([]string{"new"}, args...)...) != done(t, "new") {
		t.Error("setting every default changes the project")
	}
}
