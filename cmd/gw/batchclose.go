package main

import (
	"errors"

	"grainwise/model/batch"
	"grainwise/model/measure"
	"grainwise/model/project"
)

// closed freezes the batch into a record of the name that --close gives, or with
// --again begins the last one anew with what its blocks have taught. Both are
// saved, so they need --save.
func (a arguments) closed(p project.Project, w batch.Work, day measure.Date) (project.Project, error) {
	if !a.has("close") && !a.has("again") {
		return p, nil
	}
	if !a.has("save") {
		return p, inputError("gw.wantSave")
	}
	if a.has("close") {
		var err error
		p.Batch, err = w.Close(batch.Closing{Name: a.value("close"), On: day})
		var fault *batch.Fault
		if errors.As(err, &fault) {
			return p, inputError("gw.wantClose", "found", a.value("close"), "want", fault.Text)
		}
		if err != nil {
			return p, err
		}
	}
	if a.has("again") {
		if len(p.Batch.Records) == 0 {
			return p, inputError("gw.noRecord")
		}
		last := p.Batch.Records[len(p.Batch.Records)-1]
		p.Decisions, p.Shelf, p.Batch = batch.Again(p.Decisions, p.Shelf, p.Batch, last)
	}
	return p, nil
}
