package main

import (
	"strconv"

	"golang.org/x/sys/windows/registry"
)

// highContrast reads the flags of HIGHCONTRAST (winuser.h) as the system keeps
// them; bit 0, HCF_HIGHCONTRASTON, is set while it is on.
func highContrast() bool {
	key, err := registry.OpenKey(registry.CURRENT_USER, `Control Panel\Accessibility\HighContrast`, registry.QUERY_VALUE)
	if err != nil {
		return false
	}
	defer key.Close()
	text, _, err := key.GetStringValue("Flags")
	if err != nil {
		return false
	}
	flags, err := strconv.ParseUint(text, 10, 32)
	return err == nil && flags&1 != 0
}
