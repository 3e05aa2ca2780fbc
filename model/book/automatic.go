package book

// What automatic gives for the sizes of the case, as they are cut.

func usualThread(m SewingMethod) Length {
	if m == Machine {
		return machineThread
	}
	return handThread
}

func autoSpineToCut(b *Book) Length {
	return toCut(b.Resolved.CutIn).up(autoSpineWidth(&b.Resolved, b.Block))
}

func autoJointToCut(b *Book) Length {
	at := b.Resolved.jointAt(b.Block, b.ToCut.SpineWidth, b.Resolved.Groove())
	return toCut(b.Resolved.CutIn).up(autoJoint(&b.Resolved, at))
}

func autoBoardHeight(b *Book) Length {
	return toCut(b.Resolved.CutIn).nearest(boardHeight(&b.Resolved, b.Block))
}

func autoBoardWidth(b *Book) Length {
	return toCut(b.Resolved.CutIn).nearest(boardWidth(&b.Resolved, b.Block, b.ToCut))
}
