package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// batched is what `gw batch` prints, as a program reads it.
func batched(t *testing.T, args ...string) map[string]any {
	t.Helper()
	var b map[string]any
	if err := json.Unmarshal([]byte(done(t, append([]string{"batch"}, args...)...)), &b); err != nil {
		t.Fatal(err)
	}
	return b
}

// row is the entry of a list whose name is so.
func row(t *testing.T, list any, key, name string) map[string]any {
	t.Helper()
	for _, r := range list.([]any) {
		if m := r.(map[string]any); m[key] == name {
			return m
		}
	}
	t.Fatalf("no %s %s", key, name)
	return nil
}

// Source: the demo's page, by hand: 24 books; 45 and 84 sheets; 3 sheets of board
// for 48 pieces; 5, 4 and 3 rows of cloth; spine groups of 14 and 10 books.
func TestBatchOfTheDemo(t *testing.T) {
	b := batched(t, made(t, "--format", "demo"))
	same(t, b, "books", 24, 0)
	for name, want := range map[string]map[string]any{
		"Ebbwhite Drawing 170": {"net": 42.0, "needed": 45.0, "toBuy": 45.0, "unit": "sheet", "cost": "108.00 EUR", "price": "2.40 EUR", "per": "sheet", "priceOn": "2026-02-02"},
		"Marramstone Oat 180":  {"net": 80.0, "toBuy": 84.0},
		"Groynes 2.5":          {"net": 3.0, "toBuy": 3.0, "spare": 0.0},
		"Kelp":                 {"rows": 5.0, "net": 1260.0, "toBuy": 1300.0, "unit": "mm"},
		"Brickdust":            {"rows": 4.0}, "Fog": {"rows": 3.0}, "Saltgrass 120": {"toBuy": 6.0},
	} {
		need := row(t, b["needs"], "material", name)
		for key, value := range want {
			if need[key] != value {
				t.Errorf("%s: %s is %v, want %v", name, key, need[key], value)
			}
		}
	}
	same(t, b, "groups.0.spineWidth", 16, 0)
	same(t, b, "groups.0.copies", 14, 0)
	same(t, b, "groups.1.spineWidth", 17, 0)
	same(t, b, "groups.1.copies", 10, 0)
}

// A project without orders is a batch of its copies.
func TestBatchWithoutOrders(t *testing.T) {
	b := batched(t, made(t, "--set", "copies=7"))
	same(t, b, "books", 7, 0)
	same(t, b, "groups.0.copies", 7, 0)
}

// Source: the demo's table: the toned book, its measures and its ten copies.
func TestVariants(t *testing.T) {
	file := made(t, "--format", "demo")
	plan := planned(t, file, "--variant", "Oat, Brickdust")
	same(t, plan, "toCut.spineWidth", 17, 0)
	same(t, plan, "toCut.coveringWidth", 369, 0)
	same(t, plan, "copies", 3, 0)
	if got := at(t, plan, "parts.0.stock"); got != "Marramstone Oat 180" {
		t.Error(got)
	}
	if _, out, _ := gw("check", file, "--variant", "Oat, Kelp"); !strings.Contains(out, `"yield-crossgrain"`) {
		t.Error(out)
	}
	picture := filepath.Join(t.TempDir(), "oat.svg")
	done(t, "draw", file, "--variant", "Oat, Kelp", "--view", "laid-flat", "--out", picture)
	if text, err := os.ReadFile(picture); err != nil || !strings.Contains(string(text), "Oat, Kelp") {
		t.Errorf("the drawing does not say which variant it is: %v", err)
	}
	for _, c := range []string{"plan", "check"} {
		if exit, out, complaint := gw(c, file, "--variant", "Gold"); exit != exitInput || out != "" || !strings.Contains(complaint, "Ebbwhite, Kelp") {
			t.Errorf("%s: %d %q %q", c, exit, out, complaint)
		}
	}
}

