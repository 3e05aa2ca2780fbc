package project

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"io/fs"
)

// Stamp tells the text of a file from any other; the zero Stamp is that of no
// file at all.
type Stamp struct {
	sum   [sha256.Size]byte
	there bool
}

// stampOf is the stamp of a text.
func stampOf(data []byte) Stamp { return Stamp{sha256.Sum256(data), true} }

// StampAt is the stamp of a file as it is now.
func StampAt(path string) (Stamp, error) {
	data, problem := readFile(path)
	switch {
	case problem == nil:
		return stampOf(data), nil
	case errors.Is(problem, fs.ErrNotExist):
		return Stamp{}, nil
	}
	return Stamp{}, problem
}

// OfFile tells whether there is a file.
func (s Stamp) OfFile() bool { return s.there }

// text is the stamp in letters; empty for no file.
func (s Stamp) text() string {
	if !s.there {
		return ""
	}
	return hex.EncodeToString(s.sum[:])
}

// parseStamp is the inverse of text.
func parseStamp(text string) (Stamp, bool) {
	if text == "" {
		return Stamp{}, true
	}
	sum, err := hex.DecodeString(text)
	if err != nil || len(sum) != sha256.Size {
		return Stamp{}, false
	}
	return Stamp{[sha256.Size]byte(sum), true}, true
}
