//go:build !linux

package project

func newDraft(path string) (*draft, error) { return namedDraft(path) }

func (d *draft) putAt(path string) error { return d.putNamed(path) }
