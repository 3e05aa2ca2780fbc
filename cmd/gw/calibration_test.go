package main

import (
	"encoding/json"
	"math"
	"testing"
)

type calibrated struct {
	Calibration struct {
		ThreadCrush, Groove struct {
			Key   string
			Value *float64
			Range *[2]float64
			Now   float64
			Why   string
		}
	}
	Squares struct{ ForeEdge float64 }
}

func calibrate(t *testing.T, settings ...string) calibrated {
	t.Helper()
	args := []string{"plan", made(t, "--format", "demo")}
	for _, s := range settings {
		args = append(args, "--set", s)
	}
	exit, out, complaints := gw(args...)
	var got calibrated
	if err := json.Unmarshal([]byte(out), &got); exit != exitDone || err != nil {
		t.Fatalf("exit %d, %v, %s", exit, err, complaints)
	}
	return got
}

// Source: the demo's table. A block of 13.368 at the spine and 10.86 at the fore
// edge keeps 0.6 of its thread, for six sections, a thread of 0.28 and five
// pleats of 0.15: (13.368 − 10.86 − 5 × 2 × 0.15)/(6 × 0.28).
func TestPlanTellsWhatAFinishedBookSays(t *testing.T) {
	bare := calibrate(t).Calibration
	if c := bare.ThreadCrush; c.Value != nil || c.Range != nil || c.Why == "" || c.Now != 0.6 {
		t.Errorf("nothing is measured: %+v", c)
	}
	block := []string{"measured.spineThickness=13.368mm", "measured.foreEdgeThickness=10.86mm"}
	crush := calibrate(t, block...).Calibration.ThreadCrush
	if crush.Value == nil || math.Abs(*crush.Value-0.6) > 1e-9 || crush.Range[0] >= 0.6 || crush.Range[1] <= 0.6 || crush.Why != "" || crush.Key != "sewing.threadCrush" {
		t.Errorf("crush %+v", crush)
	}
	// The groove found from a square gives that square when it is set, with the
	// demo's joint and board.
	groove := calibrate(t, append(block, "measured.squareForeEdge=4mm")...).Calibration.Groove
	if groove.Value == nil {
		t.Fatalf("groove %+v", groove)
	}
	deep, _ := json.Marshal(*groove.Value)
	if back := calibrate(t, append(block, "joint.groove="+string(deep)+"mm", "joint.width=9mm", "board.width=149mm")...); math.Abs(back.Squares.ForeEdge-4) > 0.002 {
		t.Errorf("a groove of %s gives a square of %v", deep, back.Squares.ForeEdge)
	}
}
