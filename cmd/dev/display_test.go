package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// program writes a shell script to stand for a program on PATH.
func program(t *testing.T, folder, name, script string) {
	t.Helper()
	if err := os.WriteFile(filepath.Join(folder, name), []byte("#!/bin/sh\n"+script), 0o755); err != nil {
		t.Fatal(err)
	}
}

// onlyPrograms makes a folder of stand-ins the whole PATH.
func onlyPrograms(t *testing.T) string {
	t.Helper()
	if _, err := os.Stat("/bin/sh"); err != nil {
		t.Skip("stand-in programs are shell scripts")
	}
	folder := t.TempDir()
	t.Setenv("PATH", folder)
	return folder
}

const (
	serverOn7  = "echo $$ >\"$OWN_LOG\"; echo 7 >&3; exec 3>&-; while :; do /bin/sleep 0.1; done"
	patient    = "while :; do /bin/sleep 0.1; done"
	managedNow = "[ \"$DISPLAY\" = :7 ] && echo '_NET_SUPPORTING_WM_CHECK(WINDOW): window id # 0x400001'"
)

func TestOwnDisplayLeadsThereAndStopsTheServer(t *testing.T) {
	folder := onlyPrograms(t)
	log := filepath.Join(folder, "log")
	t.Setenv("OWN_LOG", log)
	program(t, folder, "Xvfb", serverOn7)
	program(t, folder, "openbox", patient)
	program(t, folder, "xprop", managedNow)
	var got []string
	err := onOwnDisplay(func(environment []string) error {
		got = environment
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	all := " " + strings.Join(got, " ") + " "
	for _, want := range []string{" DISPLAY=:7 ", " LANG=C ", " GSETTINGS_BACKEND=memory ", " " + windowTest + " "} {
		if !strings.Contains(all, want) {
			t.Errorf("the environment lacks%s: %s", want, all)
		}
	}
	pid, err := os.ReadFile(log)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := os.Stat("/proc/self"); err != nil {
		return // without /proc the process cannot be looked up
	}
	if _, err := os.Stat("/proc/" + strings.TrimSpace(string(pid))); err == nil {
		t.Errorf("the server, process %s, still runs", pid)
	}
}

func TestOwnDisplaySaysWhatFailed(t *testing.T) {
	never := func([]string) error { t.Error("did it without a display"); return nil }
	folder := onlyPrograms(t)
	refused := func(want string) {
		t.Helper()
		if err := onOwnDisplay(never); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("got %v, want an error that says %q", err, want)
		}
	}
	refused("cannot start Xvfb")
	program(t, folder, "Xvfb", "echo 'no room for a socket' >&2; exit 1")
	refused("no room for a socket")
	t.Setenv("OWN_LOG", os.DevNull)
	program(t, folder, "Xvfb", serverOn7)
	refused("cannot start openbox")
	program(t, folder, "openbox", "echo 'another one manages it' >&2; exit 1")
	refused("openbox ended at once: another one manages it")
}
