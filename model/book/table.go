package book

import (
	"slices"
	"sync"

	"grainwise/model/measure"
	"grainwise/model/stock"
)

// table is every parameter, in the order of making. To add one: a field in
// design.go, a row here, its words in assets/lang; rows, keys, files and the
// schema follow.
var table = sync.OnceValue(func() []Param {
	return slices.Concat(structureRows(), blockRows(), sewingRows(), tapeRows(), linerRows(), endpaperRows(), mullRows(),
		boardRows(), spineRows(), coveringRows(), quarterRows(), finishingRows(), bookRows())
})

// structureRows stand first: other decisions follow the structure, and a file's
// entries are taken in the order of the table.
func structureRows() []Param {
	p := word("structure", func(d *Decisions) *Structure { return &d.Design.Structure }, PleatedLiner, LinkStitched)
	set := p.set
	p.set = func(d *Decisions, v Value) {
		set(d, v)
		if methods := d.Design.Structure.Methods(); !slices.Contains(methods, d.Design.Sewing.Method) {
			d.Design.Sewing.Method = methods[0]
		}
	}
	return under(GroupBook, PartBook, 1, p)
}

func blockRows() []Param {
	return under(GroupBlock, PartFolio, 5,
		size("page.height", func(d *Decisions) *Length { return &d.Design.Page.Height }).
			from(210, 8.25).within(60, 450).steps(1, 1.0/16),
		size("page.width", func(d *Decisions) *Length { return &d.Design.Page.Width }).
			from(150, 5.875).within(60, 420).steps(1, 1.0/16),
		material("paper", stock.Paper, func(d *Decisions) *string { return &d.Design.Paper.Material }, "Ebbwhite Drawing 170"),
		autoSize("paper.thickness", func(d *Decisions) *Choice[Length] { return &d.Design.Paper.Thickness },
			func(b *Book) Length { return b.Resolved.OnShelf.Paper.Thickness }).stack().within(0.05, 0.80).steps(0.01, 0.001),
		yesNo("paper.turned", func(d *Decisions) *bool { return &d.Design.Paper.Turned }),
		autoWeight("paper.grammage", func(d *Decisions) *Choice[measure.Grammage] { return &d.Design.Paper.Grammage },
			func(b *Book) measure.Grammage { return b.Resolved.OnShelf.Paper.Grammage }).within(40, 640).step(5),
		autoGrain("paper.grain", func(d *Decisions) *Choice[stock.Grain] { return &d.Design.Paper.Grain },
			func(m *Materials) *stock.Material { return &m.Paper }),
		autoSize("paper.sheetLength", func(d *Decisions) *Choice[Length] { return &d.Design.Paper.SheetLength },
			func(b *Book) Length { return b.Resolved.OnShelf.Paper.Sheet.Length }).within(200, 1600).steps(1, 1.0/8),
		autoSize("paper.sheetWidth", func(d *Decisions) *Choice[Length] { return &d.Design.Paper.SheetWidth },
			func(b *Book) Length { return b.Resolved.OnShelf.Paper.Sheet.Width }).within(200, 1600).steps(1, 1.0/8),
		allLostEdges(),
		lostEdge("paper.lostEdges.left", func(l *LostEdges) *Choice[Length] { return &l.Left }),
		lostEdge("paper.lostEdges.right", func(l *LostEdges) *Choice[Length] { return &l.Right }),
		lostEdge("paper.lostEdges.top", func(l *LostEdges) *Choice[Length] { return &l.Top }),
		lostEdge("paper.lostEdges.bottom", func(l *LostEdges) *Choice[Length] { return &l.Bottom }),
		word("paper.deckle", func(d *Decisions) *DeckleSides { return &d.Design.Paper.Deckle }, DeckleNone, DeckleLeftRight, DeckleTopBottom, DeckleAll),
		trim("trim.foreEdge", func(d *Decisions) *Length { return &d.Design.Page.TrimFore }),
		trim("trim.head", func(d *Decisions) *Length { return &d.Design.Page.TrimHead }),
		trim("trim.tail", func(d *Decisions) *Length { return &d.Design.Page.TrimTail }),
		size("owner.addedPerLeaf", func(d *Decisions) *Length { return &d.Design.Page.OwnerAdds }).
			from(0.05, 0.002).within(0, 1).steps(0.01, 0.001),
	)
}

// allLostEdges sets the four strips at once: a side given before gives way.
func allLostEdges() Param {
	p := size("paper.lostEdges", func(d *Decisions) *Length { return &d.Design.Paper.Lost.All })
	p.set = func(d *Decisions, v Value) { d.Design.Paper.Lost = LostEdges{All: v.Length} }
	return p.from(3, 1.0/8).within(0, 60).steps(1, 1.0/16)
}

