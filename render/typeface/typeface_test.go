package typeface

import (
	"encoding/binary"
	"math"
	"sync"
	"testing"

	"pgregory.net/rapid"

	"grainwise/render/scene"
)

var all = []scene.Font{scene.Serif, scene.Sans, scene.SansItalic, scene.SansBold}

// table finds a TrueType table by the directory of the OpenType specification
// (12 byte header, then 16 byte records: tag, checksum, offset, length).
func table(t *testing.T, file []byte, tag string) []byte {
	t.Helper()
	for i := range int(binary.BigEndian.Uint16(file[4:])) {
		r := file[12+16*i:]
		if string(r[:4]) == tag {
			return file[binary.BigEndian.Uint32(r[8:]):][:binary.BigEndian.Uint32(r[12:])]
		}
	}
	t.Fatalf("no table %s", tag)
	return nil
}

// advanceByTables reads a character's advance straight from cmap format 4 and
// hmtx, as the OpenType specification lays them out.
func advanceByTables(t *testing.T, file []byte, r rune) float64 {
	t.Helper()
	u16 := func(b []byte, at int) int { return int(binary.BigEndian.Uint16(b[at:])) }
	cmap, sub := table(t, file, "cmap"), -1
	for i := range u16(cmap, 2) {
		if at := int(binary.BigEndian.Uint32(cmap[4+8*i+4:])); u16(cmap, at) == 4 {
			sub = at
		}
	}
	if sub < 0 {
		t.Fatal("no cmap of format 4")
	}
	m := cmap[sub:]
	x2, glyph := u16(m, 6), 0
	for i := 0; i < x2; i += 2 {
		end, start := u16(m, 14+i), u16(m, 16+x2+i)
		if int(r) < start || int(r) > end {
			continue
		}
		delta, at := u16(m, 16+2*x2+i), 16+3*x2+i
		if offset := u16(m, at); offset == 0 {
			glyph = (int(r) + delta) & 0xFFFF
		} else if g := u16(m, at+offset+2*(int(r)-start)); g != 0 {
			glyph = (g + delta) & 0xFFFF
		}
		break
	}
	long := u16(table(t, file, "hhea"), 34)
	return float64(u16(table(t, file, "hmtx"), 4*min(glyph, long-1))) / float64(u16(table(t, file, "head"), 18))
}

func TestAdvancesAreTheFilesOwn(t *testing.T) {
	for _, f := range all {
		face := Of(f)
		for _, r := range "Aag 0189×°⅜½–’éßÅŒ−→" {
			if Shown(f, string(r)) != string(r) {
				continue
			}
			if got, want := face.Advance(r), advanceByTables(t, face.File, r); math.Abs(got-want) > 1e-9 {
				t.Errorf("%s%s %q: advance %g em, the file says %g", face.Family, face.Style, r, got, want)
			}
		}
	}
}

// The drawings rely on these characters in every face.
func TestDrawingCharactersAreThere(t *testing.T) {
	const needed = "0123456789 ×°.,–-/()%½¼¾⅛⅜⅝⅞²"
	for _, f := range all {
		if got := Shown(f, needed); got != needed {
			t.Errorf("%s%s shows %q as %q", Of(f).Family, Of(f).Style, needed, got)
		}
	}
}

func TestWidthAddsUpAndScales(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := rapid.SampledFrom(all).Draw(t, "face")
		a, b := rapid.String().Draw(t, "a"), rapid.String().Draw(t, "b")
		size := rapid.Float64Range(0.1, 50).Draw(t, "size")
		sum := Width(f, size, a) + Width(f, size, b)
		if whole := Width(f, size, a+b); math.Abs(whole-sum) > 1e-9*(1+whole) {
			t.Fatalf("parts %g, whole %g: nothing may be kerned", sum, whole)
		}
		if double := Width(f, 2*size, a); math.Abs(double-2*Width(f, size, a)) > 1e-9*(1+double) {
			t.Fatalf("twice the size is %g wide, not twice %g", double, Width(f, size, a))
		}
	})
}

// Figures of the upright sans stand in columns: all ten are equally wide. (In
// the italic the 6 is not, so columns of figures are never set in it.)
func TestFiguresAreTabular(t *testing.T) {
	for _, f := range []scene.Font{scene.Sans, scene.SansBold} {
		for _, r := range "123456789" {
			if Of(f).Advance(r) != Of(f).Advance('0') {
				t.Errorf("%s%s: %c is not as wide as 0", Of(f).Family, Of(f).Style, r)
			}
		}
	}
}

func TestShown(t *testing.T) {
	for _, c := range []struct{ in, want string }{
		{"Kelp cloth", "Kelp cloth"}, {"a\tb\nc", "a b c"}, {"a\x00\x07b", "ab"}, {"漢 😀", "? ?"}, {"\xff", "?"}, {"", ""},
	} {
		if got := Shown(scene.Sans, c.in); got != c.want && !(c.in == "\xff" && got == "\uFFFD") {
			t.Errorf("%q is shown as %q, want %q", c.in, got, c.want)
		}
	}
}

// A capital is lower than the ascent and higher than half of it, in any Latin
// text face; the outline of H reaches exactly the cap height (OS/2: the height
// of a flat capital).
func TestHeights(t *testing.T) {
	for _, f := range all {
		capital := CapHeight(f, 1)
		if a := Ascent(f, 1); capital >= a || capital <= a/2 || Descent(f, 1) <= 0 {
			t.Errorf("%s: ascent %g, cap %g, descent %g", Of(f).Family, a, capital, Descent(f, 1))
		}
		segments, unit := Of(f).Outline(nil, 'H')
		top := float64(-segments.Bounds().Min.Y) / unit
		if math.Abs(top-capital) > 0.01 {
			t.Errorf("%s: H is %g high, cap height %g", Of(f).Family, top, capital)
		}
	}
}

func TestUnknownFaceIsTheSans(t *testing.T) {
	if Of(200) != Of(scene.Sans) {
		t.Error("an unknown face is not the plain sans")
	}
}

func TestManyAtOnce(t *testing.T) {
	want := Width(scene.Serif, 4, "Taken apart 漢")
	var wait sync.WaitGroup
	for range 16 {
		wait.Go(func() {
			if got := Width(scene.Serif, 4, "Taken apart 漢"); got != want {
				t.Errorf("width %g, want %g", got, want)
			}
		})
	}
	wait.Wait()
}

func BenchmarkWidth(b *testing.B) {
	for b.Loop() {
		Width(scene.Sans, 3, "410.6 × 210 flat, pleats 10 deep")
	}
}

// What a face lacks is named once, in its order; what it has is not.
func TestLacking(t *testing.T) {
	if got := Lacking(scene.Sans, "Bücher? كتاب 猫猫"); got != "كتاب猫" {
		t.Errorf("lacking %q", got)
	}
	if got := Lacking(scene.Sans, "Low Water, 5 7/8 × ±"); got != "" {
		t.Errorf("lacking %q", got)
	}
}
