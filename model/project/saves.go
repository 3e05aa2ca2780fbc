package project

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"time"

	"grainwise/assets/words"
)

// Saves saves projects so that nobody's work is written over unseen: two
// windows never save one file at the same time, a file that has changed since
// it was read is left as it is, and what a save replaces is kept. It needs a
// folder of the program's own; without one the first and the last fall away,
// for nothing of this may keep a maker from saving.
type Saves struct{ folder string }

// SavesIn keeps locks and earlier saves in a folder, which is made when needed.
func SavesIn(folder string) Saves { return Saves{folder} }

// Changed is why a file was not saved: it is not as it was read.
type Changed struct {
	File string
	Now  Stamp
}

// Error is one line: file, reason.
func (c *Changed) Error() string {
	return oneLine(c.File + ": " + words.Say("project.changed"))
}

// Open reads a project and says what its file held.
func (s Saves) Open(path string) (Project, Stamp, error) {
	data, problem := readFile(path)
	if problem != nil {
		return Project{}, Stamp{}, problem
	}
	p, err := Decode(data, path)
	return p, stampOf(data), err
}

// Save writes the project to a file that held last when it was read or written;
// a file that is gone is made anew. The error is a [*Changed] or a [*Problem],
// and then the file is as it was.
func (s Saves) Save(path string, p Project, last Stamp) (Stamp, error) {
	data, err := p.encodeWhole(path)
	if err != nil {
		return Stamp{}, err
	}
	alone, err := s.alone(path)
	if err != nil {
		return Stamp{}, err
	}
	defer alone()
	next := stampOf(data)
	there, problem := readFile(path)
	switch {
	case problem == nil && stampOf(there) == next:
		return next, nil
	case problem == nil && isNewer(there):
		return Stamp{}, &Problem{Kind: Unwritable, File: path, Reason: words.Say("project.newerThere")}
	case problem == nil && stampOf(there) != last:
		return Stamp{}, &Changed{path, stampOf(there)}
	case problem == nil:
		_ = s.keep(path, there, modified(path)) // where it cannot be kept, saving comes first
	case !errors.Is(problem, fs.ErrNotExist):
		problem.Kind = Unwritable
		return Stamp{}, problem
	}
	if err := WriteFile(path, data); err != nil {
		return Stamp{}, err
	}
	return next, nil
}

// isNewer tells a file that a later version of this program has written.
func isNewer(data []byte) bool {
	_, err := Decode(data, "")
	var problem *Problem
	return errors.As(err, &problem) && problem.Kind == Newer
}

// patience is how long a save waits for that of another window.
const patience = 3 * time.Second

// alone waits until no other window saves to the file.
func (s Saves) alone(path string) (release func(), err error) {
	folder := filepath.Join(s.folder, "saving")
	if s.folder == "" || os.MkdirAll(folder, 0o700) != nil {
		return func() {}, nil
	}
	name := filepath.Join(folder, identity(path)+lockEnding)
	for end := time.Now().Add(patience); ; time.Sleep(5 * time.Millisecond) {
		held, err := hold(name)
		switch {
		case err == nil:
			return held.remove, nil
		case !errors.Is(err, errHeld):
			return func() {}, nil
		case time.Now().After(end):
			return nil, &Problem{Kind: Unwritable, File: path, Reason: words.Say("project.beingSaved")}
		}
	}
}

// identity is a name for a file wherever it is reached from: its last part, as
// far as every system can hold it, and a sum of the whole.
func identity(path string) string {
	if absolute, err := filepath.Abs(path); err == nil {
		path = absolute
	}
	if real, err := filepath.EvalSymlinks(path); err == nil {
		path = real
	} else if folder, err := filepath.EvalSymlinks(filepath.Dir(path)); err == nil {
		path = filepath.Join(folder, filepath.Base(path))
	}
	if runtime.GOOS == "windows" || runtime.GOOS == "darwin" {
		path = strings.ToLower(path) // names there differ by more than capitals
	}
	plain := strings.Map(func(r rune) rune {
		if r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' || r >= '0' && r <= '9' {
			return r
		}
		return '-'
	}, strings.TrimSuffix(filepath.Base(path), filepath.Ext(path)))
	sum := sha256.Sum256([]byte(path))
	return fmt.Sprintf("%.32s-%s", plain, hex.EncodeToString(sum[:8]))
}

// SameFile tells whether two paths lead to one file.
func SameFile(a, b string) bool { return a != "" && b != "" && identity(a) == identity(b) }
