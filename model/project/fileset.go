package project

import (
	"errors"
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

// FileSet writes files that belong together into one folder, each wholly or not
// at all. No two of them get the same name.
type FileSet struct {
	folder string
	taken  map[string]bool
}

// FilesIn is a set that goes into a folder, which is made when the first file is
// written.
func FilesIn(folder string) *FileSet { return &FileSet{folder, map[string]bool{}} }

// Write writes one file, called by a text of any letters and an ending of our own,
// and returns its path. A file of that name from another day is replaced. Every
// error is a [*Problem], and what was there is then still there.
func (s *FileSet) Write(text, ending string, data []byte) (path string, err error) {
	path = filepath.Join(s.folder, s.name(text, ending))
	if err := os.MkdirAll(s.folder, 0o777); err != nil {
		return "", noFolderThere(path, err)
	}
	return path, WriteFile(path, data)
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
