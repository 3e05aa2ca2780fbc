package cutting

import (
	"context"
	"testing"
)

// A sheet of 22 × 30 in loses an inch at one edge and gives four equal strips
// (common practice, no source): 48 strips are 12 sheets.
func TestFourStripsASheet(t *testing.T) {
	job := Job{
		Sheets: []Sheet{{Width: 2200, Height: 3000, Trim: Trim{Top: 100}, Cost: 1, Stock: Unlimited}},
		Pieces: []Piece{{ID: "strip", Width: 2200, Height: 725, Count: 48}},
	}
	plan, err := Fewest(context.Background(), job, nil)
	if err != nil {
		t.Fatal(err)
	}
	if plan.Sheets != 12 || plan.LowerBound != 12 || plan.Proof != ByCertificate {
		t.Errorf("%d sheets, bound %d, proof %q", plan.Sheets, plan.LowerBound, plan.Proof)
	}
	if len(plan.Layouts) != 1 || plan.Layouts[0].Times != 12 {
		t.Fatalf("layouts %+v", plan.Layouts)
	}
	strips := int64(0)
	plan.Layouts[0].Root.Pieces(func(p Part) {
		if p.X != 0 || p.Y != strips*725 || p.Width != 2200 || p.Height != 725 {
			t.Errorf("strip %d lies at %+v", strips, p)
		}
		strips++
	})
	if strips != 4 {
		t.Errorf("%d strips a sheet", strips)
	}
}
