package ui

import (
	"errors"

	"grainwise/assets/words"
	"grainwise/model/project"
	"grainwise/ui/keeper"
)

// keeping is what the window knows of its work's safety: the slot that unsaved
// work is kept in, and what its file held last.
type keeping struct {
	window *Window
	slot   *place         // nil where nothing is kept, as in a test
	keeper *keeper.Keeper // nil without a slot
	watch  *keeper.Watch
	told   keeper.Told   // of the keeper, last
	known  project.Stamp // what the watch compares the file with
	base   project.Stamp // what the file held when it was last read or written
	gone   bool          // the file has gone since
	whole  bool          // it held the project when it went
	looked string        // the file of a newer version that is only looked at
}

// begin starts the keeper and the watch.
func (k *keeping) begin() {
	k.watch = keeper.NewWatch(func(s keeper.Sight) { k.window.onWindow(func() { k.window.sighted(s) }) })
	k.look(k.window.session.Path(), k.base)
	k.use(&place{recovery: k.window.ports.Recovery})
}

// use keeps unsaved work in a place, which may hold some already.
func (k *keeping) use(slot *place) {
	k.slot = slot
	k.keeper = keeper.New(slot, func(t keeper.Told) { k.window.onWindow(func() { k.hear(slot, t) }) })
}

// hear takes what the keeper of a slot has done, unless it is another by now.
func (k *keeping) hear(slot *place, told keeper.Told) {
	if k.slot == slot {
		k.told = told
		k.window.status.show()
	}
}

// show has the keeper keep what is not saved.
func (k *keeping) show() {
	s, work := k.window.session, k.window.work()
	switch {
	case k.keeper == nil:
	case !s.Filed(work):
		k.keeper.Keep(project.Unsaved{Project: work, Path: s.Path(), Base: k.base, Time: s.Now()})
	default:
		k.keeper.Clear()
	}
}

// adopt goes on in a slot that was left behind, so that the work in it is kept
// at every moment. What this window had in its own is given up by then.
func (k *keeping) adopt(slot *project.Slot) {
	k.giveUp()
	k.use(&place{k.window.ports.Recovery, slot})
}

// on says which file the work belongs to now, and what it holds.
func (k *keeping) on(path string, base project.Stamp) {
	k.base, k.gone, k.whole, k.looked = base, false, false, ""
	k.look(path, base)
}

// look has the watch look at a file of which this much is known. Sights of what
// was known before are overtaken.
func (k *keeping) look(path string, known project.Stamp) {
	k.known = known
	if k.watch != nil {
		k.watch.On(path, known)
	}
}

// seen says that the window knows what has become of its file.
func (k *keeping) seen(s keeper.Sight) {
	k.gone = !s.Now.OfFile()
	k.look(s.Path, s.Now)
}

// leaveBehind leaves the work where it is found again, and goes on in another
// place: for a save that nobody waits for.
func (k *keeping) leaveBehind() {
	if k.slot == nil {
		return
	}
	s, slot := k.window.session, k.slot
	work := project.Unsaved{Project: s.Project().Clone(), Path: s.Path(), Base: k.base, Time: s.Now()}
	k.keeper.End(func() { slot.leave(work) })
	k.use(&place{recovery: k.window.ports.Recovery})
}

// end gives the slot up: nothing would be lost any more.
func (k *keeping) end() {
	k.giveUp()
	if k.watch != nil {
		k.watch.End()
	}
}

func (k *keeping) giveUp() {
	if slot := k.slot; slot != nil {
		k.keeper.End(func() { _ = slot.End() }) // what stays behind is offered once more
	}
}

// state is what the status line says of unsaved work.
func (k *keeping) state() string {
	name := fileName(k.window.session.Path())
	switch {
	case k.told.Err != nil:
		return words.Say("keep.cannot", words.With{"why": whyOf(k.told.Err)})
	case k.gone:
		return words.Say("keep.gone", words.With{"name": name})
	case k.told.Time.IsZero():
		return words.Say("status.unsaved")
	}
	return words.Say("keep.kept", words.With{"time": k.told.Time.Format("15:04")})
}

// whyOf is the system's reason, or ours.
func whyOf(err error) string {
	var problem *project.Problem
	if errors.As(err, &problem) {
		return problem.Why()
	}
	return err.Error()
}
