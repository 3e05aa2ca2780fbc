//go:build !linux && !windows

package main

// highContrast is not known here: the maker chooses it in the menu.
func highContrast() bool { return false }
