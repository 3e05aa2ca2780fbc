//go:build unix

package project

import (
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
)

// The disk is full, or the folder another's: one line says which file and why,
// the old file stays as it was, and there is nothing else.
func TestASetThatCannotBeWritten(t *testing.T) {
	for _, c := range []struct {
		task, why string
		mode      os.FileMode
	}{{"full-set", "too large", 0o777}, {"nobody-set", "permission denied", 0o555}} {
		folder := t.TempDir()
		file := filepath.Join(folder, setName+".csv")
		if err := os.WriteFile(file, []byte("old"), 0o644); err != nil {
			t.Fatal(err)
		}
		if err := os.Chmod(folder, c.mode); err != nil {
			t.Fatal(err)
		}
		t.Cleanup(func() { os.Chmod(folder, 0o755) })
		command := child(t, c.task, folder)
		command.Path = reachable(t)
		out, err := command.Output()
		if said := strings.TrimSpace(string(out)); err == nil || !strings.Contains(said, c.why) || !strings.Contains(said, file) || strings.Contains(said, "\n") {
			t.Errorf("%s: %v, said %q", c.task, err, said)
		}
		if contents(t, file) != "old" {
			t.Errorf("%s: the old file has changed", c.task)
		}
		onlyFile(t, file)
	}
}

// What another program keeps busy is said in words (POSIX: EBUSY, ETXTBSY).
func TestAFileThatIsOpenElsewhere(t *testing.T) {
	for _, err := range []error{syscall.EBUSY, syscall.ETXTBSY} {
		refusal(t, unwritable("Parts.csv", &os.LinkError{Op: "rename", Old: "a", New: "b", Err: err}), "Parts.csv", "open in another program")
	}
}
