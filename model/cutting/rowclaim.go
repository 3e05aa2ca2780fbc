package cutting

// rowClaim says of plans whose rows are upTo long at most, kerf included, that
// none is shorter than least.
type rowClaim struct{ upTo, least int64 }

// claim notes what is shown of plans with the rows offered.
func (r *rows) claim() {
	upTo := r.row * r.along.by
	if last := len(r.claims) - 1; last < 0 || r.claims[last].upTo != upTo {
		r.claims = append(r.claims, rowClaim{upTo, r.loosely()})
	}
	if !r.rounded {
		last := &r.claims[len(r.claims)-1]
		last.least = max(last.least, r.finish.lower*r.along.by)
	}
}

// loosely bounds plans of a roll whose sizes are rounded: with every piece
// rounded down, rows hold at least what they do in truth. 0 where pieces are too
// small for that.
func (r *rows) loosely() int64 {
	if !r.rounded {
		return 0
	}
	p := &problem{known: map[string]bool{}, stop: r.stop, fits: r.fits, wants: r.wants}
	l := &rows{finish: &finish{problem: p}, across: r.across, along: r.along, longest: r.longest, width: r.width, loose: true}
	for _, f := range r.fits {
		if l.rounds(r.across, f.w) == 0 || l.rounds(r.along, f.h) == 0 {
			return 0
		}
	}
	if !l.offer(r.row) {
		return 0
	}
	l.plainColumns()
	l.generate()
	return l.finish.lower * r.along.by
}

// closest is the claim to tell of a plan: that of the longest rows which shows it
// to be within one row of the longest piece, or else the one that shows most.
func (r *rows) closest(cost int64) rowClaim {
	var told rowClaim
	for _, c := range r.claims {
		c.least = min(c.least, cost)
		if c.least > told.least || cost-c.least < r.longest {
			told = c
		}
	}
	return told
}
