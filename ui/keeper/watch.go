package keeper

import (
	"os"
	"time"

	"grainwise/model/project"
)

// lookEvery is how often the file is looked at.
const lookEvery = 2 * time.Second

// Sight is a file that is not as it was read or written last.
type Sight struct {
	Path  string
	Known project.Stamp // what it was compared with
	Now   project.Stamp // zero: it is gone
}

// Watch looks at one file for changes by others. It tells the same sight again
// and again until the window says that it has seen it.
type Watch struct {
	file  chan watched // room for one: the newest
	ended chan struct{}
	tell  func(Sight)
}

// watched is what to look at, and what is known of it.
type watched struct {
	path  string
	known project.Stamp
	end   bool
}

// NewWatch starts a watch over nothing. It tells on a goroutine of its own.
func NewWatch(tell func(Sight)) *Watch {
	w := &Watch{make(chan watched, 1), make(chan struct{}), tell}
	go w.run()
	return w
}

// On looks at a file from now on, of which this much is known; an empty path is
// no file.
func (w *Watch) On(path string, known project.Stamp) { w.put(watched{path: path, known: known}) }

// End stops looking, without waiting for a look on its way.
func (w *Watch) End() { w.put(watched{end: true}) }

func (w *Watch) put(next watched) {
	select {
	case <-w.file:
	default:
	}
	w.file <- next
}

func (w *Watch) run() {
	defer close(w.ended)
	tick := time.NewTicker(lookEvery)
	defer tick.Stop()
	var file watched
	var last glance
	for !file.end {
		select {
		case file = <-w.file:
			last = glance{} // to be looked at whole
		case <-tick.C:
			last = w.look(file, last)
		}
	}
}

// glance is what a look from afar tells of a file.
type glance struct {
	size   int64
	time   time.Time
	there  bool
	taken  bool
	differ bool // not as known, when it was read
}

// look reads the file only where a glance shows a difference from the last.
func (w *Watch) look(file watched, last glance) glance {
	if file.path == "" {
		return last
	}
	now := glance{taken: true}
	if info, err := os.Stat(file.path); err == nil {
		now.size, now.time, now.there = info.Size(), info.ModTime(), true
	}
	now.differ = last.differ
	if now == last && !last.differ {
		return now
	}
	stamp, err := project.StampAt(file.path)
	if err != nil {
		return glance{} // not to be read just now: look again
	}
	now.differ = stamp != file.known
	if now.differ {
		w.tell(Sight{file.path, file.known, stamp})
	}
	return now
}
