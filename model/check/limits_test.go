package check

import (
	"testing"

	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// step is one design at a rule's limit: settings by turns of key and value,
// and what the rule then says of what the key stands for, "" for nothing.
type step struct {
	rule, key string
	set       []string
	want      Level
}

func set(settings ...string) []string { return settings }

// hand is the usual book sewn by hand.
func hand(settings ...string) []string { return append(set("sewing.method", "pamphlet"), settings...) }

// deckled is a book out of sheets of 300 × 500 with a deckle at top and bottom,
// none of it cut off.
func deckled(settings ...string) []string {
	return append(set("paper.sheetLength", "300 mm", "paper.sheetWidth", "500 mm", "paper.lostEdges", "0 mm",
		"paper.deckle", "top-bottom"), settings...)
}

// link is the usual book with a link-stitched block.
func link(settings ...string) []string { return append(set("structure", "link-stitched"), settings...) }

// tapes is the same on tapes.
func tapes(settings ...string) []string {
	return append(link("sewing.method", "link-on-tapes"), settings...)
}

// quarter is the usual book in a quarter covering.
func quarter(settings ...string) []string {
	return append(set("covering.kind", "quarter"), settings...)
}

// Every rule at its limit, one step of the parameter either side. The limits
// are the rows of the list of checks; sizes that follow from several
// parameters are worked beside the row, for the usual book: 6 sections of 4
// folios, c = 0.22, g = 0.15, θ = 0.28, φ = 0.6, so that T_f = 10.86 and
// T_s = 13.368; b = 2.5, q = 0.45, W_b = 151.037 (all mm).
var steps = []step{
	{"material-unknown", "paper", set("paper", "Nowhere 1"), Stop},
	{"material-unknown", "interleaf", set("interleaf", "Nowhere 1"), ""}, // not in use
	{"material-unknown", "interleaf", set("interleaf", "Nowhere 1", "interleaf.mode", "around-folio"), Stop},
	{"material-unknown", "spine", set("spine", "Nowhere 1"), Stop},
	{"material-unknown", "spine", set("spine", "Nowhere 1", "spine.kind", "board"), ""},
	{"material-unknown", "adhesive", set("adhesive", "Nowhere 1"), Stop},

	// Usable of 1000 × 700: 994 × 694. A folio 694 wide comes out, one of 696 not.
	{"piece-over-sheet", "paper.turned", set("page.width", "347", "page.height", "450"), ""},
	{"piece-over-sheet", "paper.turned", set("page.width", "348", "page.height", "450"), Stop},
	{"piece-over-sheet", "liner.turned", set("page.width", "348"), Stop},
	{"piece-over-sheet", "board.turned", set("board.width", "348"), ""},
	{"piece-over-sheet", "board.turned", set("board.width", "348", "board.turned", "yes", "page.height", "450"), ""},
	// The roll is 980 wide: 2 × 455 + 2 × 9 + 16 + 2 × 18 = 980.
	{"piece-over-sheet", "covering.turned", set("board.width", "455", "joint.width", "9", "spine.width", "16", "covering.turnIn", "18"), ""},
	{"piece-over-sheet", "covering.turned", set("board.width", "456", "joint.width", "9", "spine.width", "16", "covering.turnIn", "18"), Stop},

	{"grain-paper", "paper.turned", set("paper.turned", "yes", "paper.thickness", "0.14 mm"), Check},
	{"grain-paper", "paper.turned", set("paper.turned", "yes", "paper.thickness", "0.15 mm"), Stop},
	{"grain-paper", "paper.turned", set("paper.turned", "yes", "paper.grain", "none"), ""},
	{"grain-paper", "paper.turned", set("paper.grain", "short"), ""}, // cut so that it runs along the spine
	{"grain-board", "board.turned", set("board.turned", "yes"), Stop},
	{"grain-board", "board.turned", set("board.turned", "no"), ""},
	{"grain-liner", "liner.turned", set("liner.turned", "yes"), Stop},
	{"grain-liner", "liner.turned", set("liner.turned", "yes", "liner.grain", "none"), ""},
	{"grain-covering", "covering.turned", set("covering.turned", "yes"), Check},
	{"grain-covering", "covering.turned", set("covering.turned", "no"), ""},
	{"grain-unknown", "liner.grain", set("liner.grain", "untested"), Check},
	{"grain-unknown", "liner.grain", set("liner.grain", "none"), ""},
	{"grain-unknown", "paper.grain", set("paper", "Brackmud Grey 120"), Check},
	{"fold-crack", "paper.thickness", set("paper.turned", "yes", "paper.thickness", "0.19 mm"), ""},
	{"fold-crack", "paper.thickness", set("paper.turned", "yes", "paper.thickness", "0.20 mm"), Stop},
	{"fold-crack", "paper.thickness", set("paper.thickness", "0.29 mm"), ""},
	{"fold-crack", "paper.thickness", set("paper.thickness", "0.30 mm"), Note},

	{"section-thick", "sections.folios", set("sections.folios", "5", "paper.thickness", "0.25 mm"), ""},    // 2.5
	{"section-thick", "sections.folios", set("sections.folios", "5", "paper.thickness", "0.26 mm"), Check}, // 2.6
	{"section-thick", "sections.folios", set("paper.thickness", "0.40 mm"), Check},                         // 3.2
	{"section-thick", "sections.folios", set("paper.thickness", "0.41 mm"), Stop},                          // 3.28
	{"section-heavy", "sections.folios", set("paper.grammage", "240", "sections.folios", "3"), ""},
	{"section-heavy", "sections.folios", set("paper.grammage", "240", "sections.folios", "4"), Check},
	{"section-heavy", "sections.folios", set("paper.grammage", "235", "sections.folios", "4"), ""},
	{"section-heavy", "sections.folios", set("paper.grammage", "140", "sections.folios", "5"), ""},
	{"section-heavy", "sections.folios", set("paper.grammage", "140", "sections.folios", "6"), Check},
	{"section-heavy", "sections.folios", set("paper.grammage", "135", "sections.folios", "6"), ""},
	// Creep of 5 folios: 4·c·π/2.
	{"creep-untrimmed", "trim.foreEdge", set("sections.folios", "5", "paper.thickness", "0.23 mm"), ""},    // 1.445
	{"creep-untrimmed", "trim.foreEdge", set("sections.folios", "5", "paper.thickness", "0.24 mm"), Check}, // 1.508
	{"creep-untrimmed", "trim.foreEdge", set("sections.folios", "5", "paper.thickness", "0.24 mm", "trim.foreEdge", "2 mm"), ""},
	// Creep of the usual book: 3·0.22·π/2 = 1.037.
	{"trim-under-creep", "trim.foreEdge", set("trim.foreEdge", "0 mm"), ""},
	{"trim-under-creep", "trim.foreEdge", set("trim.foreEdge", "1 mm"), Stop},
	{"trim-under-creep", "trim.foreEdge", set("trim.foreEdge", "1.5 mm"), ""},
	// T_s − T_f = 10·0.15 + 6·0.28·0.6 = 2.508 over T_f = 48·c + 0.3.
	{"swell-high", "sewing.threadDiameter", set("paper.thickness", "0.15 mm"), ""},    // 1.334
	{"swell-high", "sewing.threadDiameter", set("paper.thickness", "0.14 mm"), ""},    // 1.357
	{"swell-high", "sewing.threadDiameter", set("paper.thickness", "0.13 mm"), Check}, // 1.383
	{"swell-high", "sewing.threadDiameter", set("paper.thickness", "0.10 mm"), Check}, // 1.492
	{"swell-high", "sewing.threadDiameter", set("paper.thickness", "0.09 mm"), Stop},  // 1.543
	// 1.3 × 2.508 = 3.260 of room for 48 leaves; 1.3 × 1 for the 8 of one section.
	{"block-hungry", "owner.addedPerLeaf", set("owner.addedPerLeaf", "0.06 mm"), ""},                           // 2.88
	{"block-hungry", "owner.addedPerLeaf", set("owner.addedPerLeaf", "0.07 mm"), Check},                        // 3.36
	{"block-hungry", "owner.addedPerLeaf", set("sections.count", "1", "owner.addedPerLeaf", "0.16 mm"), ""},    // 1.28
	{"block-hungry", "owner.addedPerLeaf", set("sections.count", "1", "owner.addedPerLeaf", "0.17 mm"), Check}, // 1.36

	{"thread-thin", "sewing.threadDiameter", set("paper.thickness", "0.31 mm", "sewing.threadDiameter", "0.30 mm"), Check},
	{"thread-thin", "sewing.threadDiameter", set("paper.thickness", "0.31 mm", "sewing.threadDiameter", "0.31 mm"), ""},
	{"thread-thin", "sewing.threadDiameter", set("paper.thickness", "0.30 mm", "sewing.threadDiameter", "0.29 mm"), ""},
	{"stitch-short", "sewing.stitch", set("sewing.stitch", "4 mm"), ""},
	{"stitch-short", "sewing.stitch", set("sewing.stitch", "3.5 mm"), Check},
	{"stitch-short", "sewing.stitch", set("sewing.stitch", "3 mm"), Check},
	{"stitch-short", "sewing.stitch", hand("sewing.stitch", "3 mm"), ""},
	{"seam-ends", "sewing.freeEnds", set("sewing.freeEnds", "15 mm"), ""},
	{"seam-ends", "sewing.freeEnds", set("sewing.freeEnds", "14 mm"), Check},
	{"seam-ends", "sewing.freeEnds", set("sewing.freeEnds", "10 mm"), Check},
	{"seam-ends", "sewing.freeEnds", hand("sewing.freeEnds", "10 mm"), ""},
	{"station-edge", "sewing.endStation", hand("sewing.endStation", "8 mm"), ""},
	{"station-edge", "sewing.endStation", hand("sewing.endStation", "7 mm"), Stop},
	{"station-edge", "sewing.endStation", set("sewing.endStation", "7 mm"), ""},
	{"station-far", "sewing.endStation", hand("sewing.endStation", "19 mm"), ""},
	{"station-far", "sewing.endStation", hand("sewing.endStation", "20 mm"), Check},
	{"station-far", "sewing.stations", hand("sewing.endStation", "15 mm", "sewing.stations", "4"), ""},                             // 60
	{"station-far", "sewing.stations", hand("sewing.endStation", "15 mm", "sewing.stations", "4", "page.height", "211 mm"), Check}, // 60.3
	{"station-few", "sewing.stations", hand("sewing.stations", "3", "page.height", "180 mm"), ""},
	{"station-few", "sewing.stations", hand("sewing.stations", "3", "page.height", "181 mm"), Check},
	{"station-few", "sewing.stations", hand("sewing.stations", "4", "page.height", "181 mm"), ""},
	{"template-flip", "sewing.stations", hand(), Note},
	{"template-flip", "sewing.stations", set(), ""},

	// k = √((j − 3.4)² − 1.316²) − 0.4, with e = 1.316, r = b and β·q = 0.9:
	// it closes from j = 4.776, k is 2 at 6.137 and 9 at 12.892.
	{"joint-closed", "joint.width", set("joint.width", "4.5 mm"), Stop},
	{"joint-closed", "joint.width", set("joint.width", "5 mm"), ""},
	{"joint-narrow", "joint.width", set("joint.width", "4.5 mm"), ""}, // a stop already
	{"joint-narrow", "joint.width", set("joint.width", "6 mm"), Check},
	{"joint-narrow", "joint.width", set("joint.width", "6.5 mm"), ""},
	// Board spine piece: S = 18.5, ts = 2.5, r = 1.25; k is 5 at j = 9.765.
	{"joint-narrow", "joint.width", set("spine.kind", "board", "joint.width", "9.5 mm"), Check},
	{"joint-narrow", "joint.width", set("spine.kind", "board", "joint.width", "10 mm"), ""},
	{"joint-wide", "joint.width", set("joint.width", "12.5 mm"), ""},
	{"joint-wide", "joint.width", set("joint.width", "13 mm"), Check},
	{"joint-quarter", "joint.width", set("joint.width", "9 mm", "measured.spineThickness", "36 mm"), ""},
	{"joint-quarter", "joint.width", set("joint.width", "9 mm", "measured.spineThickness", "36.1 mm"), Note},
	// From T_s to T_s + 2·2.5 + 1.
	{"spine-fit", "spine.width", set("measured.spineThickness", "14 mm", "spine.width", "13.5 mm"), Check},
	{"spine-fit", "spine.width", set("measured.spineThickness", "14 mm", "spine.width", "14 mm"), ""},
	{"spine-fit", "spine.width", set("measured.spineThickness", "14 mm", "spine.width", "20 mm"), ""},
	{"spine-fit", "spine.width", set("measured.spineThickness", "14 mm", "spine.width", "20.5 mm"), Check},

	{"measure-first", "measured.spineThickness", set(), Note},
	{"measure-first", "measured.spineThickness", set("measured.spineThickness", "13.4 mm"), ""},
	{"measure-first", "measured.spineThickness", set("measured.foreEdgeThickness", "10.9 mm"), Note},
	// 1 mm from 13.368; 8 % of 10.86 is 0.869; 8 % of one section's 2.228 is 0.178.
	{"measure-odd", "measured.spineThickness", set("measured.spineThickness", "12.3 mm"), Check},
	{"measure-odd", "measured.spineThickness", set("measured.spineThickness", "12.4 mm"), ""},
	{"measure-odd", "measured.spineThickness", set("measured.spineThickness", "14.3 mm"), ""},
	{"measure-odd", "measured.spineThickness", set("measured.spineThickness", "14.4 mm"), Check},
	{"measure-odd", "measured.spineThickness", set("sections.count", "1", "measured.spineThickness", "2.4 mm"), ""},
	{"measure-odd", "measured.spineThickness", set("sections.count", "1", "measured.spineThickness", "2.5 mm"), Check},
	{"measure-odd", "measured.foreEdgeThickness", set("measured.foreEdgeThickness", "11.7 mm"), ""},
	{"measure-odd", "measured.foreEdgeThickness", set("measured.foreEdgeThickness", "11.8 mm"), Check},

	{"measure-first", "measured.spineThickness", set("measured.spineThickness.tail", "13.4 mm"), ""},
	{"measure-odd", "measured.spineThickness", set("measured.spineThickness.head", "14.4 mm", "measured.spineThickness.tail", "14 mm"), Check},
	{"measure-uneven", "measured.spineThickness", set("measured.spineThickness.head", "13.4 mm"), ""},
	{"measure-uneven", "measured.spineThickness", set("measured.spineThickness.head", "13.1 mm", "measured.spineThickness.tail", "13.6 mm"), ""},
	{"measure-uneven", "measured.spineThickness", set("measured.spineThickness.head", "13.1 mm", "measured.spineThickness.middle", "13.7 mm"), Note},
	{"measure-uneven", "measured.spineThickness", set("measured.spineThickness.middle", "12.9 mm", "measured.spineThickness.tail", "13.9 mm"), Note},
	{"measure-uneven", "measured.spineThickness", set("measured.spineThickness.middle", "12.9 mm", "measured.spineThickness.tail", "14 mm"), Check},
	{"measure-uneven", "measured.foreEdgeThickness", set("measured.foreEdgeThickness.head", "10.6 mm", "measured.foreEdgeThickness.tail", "11.1 mm"), ""},
	{"measure-uneven", "measured.foreEdgeThickness", set("measured.foreEdgeThickness.head", "10.6 mm", "measured.foreEdgeThickness.tail", "11.2 mm"), Note},

	{"square-small", "square.head", set("square.head", "2 mm"), ""},
	{"square-small", "square.head", set("square.head", "1.5 mm"), Check},
	{"square-small", "square.tail", set("square.tail", "0.5 mm"), Check},
	{"square-small", "square.tail", set("square.tail", "0 mm"), Stop},
	// s_f = B + 5.043 − 151.037.
	{"square-small", "square.foreEdge", set("board.width", "148 mm"), ""},
	{"square-small", "square.foreEdge", set("board.width", "147.5 mm"), Check},
	{"square-small", "square.foreEdge", set("board.width", "146 mm"), Check},
	{"square-small", "square.foreEdge", set("board.width", "145.5 mm"), Stop},
	{"square-small", "square.head", set("square.head", "0 mm", "square.tail", "0 mm", "square.foreEdge", "0 mm"), ""}, // flush by intent
	{"square-small", "square.foreEdge", set("square.head", "0 mm", "square.tail", "0 mm", "square.foreEdge", "0 mm", "board.width", "145.5 mm"), Stop},
	{"square-large", "square.head", set("square.head", "5 mm"), ""},
	{"square-large", "square.head", set("square.head", "5.5 mm"), Note},
	{"square-large", "square.head", set("square.head", "5.5 mm", "page.height", "249 mm"), Note},
	{"square-large", "square.head", set("square.head", "5.5 mm", "page.height", "250 mm"), ""},
	{"square-large", "square.head", set("square.head", "5.5 mm", "liner.overhangHead", "0.5 mm"), ""},
	{"board-thin", "board.thickness", set("page.height", "230 mm", "board.thickness", "1.7 mm"), ""},
	{"board-thin", "board.thickness", set("page.height", "231 mm", "board.thickness", "1.7 mm"), Check},
	{"board-thin", "board.thickness", set("page.height", "231 mm", "board.thickness", "1.8 mm"), ""},
	{"board-thin", "board.thickness", set("page.height", "300 mm", "board.thickness", "2.3 mm"), ""},
	{"board-thin", "board.thickness", set("page.height", "301 mm", "board.thickness", "2.3 mm"), Check},
	{"board-thin", "board.thickness", set("page.height", "301 mm", "board.thickness", "2.4 mm"), ""},

	{"turn-in-short", "covering.turnIn", set("covering.turnIn", "13 mm"), ""},
	{"turn-in-short", "covering.turnIn", set("covering.turnIn", "12 mm"), Note},
	// The widest margin, 4.043 at the fore edge, against t − 5.95 and t − 2.95.
	{"turn-in-bare", "covering.turnIn", set("covering.turnIn", "10 mm"), ""},
	{"turn-in-bare", "covering.turnIn", set("covering.turnIn", "9 mm"), Check},
	{"turn-in-bare", "covering.turnIn", set("square.head", "6 mm", "covering.turnIn", "12 mm"), ""},
	{"turn-in-bare", "covering.turnIn", set("square.head", "6 mm", "covering.turnIn", "11 mm"), Check},
	{"turn-in-bare", "covering.turnIn", set("square.head", "6 mm", "covering.turnIn", "9 mm"), Check},
	{"turn-in-bare", "covering.turnIn", set("square.head", "6 mm", "covering.turnIn", "8 mm"), Stop},
	// Without pleats T_s = 11.868, a sixth of it 1.978.
	{"liner-short", "liner.valleySpacing", set("liner.pleatDepth", "0 mm", "liner.valleySpacing", "2 mm"), ""},
	{"liner-short", "liner.valleySpacing", set("liner.pleatDepth", "0 mm", "liner.valleySpacing", "1.5 mm"), Stop},
	{"liner-short", "liner.valleySpacing", set("liner.pleatDepth", "0 mm"), ""},
	// Pleats: T_s / 6 = 2.228.
	{"liner-short", "liner.valleySpacing", set("liner.pleatDepth", "0.5 mm", "liner.valleySpacing", "1.5 mm"), ""},
	{"liner-short", "liner.valleySpacing", set("liner.pleatDepth", "0.5 mm", "liner.valleySpacing", "1 mm"), Stop},
	{"leaf-over-edge", "liner.overhangHead", set("liner.overhangHead", "2 mm"), ""},
	{"leaf-over-edge", "liner.overhangHead", set("liner.overhangHead", "2.5 mm"), Check},
	{"leaf-over-edge", "liner.overhangTail", set("liner.overhangTail", "3 mm"), Check},
	{"leaf-over-edge", "liner.overhangTail", set("liner.overhangTail", "3.5 mm"), Stop},
	// At the fore edge 4.043 less the 1 mm that it grows.
	{"leaf-over-edge", "liner.overhangForeEdge", set("liner.overhangForeEdge", "2 mm"), ""},
	{"leaf-over-edge", "liner.overhangForeEdge", set("liner.overhangForeEdge", "2.5 mm"), Check},
	{"leaf-over-edge", "liner.overhangForeEdge", set("liner.overhangForeEdge", "3 mm"), Check},
	{"leaf-over-edge", "liner.overhangForeEdge", set("liner.overhangForeEdge", "3.5 mm"), Stop},
	// v·√2 against 3.95 and 2.95: v = 2.793 and 2.086; far from 8.4.
	{"corner-near", "covering.cornerCut", set("covering.cornerCut", "3 mm"), ""},
	{"corner-near", "covering.cornerCut", set("covering.cornerCut", "2.5 mm"), Check},
	{"corner-near", "covering.cornerCut", set("covering.cornerCut", "2 mm"), Stop},
	{"corner-far", "covering.cornerCut", set("covering.cornerCut", "8 mm"), ""},
	{"corner-far", "covering.cornerCut", set("covering.cornerCut", "8.5 mm"), Check},
	{"covering-untested", "covering", set("covering", "Slackwater"), Check},
	{"covering-untested", "covering", set("covering", "Shingle paper"), ""}, // unbacked, but tested
	{"covering-untested", "covering", set("covering", "Fog"), ""},

	// 8 folios of 210 out of 1000 × 700: 64.8 % and 65.3 %.
	{"sheet-waste", "page.height", set("page.width", "135 mm"), Note},
	{"sheet-waste", "page.height", set("page.width", "136 mm"), ""},
	// 994 / 5 = 198.8 high and 694 / 3 / 2 = 115.7 wide give one row more.
	{"yield-step", "page.height", set("page.height", "202 mm"), Note},
	{"yield-step", "page.height", set("page.height", "203 mm"), ""},
	{"yield-step", "page.height", set("page.height", "198 mm"), ""},
	{"yield-step", "page.width", set("page.width", "119 mm"), Note},
	{"yield-step", "page.width", set("page.width", "120 mm"), ""},
	// Across: 3 × 3 while three heights go into 694, against 4 × 2.
	{"yield-crossgrain", "paper.turned", set("page.height", "231 mm"), Note},
	{"yield-crossgrain", "paper.turned", set("page.height", "232 mm"), ""},
	{"yield-crossgrain", "paper.turned", set("page.height", "231 mm", "paper.turned", "yes"), ""}, // grain-paper speaks
	{"yield-crossgrain", "paper.turned", set("page.height", "231 mm", "paper.grain", "none"), ""},
	{"deckle-spine", "page.height", deckled("page.height", "297 mm"), ""},
	{"deckle-spine", "page.height", deckled("page.height", "298 mm"), Check},
	{"deckle-spine", "page.height", deckled("page.height", "298 mm", "paper.deckle", "left-right"), ""},
	{"deckle-spine", "page.height", deckled("page.height", "299 mm", "paper.lostEdges.top", "1 mm"), ""}, // turned to the tail
	{"deckle-spine", "page.height", deckled("page.height", "150 mm"), ""},                                // two rows, each with one
	{"deckle-spine", "page.height", deckled("page.height", "298 mm", "trim.head", "1 mm"), ""},           // cut off
	{"long-lever", "page.width", set("page.height", "200 mm", "page.width", "270 mm", "sections.count", "12"), ""},
	{"long-lever", "page.width", set("page.height", "200 mm", "page.width", "271 mm", "sections.count", "12"), Check},
	{"long-lever", "page.width", set("page.height", "200 mm", "page.width", "271 mm", "sections.count", "2"), ""},
	// A link-stitched block: g_e = 0.15, θ = 0.5, lining 0.16, so that
	// T_f = 6·8·c + 0.6 = 11.16 and T_s = T_f + 6·0.3 + 0.32 = 13.28.
	{"material-unknown", "endpaper", link("endpaper", "Nowhere 1"), Stop},
	{"material-unknown", "endpaper", set("endpaper", "Nowhere 1"), ""},
	{"material-unknown", "liner", link("liner", "Nowhere 1"), ""},
	{"material-unknown", "mull", link("mull", "Nowhere 1"), Stop},
	{"material-unknown", "sewing.tape", tapes("sewing.tape", "Nowhere 1"), Stop},
	{"material-unknown", "sewing.tape", link("sewing.tape", "Nowhere 1"), ""},
	{"material-unknown", "covering.side", quarter("covering.side", "Nowhere 1"), Stop},
	{"material-unknown", "covering.side", set("covering.side", "Nowhere 1"), ""},
	{"material-unknown", "ribbon", set("ribbon.width", "6 mm", "ribbon", "Nowhere 1"), Stop},
	{"material-unknown", "ribbon", set("ribbon", "Nowhere 1"), ""},
	{"grain-liner", "endpaper.turned", link("endpaper.turned", "yes"), Stop},
	{"grain-liner", "endpaper.turned", link("endpaper.turned", "no"), ""},
	{"grain-liner", "endpaper.turned", set("endpaper.turned", "yes"), ""},
	{"grain-liner", "liner.turned", link("liner.turned", "yes"), ""},
	{"grain-unknown", "endpaper.grain", link("endpaper.grain", "untested"), Check},
	{"grain-unknown", "liner.grain", link("liner.grain", "untested"), ""},
	// (2.12 + 48·c + 0.6) / (48·c + 0.6): the back is flat here too.
	{"swell-high", "sewing.threadDiameter", link("paper.thickness", "0.12 mm"), ""},    // 1.333
	{"swell-high", "sewing.threadDiameter", link("paper.thickness", "0.11 mm"), Check}, // 1.361
	{"swell-high", "sewing.threadDiameter", link("paper.thickness", "0.08 mm"), Check}, // 1.477
	{"swell-high", "sewing.threadDiameter", link("paper.thickness", "0.07 mm"), Stop},  // 1.535
	// 1.3 × 2.12 = 2.756 of room for 48 leaves.
	{"block-hungry", "owner.addedPerLeaf", link("owner.addedPerLeaf", "0.05 mm"), ""},    // 2.4
	{"block-hungry", "owner.addedPerLeaf", link("owner.addedPerLeaf", "0.06 mm"), Check}, // 2.88
	{"thread-thin", "sewing.threadDiameter", link("paper.thickness", "0.31 mm", "sewing.threadDiameter", "0.30 mm"), Check},
	{"stitch-short", "sewing.stitch", link("sewing.stitch", "3 mm"), ""},
	{"seam-ends", "sewing.freeEnds", link("sewing.freeEnds", "10 mm"), ""},
	{"station-edge", "sewing.endStation", link("sewing.endStation", "8 mm"), ""},
	{"station-edge", "sewing.endStation", link("sewing.endStation", "7 mm"), Stop},
	{"station-edge", "sewing.endStation", tapes("sewing.endStation", "7 mm"), Stop},
	{"station-far", "sewing.endStation", link("sewing.endStation", "20 mm"), ""}, // the kettle holds it
	{"station-far", "sewing.stations", link("sewing.endStation", "15 mm", "sewing.stations", "4"), ""},
	{"station-far", "sewing.stations", link("sewing.endStation", "15 mm", "sewing.stations", "4", "page.height", "211 mm"), Check},
	// Kettle to the first tape's edge: (H − 24)/3 − 6.
	{"station-far", "sewing.tapes", tapes("page.height", "222 mm"), ""},    // 60
	{"station-far", "sewing.tapes", tapes("page.height", "223 mm"), Check}, // 60.3
	{"station-far", "sewing.tapes", tapes("sewing.tapes", "0"), Check},
	{"station-few", "sewing.stations", link("sewing.stations", "3", "page.height", "181 mm"), ""},
	{"template-flip", "sewing.stations", link(), Note},
	{"template-flip", "sewing.tapes", tapes(), Note},
	{"liner-short", "liner.valleySpacing", link("liner.pleatDepth", "0 mm", "liner.valleySpacing", "0 mm"), ""},
	{"leaf-over-edge", "square.head", link("square.head", "1 mm"), ""},
	{"leaf-over-edge", "square.head", link("square.head", "0.5 mm"), Check},
	{"leaf-over-edge", "liner.overhangHead", link("liner.overhangHead", "5 mm"), ""}, // an endpaper has none
	// At the fore edge s_f + 1.037 less the 1 mm that it grows; s_f = B + k − 151.037,
	// with k = 5.032 of e = (16 − 13.28)/2 = 1.36 and a joint of 9.
	{"leaf-over-edge", "square.foreEdge", link("board.width", "147 mm"), ""},      // 1.03
	{"leaf-over-edge", "square.foreEdge", link("board.width", "146.5 mm"), Check}, // 0.53
	{"leaf-over-edge", "square.foreEdge", link("board.width", "145.5 mm"), Stop},
	// The margin at the fore edge, 4.03, against t − 5.95 and t − 2.95.
	{"turn-in-bare", "covering.turnIn", link("covering.turnIn", "10 mm"), ""},
	{"turn-in-bare", "covering.turnIn", link("covering.turnIn", "9 mm"), Check},

	// Sides of 0.14: v·√2 against 3.64 and 2.64, v = 2.574 and 1.867.
	{"corner-near", "covering.cornerCut", quarter("covering.cornerCut", "3 mm"), ""},
	{"corner-near", "covering.cornerCut", quarter("covering.cornerCut", "2 mm"), Check},
	{"corner-near", "covering.cornerCut", quarter("covering.cornerCut", "1.5 mm"), Stop},
	{"covering-untested", "covering.side", quarter("covering.side", "Slackwater"), Check},
	{"covering-untested", "covering.side", quarter(), ""},
	{"covering-untested", "covering.side", set("covering.side", "Slackwater"), ""},

	{"square-format", "page.width", set("page.height", "100 mm", "page.width", "97 mm"), Note},
	{"square-format", "page.width", set("page.height", "100 mm", "page.width", "96 mm"), ""},
	{"square-format", "page.width", set("page.height", "97 mm", "page.width", "100 mm"), Note},
}

func TestEveryRuleAtItsLimit(t *testing.T) {
	spoken := map[string]map[Level]bool{}
	for _, s := range steps {
		d := with(t, measure.Metric, s.set...)
		got := levelOf(All(reckon(d)), Finding{ID: s.rule, Key: s.key})
		if got != s.want {
			t.Errorf("%s, %v: %q, want %q", s.rule, s.set, got, s.want)
		}
		if spoken[s.rule] == nil {
			spoken[s.rule] = map[Level]bool{}
		}
		spoken[s.rule][s.want] = true
		mustMend(t, d)
	}
	for _, rule := range rules {
		if seen := spoken[rule.ID]; len(seen) < 2 && rule.ID != "tool-reach" { // that has tests of its own
			t.Errorf("%s is not tested on both sides: %v", rule.ID, seen)
		}
	}
}

// What the parameter table keeps out, but a design made in code can hold.
func TestRulesPastTheTable(t *testing.T) {
	for _, c := range []struct {
		rule, key string
		change    func(*book.Design)
		want      Level
	}{
		{"stitch-short", "sewing.stitch", func(d *book.Design) { d.Sewing.Stitch = measure.MM(2.9) }, Stop},
		{"seam-ends", "sewing.freeEnds", func(d *book.Design) { d.Sewing.FreeEnds = measure.MM(9) }, Stop},
	} {
		d := book.Defaults(measure.Metric)
		c.change(&d.Design)
		if got := levelOf(All(reckon(d)), Finding{ID: c.rule, Key: c.key}); got != c.want {
			t.Errorf("%s: %q, want %q", c.rule, got, c.want)
		}
		mustMend(t, d)
	}
}

// Stations are always even so far; a template with one of them shifted is not
// turned over.
func TestTemplateFlipSeesAShiftedStation(t *testing.T) {
	b := reckon(with(t, measure.Metric, hand()...))
	for _, c := range []struct {
		shift float64
		want  int
	}{{1, 1}, {1.9, 1}, {2, 0}, {-2, 0}} {
		moved := b
		moved.Sewing.Stations = append([]book.Length(nil), b.Sewing.Stations...)
		moved.Sewing.Stations[1] += measure.MM(c.shift)
		if got := len(templateFlip(newMatter(&moved, Tools{}, usualLimits()))); got != c.want {
			t.Errorf("one station shifted by %v mm: %d findings, want %d", c.shift, got, c.want)
		}
	}
}

// An empty shelf leaves nothing to stand in.
func TestNothingOnTheShelf(t *testing.T) {
	found := All(book.Compute(book.Resolve(book.Defaults(measure.Metric), stock.Shelf{})))
	unknown := 0
	for _, f := range found {
		if f.ID == "material-unknown" {
			unknown++
			if f.Remedy != nil {
				t.Errorf("%s: %v, but there is nothing to take", f.Key, f.Remedy)
			}
		}
	}
	if unknown != 6 {
		t.Errorf("%d materials unknown, want the 6 in use", unknown)
	}
}
