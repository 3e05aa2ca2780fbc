package project

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/book"
)

// Favourites is the user's own formats in a file.
type Favourites struct{ path string }

// FavouritesIn keeps the favourites in a folder, which is made when the first
// one is saved.
func FavouritesIn(folder string) Favourites {
	return Favourites{filepath.Join(folder, "favourites.json")}
}

// ErrTaken is within the error of Save and Rename when a favourite of that name
// is there and was not to be replaced.
var ErrTaken = errors.New("name taken")

// List reads the favourites, in the order in which they were saved. A damaged
// file is set aside under another name, which the [*Problem] says; the list is
// empty from then on.
func (f Favourites) List() ([]Format, error) {
	data, problem := readFile(f.path)
	if problem != nil && errors.Is(problem, fs.ErrNotExist) {
		return nil, nil
	}
	if problem != nil {
		return nil, problem
	}
	all, problem := decodeFormats(data, f.path)
	switch {
	case problem == nil:
		return all, nil
	case problem.Kind == Newer:
		return nil, problem // whole, only not for us
	}
	return nil, setAside(f.path, "project.keptAside", problem)
}

// setAside renames a file of the program's own that cannot be read, so that
// nothing is written over it; key is of the words that say so.
func setAside(path, key string, problem *Problem) error {
	stem := strings.TrimSuffix(path, ".json")
	for i := 1; ; i++ {
		aside := fmt.Sprintf("%s.damaged-%d.json", stem, i)
		if _, err := os.Lstat(aside); err == nil {
			continue
		}
		if err := os.Rename(path, aside); err != nil {
			return unwritable(path, err)
		}
		problem.Reason = words.Say(key, words.With{
			"why": strings.TrimSuffix(problem.Reason, "."), "as": filepath.Base(aside)})
		return problem
	}
}

// Save adds a favourite. One of the same name is replaced if asked, else the
// error is [ErrTaken].
func (f Favourites) Save(format Format, replace bool) error {
	if err := f.admit(format.Name); err != nil {
		return err
	}
	if _, err := format.Apply(book.Design{}); err != nil {
		return err
	}
	all, err := f.List()
	if err != nil {
		return err
	}
	format.Yours = true
	switch i := indexOf(all, format.Name); {
	case i < 0:
		all = append(all, format)
	case !replace:
		return f.trouble("project.formatThere", ErrTaken)
	default:
		all[i] = format
	}
	return f.write(all)
}

// Rename gives a favourite another name.
func (f Favourites) Rename(from, to string) error {
	if err := f.admit(to); err != nil {
		return err
	}
	all, i, err := f.find(from)
	if err != nil {
		return err
	}
	if j := indexOf(all, to); j >= 0 && j != i {
		return f.trouble("project.formatThere", ErrTaken)
	}
	all[i].Name = to
	return f.write(all)
}

// Delete removes a favourite.
func (f Favourites) Delete(name string) error {
	all, i, err := f.find(name)
	if err != nil {
		return err
	}
	return f.write(slices.Delete(all, i, i+1))
}

func (f Favourites) find(name string) ([]Format, int, error) {
	all, err := f.List()
	if err != nil {
		return nil, 0, err
	}
	i := indexOf(all, name)
	if i < 0 {
		names := make([]string, len(all))
		for i, one := range all {
			names[i] = one.Name
		}
		return nil, 0, &Problem{Kind: Unwritable, File: f.path, Place: quoted(name),
			Reason: words.Say("project.formatGone", words.With{"names": orNothing(names)})}
	}
	return all, i, nil
}

// admit refuses a name that cannot be shown or that a built-in format has.
func (f Favourites) admit(name string) error {
	if err := checkFormatName(name); err != nil {
		return &Problem{Kind: Unwritable, File: f.path, Place: quoted(name), Reason: err.Error()}
	}
	for _, b := range builtIn() {
		if sameName(name, b.Name) || sameName(name, b.Label()) {
			return f.trouble("project.formatBuiltIn", ErrTaken)
		}
	}
	return nil
}

func (f Favourites) trouble(key string, err error) error {
	return &Problem{Kind: Unwritable, File: f.path, Reason: words.Say(key), Err: err}
}

func (f Favourites) write(all []Format) error {
	if err := os.MkdirAll(filepath.Dir(f.path), 0o777); err != nil {
		return unwritable(f.path, err)
	}
	return WriteFile(f.path, encodeFormats(all))
}

func indexOf(all []Format, name string) int {
	return slices.IndexFunc(all, func(f Format) bool { return sameName(f.Name, name) })
}

// sameName takes names that differ in capitals only for one.
func sameName(a, b string) bool { return strings.EqualFold(a, b) }
