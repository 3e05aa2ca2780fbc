package main

import (
	"errors"
	"os/exec"
	"runtime"
	"time"

	"grainwise/assets/words"
)

// viewerCommand is what opens a file or a folder on a system with the program
// that its user chose for it.
func viewerCommand(system, path string) (name string, args []string) {
	switch system {
	case "windows":
		return "rundll32", []string{"url.dll,FileProtocolHandler", path}
	case "darwin":
		return "open", []string{path}
	}
	return "xdg-open", []string{path}
}

// viewerTime is how long a viewer may take to say that it cannot.
const viewerTime = 2 * time.Second

// openOutside opens a file or a folder. A command that runs on is not waited for:
// it may be the viewer itself.
func openOutside(path string) error {
	name, args := viewerCommand(runtime.GOOS, path)
	command := exec.Command(name, args...)
	if err := command.Start(); err != nil {
		return errors.New(words.Say("main.noViewer", words.With{"command": name, "why": err.Error()}))
	}
	ended := make(chan error, 1)
	go func() { ended <- command.Wait() }()
	select {
	case err := <-ended:
		if err != nil {
			return errors.New(words.Say("main.noViewer", words.With{"command": name, "why": err.Error()}))
		}
	case <-time.After(viewerTime):
	}
	return nil
}
