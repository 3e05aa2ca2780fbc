package check

import (
	"reflect"
	"testing"

	"grainwise/model/book"
	"grainwise/model/measure"
)

// Every limit that a studio may set is asked by its rule, and by no other: over
// the designs at the rules' limits its least and its most value make a
// difference to what that rule finds, and to nothing else but what is offered.
func TestEveryLimitIsAskedByItsRule(t *testing.T) {
	var books []book.Book
	for _, s := range steps {
		books = append(books, reckon(with(t, measure.Metric, s.set...)))
	}
	for _, limit := range LimitTable() {
		if ofBatch(limit.Rule) {
			continue // see batchrules_test.go
		}
		asked := false
		for _, b := range books {
			usual := findings(newMatter(&b, Tools{}, usualLimits()))
			for _, v := range []float64{limit.Least, limit.Most} {
				other := findings(newMatter(&b, Tools{}, Limits{limit.Key: v}.inForce()))
				asked = asked || !reflect.DeepEqual(of(limit.Rule, usual, true), of(limit.Rule, other, true))
				if !reflect.DeepEqual(of(limit.Rule, usual, false), of(limit.Rule, other, false)) {
					t.Fatalf("%s at %v speaks to another rule than %s", limit.Key, v, limit.Rule)
				}
			}
		}
		if !asked {
			t.Errorf("%s never asks for %s", limit.Rule, limit.Key)
		}
	}
}

// of are the findings of a rule, or all others.
func of(rule string, found []Finding, own bool) []Finding {
	var some []Finding
	for _, f := range found {
		if (f.ID == rule) == own {
			some = append(some, f)
		}
	}
	return some
}

// Source: the list of checks. The usual limits are those it states, and a rule
// speaks at a studio's own limit as it does at the usual one.
func TestLimitsOfTheListAndOfAStudio(t *testing.T) {
	for key, want := range map[string]float64{
		"sectionCheck": 2.5, "sectionStop": 3.2, "creepUntrimmed": 1.5, "swellStop": 1.5, "hungryShare": 1.3,
		"stitchCheck": 4, "stitchStop": 3, "endsCheck": 15, "endsStop": 10, "stationLeast": 8, "stationApart": 60,
		"setBackLeast": 2, "setBackMost": 9, "oddShare": 8, "oddMost": 1, "squareLeast": 2, "boardLeast": 1.8,
		"boardLeastTall": 2.4, "turnInUnder": 3, "leafMargin": 1, "cornerBoards": 2.2, "sheetUsed": 65, "yieldNear": 4,
		"leverMost": 1.35, "spineApart": 0.7, "leverMass": 500, "crackAcross": 0.2, "crackAlong": 0.3,
	} {
		if got := limitOf(t, key).Of(nil); got != want {
			t.Errorf("%s: %v, the list says %v", key, got, want)
		}
	}
	b := reckon(with(t, measure.Metric, "square.head", "2.5 mm"))
	for own, want := range map[float64]Level{2: "", 2.5: "", 3: Check} {
		found := AllWith(b, Tools{}, Limits{"squareLeast": own})
		if got := levelOf(found, Finding{ID: "square-small", Key: "square.head"}); got != want {
			t.Errorf("least square %v: %q, want %q", own, got, want)
		}
	}
	f := AllWith(b, Tools{}, Limits{"squareLeast": 3})[0]
	if f.ID != "square-small" || f.Limit != (Quantity{3, Millimetres}) || f.Remedy == nil {
		t.Errorf("%s wants %v, offers %v", f.ID, f.Limit, f.Remedy)
	}
}

func limitOf(t *testing.T, key string) Limit {
	t.Helper()
	for _, l := range LimitTable() {
		if l.Key == key {
			return l
		}
	}
	t.Fatalf("no limit %s", key)
	return Limit{}
}

func TestTheUsualLimitsCanBeMeant(t *testing.T) {
	known := map[string]bool{}
	for _, l := range LimitTable() {
		if known[l.Key] || !l.Allows(l.Usual) || l.Least >= l.Most {
			t.Errorf("%s: %v from %v to %v", l.Key, l.Usual, l.Least, l.Most)
		}
		known[l.Key] = true
	}
}
