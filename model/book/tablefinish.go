package book

import (
	"slices"

	"grainwise/model/stock"
)

// The rows of a quarter covering and of the finishing.

func quarterRows() []Param {
	return only(quartered, under(GroupCovering, PartSide, 3,
		material("covering.side", stock.Covering, func(d *Decisions) *string { return &d.Design.Covering.SideMaterial }, "Shingle paper"),
		size("covering.overlap", func(d *Decisions) *Length { return &d.Design.Covering.Overlap }).
			from(30, 1.25).within(10, 60).steps(1, 1.0/16).on(PartCovering),
		size("covering.sideLap", func(d *Decisions) *Length { return &d.Design.Covering.SideLap }).from(3, 1.0/8).within(0, 10).steps(0.5, 1.0/32),
	)...)
}

func finishingRows() []Param {
	finishing := func(part PartID, rows ...Param) []Param { return under(GroupCovering, part, 0, rows...) }
	return slices.Concat(
		finishing(PartRibbon,
			noneOr("ribbon.width", func(f *Finishing) *Length { return &f.RibbonWidth }, 25, 0.5),
			material("ribbon", stock.Ribbon, func(d *Decisions) *string { return &d.Design.Finishing.Ribbon }, "Eelgrass ribbon").
				when(func(d Design) bool { return d.Finishing.RibbonWidth > 0 })),
		finishing(PartElastic,
			noneOr("elastic.width", func(f *Finishing) *Length { return &f.ElasticWidth }, 25, 0.5),
			material("elastic", stock.Elastic, func(d *Decisions) *string { return &d.Design.Finishing.Elastic }, "Bowline elastic").
				when(func(d Design) bool { return d.Finishing.ElasticWidth > 0 })),
		finishing(PartLabel,
			noneOr("label.width", func(f *Finishing) *Length { return &f.LabelWidth }, 200, 1),
			noneOr("label.height", func(f *Finishing) *Length { return &f.LabelHeight }, 200, 1)),
		finishing(PartBand,
			count("bands", func(d *Decisions) *int { return &d.Design.Finishing.Bands }, 0).within(0, MaxBands)),
	)
}

// noneOr is a size of the finishing; nothing is none of it.
func noneOr(key string, at func(*Finishing) *Length, most, step float64) Param {
	p := size(key, func(d *Decisions) *Length { return at(&d.Design.Finishing) })
	return p.from(0, 0).within(0, most).steps(step, 1.0/16)
}
