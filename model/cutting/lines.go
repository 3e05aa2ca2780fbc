package cutting

import (
	"math"
	"slices"
)

// lines bounds the length of a roll for plans of every kind, whatever their rows
// and even where no cut goes through: any line across the roll meets pieces
// whose widths fit side by side. If no such line meets more than Best of
// weight, a piece counting weight / height while it is met, the pieces' whole
// weight needs at least weight / Best of length.
//
// Which weights show the most is the linear program of cutting bars from one
// width, solved by column generation (Gilmore and Gomory 1961).
type lines struct {
	at    []int64 // sums of widths within the roll's
	fits  []fit   // w on the places' grid, h in full
	wants []int64

	worth []int64 // by place: the most weight of a line
	last  []int   // by place: the fit laid last, −1 for what the place before has
}

// lineSteps is the width of a roll where its pieces' have too little in common.
// Pieces are rounded down, so that a line meets at least what it does in truth.
const lineSteps = 1680

func newLines(wants []int64, fits []fit, width int64) *lines {
	l := &lines{wants: wants}
	var widths []int64
	for _, f := range fits {
		if f.w <= width {
			l.fits, widths = append(l.fits, f), append(widths, f.w)
		}
	}
	at, ok := sums(width, widths)
	if !ok {
		for i, f := range l.fits {
			l.fits[i].w = int64(float64(f.w) / float64(width) * lineSteps * (1 - 1e-9))
			widths[i] = max(1, l.fits[i].w)
		}
		at, _ = sums(lineSteps, widths)
	}
	l.at, l.worth, l.last = at, make([]int64, len(at)), make([]int, len(at))
	return l
}

// lineScale bounds weights, so that a line of 2^12 pieces does not overflow.
const lineScale = float64(int64(1) << 50)

// lineRounds bounds the rounds of column generation.
const lineRounds = 200

// bound is the length that no plan undercuts, with the weights that show it:
// Best holds the most weight of a line, for a length of 1.
func (l *lines) bound(stop func() bool) (int64, Certificate) {
	longest := float64(slices.MaxFunc(l.fits, func(a, b fit) int { return int(min(max(a.h-b.h, -1), 1)) }).h)
	m := newMaster(l.demands(longest), []int64{1}, []int64{Unlimited}, stop)
	for f := range l.fits {
		m.columns = append(m.columns, l.line(slices.Repeat([]int{f}, int(l.at[len(l.at)-1]/max(1, l.fits[f].w)))))
	}
	lower, shown := int64(0), Certificate{Weights: make([]int64, len(l.wants)), Best: []int64{0}}
	for range lineRounds {
		settled := m.solve()
		c, line, better := l.weigh(m.price)
		if least, _ := bound(l.wants, c.Weights, c.Best, []int64{1}, []int64{Unlimited}, 1); least > lower {
			lower, shown = least, c
		}
		if !settled || !better || stop() {
			break
		}
		m.columns = append(m.columns, l.line(line))
	}
	common := gcd(0, shown.Best[0])
	for _, w := range shown.Weights {
		common = gcd(common, w)
	}
	return lower, Certificate{divided(shown.Weights, common), divided(shown.Best, common)}
}

// The linear program counts thousandths of the longest piece's height.
const lineParts = 1000

// demands are the heights of all pieces wanted of a kind, as its first fit lies.
func (l *lines) demands(longest float64) []int64 {
	demands := make([]int64, len(l.wants))
	for k, n := range l.wants {
		demands[k] = 1 + int64(lineParts*float64(n)*float64(l.first(k).h)/longest)
	}
	return demands
}

func (l *lines) first(kind int) fit {
	return l.fits[slices.IndexFunc(l.fits, func(f fit) bool { return f.kind == kind })]
}

// line is the linear program's column of the fits that a line meets.
func (l *lines) line(met []int) column {
	c := column{counts: make([]int64, len(l.wants))}
	for _, f := range met {
		fit := l.fits[f]
		c.counts[fit.kind] += int64(lineParts * float64(l.first(fit.kind).h) / float64(fit.h))
	}
	return c
}

// weigh turns prices into weights, and finds the line of most weight; better
// says that it is worth more than its length.
func (l *lines) weigh(prices []float64) (c Certificate, line []int, better bool) {
	top := 1e-300
	for _, f := range l.fits {
		top = max(top, prices[f.kind]*float64(l.first(f.kind).h))
	}
	each, worth := make([]int64, len(l.fits)), 0.0
	c.Weights = slices.Repeat([]int64{math.MaxInt64}, len(l.wants))
	for i, f := range l.fits {
		if f.w == 0 { // too narrow to be told from nothing: it has no weight
			c.Weights[f.kind] = 0
			continue
		}
		each[i] = int64(max(0, prices[f.kind]) * float64(l.first(f.kind).h) / top * lineScale / float64(f.h))
		c.Weights[f.kind] = min(c.Weights[f.kind], each[i]*f.h)
	}
	c.Best = []int64{l.fill(each)}
	for at := len(l.at) - 1; at > 0; {
		f := l.last[at]
		if f < 0 {
			at--
			continue
		}
		line = append(line, f)
		worth += prices[l.fits[f].kind] * float64(l.line([]int{f}).counts[l.fits[f].kind])
		at = within(l.at, l.at[at]-l.fits[f].w)
	}
	return c, line, worth > 1+1e-7
}

// fill finds the most weight of a line at every place.
func (l *lines) fill(each []int64) int64 {
	l.last[0] = -1
	for at := 1; at < len(l.at); at++ {
		l.worth[at], l.last[at] = l.worth[at-1], -1
		for f, fit := range l.fits {
			if fit.w > l.at[at] || fit.w == 0 {
				continue
			}
			if v := l.worth[within(l.at, l.at[at]-fit.w)] + each[f]; v > l.worth[at] {
				l.worth[at], l.last[at] = v, f
			}
		}
	}
	return l.worth[len(l.at)-1]
}
