// Package making says how one book is made at the bench: its steps in order with
// their sizes, what is needed for them, and how long they take. Everything
// follows from a book.Book; nothing is decided or stored here.
//
// Sizes are those to cut. Texts are English sentences from the words' files, the
// short ones for the bench, the longer ones to teach from.
package making

import (
	"slices"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
)

// Length is a length in whole nanometres.
type Length = book.Length

// Stage is a part of the work.
type Stage string

// The stages, in the order of the bench. A book has a liner or endpapers.
const (
	StageCut       Stage = "cut"
	StageFold      Stage = "fold"
	StageLiner     Stage = "liner"
	StageEndpapers Stage = "endpapers"
	StageSew       Stage = "sew"
	StageCase      Stage = "case" // boards and covering
	StageCaseIn    Stage = "caseIn"
	StagePress     Stage = "press"
	StageFinish    Stage = "finish"
)

// Stages lists every stage in the order of the bench.
func Stages() []Stage {
	return []Stage{StageCut, StageFold, StageLiner, StageEndpapers, StageSew, StageCase, StageCaseIn, StagePress, StageFinish}
}

// Name is what a reader calls the stage.
func (s Stage) Name() string { return words.Say("making.stage." + string(s)) }

// Drawing is what is drawn beside a step when it is taught; "" is nothing.
type Drawing string

// The drawings.
const (
	DrawFolding        Drawing = "folding"
	DrawGathering      Drawing = "gathering"
	DrawValleys        Drawing = "valleys"
	DrawStations       Drawing = "stations"
	DrawSewing         Drawing = "sewing"
	DrawLayingOut      Drawing = "layingOut"
	DrawCuttingCorners Drawing = "cuttingCorners"
	DrawTurningIn      Drawing = "turningIn"
	DrawCasingIn       Drawing = "casingIn"
	DrawPressing       Drawing = "pressing"
	DrawLabel          Drawing = "label"
)

// Step is one thing that is done at the bench.
type Step struct {
	ID       string
	Stage    Stage
	Blanks   map[string]any // lengths, counts and names for the texts' blanks
	Wait     Wait           // how long the work rests after it
	Cautions []Caution
	Drawing  Drawing
	Handed   bool // mirrored for a left-handed maker

	saying string // its own case, where a step has texts for several
}

// Steps is how a book is made, from the sheets to the finished book. What does
// not apply to it is left out.
func Steps(b book.Book) []Step {
	return slices.Concat(
		under(StageCut, cutSteps(b)...),
		under(StageFold, foldSteps(b)...),
		under(StageLiner, linerSteps(b)...),
		under(StageEndpapers, endpaperSteps(b)...),
		under(StageSew, append(sewSteps(b), backSteps(b)...)...),
		under(StageCase, append(partSteps(b), coverSteps(b)...)...),
		under(StageCaseIn, caseInSteps(b)...),
		under(StagePress, pressSteps(b)...),
		under(StageFinish, finishSteps(b)...),
	)
}

// under files steps in a stage and drops those that do not apply.
func under(stage Stage, steps ...Step) []Step {
	var kept []Step
	for _, s := range steps {
		if s.ID != "" {
			s.Stage = stage
			kept = append(kept, s)
		}
	}
	return kept
}

// when keeps a step only where it applies.
func when(applies bool, s Step) Step {
	if !applies {
		return Step{}
	}
	return s
}

// Short is the step for the bench, a line or two in large print.
func (s Step) Short(style measure.Style) string { return s.say("making.step.", style) }

// How is the step to teach from: how it is done, and why.
func (s Step) How(style measure.Style) string { return s.say("making.how.", style) }

// say takes the text of the step's own case where it has one.
func (s Step) say(stem string, style measure.Style) string {
	key := stem + s.ID
	if own := key + "." + s.saying; s.saying != "" {
		if _, has := words.Lookup(own); has {
			key = own
		}
	}
	return words.Say(key, shown(s.Blanks, style), words.With{"hours": s.Wait.Hours})
}
