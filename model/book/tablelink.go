package book

import "grainwise/model/stock"

// The rows of a link-stitched block.

func tapeRows() []Param {
	return only(onTapes, under(GroupSewing, PartTape, 2,
		count("sewing.tapes", func(d *Decisions) *int { return &d.Design.Sewing.Tapes }, 2).within(0, MaxTapes),
		size("sewing.tapeWidth", func(d *Decisions) *Length { return &d.Design.Sewing.TapeWidth }).from(12, 0.5).within(6, 25).steps(1, 1.0/16),
		size("sewing.tapeLap", func(d *Decisions) *Length { return &d.Design.Sewing.TapeLap }).from(35, 1.375).within(20, 50).steps(1, 1.0/16),
		material("sewing.tape", stock.Tape, func(d *Decisions) *string { return &d.Design.Sewing.Tape }, "Mooring tape"),
	)...)
}

func endpaperRows() []Param {
	return only(linked, under(GroupLiner, PartEndpaper, 2,
		material("endpaper", stock.Liner, func(d *Decisions) *string { return &d.Design.Endpaper.Material }, "Saltgrass 120"),
		yesNo("endpaper.turned", func(d *Decisions) *bool { return &d.Design.Endpaper.Turned }),
		autoSize("endpaper.thickness", func(d *Decisions) *Choice[Length] { return &d.Design.Endpaper.Thickness },
			func(b *Book) Length { return b.Resolved.OnShelf.Endpaper.Thickness }).stack().within(0.05, 0.50).steps(0.01, 0.001),
		autoGrain("endpaper.grain", func(d *Decisions) *Choice[stock.Grain] { return &d.Design.Endpaper.Grain },
			func(m *Materials) *stock.Material { return &m.Endpaper }),
		size("endpaper.tip", func(d *Decisions) *Length { return &d.Design.Endpaper.Tip }).from(3, 1.0/8).within(1, 10).steps(0.5, 1.0/32),
	)...)
}

func mullRows() []Param {
	return only(linked, under(GroupLiner, PartMull, 2,
		size("mull.lap", func(d *Decisions) *Length { return &d.Design.Mull.Lap }).from(30, 1.25).within(20, 40).steps(1, 1.0/16),
		size("mull.short", func(d *Decisions) *Length { return &d.Design.Mull.Short }).from(10, 0.375).within(5, 25).steps(1, 1.0/16),
		material("mull", stock.Mull, func(d *Decisions) *string { return &d.Design.Mull.Material }, "Driftnet mull"),
	)...)
}
