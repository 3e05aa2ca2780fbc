package measure

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// Worked by hand: 10 mm over 20 turns is 0.5; 3/8 in is 9.525 mm, over 20 it is
// 0.47625.
func TestThreadFromTurns(t *testing.T) {
	for text, want := range map[string]Length{
		"20 turns = 10 mm": MM(0.5), "20 turns = 10": MM(0.5), "20=10": MM(0.5), "20 turns = 1 cm": MM(0.5),
		"20 turns = 3/8 in": MM(0.47625), `20 turns = 3/8"`: MM(0.47625), "16 turns = 4,48": MM(0.28), "3 = 1 mm": 333333,
	} {
		if got, err := ParseThread(text, Metric); err != nil || got != want {
			t.Errorf("%q: %s mm, %v, want %s", text, FileForm(got), err, FileForm(want))
		}
	}
	if got, err := ParseThread("20 turns = 3/8", Imperial); err != nil || got != MM(0.47625) {
		t.Errorf("bare inches: %s mm, %v", FileForm(got), err)
	}
	for _, text := range []string{"0 turns = 10 mm", "20 turns =", "20 turns", "= 10 mm", "20 turns = many", "-20 = 10", "20 = -10", "20 turns = 0", "20 = 10 = 2"} {
		got, err := ParseThread(text, Metric)
		if err == nil {
			t.Errorf("%q is read as %s mm", text, FileForm(got))
		} else if !strings.Contains(err.Error(), "20 turns = 10 mm") {
			t.Errorf("%q: the error shows no way: %v", text, err)
		}
	}
}

// Wound and divided again is the thread itself, whatever the count; of any
// length it is the nearest nanometre.
func TestTurnsGiveTheThreadBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.Int64Range(1, 999999).Draw(t, "turns")
		thread := Length(rapid.Int64Range(1, int64(2*Millimetre)).Draw(t, "thread"))
		off := Length(rapid.Int64Range(-(n-1)/2, (n-1)/2).Draw(t, "off"))
		text := fmt.Sprintf("%d turns = %s mm", n, FileForm(thread*Length(n)+off))
		got, counted, err := ParseCounted(text, Imperial)
		if err != nil || !counted || got != thread {
			t.Fatalf("%q: %s mm, %v", text, FileForm(got), err)
		}
		for i := range text {
			if !UnfinishedCounted(text[:i]) && !Unfinished(text[:i]) && strings.TrimSpace(text[:i]) != "" {
				t.Fatalf("%q is refused while it is typed", text[:i])
			}
		}
	})
}

func FuzzParseThread(f *testing.F) {
	for _, text := range []string{"20 turns = 10 mm", "25/3", "0.5", "20=3/8 in", "999999 x = 1", "1=9223372036854.775807 mm"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		each, err := ParseThread(text, Metric)
		if err == nil && strings.Contains(text, "=") && each < 0 {
			t.Errorf("%q is read as %s mm", text, FileForm(each))
		}
	})
}
