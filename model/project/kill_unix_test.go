//go:build unix

package project

import (
	"bufio"
	"fmt"
	"io"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strconv"
	"testing"
	"time"
)

// killsVariable sets how often programs are killed; the promise is of 1000.
const (
	killsVariable = "GRAINWISE_KILLS"
	fewKills      = 100
)

// Programs that save and keep unsaved work as fast as they can, two at a time
// and each with something else to do beside it, are killed at random moments. Each says what it has saved once saving has
// come back. After every kill the file is whole and holds what was said last,
// or the one that was on its way; so does the unsaved work.
func TestKilledWhileSaving(t *testing.T) {
	const lanes = 4
	kills := fewKills
	if testing.Short() { // under the race detector
		kills = fewKills / 10
	}
	if n, err := strconv.Atoi(os.Getenv(killsVariable)); err == nil {
		kills = n
	}
	for lane := range lanes {
		t.Run(fmt.Sprint(lane), func(t *testing.T) {
			t.Parallel()
			random := rand.New(rand.NewPCG(26, uint64(lane)))
			file := filepath.Join(inMemory(t), "book.json")
			if err := Save(file, version(1)); err != nil {
				t.Fatal(err)
			}
			moments := map[string]int{}
			for range kills / lanes {
				killOnce(t, file, time.Duration(random.IntN(6_000))*time.Microsecond, moments)
				if t.Failed() {
					return
				}
			}
			t.Logf("found: %v", moments)
			if err := Save(file, version(7)); err != nil || whole(t, file) != 7 {
				t.Errorf("saving afterwards: %v", err)
			}
			entries, unsaved := files(t, filepath.Dir(file)), files(t, RecoveryIn(ownOf(file)).folder)
			if len(entries) != 2 || len(unsaved) != 0 {
				t.Errorf("litter: %v, %v", entries, unsaved)
			}
		})
	}
}

// inMemory is a folder in memory where the system has such: a killed program
// loses nothing that a disk would keep, and saves more often before it dies.
func inMemory(t *testing.T) string {
	folder, err := os.MkdirTemp("/dev/shm", "grainwise-test-")
	if err != nil {
		return t.TempDir()
	}
	t.Cleanup(func() { os.RemoveAll(folder) })
	return folder
}

// killOnce lets a program save until a moment after its first, kills it, and
// compares what is there with what it has said.
func killOnce(t *testing.T, file string, after time.Duration, moments map[string]int) {
	command := child(t, "keep", file)
	out, err := command.StdoutPipe()
	if err == nil {
		err = command.Start()
	}
	if err != nil {
		t.Fatal(err)
	}
	said := bufio.NewReader(out)
	saved, kept := 0, 0
	hear := func() error {
		line, err := said.ReadString('\n')
		if err == nil {
			if n, _ := fmt.Sscanf(line, "saved %d", &saved); n == 0 {
				_, err = fmt.Sscanf(line, "kept %d", &kept)
			}
		}
		return err
	}
	for (saved == 0 || kept == 0) && err == nil {
		err = hear()
	}
	if err != nil {
		t.Fatalf("before it was killed: %v", err)
	}
	time.Sleep(after)
	if err := command.Process.Kill(); err != nil {
		t.Fatal(err)
	}
	for err == nil {
		err = hear()
	}
	if err != io.EOF {
		t.Errorf("said %v", err)
	}
	if command.Wait(); command.ProcessState.Exited() {
		t.Fatal("the program ended by itself")
	}
	judgeFound(t, "file", whole(t, file), saved, moments)
	earlier := SavesIn(ownOf(file)).Earlier(file)
	for i, e := range earlier {
		if e.Err != nil || i > 0 && e.Project.Equal(earlier[i-1].Project) {
			t.Errorf("earlier saves: %v", e.Err)
		}
	}
	if len(earlier) == 0 || len(earlier) > mostEarlier+1 {
		t.Errorf("%d earlier saves", len(earlier))
	}
	found, troubles := RecoveryIn(ownOf(file)).Orphans()
	if len(found) != 1 || troubles != nil {
		t.Fatalf("unsaved work: %d found, %v", len(found), troubles)
	}
	at := found[0].Project.Decisions.Design.Copies
	if !found[0].Project.Equal(version(at)) || found[0].Path != file {
		t.Error("the unsaved work is a mixture")
	}
	judgeFound(t, "work", at, kept, moments)
	if err := found[0].Slot.End(); err != nil {
		t.Error(err)
	}
}

func judgeFound(t *testing.T, what string, found, said int, moments map[string]int) {
	switch found {
	case said:
		moments[what+" as said"]++
	case said%mostVersions + 1:
		moments[what+" one further"]++
	default:
		t.Errorf("%s: %d is there, %d was said to be", what, found, said)
	}
}

// mostVersions is how many versions there are before they start anew.
const mostVersions = 5000

// ownOf is the program's own folder for a file.
func ownOf(file string) string { return filepath.Join(filepath.Dir(file), "own") }

// keepOn saves a file and keeps unsaved work without end, both at once, with
// something else to do beside it, and says after each which it was.
func keepOn(file string) int {
	saves := SavesIn(ownOf(file))
	p, last, err := saves.Open(file)
	if err != nil {
		fmt.Println(err)
		return 1
	}
	slot, err := RecoveryIn(ownOf(file)).Begin()
	if err != nil {
		fmt.Println(err)
		return 1
	}
	ended := make(chan error)
	go count(p.Decisions.Design.Copies, "saved", ended, func(n int) (err error) {
		last, err = saves.Save(file, version(n), last)
		return err
	})
	go count(0, "kept", ended, func(n int) error {
		return slot.Write(Unsaved{Project: version(n), Path: file, Time: oneDay})
	})
	go func() {
		for {
			version(1)
		}
	}()
	fmt.Println(<-ended)
	return 1
}

func count(from int, word string, ended chan<- error, do func(int) error) {
	for n := from%mostVersions + 1; ; n = n%mostVersions + 1 {
		if err := do(n); err != nil {
			ended <- err
			return
		}
		os.Stdout.WriteString(fmt.Sprintf("%s %d\n", word, n))
	}
}
