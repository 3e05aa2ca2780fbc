package cutting_test

import (
	"bytes"
	"context"
	"fmt"
	"math/rand"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"grainwise/model/cutting"
)

// The fewest sheets by another road: every way to cut a sheet is listed by plain
// recursion, and glpsol (GNU Linear Programming Kit) proves the integer program
// over them.

// lister lists the ways to cut rectangles; it knows nothing of the planner.
type lister struct {
	pieces []cutting.Piece
	x, y   []int64 // where a cut may be: sums of sides
	known  map[[2]int64][][]int64
}

func newLister(job cutting.Job) *lister {
	l := &lister{pieces: job.Pieces, known: map[[2]int64][][]int64{}}
	var wide, high []int64
	for _, p := range job.Pieces {
		wide, high = append(wide, p.Width), append(high, p.Height)
		if p.Turn {
			wide, high = append(wide, p.Height), append(high, p.Width)
		}
	}
	s := job.Sheets[0]
	l.x, l.y = sumsUpTo(s.Width, wide), sumsUpTo(s.Height, high)
	return l
}

func sumsUpTo(length int64, sides []int64) []int64 {
	reached := make([]bool, length+1)
	reached[0] = true
	var all []int64
	for at := int64(0); at <= length; at++ {
		for _, s := range sides {
			reached[at] = reached[at] || at >= s && reached[at-s]
		}
		if reached[at] && at > 0 {
			all = append(all, at)
		}
	}
	return all
}

// ways are the counts of pieces that a rectangle can be cut into and that no
// other way covers.
func (l *lister) ways(width, height int64) [][]int64 {
	width, height = largestIn(l.x, width), largestIn(l.y, height)
	at := [2]int64{width, height}
	if found, yes := l.known[at]; yes {
		return found
	}
	var all [][]int64
	for k, p := range l.pieces {
		if p.Width <= width && p.Height <= height || p.Turn && p.Height <= width && p.Width <= height {
			one := make([]int64, len(l.pieces))
			one[k] = 1
			all = append(all, one)
		}
	}
	for _, z := range l.x {
		if 2*z > width {
			break
		}
		all = append(all, joined(l.ways(z, height), l.ways(width-z, height))...)
	}
	for _, z := range l.y {
		if 2*z > height {
			break
		}
		all = append(all, joined(l.ways(width, z), l.ways(width, height-z))...)
	}
	l.known[at] = uncovered(all)
	return l.known[at]
}

func largestIn(sorted []int64, limit int64) int64 {
	best := int64(0)
	for _, s := range sorted {
		if s <= limit {
			best = s
		}
	}
	return best
}

func joined(a, b [][]int64) [][]int64 {
	var all [][]int64
	for _, x := range a {
		for _, y := range b {
			sum := make([]int64, len(x))
			for k := range x {
				sum[k] = x[k] + y[k]
			}
			all = append(all, sum)
		}
	}
	return all
}

func uncovered(all [][]int64) [][]int64 {
	slices.SortFunc(all, func(a, b []int64) int { return slices.Compare(b, a) })
	all = slices.CompactFunc(all, slices.Equal)
	var kept [][]int64
	for i, a := range all {
		covered := false
		for j, b := range all {
			covered = covered || i != j && !slices.ContainsFunc(indexes(a), func(k int) bool { return a[k] > b[k] })
		}
		if !covered {
			kept = append(kept, a)
		}
	}
	return kept
}

func indexes(a []int64) []int {
	all := make([]int, len(a))
	for i := range all {
		all[i] = i
	}
	return all
}

// provedBy has glpsol prove the fewest sheets; it skips where there is none.
func provedBy(t testing.TB, job cutting.Job, ways [][]int64) int64 {
	return leastBy(t, job.Pieces, ways, slices.Repeat([]int64{1}, len(ways)))
}

