package project

import (
	"strings"
	"testing"

	"grainwise/model/cutting"
)

const strips = `{"sheet":{"width":22,"height":30,"count":null},"trim":{"left":0,"right":0,"top":1,"bottom":0},"kerf":0,
 "pieces":[{"id":"strip","width":22,"height":7.25,"count":48,"turn":false}],"value":null}`

// Numbers are read exactly, in a unit that all sizes are multiples of.
func TestInstanceIsExact(t *testing.T) {
	i, err := DecodeInstance([]byte(strips), "strips.json")
	if err != nil {
		t.Fatal(err)
	}
	want := cutting.Piece{ID: "strip", Width: 2200, Height: 725, Count: 48}
	if i.Unit.String() != "1/100" || i.Job.Pieces[0] != want || i.Job.Sheets[0].Trim.Top != 100 || i.Job.Sheets[0].Stock != cutting.Unlimited {
		t.Errorf("%+v, unit %v", i.Job, i.Unit)
	}
}

// What is wrong is said in one line: the file, the place, what was expected.
func TestBadInstances(t *testing.T) {
	for _, c := range []struct{ from, to, says string }{
		{`"width":22,"height":30`, `"width":"wide","height":30`, "line 1, column 19, width: expected a plain number"},
		{`"kerf":0`, `"kerf":1e99`, "kerf: expected a plain number"},
		{`"kerf":0`, `"kerf":NaN`, "not JSON"},
		{`"kerf":0`, `"kerfs":0`, "did you mean kerf"},
		{`{"sheet"`, `{"sheets":[],"sheet"`, "expected one of sheet, sheets and roll"},
		{`"count":48`, `"count":4.5`, "whole number"},
		{`"count":48,`, ``, "expected a count"},
		{`"count":48`, `"count":-1`, "whole number"},
		{`"turn":false`, `"turn":1`, "true or false"},
		{`"value":null`, `"value":{"strap":3}`, "strip: expected a plain number"},
		{`"id":"strip"`, `"id":""`, "id: expected a text"},
		{`"pieces":[`, `"pieces":[{"id":"strip","width":1,"height":1,"count":1},`, "expected each id once"},
		{strips, ``, "empty"},
		{strips, `[1,2]`, "between { and }"},
		{`7.25`, `7.2500000000000000000000000000001`, "reckoned exactly"},
	} {
		_, err := DecodeInstance([]byte(strings.Replace(strips, c.from, c.to, 1)), "strips.json")
		if err == nil || !strings.Contains(err.Error(), c.says) || !strings.HasPrefix(err.Error(), "strips.json: ") || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s → %s: %v, want %q", c.from, c.to, err, c.says)
		}
	}
}

func FuzzInstance(f *testing.F) {
	for _, text := range []string{
		strips, `{"roll":{"width":980,"unit":100},"pieces":[{"id":"a","width":1e2,"height":2.5,"count":3}]}`,
		`{"sheets":[{"id":"x","width":3,"height":4,"cost":0.5,"count":2}],"pieces":[{"id":"a","width":1,"height":1,"count":1}],"stack":4}`,
		`{"sheet":{"width":3,"height":4},"pieces":[{"id":"a","width":1,"height":1}],"value":{"a":0.1}}`, `{`, `null`, "\xff",
	} {
		f.Add([]byte(text))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		i, err := DecodeInstance(data, "fuzz.json")
		if err != nil {
			if strings.ContainsAny(err.Error(), "\n\r\x00") {
				t.Fatalf("%q is no line", err)
			}
			return
		}
		if i.Unit.Sign() <= 0 || len(i.Job.Pieces) == 0 || i.Stack < 1 {
			t.Fatalf("%+v", i)
		}
	})
}
