package cutting

import "math/bits"

// vector holds how many pieces of each kind a part gives, packed side by side,
// each count with a guard bit above it, so that vectors are added, compared and
// hashed a word at a time.
type vector [4]uint64

// packing says where each kind's count lies.
type packing struct {
	word, shift []int
	mask        []uint64
	guards      vector
	most        []int64 // by kind: no more are counted than this
	tight       []int   // kinds of which a sheet can hold more than are counted
}

// newPacking packs counts that stay below holds, and are not counted beyond
// most. False where they do not fit in a vector.
func newPacking(holds, most []int64) (packing, bool) {
	p := packing{
		word: make([]int, len(holds)), shift: make([]int, len(holds)),
		mask: make([]uint64, len(holds)), most: most,
	}
	word, shift := 0, 0
	for k, hold := range holds {
		// A sum of two counts is clipped after it is added.
		width := bits.Len64(uint64(hold)) + 1
		if width > 32 {
			return packing{}, false
		}
		if shift+width > 64 {
			word, shift = word+1, 0
		}
		if word == len(vector{}) {
			return packing{}, false
		}
		p.word[k], p.shift[k], p.mask[k] = word, shift, 1<<(width-1)-1
		p.guards[word] |= 1 << (shift + width - 1)
		shift += width
	}
	p.retighten(holds)
	return p, true
}

// retighten finds the kinds of which a sheet can hold more than are counted.
func (p *packing) retighten(holds []int64) {
	p.tight = p.tight[:0]
	for k, hold := range holds {
		if hold > p.most[k] {
			p.tight = append(p.tight, k)
		}
	}
}

func (p *packing) one(kind int) vector {
	var v vector
	v[p.word[kind]] = 1 << p.shift[kind]
	return v
}

func (p *packing) count(v *vector, kind int) int64 {
	return int64(v[p.word[kind]] >> p.shift[kind] & p.mask[kind])
}

// add sums two vectors and clips what is over the most; lost is the weight so
// cut off.
func (p *packing) add(a, b *vector, weights []int64) (sum vector, lost int64) {
	for w := range sum {
		sum[w] = a[w] + b[w]
	}
	for _, k := range p.tight {
		if over := p.count(&sum, k) - p.most[k]; over > 0 {
			sum[p.word[k]] -= uint64(over) << p.shift[k]
			lost += over * weights[k]
		}
	}
	return sum, lost
}

// covers says whether a has at least as many of every kind as b.
func (p *packing) covers(a, b *vector) bool {
	for w, g := range p.guards {
		if ((a[w]|g)-b[w])&g != g {
			return false
		}
	}
	return true
}

// counts unpacks a vector.
func (p *packing) counts(v *vector) []int64 {
	counts := make([]int64, len(p.word))
	for k := range counts {
		counts[k] = p.count(v, k)
	}
	return counts
}
