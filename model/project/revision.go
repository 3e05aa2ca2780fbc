package project

import (
	"crypto/sha256"
	"encoding/base32"

	"grainwise/model/batch"
)

// crockford leaves out the letters that are read as others (Douglas Crockford,
// Base 32).
const crockford = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"

// Revision is a short mark of what the maker has decided and measured: papers of
// one design carry the same, and another as soon as anything differs that a piece
// is cut by.
func (p Project) Revision() string {
	p.Name, p.Notes, p.Accepted, p.Batch = "", "", nil, batch.Batch{}
	data, err := p.Encode()
	if err != nil {
		return ""
	}
	sum := sha256.Sum256(data)
	return base32.NewEncoding(crockford).EncodeToString(sum[:5])[:5]
}
