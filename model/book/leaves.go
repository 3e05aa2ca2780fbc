package book

// EndpaperPlan is the folded endpapers of a link-stitched block. Of each, one
// leaf goes on the board, the other is free.
type EndpaperPlan struct {
	Count                 int    // 0: there are none
	Width, Height         Length // flat, to cut
	LeafWidth, LeafHeight Length // of the pasted leaf, and of the free one
	Tip                   Length // strip pasted to the section along the fold
}

// TapePlan is the tapes that a block is sewn on.
type TapePlan struct {
	At            []Length // their middles, from the head
	Width, Length Length
	Lap           Length // of each end past the back
}

// MullPlan is the lining of a block's back.
type MullPlan struct {
	Width, Height Length // across the back with both laps; along it
	Lap           Length
	Head          Length // where it begins, from the block's head
}