func lostEdge(key string, side func(*LostEdges) *Choice[Length]) Param {
	return autoSize(key, func(d *Decisions) *Choice[Length] { return side(&d.Design.Paper.Lost) },
		func(b *Book) Length { return b.Resolved.Paper.Lost.All }).within(0, 60).steps(1, 1.0/16)
}

func trim(key string, at func(*Decisions) *Length) Param {
	return size(key, at).from(0, 0).within(0, 10).steps(0.5, 1.0/32)
}

func sewingRows() []Param {
	rows := under(GroupSewing, PartBlock, 6,
		count("sections.count", func(d *Decisions) *int { return &d.Design.Sections.Count }, 6).within(1, MaxSections),
		count("sections.folios", func(d *Decisions) *int { return &d.Design.Sections.Folios }, 4).within(1, MaxFolios),
		word("sewing.method", func(d *Decisions) *SewingMethod { return &d.Design.Sewing.Method }, Machine, Pamphlet, Link, LinkOnTapes).
			offering(func(d Design) []string { return plain(d.Structure.Methods()) }, "value.want.method"),
		autoSize("sewing.threadDiameter", func(d *Decisions) *Choice[Length] { return &d.Design.Sewing.Thread },
			func(b *Book) Length { return usualThread(b.Resolved.Sewing.Method) }).thread().within(0.15, 1.20).steps(0.01, 0.001),
		measured("measured.spineThickness", func(d *Decisions) *Choice[Length] { return &d.Measured.SpineThickness },
			func(b *Book) Length { return b.Resolved.Measured.SpineAt.Greatest().Or(b.Block.EstimatedSpine) }).within(0.5, 300),
		measured("measured.foreEdgeThickness", func(d *Decisions) *Choice[Length] { return &d.Measured.ForeEdgeThickness },
			func(b *Book) Length {
				return b.Resolved.Measured.ForeEdgeAt.Greatest().Or(b.Block.EstimatedForeEdge)
			}).within(0.5, 300),
		measured("measured.blockWidth", func(d *Decisions) *Choice[Length] { return &d.Measured.BlockWidth },
			func(b *Book) Length { return blockWidth(&b.Resolved, b.Block.Creep) }).within(40, 450),
		measured("measured.blockHeight", func(d *Decisions) *Choice[Length] { return &d.Measured.BlockHeight },
			func(b *Book) Length { return b.Resolved.Page.Height }).within(40, 480),
		number("sewing.threadCrush", KindNumber, func(d *Decisions) *float64 { return &d.Design.Sewing.Crush }, 0.60).within(0.40, 1.00).step(0.05),
		size("sewing.stitch", func(d *Decisions) *Length { return &d.Design.Sewing.Stitch }).from(4.5, 3.0/16).within(3, 7).steps(0.5, 1.0/32).when(byMachine),
		size("sewing.freeEnds", func(d *Decisions) *Length { return &d.Design.Sewing.FreeEnds }).from(20, 0.75).within(10, 50).steps(1, 1.0/16).when(byMachine),
		count("sewing.stations", func(d *Decisions) *int { return &d.Design.Sewing.Stations }, 5).within(3, MaxStations).when(spacedStations),
		size("sewing.endStation", func(d *Decisions) *Length { return &d.Design.Sewing.EndStation }).from(12, 0.5).within(5, 40).steps(1, 1.0/16).when(byHand),
		word("interleaf.mode", func(d *Decisions) *GuardMode { return &d.Design.Interleaf.Mode }, GuardNone, GuardSection, GuardFolio).on(PartInterleaf),
		material("interleaf", stock.Interleaf, func(d *Decisions) *string { return &d.Design.Interleaf.Material }, "thin tissue").on(PartInterleaf).when(guarded),
		autoSize("interleaf.thickness", func(d *Decisions) *Choice[Length] { return &d.Design.Interleaf.Thickness },
			func(b *Book) Length { return b.Resolved.OnShelf.Interleaf.Thickness }).stack().within(0.01, 0.20).steps(0.01, 0.001).on(PartInterleaf).when(guarded),
	)
	return append(rows, placeRows()...)
}

