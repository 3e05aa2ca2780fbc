package book

// MullPlan is the lining of a link-stitched block's back.
type MullPlan struct {
	Width, Height Length // across the back with both laps; along it
	Lap           Length
	Head          Length // where it begins, from the block's head
}

// computeMull is (T_s + 2 × lap) × (H − 2 × short) (arithmetic.md,
// "Structures"), rounded down: a millimetre more would show.
func computeMull(r *Resolved, block Block, round rounding) MullPlan {
	height := max(round.down(block.Height-2*r.Mull.Short), 0)
	return MullPlan{
		Width: round.down(block.SpineThickness + 2*r.Mull.Lap), Height: height,
		Lap: r.Mull.Lap, Head: (block.Height - height) / 2,
	}
}

// linings is what is folded in at the spine besides the thread: the mull's two
// laps. Tapes press into the paper beside them (own reasoning).
func linings(r *Resolved) Length { return 2 * r.Stock.Mull.Thickness }
