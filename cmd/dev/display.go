package main

import (
	"bufio"
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"strings"
	"time"
)

// screenSize holds the largest window tested, 1600 × 1000, and its frame.
const screenSize = "1920x1200x24"

// windowTest is set for the real-window test: it runs on a display where it
// may move the pointer and press keys.
const windowTest = "GRAINWISE_WINDOW_TEST=1"

// onOwnDisplay starts an X server and a window manager, does something with
// the environment that leads there, and stops both.
func onOwnDisplay(do func(environment []string) error) error {
	server, display, err := startServer()
	if err != nil {
		return err
	}
	defer stop(server)
	environment := append(plainLocale(), "DISPLAY="+display, "WAYLAND_DISPLAY=", "XDG_SESSION_TYPE=x11",
		"GDK_BACKEND=x11", "NO_AT_BRIDGE=1", windowTest)
	manager, err := startManager(environment)
	if err != nil {
		return err
	}
	defer stop(manager)
	say("display " + display + ", " + screenSize + ", with a window manager")
	return do(environment)
}

// startServer starts Xvfb on a display number that it finds free itself.
func startServer() (*background, string, error) {
	read, write, err := os.Pipe()
	if err != nil {
		return nil, "", err
	}
	defer read.Close()
	command := exec.Command("Xvfb", "-displayfd", "3", "-screen", "0", screenSize, "-nolisten", "tcp", "-noreset")
	command.ExtraFiles = []*os.File{write} // file 3 of the child
	server, err := start(command)
	write.Close()
	if err != nil {
		return nil, "", err
	}
	number, err := bufio.NewReader(read).ReadString('\n')
	if err != nil {
		return nil, "", fmt.Errorf("Xvfb gave no display: %s", stop(server))
	}
	return server, ":" + strings.TrimSpace(number), nil
}

// startManager starts openbox and waits until it manages the display: native
// dialogs get no keys without one.
func startManager(environment []string) (*background, error) {
	command := exec.Command("openbox", "--sm-disable")
	command.Env = append(os.Environ(), environment...)
	manager, err := start(command)
	if err != nil {
		return nil, err
	}
	patience := time.After(20 * time.Second)
	for !managed(environment) {
		select {
		case <-manager.ended:
			return nil, fmt.Errorf("openbox ended at once: %s", stop(manager))
		case <-patience:
			return nil, fmt.Errorf("openbox did not take the display within 20 s: %s", stop(manager))
		case <-time.After(100 * time.Millisecond):
		}
	}
	return manager, nil
}

// managed asks the display whether a window manager has announced itself
// (_NET_SUPPORTING_WM_CHECK, Extended Window Manager Hints).
func managed(environment []string) bool {
	ask := exec.Command("xprop", "-root", "_NET_SUPPORTING_WM_CHECK")
	ask.Env = append(os.Environ(), environment...)
	answer, err := ask.Output()
	return err == nil && strings.Contains(string(answer), "window id #")
}

// background is a program that runs beside us.
type background struct {
	process    *os.Process
	ended      chan struct{} // closed when it has
	complaints bytes.Buffer  // what it said on standard error; read it after the end
}

// start runs a program beside us until stop.
func start(command *exec.Cmd) (*background, error) {
	b := &background{ended: make(chan struct{})}
	command.Stderr = &b.complaints
	command.WaitDelay = time.Second // its own children may hold the pipe
	if err := command.Start(); err != nil {
		return nil, fmt.Errorf("cannot start %s: %w", command.Args[0], err)
	}
	b.process = command.Process
	go func() {
		_ = command.Wait() // the status of a program told to stop says nothing
		close(b.ended)
	}()
	return b, nil
}

// stop ends a program that we started, kills it if it does not listen, and
// returns what it complained about.
func stop(b *background) string {
	_ = b.process.Signal(os.Interrupt) // it may have ended already
	select {
	case <-b.ended:
	case <-time.After(5 * time.Second):
		_ = b.process.Kill()
		<-b.ended
	}
	return strings.TrimSpace(b.complaints.String())
}
