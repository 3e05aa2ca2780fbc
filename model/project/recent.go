package project

import (
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
)

// Recent is the list of the files last opened or saved, the latest first.
type Recent struct{ path string }

// mostRecent is how many files the list holds.
const mostRecent = 8

// RecentIn keeps the list in a folder, which is made when the first file is added.
func RecentIn(folder string) Recent { return Recent{filepath.Join(folder, "recent.json")} }

// List returns the files that are still there. A list that cannot be read is
// an empty one: it holds nothing that would be missed.
func (r Recent) List() []string {
	return slices.DeleteFunc(r.read(), func(path string) bool {
		info, err := os.Stat(path)
		return err != nil || !info.Mode().IsRegular()
	})
}

// Add puts a file at the head of the list.
func (r Recent) Add(path string) error {
	if absolute, err := filepath.Abs(path); err == nil {
		path = absolute
	}
	return r.write(append([]string{path}, without(r.read(), path)...))
}

// Remove takes a file off the list.
func (r Recent) Remove(path string) error { return r.write(without(r.read(), path)) }

func without(all []string, path string) []string {
	return slices.DeleteFunc(all, func(p string) bool { return p == path })
}

func (r Recent) read() []string {
	data, problem := readFile(r.path)
	var all []string
	if problem != nil || json.Unmarshal(data, &all) != nil {
		return nil
	}
	return all[:min(len(all), mostRecent)]
}

func (r Recent) write(all []string) error {
	if err := os.MkdirAll(filepath.Dir(r.path), 0o777); err != nil {
		return unwritable(r.path, err)
	}
	data, err := json.MarshalIndent(all[:min(len(all), mostRecent)], "", "  ")
	if err != nil {
		return unwritable(r.path, err)
	}
	return WriteFile(r.path, append(data, '\n'))
}
