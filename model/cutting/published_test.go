package cutting_test

import (
	"bufio"
	"context"
	"fmt"
	"os"
	"path/filepath"
	"testing"
	"time"

	"grainwise/model/cutting"
)

// data is the folder of the published instances: OR-Library's gcut, after
// Beasley, "Algorithms for unconstrained two-dimensional guillotine cutting"
// (1985), and the same pieces with demands, of Cintra, Miyazawa, Wakabayashi and
// Xavier (2008).
func data(t testing.TB) string {
	folder := os.Getenv("CUTTING_DATA")
	if folder == "" {
		t.Skip("CUTTING_DATA is not set: it names the folder of the published instances")
	}
	return folder
}

// instance reads m, the sheet, then width, height and a number for each piece.
func instance(t testing.TB, kind, name string, turn bool, number func(*cutting.Piece) *int64) cutting.Job {
	file, err := os.Open(filepath.Join(data(t), kind, name+".txt"))
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	in := bufio.NewReader(file)
	var kinds int
	sheet := cutting.Sheet{Cost: 1, Stock: cutting.Unlimited}
	if _, err := fmt.Fscan(in, &kinds, &sheet.Width, &sheet.Height); err != nil {
		t.Fatal(err)
	}
	job := cutting.Job{Sheets: []cutting.Sheet{sheet}}
	for range kinds {
		p := cutting.Piece{Turn: turn}
		if _, err := fmt.Fscan(in, &p.Width, &p.Height, number(&p)); err != nil {
			t.Fatal(err)
		}
		job.Pieces = append(job.Pieces, p)
	}
	return job
}

func counts(p *cutting.Piece) *int64 { return &p.Count }
func values(p *cutting.Piece) *int64 { return &p.Value }

// Source: optimal values of Cintra, Miyazawa, Wakabayashi and Xavier (2008).
func TestPublishedValues(t *testing.T) {
	for i, want := range []struct{ fixed, turned int64 }{
		{56460, 58136}, {60536, 60611}, {61036, 61626}, {61698, 62265},
		{246000, 246000}, {238998, 240951}, {242567, 245866}, {246633, 247787},
	} {
		for _, turn := range []bool{false, true} {
			job := instance(t, "one-sheet", fmt.Sprintf("gcut%d", i+1), turn, values)
			found, err := cutting.MostValuable(context.Background(), job)
			if err != nil {
				t.Fatal(err)
			}
			best := want.fixed
			if turn {
				best = want.turned
			}
			if found.Value != best {
				t.Errorf("gcut%d, turn %v: %d, published %d", i+1, turn, found.Value, best)
			}
			if err := worth(job, found); err != nil {
				t.Errorf("gcut%d, turn %v: %v", i+1, turn, err)
			}
		}
	}
}

// worth says whether a sheet lies as it should and is worth what it says.
func worth(job cutting.Job, found cutting.Valuable) error {
	all, err := boxes(found.Layout.Root, job.Kerf)
	if err != nil {
		return err
	}
	if err := fits(job, job.Sheets[0], all); err != nil {
		return err
	}
	sum := int64(0)
	for _, b := range all {
		sum += job.Pieces[b.kind].Value
	}
	if sum != found.Value || !cuttable(all, job.Kerf) {
		return fmt.Errorf("worth %d, said to be %d; cuttable %v", sum, found.Value, cuttable(all, job.Kerf))
	}
	return nil
}

// Source: the best sheet counts of the same paper for pieces that may not turn;
// for those that may, an independent integer program (the data's own note).
func TestPublishedCounts(t *testing.T) {
	for _, want := range []struct {
		name   string
		turn   bool
		sheets int64
	}{
		{"gcut1d", false, 294}, {"gcut3d", false, 332}, {"gcut4d", false, 836},
		{"gcut5d", false, 197}, {"gcut6d", false, 343}, {"gcut7d", false, 591},
		{"gcut1d", true, 291}, {"gcut5d", true, 174},
	} {
		if testing.Short() && (want.name == "gcut4d" || want.name == "gcut7d") {
			continue // the race detector slows their search tenfold, and nothing runs beside it
		}
		job := instance(t, "counts", want.name, want.turn, counts)
		ctx, cancel := context.WithTimeout(context.Background(), time.Minute)
		plan, err := cutting.Fewest(ctx, job, nil)
		cancel()
		if err != nil {
			t.Fatal(err)
		}
		if plan.Sheets != want.sheets || !plan.Proved() {
			t.Errorf("%s, turn %v: %d sheets, bound %d, proof %q, published %d", want.name, want.turn, plan.Sheets, plan.LowerBound, plan.Proof, want.sheets)
		}
		if err := faults(job, plan); err != nil {
			t.Errorf("%s, turn %v: %v", want.name, want.turn, err)
		}
	}
}

func BenchmarkPublishedValues(b *testing.B) {
	for i := range 8 {
		for _, turn := range []bool{false, true} {
			job := instance(b, "one-sheet", fmt.Sprintf("gcut%d", i+1), turn, values)
			b.Run(fmt.Sprintf("gcut%d/turn=%v", i+1, turn), func(b *testing.B) {
				for b.Loop() {
					if _, err := cutting.MostValuable(context.Background(), job); err != nil {
						b.Fatal(err)
					}
				}
			})
		}
	}
}

func BenchmarkPublishedCounts(b *testing.B) {
	for _, name := range []string{"gcut1d", "gcut3d", "gcut4d", "gcut5d", "gcut6d", "gcut7d"} {
		for _, turn := range []bool{false, true} {
			job := instance(b, "counts", name, turn, counts)
			b.Run(fmt.Sprintf("%s/turn=%v", name, turn), func(b *testing.B) {
				for b.Loop() {
					if plan, err := cutting.Fewest(context.Background(), job, nil); err != nil || !plan.Proved() {
						b.Fatal(err, plan.Sheets, plan.LowerBound)
					}
				}
			})
		}
	}
}
