package project

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"syscall"
	"unicode"

	"golang.org/x/text/unicode/norm"

	"grainwise/assets/words"
)

// FileSet writes files that belong together into one folder, all or none: a disk
// that is full at the last of them leaves those that were there as they were. No
// two of them get the same name.
type FileSet struct {
	folder string
	taken  map[string]bool
	drafts []waiting
}

// waiting is a file that is written and waits for its place.
type waiting struct {
	draft      *draft
	path, real string // as it is told, and with links followed
}

// FilesIn is a set that goes into a folder, which is made when the first file is
// written.
func FilesIn(folder string) *FileSet { return &FileSet{folder: folder, taken: map[string]bool{}} }

// Write writes one file, called by a text of any letters and an ending of our own,
// and returns the path where [FileSet.Done] puts it. Every error is a [*Problem].
func (s *FileSet) Write(text, ending string, data []byte) (path string, err error) {
	path = filepath.Join(s.folder, s.name(text, ending))
	if err := os.MkdirAll(s.folder, 0o777); err != nil {
		return "", noFolderThere(path, err)
	}
	return path, s.write(path, data)
}

func (s *FileSet) write(path string, data []byte) error {
	real, err := realPath(path)
	if err != nil {
		return unwritable(path, err)
	}
	sweep(real)
	d, err := drafted(real, func(w io.Writer) error {
		_, err := w.Write(data)
		return err
	})
	if err != nil {
		return unwritable(path, err)
	}
	s.drafts = append(s.drafts, waiting{d, path, real})
	return nil
}

// Done puts all that was written in its place. Files of their names from another
// day are replaced. Every error is a [*Problem].
func (s *FileSet) Done() error {
	defer s.Discard()
	for _, p := range s.drafts {
		if err := p.draft.putAt(p.real); err != nil {
			return unwritable(p.path, err)
		}
	}
	for _, p := range s.drafts {
		if err := syncFolder(filepath.Dir(p.real)); err != nil {
			return unwritable(p.path, err)
		}
	}
	return nil
}

// Discard leaves nothing of what has no place yet.
func (s *FileSet) Discard() {
	for _, p := range s.drafts {
		p.draft.discard()
	}
	s.drafts = nil
}

// name is the text's file name, counted on where the set has it already.
func (s *FileSet) name(text, ending string) string {
	name := FileName(text, ending)
	for n := 2; s.taken[known(name)]; n++ {
		name = FileName(text, " "+strconv.Itoa(n)+ending)
	}
	s.taken[known(name)] = true
	return name
}

// known is the same for names that some system takes for one: those that differ
// in capitals, or in how their letters are composed.
func known(name string) string {
	return norm.NFC.String(strings.Map(leastFold, norm.NFD.String(name)))
}

// leastFold is the least of the letters that differ in capitals only.
func leastFold(r rune) rune {
	least := r
	for f := unicode.SimpleFold(r); f != r; f = unicode.SimpleFold(f) {
		least = min(least, f)
	}
	return least
}

// noFolderThere says why a file's folder could not be made.
func noFolderThere(path string, err error) *Problem {
	p := unwritable(path, err)
	var at *fs.PathError
	if errors.As(err, &at) && errors.Is(err, syscall.ENOTDIR) {
		p.Reason = words.Say("project.folderIsFile", words.With{"folder": at.Path})
	}
	return p
}
