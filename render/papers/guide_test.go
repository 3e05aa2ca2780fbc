package papers

import (
	"bytes"
	"context"
	"slices"
	"testing"

	"grainwise/render/sheet"
)

// The guide is written twice: for the printer, and for the screen.
func TestGuideIsWrittenAsAPageToo(t *testing.T) {
	kinds := slices.DeleteFunc(sheet.All(), func(k sheet.Kind) bool { return k.ID != "guide" })
	files, err := Files(context.Background(), demo(t), Order{Kinds: kinds}, nil)
	if err != nil {
		t.Fatal(err)
	}
	if len(files) != 2 || files[0].Name != "guide.pdf" || files[1].Name != "guide.html" {
		t.Fatalf("the files are %v", names(files))
	}
	if !bytes.HasPrefix(files[0].Data, []byte("%PDF-")) || !bytes.HasPrefix(files[1].Data, []byte("<!DOCTYPE html>")) {
		t.Error("a file is not what its name says")
	}
}

func names(files []File) []string {
	var all []string
	for _, f := range files {
		all = append(all, f.Name)
	}
	return all
}
