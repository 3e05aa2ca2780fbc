package cutting

// MostAlike is how many pieces of one size a rectangle gives when each may lie
// either way: exact, by the dynamic program of [MostValuable] with a value of 1.
func MostAlike(width, height, pieceWidth, pieceHeight int64) int64 {
	if pieceWidth <= 0 || pieceHeight <= 0 || width <= 0 || height <= 0 {
		return 0
	}
	p := &problem{fits: positions([]Piece{{Width: pieceWidth, Height: pieceHeight, Turn: true}}, 0)}
	t, ok := p.addTable(width, height, grid{unit: gcd(pieceWidth, pieceHeight)})
	if !ok {
		return 0
	}
	t.fill([]int64{1}, func() bool { return false })
	return t.at(t.x.whole, t.y.whole)
}
