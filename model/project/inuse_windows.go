package project

import (
	"errors"
	"os"

	"golang.org/x/sys/windows"
)

// openElsewhere tells whether a file cannot be replaced since another program
// has it open. A rename on to an open file may also be refused as access denied,
// as one on to a file that may not be written is.
func openElsewhere(err error) bool {
	var rename *os.LinkError
	if errors.As(err, &rename) && errors.Is(err, windows.ERROR_ACCESS_DENIED) {
		return true
	}
	return errors.Is(err, windows.ERROR_SHARING_VIOLATION) || errors.Is(err, windows.ERROR_LOCK_VIOLATION) ||
		errors.Is(err, windows.ERROR_USER_MAPPED_FILE)
}
