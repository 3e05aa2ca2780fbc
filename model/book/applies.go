package book

// What a row of the table may depend on.

func pleated(d Design) bool { return d.Structure == PleatedLiner }

func linked(d Design) bool { return d.Structure == LinkStitched }

func byMachine(d Design) bool { return d.Sewing.Method == Machine }

func byHand(d Design) bool { return !byMachine(d) }

func onTapes(d Design) bool { return d.Sewing.Method == LinkOnTapes }

// spacedStations are those that the maker counts; tapes bring their own.
func spacedStations(d Design) bool { return byHand(d) && !onTapes(d) }

func guarded(d Design) bool { return d.Interleaf.Mode != GuardNone }

func torn(d Design) bool { return d.Liner.Torn != TornEdges{} }

// onCard: the spine piece or its bands are cut from card.
func onCard(d Design) bool { return d.Spine.Kind != SpineBoard || d.Finishing.Bands > 0 }

func quartered(d Design) bool { return d.Covering.Kind == QuarterCovering }

// only narrows rows to some designs, besides what each depends on itself.
func only(applies func(Design) bool, rows ...Param) []Param {
	for i, p := range rows {
		rows[i].applies = func(d Design) bool { return applies(d) && p.Applies(d) }
	}
	return rows
}
