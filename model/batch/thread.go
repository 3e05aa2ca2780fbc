package batch

import (
	"grainwise/assets/words"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// threadOf is a set's thread as a material: all that is known of it is how thick
// it is.
func threadOf(s Set) stock.Material {
	size := measure.Style{System: s.Book.Resolved.CutIn, Decimals: 3}.WithUnit(s.Book.Sewing.ThreadDiameter)
	return stock.Material{Kind: stock.Thread, Name: words.Say("lists.thread", words.With{"diameter": size})}
}
