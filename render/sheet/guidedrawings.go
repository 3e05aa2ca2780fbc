package sheet

import "grainwise/model/making"

// allDrawn are the drawings of the guide, in the order of making.
func allDrawn() []drawn {
	return []drawn{
		{making.DrawFolding, nil, narrowPlate, 66, foldingPlate, "folding"},
		{making.DrawGathering, nil, narrowPlate, 50, gatheringPlate, "gathering"},
		{making.DrawValleys, []string{"mark-pleats", "mark-creases"}, widePlate, 56, markingPlate, "marking"},
		{making.DrawValleys, nil, widePlate, 58, pleatingPlate, "pleating"},
		{making.DrawStations, nil, widePlate, 52, stationsPlate, "stations"},
		{making.DrawSewing, []string{"sew-machine"}, narrowPlate, 64, machinePlate, "machine"},
		{making.DrawSewing, []string{"sew-pamphlet"}, widePlate, 56, pamphletPlate, "pamphlet"},
		{making.DrawSewing, nil, widePlate, 62, linkPlate, "link"},
		{making.DrawLayingOut, []string{"lay-out", "lay-out-cloth"}, widePlate, 100, layingOutPlate, "layingOut"},
		{making.DrawLayingOut, nil, widePlate, 80, gluingPlate, "gluing"},
		{making.DrawCuttingCorners, nil, narrowPlate, 62, cornersPlate, "cuttingCorners"},
		{making.DrawTurningIn, nil, narrowPlate, 60, turningInPlate, "turningIn"},
		{making.DrawCasingIn, []string{"mark-casing"}, narrowPlate, 66, markingInPlate, "marking-in"},
		{making.DrawCasingIn, nil, narrowPlate, 56, casingInPlate, "casingIn"},
		{making.DrawPressing, []string{"press-case"}, narrowPlate, 46, pressingCasePlate, "pressing-case"},
		{making.DrawPressing, []string{"groove", "press-book"}, narrowPlate, 54, pressingBookPlate, "pressing-book"},
		{making.DrawPressing, nil, narrowPlate, 50, pressingPlate, "pressing"},
		{making.DrawLabel, nil, narrowPlate, 60, labelPlate, "label"},
	}
}
