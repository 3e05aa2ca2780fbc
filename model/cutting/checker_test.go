package cutting_test

import (
	"fmt"
	"math/big"

	"grainwise/model/cutting"
)

// What follows knows nothing of the planner: it looks at an answer as a stranger
// would.

// box is a piece as it lies, without kerf.
type box struct {
	kind       int
	x, y, w, h int64
}

// boxes walks a tree, and says where it contradicts itself: parts that do not
// lie beside each other in their whole, with the kerf between them.
func boxes(p cutting.Part, kerf int64) (all []box, err error) {
	err = gather(p, kerf, &all)
	return all, err
}

func gather(p cutting.Part, kerf int64, all *[]box) error {
	if p.Width < 0 || p.Height < 0 {
		return fmt.Errorf("a part of %d × %d", p.Width, p.Height)
	}
	if p.Cut == "" {
		if p.Piece == cutting.Waste {
			return nil
		}
		*all = append(*all, box{p.Piece, p.X, p.Y, p.Width, p.Height})
		return nil
	}
	a, b := p.Parts[0], p.Parts[1]
	right, top := p.X+p.Width, p.Y+p.Height
	switch p.Cut {
	case cutting.Vertical:
		if a.X != p.X || a.X+a.Width != p.At || !beyond(b.X, p.At, p.X, right, kerf) || b.X+b.Width != right {
			return fmt.Errorf("a vertical cut at %d divides %d…%d into %d…%d and %d…%d", p.At, p.X, right, a.X, a.X+a.Width, b.X, b.X+b.Width)
		}
		if a.Y != p.Y || b.Y != p.Y || a.Height != p.Height || b.Height != p.Height {
			return fmt.Errorf("a vertical cut does not go through")
		}
	case cutting.Horizontal:
		if a.Y != p.Y || a.Y+a.Height != p.At || !beyond(b.Y, p.At, p.Y, top, kerf) || b.Y+b.Height != top {
			return fmt.Errorf("a horizontal cut at %d divides %d…%d into %d…%d and %d…%d", p.At, p.Y, top, a.Y, a.Y+a.Height, b.Y, b.Y+b.Height)
		}
		if a.X != p.X || b.X != p.X || a.Width != p.Width || b.Width != p.Width {
			return fmt.Errorf("a horizontal cut does not go through")
		}
	default:
		return fmt.Errorf("a cut %q", p.Cut)
	}
	for _, part := range p.Parts {
		if err := gather(part, kerf, all); err != nil {
			return err
		}
	}
	return nil
}

// beyond says whether what follows a cut begins a kerf behind it, or less where
// the kerf runs off an edge.
func beyond(begin, cut, edge, end, kerf int64) bool {
	return begin == min(cut+kerf, end) || cut == edge && begin > cut && begin < cut+kerf
}

// cuttable says whether boxes can be set free by cuts from edge to edge: found
// anew from where they lie, without the planner's tree.
func cuttable(all []box, kerf int64) bool {
	if len(all) <= 1 {
		return true
	}
	for _, lower := range []func(box) (int64, int64){
		func(b box) (int64, int64) { return b.x, b.x + b.w },
		func(b box) (int64, int64) { return b.y, b.y + b.h },
	} {
		for _, at := range all {
			_, cut := lower(at)
			var before, after []box
			through := true
			for _, b := range all {
				switch from, to := lower(b); {
				case to <= cut:
					before = append(before, b)
				case from >= cut+kerf:
					after = append(after, b)
				default:
					through = false
				}
			}
			if through && len(after) > 0 {
				// A cut that goes through never spoils another: no need to try the rest.
				return cuttable(before, kerf) && cuttable(after, kerf)
			}
		}
	}
	return false
}

// faults looks a plan over.
func faults(job cutting.Job, plan cutting.Plan) error {
	made := make([]int64, len(job.Pieces))
	used := make([]int64, len(job.Sheets))
	var sheets, cost int64
	for i, l := range plan.Layouts {
		s := job.Sheets[l.Sheet]
		if l.Times < 1 || l.Root.X != 0 || l.Root.Y != 0 || l.Root.Width != s.Width || l.Root.Height != s.Height {
			return fmt.Errorf("layout %d: %d times %+v", i, l.Times, l.Root)
		}
		all, err := boxes(l.Root, job.Kerf)
		if err != nil {
			return fmt.Errorf("layout %d: %w", i, err)
		}
		if err := fits(job, s, all); err != nil {
			return fmt.Errorf("layout %d: %w", i, err)
		}
		if !cuttable(all, job.Kerf) {
			return fmt.Errorf("layout %d cannot be cut edge to edge: %v", i, all)
		}
		for _, b := range all {
			made[b.kind] += l.Times
		}
		used[l.Sheet] += l.Times
		sheets, cost = sheets+l.Times, cost+l.Times*s.Cost
	}
	for i, s := range job.Sheets {
		if s.Stock != cutting.Unlimited && used[i] > s.Stock {
			return fmt.Errorf("%d sheets of size %d, there are %d", used[i], i, s.Stock)
		}
	}
	if err := madeAsSaid(job, plan, made); err != nil {
		return err
	}
	if sheets != plan.Sheets || cost != plan.Cost {
		return fmt.Errorf("%d sheets for %d, said to be %d for %d", sheets, cost, plan.Sheets, plan.Cost)
	}
	if plan.LowerBound > plan.Cost || plan.Proved() != (plan.LowerBound == plan.Cost) {
		return fmt.Errorf("cost %d, bound %d, proof %q", plan.Cost, plan.LowerBound, plan.Proof)
	}
	return nil
}

