package project

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"math/rand/v2"
	"os"
	"path/filepath"
	"runtime"
	"strconv"
	"strings"
	"syscall"
)

// WriteFile replaces a file wholly or not at all: the text is written beside
// it, brought to the disk, then put in its place. A link is followed, the
// file's mode is kept. Every error is a [*Problem].
func WriteFile(path string, data []byte) error {
	return writeWith(path, func(w io.Writer) error {
		_, err := w.Write(data)
		return err
	})
}

// writeWith is WriteFile with the writing left to the caller.
func writeWith(path string, write func(io.Writer) error) error {
	real, err := realPath(path)
	if err != nil {
		return unwritable(path, err)
	}
	sweep(real)
	if err := replace(real, write); err != nil {
		return unwritable(path, err)
	}
	return nil
}

// realPath follows links to the file itself, which need not be there yet.
func realPath(path string) (string, error) {
	const most = 40 // links in a row, as systems limit them
	for range most {
		target, err := os.Readlink(path)
		if err != nil {
			return path, nil // no link, or not there
		}
		if !filepath.IsAbs(target) {
			target = filepath.Join(filepath.Dir(path), target)
		}
		path = target
	}
	return "", errors.New("too many links")
}

func replace(path string, write func(io.Writer) error) error {
	draft, err := drafted(path, write)
	if err != nil {
		return err
	}
	defer draft.discard()
	if err := draft.putAt(path); err != nil {
		return err
	}
	return syncFolder(filepath.Dir(path))
}

// drafted is the whole new text, on the disk and not yet in the file's place.
func drafted(path string, write func(io.Writer) error) (*draft, error) {
	mode, err := modeOf(path)
	if err != nil {
		return nil, err
	}
	d, err := newDraft(path)
	if err != nil {
		return nil, err
	}
	if err := d.fill(write, mode); err != nil {
		d.discard()
		return nil, err
	}
	return d, nil
}

// modeOf is the mode to keep, 0 for a new file.
func modeOf(path string) (fs.FileMode, error) {
	info, err := os.Stat(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return 0, nil
	case err != nil:
		return 0, err
	case !info.Mode().IsRegular():
		return 0, errors.New("not a file")
	}
	return info.Mode().Perm(), nil
}

// draft is the new text until it takes the file's place.
type draft struct {
	file *os.File
	name string // "" while the draft has no name in its folder
}

// fill writes the text and brings it to the disk.
func (d *draft) fill(write func(io.Writer) error, mode fs.FileMode) error {
	if err := write(d.file); err != nil {
		return err
	}
	if mode != 0 {
		if err := d.file.Chmod(mode); err != nil {
			return err
		}
	}
	return d.file.Sync()
}

// discard closes the draft and leaves nothing of it behind.
func (d *draft) discard() {
	d.file.Close()
	if d.name != "" {
		os.Remove(d.name)
	}
}

// namedDraft is a draft that every system can make.
func namedDraft(path string) (*draft, error) {
	name := draftName(path)
	file, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	if err != nil {
		return nil, err
	}
	return &draft{file, name}, nil
}

// putNamed renames a named draft to the file's place.
func (d *draft) putNamed(path string) error {
	if err := d.file.Close(); err != nil {
		return err
	}
	if err := os.Rename(d.name, path); err != nil {
		return err
	}
	d.name = ""
	return nil
}

// syncFolder brings the new name to the disk; systems that cannot are no worse
// off than without.
func syncFolder(path string) error {
	if runtime.GOOS == "windows" {
		return nil
	}
	folder, err := os.Open(path)
	if err != nil {
		return nil // a folder may be writable and not readable
	}
	defer folder.Close()
	if err := folder.Sync(); err != nil && !errors.Is(err, syscall.EINVAL) {
		return err
	}
	return nil
}

const draftEnding = ".saving"

// draftName is hidden, lies beside the file and names the process it is of.
func draftName(path string) string {
	name := fmt.Sprintf(".%s.%d-%08x%s", filepath.Base(path), os.Getpid(), rand.Uint32(), draftEnding)
	return filepath.Join(filepath.Dir(path), name)
}

// sweep removes drafts of this file that processes no longer running have left.
func sweep(path string) {
	sweepFolder(filepath.Dir(path), func(name string) bool { return name == filepath.Base(path) })
}

// sweepFolder does so for every file of a name that is meant.
func sweepFolder(folder string, meant func(name string) bool) {
	entries, err := os.ReadDir(folder)
	if err != nil {
		return
	}
	for _, e := range entries {
		name, pid, draft := draftOf(e.Name())
		if draft && meant(name) && !running(pid) {
			os.Remove(filepath.Join(folder, e.Name()))
		}
	}
}

// draftOf reads a name as draftName has made it.
func draftOf(draft string) (name string, pid int, ok bool) {
	rest, hidden := strings.CutPrefix(draft, ".")
	rest, ending := strings.CutSuffix(rest, draftEnding)
	dot := strings.LastIndexByte(rest, '.')
	if !hidden || !ending || dot < 0 {
		return "", 0, false
	}
	number, _, numbered := strings.Cut(rest[dot+1:], "-")
	pid, err := strconv.Atoi(number)
	return rest[:dot], pid, numbered && err == nil
}

// running tells whether a process is there.
func running(pid int) bool {
	process, err := os.FindProcess(pid)
	if err != nil {
		return false
	}
	defer process.Release()
	if runtime.GOOS == "windows" {
		return true // there, finding fails for a process that has gone
	}
	err = process.Signal(syscall.Signal(0))
	return err == nil || errors.Is(err, fs.ErrPermission)
}
