package project

import (
	"cmp"
	"encoding/hex"
	"errors"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"grainwise/assets/words"
)

// How much of earlier saves is kept: so many of one file, and so much of all.
const (
	mostEarlier      = 20
	mostEarlierBytes = 30 << 20
)

// Earlier is what a file held before a save.
type Earlier struct {
	Time    time.Time // when the file was written
	Project Project
	Err     error // why it cannot be opened; then Project is empty
}

// earlierTime is a time in a name: in order, and a name on every system.
const earlierTime = "20060102T150405.000"

const earlierEnding = ".grainwise"

// Earlier lists what was kept of a file, the latest first.
func (s Saves) Earlier(path string) []Earlier {
	if s.folder == "" {
		return nil
	}
	var all []Earlier
	for _, name := range slices.Backward(namesIn(s.earlierOf(path))) {
		moment, ok := momentOf(name)
		if !ok {
			continue
		}
		p, err := Open(filepath.Join(s.earlierOf(path), name))
		all = append(all, Earlier{moment, p, err})
	}
	return all
}

// Keep puts a project among the earlier saves of a file, though it was never
// there: the file is about to be taken from elsewhere.
func (s Saves) Keep(path string, p Project, at time.Time) error {
	data, err := p.encodeWhole(path)
	if err != nil {
		return err
	}
	return s.keep(path, data, at)
}

// KeepFile puts what a file holds now among its earlier saves, whatever it is.
func (s Saves) KeepFile(path string) error {
	data, problem := readFile(path)
	if problem != nil {
		return problem
	}
	return s.keep(path, data, modified(path))
}

func noFolder() error { return errors.New(words.Say("project.noFolder")) }

func (s Saves) earlierFolder() string { return filepath.Join(s.folder, "earlier") }

func (s Saves) earlierOf(path string) string {
	return filepath.Join(s.earlierFolder(), identity(path))
}

func earlierName(at time.Time, data []byte) string {
	sum := stampOf(data).sum
	return at.UTC().Format(earlierTime) + "-" + hex.EncodeToString(sum[:4]) + earlierEnding
}

// keep writes a text among a file's earlier saves, unless it is the last of
// them already, and lets the oldest go.
func (s Saves) keep(path string, data []byte, at time.Time) error {
	if s.folder == "" {
		return unwritable(path, noFolder())
	}
	folder := s.earlierOf(path)
	name := earlierName(at, data)
	if names := namesIn(folder); len(names) > 0 && sumIn(names[len(names)-1]) == sumIn(name) {
		return nil
	}
	if err := os.MkdirAll(folder, 0o700); err != nil {
		return unwritable(folder, err)
	}
	if err := WriteFile(filepath.Join(folder, name), data); err != nil {
		return err
	}
	s.trim(folder, name)
	return nil
}

// trim lets the oldest go: of one file's, then of all. The one just kept stays.
func (s Saves) trim(folder, kept string) {
	names := namesIn(folder)
	for _, name := range names[:max(0, len(names)-mostEarlier)] {
		if name != kept {
			os.Remove(filepath.Join(folder, name))
		}
	}
	all, total := s.everyEarlier()
	for _, one := range all {
		if total <= mostEarlierBytes {
			return
		}
		if one.path != filepath.Join(folder, kept) && os.Remove(one.path) == nil {
			total -= one.size
			os.Remove(filepath.Dir(one.path)) // stays unless it is empty
		}
	}
}

type kept struct {
	path string
	size int64
}

// everyEarlier lists the earlier saves of all files, the oldest first.
func (s Saves) everyEarlier() (all []kept, total int64) {
	folders, _ := os.ReadDir(s.earlierFolder())
	for _, f := range folders {
		folder := filepath.Join(s.earlierFolder(), f.Name())
		for _, name := range namesIn(folder) {
			if info, err := os.Lstat(filepath.Join(folder, name)); err == nil {
				all = append(all, kept{filepath.Join(folder, name), info.Size()})
				total += info.Size()
			}
		}
	}
	slices.SortStableFunc(all, func(a, b kept) int { return cmp.Compare(filepath.Base(a.path), filepath.Base(b.path)) })
	return all, total
}

// namesIn are the earlier saves in a folder, the oldest first.
func namesIn(folder string) (names []string) {
	entries, _ := os.ReadDir(folder) // in order of their names
	for _, e := range entries {
		if _, ok := momentOf(e.Name()); ok {
			names = append(names, e.Name())
		}
	}
	return names
}

func momentOf(name string) (time.Time, bool) {
	text, _, ok := strings.Cut(name, "-")
	moment, err := time.Parse(earlierTime, text)
	return moment, ok && err == nil && strings.HasSuffix(name, earlierEnding)
}

func sumIn(name string) string {
	_, sum, _ := strings.Cut(name, "-")
	return sum
}
