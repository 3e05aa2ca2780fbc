package papers

import (
	"bytes"
	"context"
	"image/png"

	"grainwise/render/pdf"
	"grainwise/render/raster"
	"grainwise/render/scene"
	"grainwise/render/svg"
)

// drawingWidth is how many px wide a drawing's PNG is, and its stills in the files of
// vectors: what a print of A4 shows at 200 dots an inch.
const drawingWidth = 2400

// DrawingForms is how many files one drawing becomes. [Drawing] tells of so many
// steps, and of one for each still.
const DrawingForms = 3

// Drawing makes the files of one drawing: PNG, PDF and SVG, which look alike. It
// tells how many steps are done, and stops between two when ctx is done.
func Drawing(ctx context.Context, name string, s *scene.Scene, told func(done int)) ([]File, error) {
	done := 0
	step := func() {
		if done++; told != nil {
			told(done)
		}
	}
	s, err := raster.Develop(ctx, s, drawingWidth/s.Width, func(int, int) { step() })
	if err != nil {
		return nil, err
	}
	var files []File
	for _, form := range []struct {
		ending string
		write  func(*bytes.Buffer) error
	}{
		{".png", func(b *bytes.Buffer) error {
			return (&png.Encoder{CompressionLevel: png.BestSpeed}).Encode(b, raster.Image(s, drawingWidth))
		}},
		{".pdf", func(b *bytes.Buffer) error { return pdf.Write(b, pdf.Options{Title: name}, s) }},
		{".svg", func(b *bytes.Buffer) error { return svg.Write(b, name, s) }},
	} {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		var b bytes.Buffer
		if err := form.write(&b); err != nil {
			return nil, err
		}
		files = append(files, File{Name: name + form.ending, Data: b.Bytes()})
		step()
	}
	return files, nil
}
