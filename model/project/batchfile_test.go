package project

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"grainwise/model/batch"
	"grainwise/model/batch/batchtest"
	"grainwise/model/measure"
)

// Whatever a batch holds comes back from a file, and an independent implementation
// of JSON Schema agrees with what is written.
func TestBatchComesBack(t *testing.T) {
	schema := compiled(t, Schema)
	rapid.Check(t, func(r *rapid.T) {
		p := New(measure.Metric)
		p.Batch = batchtest.Batch().Draw(r, "batch")
		data := encoded(t, p)
		again, err := Decode(data, "again.json")
		if err != nil || !again.Equal(p) {
			r.Fatalf("%v: came back as %+v", err, again.Batch)
		}
		if err := validate(t, schema, data); err != nil {
			r.Fatal(err)
		}
	})
}

// A copy's batch is its own.
func TestBatchIsTheProjectsOwn(t *testing.T) {
	for what, change := range map[string]func(*batch.Batch){
		"order":    func(b *batch.Batch) { b.Orders[0].Customer = "another" },
		"variant":  func(b *batch.Batch) { b.Variants[0].Name = "another" },
		"setting":  func(b *batch.Batch) { b.Variants[0].Patch[0].Key = "another" },
		"spoilage": func(b *batch.Batch) { b.Buying.Spoilage[0].Share = 0.5 },
		"band":     func(b *batch.Batch) { b.Post.Bands[0].Most = 1 },
		"slot":     func(b *batch.Batch) { b.Post.Slots[0].Name = "another" },
		"working":  func(b *batch.Batch) { b.Working.Press = 3 },
		"pricing":  func(b *batch.Batch) { b.Pricing.Profit = 0.5 },
	} {
		p := Demo()
		q := p.Clone()
		change(&q.Batch)
		if p.Equal(q) || !p.Equal(Demo()) {
			t.Errorf("%s: the copy shares it, or it does not count", what)
		}
	}
}

// A file without a batch has no entry for one, and opens as it did.
func TestProjectsWithoutABatch(t *testing.T) {
	text := string(encoded(t, New(measure.Metric)))
	for _, name := range batchNames() {
		if strings.Contains(text, `"`+name+`":`) {
			t.Errorf("there is %s", name)
		}
	}
	p, err := Decode([]byte(text), "x")
	if sets := setsOf(p); err != nil || len(sets) != 1 || sets[0].Copies() != 1 {
		t.Errorf("%+v: %v", sets, err)
	}
}