// Papers of a group come in a folder for each of its variants, those of one
// variant without; each has its own copies.
func TestPapersOfGroups(t *testing.T) {
	file, folder := made(t, "--format", "demo"), t.TempDir()
	run := func(name string, args ...string) []string {
		if exit, _, complaint := gw(append([]string{"papers", file, "--out", filepath.Join(folder, name), "--only", "spacer-gauge"}, args...)...); exit != exitDone {
			t.Fatal(complaint)
		}
		entries, err := os.ReadDir(filepath.Join(folder, name))
		if err != nil {
			t.Fatal(err)
		}
		var names []string
		for _, e := range entries {
			names = append(names, e.Name())
		}
		return names
	}
	want := []string{"Oat, Brickdust 17 mm", "Oat, Fog 17 mm", "Oat, Kelp 17 mm", "Oat, Kelp, elastic 17 mm"}
	for _, group := range []string{"17", "17 mm", "1.7 cm"} {
		if got := run("g"+group, "--group", group); !slices.Equal(got, want) {
			t.Errorf("group %s: %q", group, got)
		}
	}
	if got := run("v", "--variant", "Oat, Fog"); !slices.Contains(got, "spacer-gauge.pdf") {
		t.Errorf("%q", got)
	}
	if got := run("both", "--variant", "Oat, Fog", "--group", "17"); !slices.Contains(got, "spacer-gauge.pdf") {
		t.Errorf("%q", got)
	}
	if exit, _, complaint := gw("papers", file, "--out", folder, "--group", "18"); exit != exitInput || !strings.Contains(complaint, "16, 17") {
		t.Errorf("%d %q", exit, complaint)
	}
}

// Orders go out as a table and come back; what is wrong in one is told in one line,
// and nothing is saved.
func TestOrdersOutAndIn(t *testing.T) {
	file, folder := made(t, "--format", "demo"), t.TempDir()
	csv, saved := filepath.Join(folder, "orders.csv"), filepath.Join(folder, "saved.json")
	batched(t, file, "--export", csv)
	text, err := os.ReadFile(csv)
	if err != nil || strings.Count(string(text), "\r\n") != 25 {
		t.Fatalf("%v: %s", err, text)
	}
	more := string(text) + "20,Widdershore,customer,\"Oat, Fog\",3,20,near,ordered,2026-02-20,,,,,,\r\n"
	if err := os.WriteFile(csv, []byte(more), 0o666); err != nil {
		t.Fatal(err)
	}
	same(t, batched(t, file, "--import", csv, "--save", saved), "books", 27, 0)
	same(t, batched(t, saved), "books", 27, 0)
	if err := os.WriteFile(csv, []byte(strings.Replace(more, "Oat, Fog\",3", "Oat, Fog\",-3", 1)), 0o666); err != nil {
		t.Fatal(err)
	}
	again := filepath.Join(folder, "again.json")
	exit, out, complaint := gw("batch", file, "--import", csv, "--save", again)
	if _, err := os.Stat(again); exit != exitInput || out != "" || !strings.Contains(complaint, "line 26, column 5 “count”") || err == nil {
		t.Errorf("%d %q %q", exit, out, complaint)
	}
}

// Source: the demo's page and the list of checks: two spine groups a millimetre
// apart, no board and no liner to spare, and nothing measured yet.
func TestBatchFindings(t *testing.T) {
	b := batched(t, made(t, "--format", "demo"))
	var got []string
	for _, f := range b["findings"].([]any) {
		m := f.(map[string]any)
		got = append(got, m["level"].(string)+" "+m["id"].(string)+" "+m["key"].(string))
	}
	want := []string{"stop measure-first measured.spineThickness", "check spine-groups spine.width",
		"check spare-none liner/Saltgrass 120", "check spare-none board/Groynes 2.5",
		"check post-band copies/far over 500 g", "check post-band copies/near over 500 g", "check post-band copies/home over 500 g"}
	if !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
	turned := batched(t, made(t, "--format", "demo", "--set", "paper.turned=yes"))
	if stops := row(t, turned["variants"], "name", "Oat, Kelp")["stops"].([]any); len(stops) != 2 || stops[0] != "grain-paper" || stops[1] != "fold-crack" {
		t.Errorf("%v", stops)
	}
}

