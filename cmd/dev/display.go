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
func startServer() (*exec.Cmd, string, error) {
	read, write, err := os.Pipe()
	if err != nil {
		return nil, "", err
	}
	defer read.Close()
	server := exec.Command("Xvfb", "-displayfd", "3", "-screen", "0", screenSize, "-nolisten", "tcp", "-noreset")
	server.ExtraFiles = []*os.File{write} // file 3 of the child
	var complaints bytes.Buffer
	server.Stderr = &complaints
	server.WaitDelay = time.Second
	err = server.Start()
	write.Close()
	if err != nil {
		return nil, "", fmt.Errorf("cannot start Xvfb: %w", err)
	}
	number, err := bufio.NewReader(read).ReadString('\n')
	if err != nil {
		stop(server)
		return nil, "", fmt.Errorf("Xvfb found no free display: %s", complaints.String())
	}
	return server, ":" + strings.TrimSpace(number), nil
}

// startManager starts openbox and waits until it manages the display: native
// dialogs get no keys without one.
func startManager(environment []string) (*exec.Cmd, error) {
	manager := exec.Command("openbox", "--sm-disable")
	manager.Env = append(os.Environ(), environment...)
	var complaints bytes.Buffer
	manager.Stderr = &complaints
	manager.WaitDelay = time.Second // its own children may hold the pipe
	if err := manager.Start(); err != nil {
		return nil, fmt.Errorf("cannot start openbox: %w", err)
	}
	for end := time.Now().Add(20 * time.Second); time.Now().Before(end); time.Sleep(100 * time.Millisecond) {
		if managed(environment) {
			return manager, nil
		}
	}
	stop(manager)
	return nil, fmt.Errorf("openbox did not take the display within 20 s: %s", complaints.String())
}

// managed asks the display whether a window manager has announced itself
// (_NET_SUPPORTING_WM_CHECK, Extended Window Manager Hints).
func managed(environment []string) bool {
	ask := exec.Command("xprop", "-root", "_NET_SUPPORTING_WM_CHECK")
	ask.Env = append(os.Environ(), environment...)
	answer, err := ask.Output()
	return err == nil && strings.Contains(string(answer), "window id #")
}

// stop ends a process that we started and waits for it; a stubborn one is killed.
func stop(process *exec.Cmd) {
	_ = process.Process.Signal(os.Interrupt) // it may have ended already
	ended := make(chan struct{})
	go func() {
		_ = process.Wait() // the status of a process told to stop says nothing
		close(ended)
	}()
	select {
	case <-ended:
	case <-time.After(5 * time.Second):
		_ = process.Process.Kill()
		<-ended
	}
}
