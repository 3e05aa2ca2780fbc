//go:build unix

package project

import (
	"errors"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
)

func TestDraftsOfDeadProgramsAreSwept(t *testing.T) {
	file := filepath.Join(t.TempDir(), "book.json")
	dead := exec.Command("true")
	if err := dead.Run(); err != nil {
		t.Fatal(err)
	}
	litter := filepath.Join(filepath.Dir(file), ".book.json."+itoa(dead.Process.Pid)+"-00c0ffee"+draftEnding)
	living := filepath.Join(filepath.Dir(file), ".book.json."+itoa(os.Getppid())+"-00c0ffee"+draftEnding)
	for _, name := range []string{litter, living} {
		if err := os.WriteFile(name, []byte("{"), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	if err := Save(file, version(1)); err != nil {
		t.Fatal(err)
	}
	if _, err := os.Stat(litter); !os.IsNotExist(err) {
		t.Error("the draft of a program that has gone is still there")
	}
	if _, err := os.Stat(living); err != nil {
		t.Error("the draft of a running program is gone")
	}
}

// The disk is full after 2000 bytes: the old file stays, nothing else does.
func TestFullDisk(t *testing.T) {
	for _, there := range []bool{true, false} {
		file := filepath.Join(t.TempDir(), "book.json")
		if there {
			if err := Save(file, version(1)); err != nil {
				t.Fatal(err)
			}
		}
		out, err := child(t, "full", file).Output()
		if err == nil || !strings.Contains(string(out), "too large") || !strings.Contains(string(out), file) {
			t.Fatalf("saving to a full disk: %v, said %q", err, out)
		}
		onlyFile(t, file)
		if there && whole(t, file) != 1 {
			t.Error("the old file has changed")
		}
		if _, err := os.Stat(file); !there && !os.IsNotExist(err) {
			t.Error("half a file is there")
		}
	}
}

// The same where the system says that no space is left, at any byte.
func TestNoSpaceLeft(t *testing.T) {
	file := filepath.Join(t.TempDir(), "book.json")
	if err := Save(file, version(1)); err != nil {
		t.Fatal(err)
	}
	for _, some := range []string{"", "{", strings.Repeat("x", 100_000)} {
		err := writeWith(file, func(w io.Writer) error {
			if _, err := io.WriteString(w, some); err != nil {
				return err
			}
			return syscall.ENOSPC
		})
		var problem *Problem
		if !errors.As(err, &problem) || problem.Kind != Unwritable || !errors.Is(err, syscall.ENOSPC) ||
			!strings.Contains(err.Error(), "no space left") {
			t.Errorf("%v", err)
		}
		if whole(t, file) != 1 {
			t.Error("the old file has changed")
		}
		onlyFile(t, file)
	}
}

// A user who may not write there changes nothing.
func TestFolderThatMayNotBeWritten(t *testing.T) {
	folder := t.TempDir()
	file := filepath.Join(folder, "book.json")
	if err := Save(file, version(1)); err != nil {
		t.Fatal(err)
	}
	if err := os.Chmod(folder, 0o555); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { os.Chmod(folder, 0o755) })
	command := child(t, "nobody", file)
	command.Path = reachable(t)
	out, err := command.Output()
	if err == nil || !strings.Contains(string(out), "permission denied") || !strings.Contains(string(out), file) {
		t.Fatalf("saving in a folder of another: %v, said %q", err, out)
	}
	if whole(t, file) != 1 {
		t.Error("the old file has changed")
	}
	onlyFile(t, file)
}

// reachable is a copy of this test binary that any user may start.
func reachable(t *testing.T) string {
	t.Helper()
	program, err := os.ReadFile(os.Args[0])
	if err != nil {
		t.Fatal(err)
	}
	folder, err := os.MkdirTemp("", "grainwise-test-")
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { os.RemoveAll(folder) })
	if err := os.Chmod(folder, 0o755); err != nil {
		t.Fatal(err)
	}
	name := filepath.Join(folder, "child")
	if err := os.WriteFile(name, program, 0o755); err != nil {
		t.Fatal(err)
	}
	return name
}

func TestModeAndLinksAreKept(t *testing.T) {
	folder := t.TempDir()
	real, link, chain := filepath.Join(folder, "real.json"), filepath.Join(folder, "link.json"), filepath.Join(folder, "chain.json")
	if err := Save(real, version(1)); err != nil {
		t.Fatal(err)
	}
	if err := os.Chmod(real, 0o640); err != nil {
		t.Fatal(err)
	}
	for _, l := range []struct{ to, at string }{{"real.json", link}, {link, chain}} {
		if err := os.Symlink(l.to, l.at); err != nil {
			t.Fatal(err)
		}
	}
	if err := Save(chain, version(2)); err != nil {
		t.Fatal(err)
	}
	if whole(t, real) != 2 {
		t.Error("the file behind the links was not saved")
	}
	for _, l := range []string{link, chain} {
		if info, err := os.Lstat(l); err != nil || info.Mode()&os.ModeSymlink == 0 {
			t.Errorf("%s is no link any more: %v", l, err)
		}
	}
	if info, err := os.Stat(real); err != nil || info.Mode().Perm() != 0o640 {
		t.Errorf("the mode is %v: %v", info.Mode(), err)
	}
}

// A link to a file that is not there yet makes that file; one to itself is an error.
func TestLinksThatLeadNowhere(t *testing.T) {
	folder := t.TempDir()
	link, circle := filepath.Join(folder, "link.json"), filepath.Join(folder, "circle.json")
	if err := os.Symlink("later.json", link); err != nil {
		t.Fatal(err)
	}
	if err := Save(link, version(1)); err != nil || whole(t, filepath.Join(folder, "later.json")) != 1 {
		t.Errorf("%v", err)
	}
	if err := os.Symlink("circle.json", circle); err != nil {
		t.Fatal(err)
	}
	if err := Save(circle, version(1)); err == nil {
		t.Error("a link to itself was saved to")
	}
}

// A new file has the mode that the user's mask gives, as any program's has.
func TestModeOfANewFile(t *testing.T) {
	mask := syscall.Umask(0o027)
	defer syscall.Umask(mask)
	file := filepath.Join(t.TempDir(), "book.json")
	if err := Save(file, version(1)); err != nil {
		t.Fatal(err)
	}
	if info, err := os.Stat(file); err != nil || info.Mode().Perm() != 0o640 {
		t.Errorf("the mode is %v: %v", info.Mode(), err)
	}
}