// madeAsSaid compares what the layouts give with what the plan says and what is
// wanted.
func madeAsSaid(job cutting.Job, plan cutting.Plan, made []int64) error {
	for k, p := range job.Pieces {
		if made[k] != plan.Made[k] || made[k] < p.Count {
			return fmt.Errorf("%d pieces of kind %d, said to be %d, wanted %d", made[k], k, plan.Made[k], p.Count)
		}
	}
	return nil
}

// fits says whether pieces lie within the lost strips, apart by the kerf, of
// their own size and turned only where they may be.
func fits(job cutting.Job, s cutting.Sheet, all []box) error {
	for i, b := range all {
		p := job.Pieces[b.kind]
		upright, turned := b.w == p.Width && b.h == p.Height, p.Turn && b.w == p.Height && b.h == p.Width
		if !upright && !turned {
			return fmt.Errorf("a piece of kind %d lies as %d × %d, it is %d × %d, turn %v", b.kind, b.w, b.h, p.Width, p.Height, p.Turn)
		}
		if b.x < s.Trim.Left || b.y < s.Trim.Bottom || b.x+b.w > s.Width-s.Trim.Right || b.y+b.h > s.Height-s.Trim.Top {
			return fmt.Errorf("%+v lies in the lost strips", b)
		}
		for _, o := range all[:i] {
			if b.x < o.x+o.w+job.Kerf && o.x < b.x+b.w+job.Kerf && b.y < o.y+o.h+job.Kerf && o.y < b.y+b.h+job.Kerf {
				return fmt.Errorf("%+v and %+v are not apart", b, o)
			}
		}
	}
	return nil
}

// heaviest is the greatest weight that a rectangle can give: the plainest of
// dynamic programs, every line of the grid a place to cut, for small sheets.
func heaviest(job cutting.Job, weights []int64, width, height int64) int64 {
	best := make([][]int64, width+1)
	for x := range best {
		best[x] = make([]int64, height+1)
	}
	for x := int64(1); x <= width; x++ {
		for y := int64(1); y <= height; y++ {
			top := int64(0)
			for k, p := range job.Pieces {
				if p.Width+job.Kerf <= x && p.Height+job.Kerf <= y || p.Turn && p.Height+job.Kerf <= x && p.Width+job.Kerf <= y {
					top = max(top, weights[k])
				}
			}
			for z := int64(1); z <= x/2; z++ {
				top = max(top, best[z][y]+best[x-z][y])
			}
			for z := int64(1); z <= y/2; z++ {
				top = max(top, best[x][z]+best[x][y-z])
			}
			best[x][y] = top
		}
	}
	return best[width][height]
}

// untrue says what is wrong with a certificate: its best weights must be those
// of the plain dynamic program, and a proof by it must follow from them.
func untrue(job cutting.Job, plan cutting.Plan) error {
	c := plan.Certificate
	most := int64(0)
	for i, s := range job.Sheets {
		width := s.Width - s.Trim.Left - s.Trim.Right + job.Kerf
		height := s.Height - s.Trim.Top - s.Trim.Bottom + job.Kerf
		if got := heaviest(job, c.Weights, width, height); got != c.Best[i] {
			return fmt.Errorf("sheet %d holds a weight of %d, said to be %d, of %v", i, got, c.Best[i], c.Weights)
		}
		most = max(most, c.Best[i])
	}
	most = max(most, 1)
	if plan.Proof != cutting.ByCertificate || len(job.Sheets) > 1 {
		return nil
	}
	sum := new(big.Int)
	for k, p := range job.Pieces {
		sum.Add(sum, new(big.Int).Mul(big.NewInt(p.Count), big.NewInt(c.Weights[k])))
	}
	need := new(big.Int).Add(sum, big.NewInt(most-1))
	if need.Quo(need, big.NewInt(most)).Cmp(big.NewInt(plan.Sheets)) != 0 {
		return fmt.Errorf("the certificate shows %v sheets, the plan has %d", need, plan.Sheets)
	}
	return nil
}
