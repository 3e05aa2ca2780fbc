package main

import (
	"os"

	"fyne.io/fyne/v2"
	"github.com/rymdport/portal/settings"
	"github.com/rymdport/portal/settings/appearance"
)

// contrastKey is the setting of org.freedesktop.appearance (XDG Desktop Portal,
// Settings): 0 no preference, 1 higher contrast.
const contrastKey = "contrast"

// highContrast says whether the desktop asks for high contrast.
func highContrast() bool {
	value, err := settings.ReadOne(appearance.Namespace, contrastKey)
	return err == nil && asksForContrast(value)
}

func asksForContrast(value any) bool {
	n, is := value.(uint32)
	return is && n == 1
}

// followContrast tells of every change, on the window's goroutine.
func followContrast(tell func(bool)) {
	go settings.OnSignalSettingChanged(func(c settings.Changed) {
		if c.Namespace == appearance.Namespace && c.Key == contrastKey {
			fyne.Do(func() { tell(asksForContrast(c.Value)) })
		}
	})
}

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