// placeRows are the measures at three places, and that of the finished book;
// none of them is estimated but by what the whole has.
func placeRows() []Param {
	spine := func(b *Book) Length { return b.Block.SpineThickness }
	fore := func(b *Book) Length { return b.Block.ForeEdgeThickness }
	return under(GroupSewing, PartBlock, 0,
		measured("measured.spineThickness.head", func(d *Decisions) *Choice[Length] { return &d.Measured.SpineAt.Head }, spine).within(0.5, 300),
		measured("measured.spineThickness.middle", func(d *Decisions) *Choice[Length] { return &d.Measured.SpineAt.Middle }, spine).within(0.5, 300),
		measured("measured.spineThickness.tail", func(d *Decisions) *Choice[Length] { return &d.Measured.SpineAt.Tail }, spine).within(0.5, 300),
		measured("measured.foreEdgeThickness.head", func(d *Decisions) *Choice[Length] { return &d.Measured.ForeEdgeAt.Head }, fore).within(0.5, 300),
		measured("measured.foreEdgeThickness.middle", func(d *Decisions) *Choice[Length] { return &d.Measured.ForeEdgeAt.Middle }, fore).within(0.5, 300),
		measured("measured.foreEdgeThickness.tail", func(d *Decisions) *Choice[Length] { return &d.Measured.ForeEdgeAt.Tail }, fore).within(0.5, 300),
		measured("measured.squareForeEdge", func(d *Decisions) *Choice[Length] { return &d.Measured.SquareForeEdge },
			func(b *Book) Length { return max(b.Squares.ForeEdge, 0) }).within(0, 40),
	)
}

func linerRows() []Param {
	rows := under(GroupLiner, PartLiner, 4,
		material("liner", stock.Liner, func(d *Decisions) *string { return &d.Design.Liner.Material }, "Saltgrass 120"),
		size("liner.pleatDepth", func(d *Decisions) *Length { return &d.Design.Liner.PleatDepth }).from(10, 0.375).within(0, 25).steps(0.5, 1.0/32),
		autoSize("liner.valleySpacing", func(d *Decisions) *Choice[Length] { return &d.Design.Liner.Spacing },
			func(b *Book) Length { return autoSpacing(&b.Resolved, b.Block) }).within(0, 60).steps(0.5, 1.0/32),
		yesNo("liner.turned", func(d *Decisions) *bool { return &d.Design.Liner.Turned }),
		number("liner.valleyAllowance", KindNumber, func(d *Decisions) *float64 { return &d.Design.Liner.Allowance }, 1).within(0, 8).step(0.1),
		autoSize("liner.thickness", func(d *Decisions) *Choice[Length] { return &d.Design.Liner.Thickness },
			func(b *Book) Length { return b.Resolved.OnShelf.Liner.Thickness }).stack().within(0.05, 0.50).steps(0.01, 0.001),
		autoGrain("liner.grain", func(d *Decisions) *Choice[stock.Grain] { return &d.Design.Liner.Grain },
			func(m *Materials) *stock.Material { return &m.Liner }),
		pastEdge("liner.overhangForeEdge", func(d *Decisions) *Length { return &d.Design.Liner.OverFore }),
		pastEdge("liner.overhangHead", func(d *Decisions) *Length { return &d.Design.Liner.OverHead }),
		pastEdge("liner.overhangTail", func(d *Decisions) *Length { return &d.Design.Liner.OverTail }),
		tornEdges("liner.tornEdges", func(d *Decisions) *TornEdges { return &d.Design.Liner.Torn }),
		size("liner.roughAllowance", func(d *Decisions) *Length { return &d.Design.Liner.RoughAllowance }).from(3, 1.0/8).within(0, 10).steps(0.5, 1.0/32).when(torn),
	)
	stretch := size("liner.pasteStretch", func(d *Decisions) *Length { return &d.Design.Liner.PasteStretch }).from(1, 1.0/32).within(0, 3).steps(0.5, 1.0/32)
	return append(only(pleated, rows...), under(GroupLiner, PartLiner, 0, stretch)...)
}

func pastEdge(key string, at func(*Decisions) *Length) Param {
	return size(key, at).from(0, 0).within(-5, 60).steps(0.5, 1.0/32)
}

func boardRows() []Param {
	return under(GroupBoards, PartBoard, 5,
		material("board", stock.Board, func(d *Decisions) *string { return &d.Design.Board.Material }, "Groynes 2.5"),
		autoSize("board.thickness", func(d *Decisions) *Choice[Length] { return &d.Design.Board.Thickness },
			func(b *Book) Length { return b.Resolved.OnShelf.Board.Thickness }).stack().within(1, 6).steps(0.1, 1.0/64),
		square("square.head", func(d *Decisions) *Length { return &d.Design.Square.Head }),
		square("square.tail", func(d *Decisions) *Length { return &d.Design.Square.Tail }),
		square("square.foreEdge", func(d *Decisions) *Length { return &d.Design.Square.Fore }),
		autoSize("board.height", func(d *Decisions) *Choice[Length] { return &d.Design.Board.Height }, autoBoardHeight).
			within(40, 520).steps(0.5, 1.0/32),
		autoSize("board.width", func(d *Decisions) *Choice[Length] { return &d.Design.Board.Width }, autoBoardWidth).
			within(40, 500).steps(0.5, 1.0/32),
		yesNo("board.turned", func(d *Decisions) *bool { return &d.Design.Board.Turned }),
		autoGrain("board.grain", func(d *Decisions) *Choice[stock.Grain] { return &d.Design.Board.Grain },
			func(m *Materials) *stock.Material { return &m.Board }),
	)
}

