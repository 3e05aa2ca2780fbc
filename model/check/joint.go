package check

import "grainwise/model/book"

// jointClosed: the closing relation is undefined, or the board would ride on
// the spine piece.
func jointClosed(b *matter) []Finding {
	if b.ToCut.Closes {
		return nil
	}
	return one(Finding{
		Level: Stop, Part: book.PartJoint, Key: "joint.width",
		Found: length(b.ToCut.JointWidth), Limit: length(b.ClosingJoint()),
	})
}

// jointNarrow: with no room at the spine's edge boards bind when opened.
func jointNarrow(b *matter) []Finding {
	least := leastSetBack(b)
	return one(Finding{
		Level: when(b.ToCut.Closes && b.ToCut.SetBack < least-lost, Check), Part: book.PartJoint, Key: "joint.width",
		Found: length(b.ToCut.SetBack), Limit: length(least),
	})
}

func leastSetBack(b *matter) book.Length {
	if b.Resolved.Spine.Kind == book.SpineBoard {
		return setBackBoard
	}
	return b.limits.setBackLeast
}

func widerJoint(b *matter, _ Finding) []Remedy {
	wanted := usual(b, "joint.setBack")
	p, _ := book.Lookup(wanted.Key)
	if least := leastSetBack(b); p.Default(b.Resolved.CutIn).Length < least {
		wanted = atLeast(b, wanted.Key, least)
	}
	return jointFor(wanted, "wider-joint")
}

// jointWide: far from the block, boards let it sag.
func jointWide(b *matter) []Finding {
	return one(Finding{
		Level: when(b.ToCut.Closes && b.ToCut.SetBack > b.limits.setBackMost+lost, Check), Part: book.PartJoint, Key: "joint.width",
		Found: length(b.ToCut.SetBack), Limit: length(b.limits.setBackMost),
	})
}

func narrowerJoint(b *matter, _ Finding) []Remedy {
	return jointFor(usual(b, "joint.setBack"), "narrower-joint")
}

// jointFor gives the joint back to the program: alone, for a set-back, and for
// a set-back without ease.
func jointFor(setBack Setting, name string) []Remedy {
	const width = "joint.width"
	return []Remedy{
		remedy("joint-auto", auto(width)),
		remedy(name, auto(width), setBack),
		remedy(name, auto(width), setBack, Setting{"joint.ease", "0 mm"}),
	}
}

// jointQuarter: a published rule asks a quarter of the thickness (after P.
// Jermann).
func jointQuarter(b *matter) []Finding {
	joint, quarter := b.ToCut.JointWidth, b.Block.SpineThickness/jointShare
	return one(Finding{
		Level: when(joint < quarter, Note), Part: book.PartJoint, Key: "joint.width",
		Found: length(joint), Limit: length(quarter),
	})
}

func quarterJoint(b *matter, _ Finding) []Remedy {
	return []Remedy{
		remedy("joint-auto", auto("joint.width")),
		remedy("wider-joint", atLeast(b, "joint.width", b.Block.SpineThickness/jointShare)),
	}
}

// spineFit: the spine piece spans at least the block, at most block, boards
// and a millimetre.
func spineFit(b *matter) []Finding {
	s, low := b.ToCut.SpineWidth, b.Block.SpineThickness
	high := low + 2*b.Resolved.Stock.Board.Thickness + spineSpare
	f := Finding{
		Part: book.PartSpine, Key: "spine.width", Found: length(s), Limit: length(high),
		Level: when(s < low || s > high, Check), Blanks: map[string]any{"low": low, "high": high},
	}
	if s < low {
		f.Limit, f.saying = length(low), "narrow"
	}
	return one(f)
}

func spineBack(*matter, Finding) []Remedy {
	const width = "spine.width"
	noEase := Setting{"spine.ease", "0 mm"}
	return []Remedy{
		remedy("spine-auto", auto(width)),
		remedy("no-ease", noEase),
		remedy("spine-auto", auto(width), noEase),
	}
}
