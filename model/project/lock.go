package project

import (
	"errors"
	"os"
)

// errHeld is what hold gives while another has the lock.
var errHeld = errors.New("held by another")

// lock is a file that one window holds for itself. The system lets go of it when
// the program ends, however it ends.
type lock struct {
	file *os.File
	path string
}

// hold takes a lock, or gives errHeld at once. A lock file may be removed by
// its holder, so what was locked is compared with what has that name by then.
func hold(path string) (*lock, error) {
	for range 16 {
		file, err := os.OpenFile(path, os.O_RDWR|os.O_CREATE, 0o600)
		if err != nil {
			return nil, err
		}
		if err := tryLock(file); err != nil {
			file.Close()
			return nil, err
		}
		if keepsName(file, path) {
			return &lock{file, path}, nil
		}
		file.Close()
	}
	return nil, errHeld
}

// keepsName tells whether an open file still has its name.
func keepsName(file *os.File, path string) bool {
	mine, err := file.Stat()
	if err != nil {
		return false
	}
	there, err := os.Lstat(path)
	return err == nil && os.SameFile(mine, there)
}

// release lets go and leaves the lock's file for the next.
func (l *lock) release() { l.file.Close() }

// remove lets go for good. The name goes first, so that nobody takes a lock
// that is about to lose it; afterwards it may be another's.
func (l *lock) remove() {
	gone := os.Remove(l.path) == nil
	l.file.Close()
	if !gone { // a system that removes no open file: nor will it that of another
		os.Remove(l.path)
	}
}
