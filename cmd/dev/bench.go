package main

import "runtime"

// benchAll prints the benchmarks of the pure packages, then those of the real
// window: start, memory and a drag. It sets no limits: figures are for reading.
func benchAll([]string) error {
	if err := install(toBuild, toTest); err != nil {
		return err
	}
	benchmark := []string{"go", "test", "-run", "^$", "-bench", ".", "-benchmem"}
	if err := show(plainLocale(), append(benchmark, "./model/...", "./render/...", "./ui/...")...); err != nil {
		return err
	}
	if runtime.GOOS != "linux" {
		say("the real window is measured on Linux only: not measured here")
		return nil
	}
	return onOwnDisplay(func(environment []string) error {
		return show(environment, "go", "test", "-tags", "window", "-run", "^$", "-bench", ".", "./cmd/grainwise")
	})
}
