package main

import (
	"os"

	"github.com/rymdport/portal/settings/appearance"
)

// settleVariant takes the light theme where the desktop says neither light nor
// dark; the toolkit would take the dark one. FYNE_THEME still overrules.
func settleVariant() {
	const name = "FYNE_THEME"
	if os.Getenv(name) != "" {
		return
	}
	if _, err := appearance.GetColorScheme(); err != nil {
		os.Setenv(name, "light")
	}
}