// leastBy has glpsol prove the least cost of ways to cut, each at its own.
func leastBy(t testing.TB, pieces []cutting.Piece, ways [][]int64, costs []int64) int64 {
	glpsol, err := exec.LookPath("glpsol")
	if err != nil {
		t.Skip("glpsol is not installed: `go run ./cmd/dev test` installs it")
	}
	var lp strings.Builder
	lp.WriteString("Minimize\n cost:")
	for i, c := range costs {
		fmt.Fprintf(&lp, " + %d x%d", c, i)
	}
	lp.WriteString("\nSubject To\n")
	for k, p := range pieces {
		fmt.Fprintf(&lp, " c%d:", k)
		for i, w := range ways {
			if w[k] > 0 {
				fmt.Fprintf(&lp, " + %d x%d", w[k], i)
			}
		}
		fmt.Fprintf(&lp, " >= %d\n", p.Count)
	}
	lp.WriteString("Generals\n")
	for i := range ways {
		fmt.Fprintf(&lp, " x%d", i)
	}
	lp.WriteString("\nEnd\n")
	folder := t.TempDir()
	model, plain := filepath.Join(folder, "case.lp"), filepath.Join(folder, "case.plain")
	if err := os.WriteFile(model, []byte(lp.String()), 0o600); err != nil {
		t.Fatal(err)
	}
	if said, err := exec.Command(glpsol, "--lp", model, "--tmlim", "60", "-w", plain).CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, said)
	}
	result, err := os.ReadFile(plain)
	if err != nil {
		t.Fatal(err)
	}
	// "s mip ROWS COLUMNS STATUS VALUE": o is optimal.
	found := regexp.MustCompile(`(?m)^s mip \d+ \d+ o (\d+)`).FindSubmatch(result)
	if found == nil {
		t.Fatalf("glpsol proved nothing: %s", bytes.SplitN(result, []byte("\ni "), 2)[0])
	}
	least, err := strconv.ParseInt(string(found[1]), 10, 64)
	if err != nil {
		t.Fatal(err)
	}
	return least
}

// cases are small jobs of the trade, of our own: millimetres, or eighths and
// quarters of an inch.
func cases() map[string]cutting.Job {
	job := func(width, height int64, pieces ...cutting.Piece) cutting.Job {
		return cutting.Job{Sheets: []cutting.Sheet{{Width: width, Height: height, Cost: 1, Stock: cutting.Unlimited}}, Pieces: pieces}
	}
	piece := func(width, height, count int64, turn bool) cutting.Piece {
		return cutting.Piece{Width: width, Height: height, Count: count, Turn: turn}
	}
	return map[string]cutting.Job{
		"folios and liners":          job(694, 994, piece(300, 210, 24, false), piece(411, 210, 5, false)),
		"coverings and boards":       job(694, 994, piece(368, 252, 9, false), piece(149, 216, 10, false)),
		"strips and folios, inch/8":  job(176, 232, piece(88, 58, 11, true), piece(60, 84, 7, true)),
		"two formats, either way":    job(494, 644, piece(300, 210, 10, true), piece(246, 161, 13, true)),
		"boards, inch/4":             job(104, 152, piece(36, 50, 9, false), piece(28, 34, 14, false), piece(50, 60, 5, false)),
		"cases and sides from cloth": job(980, 1000, piece(368, 252, 7, false), piece(120, 252, 9, false), piece(300, 400, 3, false)),
		"three sizes of ISO 216":     job(707, 1000, piece(353, 250, 9, true), piece(210, 297, 14, true), piece(500, 353, 4, true)),
		"a wide and a narrow one":    job(640, 900, piece(410, 310, 6, true), piece(205, 150, 11, false)),
	}
}

func TestSmallCasesAgainstGlpsol(t *testing.T) {
	for name, job := range cases() {
		t.Run(name, func(t *testing.T) {
			s := job.Sheets[0]
			ways := newLister(job).ways(s.Width, s.Height)
			want := provedBy(t, job, ways)
			plan, err := cutting.Fewest(context.Background(), job, nil)
			if err != nil {
				t.Fatal(err)
			}
			if plan.Sheets != want || !plan.Proved() {
				t.Errorf("%d sheets, proof %q; glpsol proves %d over %d ways to cut", plan.Sheets, plan.Proof, want, len(ways))
			}
			if err := faults(job, plan); err != nil {
				t.Error(err)
			}
			if largest(job) <= 250 {
				if err := untrue(job, plan); err != nil {
					t.Error(err)
				}
			}
		})
	}
}