// Source: the demo's page: 195 minutes of set-up and 84 a book, and 5 each for the
// elastic and the ribbon; three rounds of 8; 19 parcels; 22 EUR an hour. By hand,
// overheads and packing as the page says.
func TestBatchPlanCostsAndPost(t *testing.T) {
	file := made(t, "--format", "demo")
	b := batched(t, file, "--lost", "2026-02-18")
	same(t, b, "plan.hands", 195+24*84+10, 0)
	same(t, b, "plan.rounds.2.books", 8, 0)
	if start := at(t, b, "plan.start"); start != "2026-02-16 09:00" {
		t.Error(start)
	}
	if promise, lost := at(t, b, "plan.promise").(string), at(t, b, "plan.lostDay.promise").(string); promise <= "2026-02-25" || lost < promise {
		t.Errorf("promised %s, with a lost day %s", promise, lost)
	}
	white := row(t, at(t, b, "costs.variants"), "name", "Ebbwhite, Kelp")
	for key, want := range map[string]any{"overheads": "2.50 EUR", "packing": "1.65 EUR", "books": 6.0} {
		if white[key] != want {
			t.Errorf("%s is %v, want %v", key, white[key], want)
		}
	}
	if paper := row(t, white["materials"], "name", "Ebbwhite Drawing 170"); paper["cost"] != "7.71 EUR" {
		t.Errorf("%v", paper)
	}
	parcels := at(t, b, "post.parcels").([]any)
	if len(parcels) != 19 || row(t, parcels, "to", "Vireo-Tamsel")["books"] != 2.0 {
		t.Errorf("%d parcels", len(parcels))
	}
	if list := row(t, parcels, "to", "Umberlow")["packingList"].([]any); len(list) < 4 {
		t.Errorf("%v", list)
	}
	calendar := filepath.Join(t.TempDir(), "plan.ics")
	batched(t, file, "--calendar", calendar)
	if text, err := os.ReadFile(calendar); err != nil || !strings.HasPrefix(string(text), "BEGIN:VCALENDAR\r\n") || strings.Count(string(text), "BEGIN:VEVENT") < 20 {
		t.Errorf("%v: %.200s", err, text)
	}
	if exit, _, complaint := gw("batch", file, "--lost", "2026-02-30"); exit != exitInput || !strings.Contains(complaint, "--lost") {
		t.Errorf("%d %q", exit, complaint)
	}
}

// Mixed currencies cannot be summed: one line says which, and nothing is printed.
func TestMixedCurrencies(t *testing.T) {
	file := made(t, "--format", "demo")
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	mixed := strings.Replace(string(text), "24.00 EUR", "24.00 GBP", 1)
	if mixed == string(text) || os.WriteFile(file, []byte(mixed), 0o666) != nil {
		t.Fatal("not written")
	}
	exit, out, complaint := gw("batch", file)
	if exit != exitInput || out != "" || !strings.Contains(complaint, "Brickdust") || !strings.Contains(complaint, "GBP") || strings.Count(complaint, "\n") != 1 {
		t.Errorf("%d %q %q", exit, out, complaint)
	}
}

// A batch is closed into a record of its 24 books on its day, and begun anew with as
// many and nothing measured.
func TestCloseAndAgain(t *testing.T) {
	file, saved := made(t, "--format", "demo"), filepath.Join(t.TempDir(), "closed.json")
	batched(t, file, "--close", "Release 7", "--date", "2026-03-20", "--save", saved)
	record := at(t, batched(t, saved), "records.0").(map[string]any)
	if books := record["books"].([]any); len(books) != 24 || record["closed"] != "2026-03-20" || record["name"] != "Release 7" {
		t.Errorf("%d books, %v, %v", len(books), record["closed"], record["name"])
	}
	again := filepath.Join(t.TempDir(), "again.json")
	batched(t, saved, "--again", "--save", again)
	b := batched(t, again)
	same(t, b, "books", 24, 0)
	same(t, b, "measured", 0, 0)
	for _, args := range [][]string{{"--close", "Release 7"}, {"--close", "", "--save", again + "x"}, {"--again", "--save", again + "x"}} {
		exit, out, complaint := gw(append([]string{"batch", file}, args...)...)
		if _, err := os.Stat(again + "x"); exit != exitInput || out != "" || strings.Count(complaint, "\n") != 1 || err == nil {
			t.Errorf("%q: %d %q", args, exit, complaint)
		}
	}
}
