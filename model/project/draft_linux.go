package project

import (
	"os"
	"path/filepath"
	"strconv"

	"golang.org/x/sys/unix"
)

// ownFiles is where a process finds its open files by number.
const ownFiles = "/proc/self/fd"

// newDraft has no name until it is complete, so that a killed program leaves
// nothing behind; file systems that know no nameless files get a named draft.
func newDraft(path string) (*draft, error) {
	if _, err := os.Stat(ownFiles); err != nil {
		return namedDraft(path) // no way to name it later
	}
	fd, err := unix.Open(filepath.Dir(path), unix.O_WRONLY|unix.O_TMPFILE|unix.O_CLOEXEC, 0o666)
	if err != nil {
		return namedDraft(path)
	}
	return &draft{file: os.NewFile(uintptr(fd), path)}, nil
}

// putAt gives a nameless draft its name and renames it at once: a link cannot
// replace a file, a rename can.
func (d *draft) putAt(path string) error {
	if d.name == "" {
		name := draftName(path)
		nameless := filepath.Join(ownFiles, strconv.Itoa(int(d.file.Fd())))
		if err := unix.Linkat(unix.AT_FDCWD, nameless, unix.AT_FDCWD, name, unix.AT_SYMLINK_FOLLOW); err != nil {
			return &os.LinkError{Op: "link", Old: nameless, New: name, Err: err}
		}
		d.name = name
	}
	return d.putNamed(path)
}
