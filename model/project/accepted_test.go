package project

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/check"
	"grainwise/model/measure"
)

// answered is the demo with two findings that its maker leaves as they are.
func answered() Project {
	p := Demo()
	p.Accepted = []check.Acceptance{
		{ID: "square-small", Key: "square.head", Level: check.Check, Found: check.Quantity{Amount: 1.3, Unit: check.Millimetres},
			Limit: check.Quantity{Amount: 2, Unit: check.Millimetres}, Reason: "A pocket book:\nit lives in a \"sleeve\"."},
		{ID: "covering-untested", Key: "covering", Level: check.Check, Found: check.Quantity{Amount: 0, Unit: check.Count},
			Limit: check.Quantity{Amount: 1, Unit: check.Count}, About: "Brickdust", Reason: "The last roll took it well."},
	}
	return p
}

func TestAcceptedIsKept(t *testing.T) {
	p := answered()
	text := string(encoded(t, p))
	for _, line := range []string{
		`  "accepted": [`,
		`    {"id": "square-small", "key": "square.head", "level": "check", "found": 1.3, "limit": 2, "unit": "mm", "reason": "A pocket book:\nit lives in a \"sleeve\"."},`,
		`    {"id": "covering-untested", "key": "covering", "level": "check", "found": 0, "limit": 1, "unit": "count", "about": "Brickdust", "reason": "The last roll took it well."}`,
	} {
		if !strings.Contains(text, line+"\n") {
			t.Errorf("no line %s in\n%s", line, text)
		}
	}
	if err := validate(t, compiled(t, Schema), []byte(text)); err != nil {
		t.Error(err)
	}
	again, err := Decode([]byte(text), "again.json")
	if err != nil || !again.Equal(p) {
		t.Errorf("came back as %+v: %v", again.Accepted, err)
	}
	if strings.Contains(string(encoded(t, Demo())), "accepted") {
		t.Error("a project without answers has an entry for them")
	}
}

func TestAnswersAreTheProjectsOwn(t *testing.T) {
	p := answered()
	q := p.Clone()
	q.Accepted[0].Reason = "another"
	if p.Equal(q) || p.Accepted[0].Reason == "another" {
		t.Error("the copy shares the answers, or they do not count")
	}
	if Demo().Equal(answered()) {
		t.Error("answers do not count")
	}
}

// Whatever a maker leaves as it is comes back and still holds.
func TestEveryAnswerComesBack(t *testing.T) {
	schema := compiled(t, Schema)
	rapid.Check(t, func(r *rapid.T) {
		p := New(measure.Metric)
		for _, s := range [][2]string{{"paper.turned", "yes"}, {"square.head", "1.3"}, {"sections.folios", "7"}, {"covering.cornerCut", "1"}} {
			if err := p.Set(s[0], s[1], measure.Metric); err != nil {
				r.Fatal(err)
			}
		}
		for _, f := range p.Findings(p.Book(), Studio{}) {
			reason := rapid.StringMatching(`[!-~äß“”🙂][ -~\n]{0,80}`).Draw(r, "reason")
			p.Accepted = check.With(p.Accepted, f.Accept(reason))
		}
		data := encoded(t, p)
		again, err := Decode(data, "again.json")
		if err != nil || !again.Equal(p) {
			r.Fatalf("came back as %+v: %v", again.Accepted, err)
		}
		if err := validate(t, schema, data); err != nil {
			r.Fatal(err)
		}
		if standing := check.Standing(again.Findings(again.Book(), Studio{})); len(standing) > 0 {
			r.Fatalf("%s speaks again", standing[0].Identity())
		}
	})
}

// Each damage beside what a maker reads of it; the schema refuses it too.
func TestDamagedAnswers(t *testing.T) {
	schema := compiled(t, Schema)
	good := string(encoded(t, answered()))
	for _, c := range []struct {
		from, to, says string
		schema         bool // can say it
	}{
		{`"level": "check", "found": 1.3`, `"level": "grave", "found": 1.3`, `level: "grave": expected one of: stop, check, note`, true},
		{`"found": 1.3`, `"found": "1.3"`, `found: "1.3": expected a number`, true},
		{`"found": 1.3`, `"found": 1e999`, `found: 1e999: expected a number`, false},
		{`"found": 1.3`, `"fuond": 1.3`, "did you mean found?", true},
		{`"found": 1.3, `, ``, "found: expected a number", true},
		{`"limit": 2`, `"limit": null`, "limit: null: expected a number", true},
		{`"unit": "mm"`, `"unit": "cm"`, `unit: "cm": expected one of: mm, degree, g/m², g, percent, ratio, count`, true},
		{`"reason": "The last roll took it well."`, `"reason": ""`, "reason: \"\": expected a text of 1 to 2000 letters", true},
		{`"reason": "The last roll took it well."`, `"reason": "  "`, "expected a text of 1 to 2000 letters", false},
		{`"reason": "The last roll took it well."`, `"reason": "a\u0000b"`, "expected a text of 1 to 2000 letters", false},
		{`"reason": "The last roll took it well."`, `"reason": 7`, "reason: expected a text", true},
		{`, "reason": "The last roll took it well."`, ``, "reason: expected a text", true},
		{`"id": "square-small"`, `"id": ""`, "id: \"\": expected a text of 1 to 120 letters", true},
		{`"id": "covering-untested", "key": "covering"`, `"id": "square-small", "key": "square.head"`, "left as it is a second time", false},
		{`"accepted": [`, `"accepted": [ 7,`, "expected", true},
		{`"accepted": [`, `"accepted": {}, "x": [`, "x: no such entry", true},
	} {
		bad := strings.Replace(good, c.from, c.to, 1)
		if bad == good {
			t.Fatalf("%s is not in the file", c.from)
		}
		if _, err := Decode([]byte(bad), "bad.json"); err == nil || !strings.Contains(err.Error(), c.says) || !placed.MatchString(strings.Replace(err.Error(), "bad", "damaged", 1)) {
			t.Errorf("%s: %v", c.to, err)
		}
		if c.schema && validate(t, schema, []byte(bad)) == nil {
			t.Errorf("the schema takes %s", c.to)
		}
	}
}
