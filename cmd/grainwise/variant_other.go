//go:build !linux

package main

// settleVariant leaves the choice to the system, which always has one here.
func settleVariant() {}
