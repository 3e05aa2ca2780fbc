package project

import (
	"crypto/sha256"
	"encoding/base32"
	"strings"

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

// CalendarBase is what makes the events of the project's plans its own: it follows
// from the project's name, so that a plan written again takes its events' places.
func (p Project) CalendarBase() string {
	sum := sha256.Sum256([]byte(p.Name))
	return strings.ToLower(base32.NewEncoding(crockford).WithPadding(base32.NoPadding).EncodeToString(sum[:10])) + ".grainwise"
}
