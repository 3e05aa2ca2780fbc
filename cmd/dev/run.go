package main

import (
	"errors"
	"os"
	"path/filepath"
	"runtime"
)

// windowTags leave the toolkit's emoji font out: some megabytes that no label of ours
// needs. The real-window test builds the program in the same way.
const windowTags = "no_emoji"

// runWindow installs what is missing, builds the window and opens it: with the
// file named, or else with the demo project.
func runWindow(files []string) error {
	if len(files) > 1 {
		return errors.New("run opens one file at most")
	}
	if err := install(toBuild, toRun); err != nil {
		return err
	}
	say("the first build takes a few minutes, later ones seconds")
	program := filepath.Join("bin", executable("grainwise"))
	if err := show([]string{"CGO_ENABLED=1"}, "go", "build", "-tags", windowTags, "-o", program, "./cmd/grainwise"); err != nil {
		return err
	}
	if runtime.GOOS == "linux" && os.Getenv("DISPLAY") == "" && os.Getenv("WAYLAND_DISPLAY") == "" {
		return errors.New(program + " is built, but there is no display to open a window on (DISPLAY is not set)")
	}
	return show(nil, append([]string{"./" + filepath.ToSlash(program)}, files...)...)
}

// executable is the name of a program's file on this platform.
func executable(name string) string {
	if runtime.GOOS == "windows" {
		return name + ".exe"
	}
	return name
}
