package main

import (
	"os"
	"strconv"

	"fyne.io/fyne/v2"
)

// scaling returns what makes everything so many per cent of the size that the
// maker's own settings ask for. The toolkit reads this variable each time that
// the theme changes, and rounds to whole tenths.
func scaling(a fyne.App) func(percent int) {
	const name = "FYNE_SCALE"
	base := float64(a.Settings().Scale())
	if asked, err := strconv.ParseFloat(os.Getenv(name), 64); err == nil && asked > 0 {
		base = asked
	}
	if base <= 0 {
		base = 1
	}
	return func(percent int) {
		os.Setenv(name, strconv.FormatFloat(base*float64(percent)/100, 'f', 3, 64))
	}
}