// What no batch can be is refused with its place and what was expected.
func TestBadBatches(t *testing.T) {
	text := string(encoded(t, Demo()))
	notes := strings.LastIndex(text, `  "notes"`)
	with := func(entry string) string { return text[:notes] + "  " + entry + ",\n" + text[notes:] }
	instead := func(old, new string) string {
		if !strings.Contains(text, old) {
			t.Fatalf("no %s in the demo", old)
		}
		return strings.Replace(text, old, new, 1)
	}
	for bad, want := range map[string][]string{
		with(`"stock": [{"kind": "paper", "material": "Ebbwhite Drawing 170", "sheets": -1}]`):    {"sheets", "-1", "expected 0"},
		with(`"stock": [{"kind": "paper", "material": "A"}, {"kind": "paper", "material": "A"}]`): {"stock", "second time"},
		with(`"stock": [{"kind": "paper", "material": "A", "sheets": 2.5}]`):                      {"sheets", "2.5"},
		with(`"stock": [{"kind": "paper", "material": "A", "shelf": 2}]`):                         {"shelf", "no such entry"},
		with(`"stock": {}`): {"stock", "list"},
		with(`"blocks": [{"order": "01", "copy": 1, "spine": -14.1}]`):                                                          {"spine", "-14.1", "thickness"},
		with(`"cut": [{"kind": "board", "material": "A", "part": "board", "height": 0, "width": 9, "count": 1}]`):               {"height", "size"},
		instead(`"start":"2026-02-16"`, `"start":"2026-02-30"`):                                                                 {"working", "Not a day"},
		instead(`"start":"2026-02-16"`, `"start":"2026-02-16","days":["mon","mon"]`):                                            {"days", "each once"},
		instead(`"overheads":"2.50 EUR"`, `"overheads":"2.50 USD"`):                                                             {"overheads", "EUR and in USD"},
		instead(`"overheads":"2.50 EUR"`, `"overheads":"-2.50 EUR"`):                                                            {"overheads", "0 or more"},
		instead(`"price":"4.80 EUR"`, `"price":"4.80 GBP"`):                                                                     {"bands", "GBP and in EUR"},
		instead(`"share":0.05`, `"share":1`):                                                                                    {"spoilage", "less than 1"},
		instead(`"customer":"Oakwhistle","kind":"customer","variant":"Ebbwhite, Brickdust"`, `"kind":"customer","variant":"B"`): {"variant", "Ebbwhite, Kelp", "line"},
		instead(`"id":"02"`, `"id":"01"`):                                                                                       {"id", "second time"},
		instead(`"id":"02"`, `"id":""`):                                                                                         {"id", "1 to"},
		instead(`"count":1`, `"count":0`):                                                                                       {"count", "1 to 1000"},
		instead(`"state":"ordered"`, `"state":"lost"`):                                                                          {"state", "posted"},
		instead(`"dates":{"ordered":"2026-02-02"}`, `"dates":{"ordered":"2026-02-31"}`):                                         {"orders", "Not a day"},
		instead(`"dates":{"ordered":"2026-02-02"}`, `"dates":{"posted":"2026-02-02"}`):                                          {"dates", "not come so far"},
		instead(`"paper": "Marramstone Oat 180", "covering"`, `"paper": "Gone", "covering"`):                                    {"paper", "Gone"},
		instead(`"settings": {"paper"`, `"settings": {"copies": 3, "paper"`):                                                    {"copies"},
		instead(`"settings": {"paper"`, `"settings": {"page.width": 1, "paper"`):                                                {"page.width"},
		instead(`"name": "Oat, Kelp", `, `"name": "Ebbwhite, Kelp", `):                                                          {"name", "second time"},
	} {
		_, err := Decode([]byte(bad), "bad.json")
		if err == nil {
			t.Errorf("opens, wanted %v", want)
			continue
		}
		for _, w := range append(want, "bad.json") {
			if !strings.Contains(err.Error(), w) {
				t.Errorf("%v lacks %q", err, w)
			}
		}
	}
}

// many is the demo with so many orders of one book.
func many(orders int) Project {
	p := Demo()
	p.Batch.Orders = nil
	for i := range orders {
		p.Batch.Orders = append(p.Batch.Orders, batch.Order{
			ID: fmt.Sprint(i), Customer: fmt.Sprintf("Thistlewane the %dth", i), Kind: batch.Customer, Count: 1,
			Variant: p.Batch.Variants[i%len(p.Batch.Variants)].Name, Parcel: fmt.Sprint(i / 2), Zone: "home", State: batch.Ordered,
			Dates: batch.Dates{Ordered: measure.Date{Year: 2026, Month: 2, Day: 2}},
		})
	}
	return p
}

// A file of thousands of orders is no larger than what is opened.
func TestThousandsOfOrdersOpen(t *testing.T) {
	p := many(5000)
	data := encoded(t, p)
	again, err := Decode(data, "many.json")
	if err != nil || !again.Equal(p) || len(data) > largest/2 {
		t.Errorf("%d bytes: %v", len(data), err)
	}
}

func BenchmarkOpen5000Orders(b *testing.B) {
	data, err := many(5000).Encode()
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		if _, err := Decode(data, "many.json"); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkSets5000Orders(b *testing.B) {
	p := many(5000)
	for b.Loop() {
		setsOf(p)
	}
}
