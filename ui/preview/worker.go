package preview

import (
	"image"
	"sync"

	"grainwise/render/draft"
	"grainwise/render/raster"
	"grainwise/render/scene"
	"grainwise/render/view"
)

// job is one frame to draw: what, how large, and how it lies.
type job struct {
	view   view.View
	input  view.Input
	port   Viewport
	device float64 // pixels a dp
	width  int     // pixels
	height int
	paper  *scene.Scene // a page on its desk, in place of the view
	desk   Desk
}

// frame is a job done.
type frame struct {
	picture *image.RGBA
	scene   *scene.Scene
	port    Viewport
}

// worker draws on one goroutine, always the newest job: a job that a newer one
// overtakes is dropped, but one begun is finished and shown, so that a steady
// drag is never starved.
type worker struct {
	mu     sync.Mutex
	newest *job
	wake   chan struct{}
	done   chan struct{}
	ended  chan struct{}
	show   func(frame) // called on the worker's goroutine
}

func startWorker(show func(frame)) *worker {
	w := &worker{
		wake: make(chan struct{}, 1), done: make(chan struct{}), ended: make(chan struct{}),
		show: show,
	}
	go w.run()
	return w
}

// ask hands over the newest job.
func (w *worker) ask(j job) {
	w.mu.Lock()
	w.newest = &j
	w.mu.Unlock()
	select {
	case w.wake <- struct{}{}:
	default:
	}
}

// stop ends the worker after the frame in hand; it never waits, since the
// goroutine that calls it may be the one that the worker is showing on.
func (w *worker) stop() {
	select {
	case <-w.done:
	default:
		close(w.done)
	}
}

func (w *worker) run() {
	defer close(w.ended)
	var draw drawer
	for {
		select {
		case <-w.done:
			return
		case <-w.wake:
		}
		if j := w.take(); j != nil && !w.stopped() {
			w.show(draw.frame(*j))
		}
	}
}

func (w *worker) stopped() bool {
	select {
	case <-w.done:
		return true
	default:
		return false
	}
}

func (w *worker) take() *job {
	w.mu.Lock()
	defer w.mu.Unlock()
	j := w.newest
	w.newest = nil
	return j
}

// drawer keeps what is worth keeping between frames: the painter's layers, and
// three pictures in turn, of which one may be on show and one on its way.
type drawer struct {
	painter  raster.Painter
	pictures [3]*image.RGBA
	next     int
}

func (d *drawer) frame(j job) frame {
	if j.paper != nil {
		return d.layDown(j)
	}
	drawn := j.view.Draw(j.input)
	if j.input.Stark {
		draft.Stark(drawn)
	}
	picture := d.blank(j.width, j.height)
	d.painter.Paint(picture, drawn, raster.View{
		Scale:   j.port.Zoom * j.device / scene.Px,
		OffsetX: j.port.X * j.device,
		OffsetY: j.port.Y * j.device,
		Density: j.device,
	})
	return frame{picture, drawn, j.port}
}

// blank returns the next picture of the round, new where the size differs.
func (d *drawer) blank(width, height int) *image.RGBA {
	d.next = (d.next + 1) % len(d.pictures)
	p := d.pictures[d.next]
	if p == nil || p.Rect.Dx() != width || p.Rect.Dy() != height {
		p = image.NewRGBA(image.Rect(0, 0, width, height))
		d.pictures[d.next] = p
	}
	return p
}
