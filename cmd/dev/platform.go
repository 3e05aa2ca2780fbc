package main

import (
	"fmt"
	"os"
	"os/exec"
	"runtime"
	"slices"
	"strings"
)

// family is a group of platforms that share a package manager.
type family string

const (
	debian  family = "debian"
	fedora  family = "fedora"
	arch    family = "arch"
	macos   family = "macos"
	windows family = "windows"
	unknown family = "unknown"
)

// platform is the machine at hand: what it is called and how it installs.
type platform struct {
	family family
	name   string
}

// detect reads what the machine says of itself.
func detect() platform {
	switch runtime.GOOS {
	case "darwin":
		return platform{macos, "macOS"}
	case "windows":
		return platform{windows, "Windows"}
	case "linux":
		text, err := os.ReadFile("/etc/os-release")
		if err != nil {
			return platform{unknown, "Linux without /etc/os-release"}
		}
		return fromRelease(string(text))
	}
	return platform{unknown, runtime.GOOS}
}

// fromRelease reads the text of /etc/os-release: ID first, then what it is like.
func fromRelease(text string) platform {
	fields := releaseFields(text)
	name := fields["PRETTY_NAME"]
	if name == "" {
		name = "Linux " + fields["ID"]
	}
	families := map[string]family{
		"debian": debian, "ubuntu": debian,
		"fedora": fedora, "rhel": fedora,
		"arch": arch,
	}
	for _, id := range strings.Fields(fields["ID"] + " " + fields["ID_LIKE"]) {
		if f, known := families[id]; known {
			return platform{f, name}
		}
	}
	return platform{unknown, name}
}

// releaseFields splits lines of KEY=value or KEY="value", as os-release(5) has them.
func releaseFields(text string) map[string]string {
	fields := map[string]string{}
	for line := range strings.Lines(text) {
		key, value, found := strings.Cut(strings.TrimSpace(line), "=")
		if found && !strings.HasPrefix(key, "#") {
			fields[key] = strings.Trim(value, `"'`)
		}
	}
	return fields
}

// installed asks the platform whether it has a package.
func (p platform) installed(name string) bool {
	switch p.family {
	case debian:
		// One line an architecture; removed packages may be known still.
		status, err := exec.Command("dpkg-query", "-W", "-f=${db:Status-Status}\n", name).Output()
		return err == nil && slices.Contains(strings.Fields(string(status)), "installed")
	case fedora:
		return exec.Command("rpm", "-q", "--whatprovides", name).Run() == nil
	case arch:
		return exec.Command("pacman", "-T", name).Run() == nil
	case macos:
		return exec.Command("xcode-select", "-p").Run() == nil
	case windows:
		return has("gcc")
	}
	return false
}

// has tells whether a program can be found.
func has(program string) bool {
	_, err := exec.LookPath(program)
	return err == nil
}

// commands is what installs the packages, one command a line, without sudo.
func (p platform) commands(names []string) [][]string {
	with := func(words ...string) []string { return append(words, names...) }
	switch p.family {
	case debian:
		wait := "DPkg::Lock::Timeout=120"
		return [][]string{
			{"apt-get", "-o", wait, "update"},
			with("apt-get", "-o", wait, "install", "-y", "--no-install-recommends"),
		}
	case fedora:
		return [][]string{with("dnf", "install", "-y")}
	case arch:
		return [][]string{with("pacman", "-Sy", "--needed", "--noconfirm")}
	case macos:
		return [][]string{{"xcode-select", "--install"}}
	case windows:
		return compilerForWindows(has)
	}
	return nil
}

// compilerForWindows uses the package manager that is there, if any.
func compilerForWindows(has func(string) bool) [][]string {
	switch {
	case has("winget"):
		return [][]string{{"winget", "install", "--exact", "--id", "BrechtSanders.WinLibs.POSIX.UCRT",
			"--accept-package-agreements", "--accept-source-agreements"}}
	case has("choco"):
		return [][]string{{"choco", "install", "-y", "mingw"}}
	}
	return nil
}

// advice says what to do by hand where no command can.
func (p platform) advice(names []string) string {
	switch p.family {
	case macos:
		return "a window has opened (or run xcode-select --install): let it install the command line tools, then run this again"
	case windows:
		return "install gcc (the mingw-w64 package of MSYS2: pacman -S mingw-w64-ucrt-x86_64-gcc), put its bin folder on PATH, open a new terminal and run this again"
	case unknown:
		return fmt.Sprintf("no package manager is known for %s; install what Debian calls:\n  %s", p.name, strings.Join(names, " "))
	}
	return "install these packages, then run this again:\n  " + strings.Join(names, " ")
}

// asRoot tells whether the platform's package manager wants root.
func (p platform) asRoot() bool {
	return p.family == debian || p.family == fedora || p.family == arch
}
