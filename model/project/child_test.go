//go:build unix

package project

import (
	"fmt"
	"os"
	"os/exec"
	"os/signal"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"grainwise/model/measure"
)

// child starts this test binary again to do one thing with one file.
func child(t *testing.T, task, file string) *exec.Cmd {
	t.Helper()
	command := exec.Command(os.Args[0])
	command.Env = append(os.Environ(), childVariable+"="+task+" "+file)
	return command
}

func runChild(child string) int {
	task, file, _ := strings.Cut(child, " ")
	task, set := strings.CutSuffix(task, "-set")
	switch task {
	case "keep":
		return keepOn(file)
	case "full":
		// A file may grow no further than this: the disk is full there.
		signal.Ignore(syscall.SIGXFSZ)
		if err := syscall.Setrlimit(syscall.RLIMIT_FSIZE, &syscall.Rlimit{Cur: 2000, Max: 2000}); err != nil {
			fmt.Println(err)
			return 1
		}
	case "nobody":
		if err := syscall.Setuid(65534); err != nil && os.Geteuid() == 0 {
			fmt.Println(err)
			return 1
		}
	}
	save := func() error { return Save(file, version(2)) }
	if set {
		save = func() error { return writeSet(file) }
	}
	if err := save(); err != nil {
		fmt.Println(err)
		return 2
	}
	return 0
}

// setName is what a child's file of a set is called.
const setName = "Parts"

func writeSet(folder string) error {
	s := FilesIn(folder)
	defer s.Discard()
	if _, err := s.Write(setName, ".csv", make([]byte, 100_000)); err != nil {
		return err
	}
	return s.Done()
}

// version is a project that tells by its copies, its name and its notes which
// of many it is.
func version(copies int) Project {
	p := New(measure.Metric)
	p.Name = fmt.Sprint("version ", copies)
	p.Notes = strings.Repeat(p.Name+" ", 200)
	if err := p.Set("copies", fmt.Sprint(copies), measure.Metric); err != nil {
		panic(err)
	}
	return p
}

// onlyFile refuses anything in a folder beside the file.
func onlyFile(t *testing.T, file string) {
	t.Helper()
	entries, err := os.ReadDir(filepath.Dir(file))
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		if e.Name() != filepath.Base(file) {
			t.Errorf("%s is left in the folder", e.Name())
		}
	}
}

// whole refuses a file that is not one of the versions.
func whole(t *testing.T, file string) int {
	t.Helper()
	p, err := Open(file)
	if err != nil {
		t.Fatal(err)
	}
	if !p.Equal(version(p.Decisions.Design.Copies)) {
		t.Fatalf("%s is a mixture", p.Name)
	}
	return p.Decisions.Design.Copies
}