func largest(job cutting.Job) int64 { return max(job.Sheets[0].Width, job.Sheets[0].Height) }

// The planner against glpsol on the same integer program, in the same run:
// listing the ways is not counted for glpsol.
func BenchmarkAgainstGlpsol(b *testing.B) {
	for name, job := range cases() {
		ways := newLister(job).ways(job.Sheets[0].Width, job.Sheets[0].Height)
		b.Run(name, func(b *testing.B) {
			ours, theirs := time.Duration(0), time.Duration(0)
			for b.Loop() {
				at := time.Now()
				if _, err := cutting.Fewest(context.Background(), job, nil); err != nil {
					b.Fatal(err)
				}
				ours += time.Since(at)
				at = time.Now()
				provedBy(b, job, ways)
				theirs += time.Since(at)
			}
			b.ReportMetric(theirs.Seconds()/ours.Seconds(), "glpsol/ours")
		})
	}
}

// Random small jobs: whatever is said to be proved is what glpsol proves, and
// nearly all is.
func TestRandomCasesAgainstGlpsol(t *testing.T) {
	r := rand.New(rand.NewSource(11))
	const tried = 120
	proved := 0
	for range tried {
		job := cutting.Job{Sheets: []cutting.Sheet{{Width: 20 + r.Int63n(20), Height: 20 + r.Int63n(20), Cost: 1, Stock: cutting.Unlimited}}}
		for range 2 + r.Intn(2) {
			job.Pieces = append(job.Pieces, cutting.Piece{Width: 6 + r.Int63n(14), Height: 6 + r.Int63n(14), Count: 1 + r.Int63n(9), Turn: r.Intn(2) == 0})
		}
		ctx, cancel := context.WithTimeout(context.Background(), time.Second)
		plan, err := cutting.Fewest(ctx, job, nil)
		cancel()
		if err != nil {
			t.Fatal(err)
		}
		want := provedBy(t, job, newLister(job).ways(job.Sheets[0].Width, job.Sheets[0].Height))
		if plan.LowerBound > want || plan.Sheets < want || plan.Proved() && plan.Sheets != want {
			t.Errorf("%+v: %d sheets, bound %d, proof %q; glpsol proves %d", job, plan.Sheets, plan.LowerBound, plan.Proof, want)
		}
		if plan.Proved() {
			proved++
		}
	}
	if proved < tried*98/100 {
		t.Errorf("%d of %d proved", proved, tried)
	}
}

// Pieces narrower than a thousandth of their sheet, where places are rounded: the
// bound is not above what glpsol proves of all pieces side by side.
func TestSliversAreNotCountedTooWide(t *testing.T) {
	r := rand.New(rand.NewSource(26))
	for range 12 {
		const high = 1009
		sheet := cutting.Sheet{Width: 1_000_000 + r.Int63n(1000), Height: high, Cost: 1, Stock: cutting.Unlimited}
		sliver := cutting.Piece{Width: 300 + r.Int63n(600), Height: high, Count: 2000 + r.Int63n(6000)}
		strip := cutting.Piece{Width: 5003 + r.Int63n(300_000), Height: high, Count: 1 + r.Int63n(12)}
		job := cutting.Job{Sheets: []cutting.Sheet{sheet}, Pieces: []cutting.Piece{sliver, strip}}
		var ways [][]int64
		for n := int64(0); n*strip.Width <= sheet.Width; n++ {
			ways = append(ways, []int64{(sheet.Width - n*strip.Width) / sliver.Width, n})
		}
		want := provedBy(t, job, ways)
		plan, err := cutting.Fewest(stoppedAfter(2000), job, nil)
		if err != nil {
			t.Fatal(err)
		}
		if plan.LowerBound > want || plan.Cost < want || plan.Proved() && plan.Cost != want {
			t.Errorf("%+v: %d sheets, bound %d, proof %q; glpsol proves %d", job, plan.Cost, plan.LowerBound, plan.Proof, want)
		}
		c := plan.Certificate
		for _, w := range ways {
			if held := w[0]*c.Weights[0] + w[1]*c.Weights[1]; held > c.Best[0] {
				t.Errorf("%+v: a sheet holds %d of weight, the certificate says %d", job, held, c.Best[0])
				break
			}
		}
	}
}
