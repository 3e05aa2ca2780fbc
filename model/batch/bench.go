package batch

import (
	"slices"

	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Block is one sewn block as it was measured at the bench.
type Block struct {
	Order    string `json:"order"`             // its id
	Copy     int    `json:"copy"`              // of the order's books, from 1
	Spine    Length `json:"spine"`             // thickness at the spine
	ForeEdge Length `json:"foreEdge,omitzero"` // at the fore edge; 0 where it was not measured
	Minutes  int    `json:"minutes,omitempty"` // hands' work on this book, where it was noted
	Fault    string `json:"fault,omitempty"`   // what went wrong with it
	Reason   string `json:"reason,omitempty"`  // and why
}

// The thickest block that a calliper of this house opens for.
const thickestBlock = 300 * measure.Millimetre

// Validate returns the first thing that is wrong with a measured block, or nil.
func (b Block) Validate() error {
	switch {
	case !mark(b.Order, longestMark):
		return want("order", "order.want.id", "most", longestMark)
	case b.Copy < 1 || b.Copy > MostCopies:
		return want("copy", "order.want.count", "most", MostCopies)
	case b.Spine < 0 || b.Spine > thickestBlock || b.Spine == 0 && b.Minutes == 0 && b.Fault == "":
		return want("spine", "batch.want.thickness", "most", thickestBlock.MM())
	case b.ForeEdge < 0 || b.ForeEdge > thickestBlock:
		return want("foreEdge", "batch.want.thickness", "most", thickestBlock.MM())
	case b.Minutes < 0 || b.Minutes > mostMinutes:
		return want("minutes", "batch.want.minutes", "most", mostMinutes)
	case !plainText(b.Fault, longestNote):
		return want("fault", "order.want.text", "most", longestNote)
	case !plainText(b.Reason, longestNote):
		return want("reason", "order.want.text", "most", longestNote)
	}
	return nil
}

// Holding is one material: what there is of it, and how it is bought.
type Holding struct {
	Kind       stock.Kind `json:"kind"`
	Material   string     `json:"material"`
	Sheets     int64      `json:"sheets,omitempty"`     // on hand; of a roll Length
	Length     Length     `json:"length,omitzero"`      // on hand, of a roll, a strip or thread
	Grams      float64    `json:"grams,omitempty"`      // on hand, of adhesive
	Lot        string     `json:"lot,omitempty"`        // of what is on hand; the shelf's is that of what is bought
	Pack       int64      `json:"pack,omitempty"`       // sheets that are sold together
	Least      Length     `json:"least,omitzero"`       // of a roll, the shortest length that is sold
	Substitute string     `json:"substitute,omitempty"` // the material of its kind to take in its place
}

// Limits of what can lie in a room.
const (
	mostSheets  = 1_000_000
	mostLength  = 9_000_000 * measure.Millimetre // 9 km
	mostGrams   = 1_000_000
	mostMinutes = 100_000
)

// Validate returns the first thing that is wrong with a holding, or nil.
func (h Holding) Validate() error {
	switch {
	case !slices.Contains(stock.Kinds(), h.Kind):
		return want("kind", "order.want.one", "names", joined(stock.Kinds()))
	case !mark(h.Material, LongestName):
		return want("material", "order.want.id", "most", LongestName)
	case h.Sheets < 0 || h.Sheets > mostSheets:
		return want("sheets", "batch.want.stock", "most", mostSheets)
	case h.Length < 0 || h.Length > mostLength:
		return want("length", "batch.want.stock", "most", mostLength.MM())
	case !(h.Grams >= 0 && h.Grams <= mostGrams):
		return want("grams", "batch.want.stock", "most", mostGrams)
	case h.Pack < 0 || h.Pack > mostSheets:
		return want("pack", "batch.want.stock", "most", mostSheets)
	case h.Least < 0 || h.Least > mostLength:
		return want("least", "batch.want.stock", "most", mostLength.MM())
	case !plainText(h.Lot, longestMark):
		return want("lot", "order.want.text", "most", longestMark)
	case !plainText(h.Substitute, LongestName) || h.Substitute == h.Material:
		return want("substitute", "batch.want.substitute")
	}
	return nil
}

// Cut is pieces of one kind that are cut already, and at which size.
type Cut struct {
	Kind     stock.Kind   `json:"kind"`
	Material string       `json:"material"`
	Part     string       `json:"part"`
	Height   Length       `json:"height"`
	Width    Length       `json:"width"`
	Count    int          `json:"count"`
	On       measure.Date `json:"on,omitzero"`
	Took     Amount       `json:"took,omitzero"` // of the material; of several kinds cut together the first says it
}

// Validate returns the first thing that is wrong with cut pieces, or nil.
func (c Cut) Validate() error {
	const largest = 10 * measure.Metre
	switch {
	case !slices.Contains(stock.Kinds(), c.Kind):
		return want("kind", "order.want.one", "names", joined(stock.Kinds()))
	case !mark(c.Material, LongestName):
		return want("material", "order.want.id", "most", LongestName)
	case !mark(c.Part, longestMark):
		return want("part", "order.want.id", "most", longestMark)
	case c.Height <= 0 || c.Height > largest:
		return want("height", "batch.want.size", "most", largest.MM())
	case c.Width <= 0 || c.Width > largest:
		return want("width", "batch.want.size", "most", largest.MM())
	case c.Count < 1 || c.Count > mostSheets:
		return want("count", "order.want.count", "most", mostSheets)
	case c.Took.negative():
		return want("took", "batch.want.stock", "most", mostSheets)
	case !c.On.IsZero() && !c.On.Valid():
		return want("on", "measure.want.date")
	}
	return nil
}

// Buying is what is bought beyond what the pieces take.
type Buying struct {
	Spoilage    []Spoilage `json:"spoilage,omitempty"`
	SpareBlocks int        `json:"spareBlocks,omitempty"` // per paper
	SpareCases  int        `json:"spareCases,omitempty"`  // per covering
}

// Spoilage is the share of a kind's sheets, or of its length, bought besides.
type Spoilage struct {
	Kind  stock.Kind `json:"kind"`
	Share float64    `json:"share"`
}

// Equal reports whether two are the same.
func (b Buying) Equal(c Buying) bool {
	return b.SpareBlocks == c.SpareBlocks && b.SpareCases == c.SpareCases && slices.Equal(b.Spoilage, c.Spoilage)
}

// Of is the share for a kind, 0 where none was set.
func (b Buying) Of(kind stock.Kind) float64 {
	for _, s := range b.Spoilage {
		if s.Kind == kind {
			return s.Share
		}
	}
	return 0
}

// Validate returns the first thing that is wrong, or nil.
func (b Buying) Validate() error {
	for i, s := range b.Spoilage {
		again := slices.ContainsFunc(b.Spoilage[:i], func(t Spoilage) bool { return t.Kind == s.Kind })
		switch {
		case again || !slices.Contains(stock.Kinds(), s.Kind):
			return want("spoilage", "batch.want.kindOnce", "names", joined(stock.Kinds()))
		case !(s.Share >= 0 && s.Share < 1):
			return want("spoilage", "batch.want.share")
		}
	}
	const most = 100
	switch {
	case b.SpareBlocks < 0 || b.SpareBlocks > most:
		return want("spareBlocks", "batch.want.stock", "most", most)
	case b.SpareCases < 0 || b.SpareCases > most:
		return want("spareCases", "batch.want.stock", "most", most)
	}
	return nil
}
