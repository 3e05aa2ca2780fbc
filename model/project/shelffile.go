package project

import (
	"bytes"
	"crypto/sha256"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"time"

	"grainwise/assets/words"
	"grainwise/model/stock"
)

// The name and version of a shelf's file.
const (
	shelfFormat  = "grainwise-shelf"
	shelfVersion = 1
)

// ShelfFile keeps the maker's own shelf in a file, and its photographs in a
// folder beside it.
type ShelfFile struct{ path string }

// ShelfIn keeps it in the program's own folder, which is made when it is first
// saved.
func ShelfIn(folder string) ShelfFile { return ShelfAt(filepath.Join(folder, "materials.json")) }

// ShelfAt keeps it in a file that is named.
func ShelfAt(path string) ShelfFile { return ShelfFile{path} }

// Read reads the shelf; without a file it is the one that ships with the
// program. A damaged file is set aside under another name, which the [*Problem]
// says.
func (f ShelfFile) Read() (stock.Shelf, error) {
	data, problem := readFile(f.path)
	if problem != nil && errors.Is(problem, fs.ErrNotExist) {
		return stock.Default(), nil
	}
	if problem != nil {
		return stock.Default(), problem
	}
	shelf, problem := decodeShelf(data, f.path)
	switch {
	case problem == nil:
		return shelf, nil
	case problem.Kind == Newer:
		return stock.Default(), problem // whole, only not for us
	}
	return stock.Default(), setAside(f.path, "project.shelfAside", problem)
}

// Open reads the shelf as it stands; without a file that is an error too, and
// nothing is set aside.
func (f ShelfFile) Open() (stock.Shelf, error) {
	data, problem := readFile(f.path)
	if problem != nil {
		return stock.Shelf{}, problem
	}
	shelf, problem := decodeShelf(data, f.path)
	if problem != nil {
		return stock.Shelf{}, problem
	}
	return shelf, nil
}

// Change brings what was changed between two shelves to the file, wholly or not
// at all, and returns the shelf that it holds then: what another window has put
// there meanwhile stays. One writer at a time has the file.
func (f ShelfFile) Change(from, to stock.Shelf) (stock.Shelf, error) {
	if err := os.MkdirAll(filepath.Dir(f.path), 0o777); err != nil {
		return from, unwritable(f.path, err)
	}
	held, err := f.hold()
	if err != nil {
		return from, err
	}
	defer held.remove()
	now, err := f.Read()
	if err != nil {
		return from, err
	}
	shelf := now.Merge(from, to)
	data, err := f.encode(shelf)
	if err != nil {
		return from, err
	}
	return shelf, WriteFile(f.path, data)
}

// shelfPatience is how long another writer is waited for.
const shelfPatience = 2 * time.Second

func (f ShelfFile) hold() (*lock, error) {
	const pause = 20 * time.Millisecond
	for waited := time.Duration(0); ; waited += pause {
		held, err := hold(f.path + ".lock")
		switch {
		case err == nil:
			return held, nil
		case !errors.Is(err, errHeld) || waited >= shelfPatience:
			return nil, unwritable(f.path, err)
		}
		time.Sleep(pause)
	}
}

// encode writes a shelf, one material a line, and refuses what would not open
// again.
func (f ShelfFile) encode(shelf stock.Shelf) ([]byte, error) {
	lines, err := shelfLines(Project{Shelf: shelf})
	if err != nil {
		return nil, unwritable(f.path, err)
	}
	var b bytes.Buffer
	fmt.Fprintf(&b, "{\n  \"format\": %s,\n  \"version\": %d,\n", jsonText(shelfFormat), shelfVersion)
	fmt.Fprintf(&b, "  \"materials\": %s\n}\n", block("[]", lines))
	again, problem := decodeShelf(b.Bytes(), f.path)
	switch {
	case problem != nil:
		problem.Kind = Unwritable
		return nil, problem
	case b.Len() > largest || !again.Equal(shelf):
		return nil, &Problem{Kind: Unwritable, File: f.path, Reason: words.Say("project.unholdable")}
	}
	return b.Bytes(), nil
}

func decodeShelf(data []byte, file string) (stock.Shelf, *Problem) {
	s := source{file, bytes.TrimPrefix(data, byteOrderMark)}
	entries, problem := s.readWhole()
	if problem == nil {
		problem = s.identify(entries, shelfFormat, shelfVersion)
	}
	if problem == nil {
		problem = s.known(entries, "format", "version", "materials")
	}
	if problem != nil {
		return stock.Shelf{}, problem
	}
	i := slices.IndexFunc(entries, func(f field) bool { return f.name == "materials" })
	if i < 0 {
		return stock.Shelf{}, s.damaged(0, "materials", words.Say("project.want.list"))
	}
	return s.materials(entries[i])
}

// ImportMaterials reads materials from a CSV file, all of them or none. The
// [*Problem] names line and column.
func ImportMaterials(path string) ([]stock.Material, error) {
	data, problem := readFile(path)
	if problem != nil {
		return nil, problem
	}
	all, err := stock.DecodeCSV(data, path)
	var wrong *stock.Fault
	if errors.As(err, &wrong) {
		return nil, &Problem{Kind: Damaged, File: path, Place: wrong.Inner(path), Reason: wrong.Text}
	}
	return all, err
}

// photographs is the folder of the pictures.
func (f ShelfFile) photographs() string { return filepath.Join(filepath.Dir(f.path), "photographs") }

// KeepPhoto keeps a picture that a JPEG file holds and returns its name, which
// is made from what it holds: the same picture is kept once. No picture is ever
// removed, since projects name them too.
func (f ShelfFile) KeepPhoto(jpeg []byte) (name string, err error) {
	sum := sha256.Sum256(jpeg)
	name = fmt.Sprintf("%x.jpg", sum[:16])
	path := f.Photo(name)
	if _, err := os.Stat(path); err == nil {
		return name, nil
	}
	if err := os.MkdirAll(f.photographs(), 0o777); err != nil {
		return "", unwritable(path, err)
	}
	return name, WriteFile(path, jpeg)
}

// Photo is the file of a picture, which need not be there.
func (f ShelfFile) Photo(name string) string { return filepath.Join(f.photographs(), name) }
