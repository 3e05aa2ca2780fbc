package ui

import (
	"grainwise/assets/words"
	"grainwise/model/cutting"
	"grainwise/model/sheets"
	"grainwise/render/draft"
)

// rollProof says why no plan can be shorter, or by how much one may be.
func (s *sheetsSummary) rollProof(c sheets.Cutting) string {
	switch c.Plan.Proof {
	case cutting.ByCertificate:
		return words.Say("sheets.proof.roll")
	case cutting.BySearch:
		return words.Say("sheets.proof.roll.search")
	}
	said := words.Say("sheets.proof.roll.open", words.With{"gap": s.length(c.Plan.Cost - c.Plan.LowerBound), "least": s.length(c.Plan.LowerBound)})
	with := words.With{"row": s.length(int64(c.RowsUpTo)), "gap": s.length(c.Plan.Cost - int64(c.RowsLeast))}
	switch {
	case c.RowsUpTo == 0:
		return said
	case int64(c.RowsLeast) < c.Plan.Cost:
		return said + " " + words.Say("sheets.proof.roll.within", with)
	}
	return said + " " + words.Say("sheets.proof.roll.rows", with)
}

// soFar says how far the search for a plan has come.
func (s *sheetsSummary) soFar(best cutting.Progress) string {
	if s.page.plans.jobs[s.page.chosen].Roll() {
		return words.Say("sheets.searching.roll", words.With{"found": s.length(best.Cost), "least": s.length(best.LowerBound)})
	}
	return words.Say("sheets.searching", words.With{"found": best.Cost, "least": best.LowerBound})
}

func (s *sheetsSummary) length(nanometres int64) string {
	return draft.Sizes(s.page.window.session.System()).WithUnit(sheets.Length(nanometres))
}
