package measure

import (
	"testing"
	"time"

	"pgregory.net/rapid"
)

// The Gregorian rule: a leap day every fourth year, not in centuries, but in
// every fourth of these.
func TestDaysOfTheCalendar(t *testing.T) {
	for _, text := range []string{"2024-02-29", "2000-02-29", "2026-12-31", "0001-01-01", "9999-12-31"} {
		if d, err := ParseDate(text); err != nil || d.String() != text {
			t.Errorf("%s → %v, %v", text, d, err)
		}
	}
	for _, text := range []string{"2026-02-29", "1900-02-29", "2026-13-01", "2026-00-10", "2026-04-31", "0000-01-01",
		"26-1-1", "2026-1-1", "2026/01/01", "", "2026-01-01T00:00"} {
		if d, err := ParseDate(text); err == nil {
			t.Errorf("%q is read as %v", text, d)
		}
	}
	if (Date{}).Valid() || !(Date{}).IsZero() {
		t.Error("the zero date is a day")
	}
}

func TestAddDays(t *testing.T) {
	for _, c := range []struct {
		from Date
		n    int
		want Date
	}{
		{Date{2024, 2, 28}, 1, Date{2024, 2, 29}},
		{Date{2026, 2, 28}, 1, Date{2026, 3, 1}},
		{Date{2026, 1, 1}, -1, Date{2025, 12, 31}},
		{Date{2000, 1, 1}, 146097, Date{2400, 1, 1}}, // the Gregorian calendar repeats after 400 years = 146 097 days
		{Date{9999, 12, 31}, 1, Date{9999, 12, 31}},
		{Date{2026, 1, 1}, -1 << 62, Date{1, 1, 1}},
	} {
		if got := c.from.AddDays(c.n); got != c.want {
			t.Errorf("%v + %d days = %v, want %v", c.from, c.n, got, c.want)
		}
	}
}

func TestDatesInOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n, m := rapid.IntRange(-700_000, 2_000_000).Draw(t, "n"), rapid.IntRange(-700_000, 2_000_000).Draw(t, "m")
		start := Date{2026, 3, 1}
		a, b := start.AddDays(n), start.AddDays(m)
		if a.Valid() && a.AddDays(-n) != start {
			t.Fatalf("%v does not come back", a)
		}
		if (a.Compare(b) < 0) != (n < m) || (a.Compare(b) == 0) != (n == m) {
			t.Fatalf("%v and %v compare as %d", a, b, a.Compare(b))
		}
		if back, err := ParseDate(a.String()); err != nil || back != a {
			t.Fatalf("%v → %v, %v", a, back, err)
		}
		if day := (time.Duration(n) * 24 * time.Hour); n > -100_000 && n < 100_000 {
			if want := time.Date(2026, 3, 1, 0, 0, 0, 0, time.UTC).Add(day).Format(time.DateOnly); a.String() != want {
				t.Fatalf("%v, want %s", a, want)
			}
		}
	})
}
