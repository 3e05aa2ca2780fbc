package preview

import (
	"sync"
	"testing"
	"time"

	"grainwise/render/scene"
	"grainwise/render/view"
)

// slow is a view that takes its time and says which width it drew.
func slow(each time.Duration, drawn func(float64)) view.View {
	return view.View{ID: "slow", Draw: func(in view.Input) *scene.Scene {
		time.Sleep(each)
		drawn(in.Width)
		return &scene.Scene{Width: 10, Height: 10, Ground: 0xFFFFFF}
	}}
}

func ask(w *worker, v view.View, n int) {
	w.ask(job{view: v, input: view.Input{Width: float64(n)}, port: fitted, device: 1, width: 8, height: 8})
}

// A steady stream of changes is neither starved nor queued: frames appear
// during it, far fewer than were asked for, and the last one asked is drawn.
func TestNewestJobWins(t *testing.T) {
	var mu sync.Mutex
	var drawn []float64
	last := make(chan struct{})
	const asked = 200
	v := slow(3*time.Millisecond, func(width float64) {
		mu.Lock()
		defer mu.Unlock()
		drawn = append(drawn, width)
		if width == asked {
			close(last)
		}
	})
	w := startWorker(func(frame) {})
	defer w.stop()
	for i := 1; i <= asked; i++ {
		ask(w, v, i)
		time.Sleep(100 * time.Microsecond)
	}
	<-last
	mu.Lock()
	defer mu.Unlock()
	if len(drawn) < 2 || len(drawn) >= asked {
		t.Errorf("%d frames of %d asked", len(drawn), asked)
	}
	for i := 1; i < len(drawn); i++ {
		if drawn[i] <= drawn[i-1] {
			t.Errorf("frame %v after %v", drawn[i], drawn[i-1])
		}
	}
}

// The picture on show is never the one being drawn into.
func TestPicturesTakeTurns(t *testing.T) {
	var d drawer
	v := slow(0, func(float64) {})
	j := job{view: v, port: fitted, device: 1, width: 8, height: 8}
	a, b, c := d.frame(j), d.frame(j), d.frame(j)
	if a.picture == b.picture || b.picture == c.picture || a.picture == c.picture {
		t.Error("two frames in a row share a picture")
	}
	if d.frame(j).picture != a.picture {
		t.Error("the fourth frame should use the first picture again")
	}
}

func TestStoppedWorkerEnds(t *testing.T) {
	w := startWorker(func(frame) {})
	w.stop()
	w.stop()
	select {
	case <-w.ended:
	case <-time.After(5 * time.Second):
		t.Error("the worker goes on")
	}
	ask(w, slow(0, func(float64) { t.Error("a stopped worker draws") }), 1)
}
