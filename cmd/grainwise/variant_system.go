//go:build !linux

package main

// settleVariant leaves the choice to the system, which always has one here.
func settleVariant() {}

// followContrast does nothing here: what the system asks for counts from the
// next start.
func followContrast(func(bool)) {}
