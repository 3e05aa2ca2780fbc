//go:build !windows

package project

import (
	"errors"
	"syscall"
)

// openElsewhere tells whether a file cannot be replaced since another program
// has it. Here open files can be; a mount or a running program cannot.
func openElsewhere(err error) bool {
	return errors.Is(err, syscall.EBUSY) || errors.Is(err, syscall.ETXTBSY)
}
