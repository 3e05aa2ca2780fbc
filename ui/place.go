package ui

import "grainwise/model/project"

// place is where a window keeps unsaved work: a slot that is taken when there
// is something to keep, and tried for again after it could not be had. Only the
// keeper uses it, off the window's goroutine.
type place struct {
	recovery project.Recovery
	slot     *project.Slot // nil until it is needed
}

// Write implements keeper.Slot.
func (p *place) Write(u project.Unsaved) error {
	if p.slot == nil {
		slot, err := p.recovery.Begin()
		if err != nil {
			return err
		}
		p.slot = slot
	}
	return p.slot.Write(u)
}

// Clear implements keeper.Slot.
func (p *place) Clear() error {
	if p.slot == nil {
		return nil
	}
	return p.slot.Clear()
}

// leave writes the work and gives the place up, for it to be found again.
func (p *place) leave(work project.Unsaved) {
	if p.Write(work) == nil {
		p.slot.Leave()
	}
}

// End gives the place up, and the work in it.
func (p *place) End() error {
	if p.slot == nil {
		return nil
	}
	return p.slot.End()
}
