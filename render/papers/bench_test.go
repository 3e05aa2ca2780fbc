package papers

import (
	"context"
	"testing"

	"grainwise/render/sheet"
)

// The whole set of the demo's papers, from the book to the files' bytes: to take a
// second at most.
func BenchmarkWholeSet(b *testing.B) {
	in := demo(b)
	order := Order{Kinds: sheet.For(in), Lists: true}
	for b.Loop() {
		if _, err := Files(context.Background(), in, order, nil); err != nil {
			b.Fatal(err)
		}
	}
}
