package book

import "grainwise/model/stock"

// The rows of a quarter covering.

func quarterRows() []Param {
	return only(quartered, under(GroupCovering, PartSide, 3,
		material("covering.side", stock.Covering, func(d *Decisions) *string { return &d.Design.Covering.SideMaterial }, "Shingle paper"),
		size("covering.overlap", func(d *Decisions) *Length { return &d.Design.Covering.Overlap }).
			from(30, 1.25).within(10, 60).steps(1, 1.0/16).on(PartCovering),
		size("covering.sideLap", func(d *Decisions) *Length { return &d.Design.Covering.SideLap }).from(3, 1.0/8).within(0, 10).steps(0.5, 1.0/32),
	)...)
}