func square(key string, at func(*Decisions) *Length) Param {
	return size(key, at).from(3, 1.0/8).within(0, 40).steps(0.5, 1.0/32)
}

func spineRows() []Param {
	return under(GroupSpine, PartSpine, 3,
		word("spine.kind", func(d *Decisions) *SpineKind { return &d.Design.Spine.Kind }, SpineCard, SpineInlay, SpineBoard),
		autoSize("spine.width", func(d *Decisions) *Choice[Length] { return &d.Design.Spine.Width }, autoSpineToCut).
			within(3, 120).steps(0.5, 1.0/32),
		autoSize("joint.width", func(d *Decisions) *Choice[Length] { return &d.Design.Joint.Width }, autoJointToCut).
			within(2, 25).steps(0.5, 1.0/32).on(PartJoint),
		size("joint.setBack", func(d *Decisions) *Length { return &d.Design.Joint.SetBack }).
			from(5, 7.0/32).within(2, 12).steps(0.5, 1.0/32).on(PartJoint),
		material("spine", stock.Card, func(d *Decisions) *string { return &d.Design.Spine.Material }, "Withy card 0.4").when(onCard),
		autoSize("spine.thickness", func(d *Decisions) *Choice[Length] { return &d.Design.Spine.Thickness },
			func(b *Book) Length { return b.Resolved.autoSpineThickness() }).stack().within(0.1, 6).steps(0.1, 1.0/64),
		ease("spine.ease", func(d *Decisions) *Length { return &d.Design.Spine.Ease }),
		ease("joint.ease", func(d *Decisions) *Length { return &d.Design.Joint.Ease }).on(PartJoint),
		autoSize("joint.groove", func(d *Decisions) *Choice[Length] { return &d.Design.Joint.Groove },
			func(b *Book) Length { return b.Resolved.autoGroove() }).within(0, 6).steps(0.1, 1.0/64).on(PartJoint),
		number("joint.bendLoss", KindNumber, func(d *Decisions) *float64 { return &d.Design.Joint.BendLoss }, 2).within(0, 3).step(0.1).on(PartJoint),
	)
}

func ease(key string, at func(*Decisions) *Length) Param {
	return size(key, at).from(0, 0).within(-1, 3).steps(0.1, 1.0/64)
}

func coveringRows() []Param {
	return under(GroupCovering, PartCovering, 3,
		material("covering", stock.Covering, func(d *Decisions) *string { return &d.Design.Covering.Material }, "Kelp"),
		size("covering.turnIn", func(d *Decisions) *Length { return &d.Design.Covering.TurnIn }).from(18, 0.75).within(8, 50).steps(1, 1.0/16),
		autoSize("covering.cornerCut", func(d *Decisions) *Choice[Length] { return &d.Design.Covering.CornerCut },
			func(b *Book) Length { return toCut(b.Resolved.CutIn).up(autoCornerCut(&b.Resolved)) }).within(1, 20).steps(0.5, 1.0/32),
		word("covering.kind", func(d *Decisions) *CoveringKind { return &d.Design.Covering.Kind }, FullCovering, QuarterCovering),
		autoSize("covering.thickness", func(d *Decisions) *Choice[Length] { return &d.Design.Covering.Thickness },
			func(b *Book) Length { return b.Resolved.OnShelf.Covering.Thickness }).stack().within(0.10, 1.50).steps(0.05, 1.0/64),
		yesNo("covering.turned", func(d *Decisions) *bool { return &d.Design.Covering.Turned }),
		autoGrain("covering.grain", func(d *Decisions) *Choice[stock.Grain] { return &d.Design.Covering.Grain },
			func(m *Materials) *stock.Material { return &m.Covering }),
		number("covering.cornerAngle", KindAngle, func(d *Decisions) *float64 { return &d.Design.Covering.CornerAngle }, 45).within(30, 60).step(1),
		material("adhesive", stock.Adhesive, func(d *Decisions) *string { return &d.Design.Adhesive }, "PVA"),
	)
}

func bookRows() []Param {
	return under(GroupBook, PartBook, 2,
		system("rounding.system", func(d *Decisions) *measure.System { return &d.Design.CutIn }),
		count("copies", func(d *Decisions) *int { return &d.Design.Copies }, 1).within(1, 5000),
	)
}

func system(key string, at func(*Decisions) *measure.System) Param {
	return Param{
		Key: key, Kind: KindWord, Words: []string{"mm", "inch"},
		standard: [2]Value{WordValue("mm"), WordValue("inch")},
		get:      func(d *Decisions) Value { return WordValue(at(d).String()) },
		set: func(d *Decisions, v Value) {
			*at(d) = measure.Metric
			if v.Word == "inch" {
				*at(d) = measure.Imperial
			}
		},
	}
}
