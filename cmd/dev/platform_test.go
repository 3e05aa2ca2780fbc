package main

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// The texts are those of the systems' own files, shortened; the form is that
// of os-release(5): quotes of both kinds, none, comments, empty lines.
func TestFromRelease(t *testing.T) {
	for name, c := range map[string]struct {
		text   string
		family family
		said   string
	}{
		"debian":     {"PRETTY_NAME=\"Debian GNU/Linux 12 (bookworm)\"\nVERSION_ID=\"12\"\nID=debian\n", debian, "Debian GNU/Linux 12 (bookworm)"},
		"ubuntu":     {"ID=ubuntu\nID_LIKE=debian\nPRETTY_NAME=\"Ubuntu 24.04 LTS\"\n", debian, "Ubuntu 24.04 LTS"},
		"derivative": {"ID=ownbrew\nID_LIKE=\"ubuntu debian\"\n", debian, "Linux ownbrew"},
		"fedora":     {"# comment\n\nNAME='Fedora Linux'\nID=fedora\n", fedora, "Linux fedora"},
		"like rhel":  {"ID=\"other\"\nID_LIKE=\"rhel centos fedora\"\n", fedora, "Linux other"},
		"arch":       {"ID=arch\r\nPRETTY_NAME=\"Arch Linux\"\r\n", arch, "Arch Linux"},
		"like arch":  {"ID=thing\nID_LIKE=arch\n", arch, "Linux thing"},
		"stranger":   {"ID=gentoo\n", unknown, "Linux gentoo"},
		"commented":  {"#ID=debian\n", unknown, "Linux "},
		"empty":      {"", unknown, "Linux "},
	} {
		got := fromRelease(c.text)
		if got.family != c.family || got.name != c.said {
			t.Errorf("%s: got %q %q, want %q %q", name, got.family, got.name, c.family, c.said)
		}
	}
}

func TestInstallCommandsNameEveryPackage(t *testing.T) {
	names := []string{"one", "two"}
	for _, f := range []family{debian, fedora, arch} {
		commands := platform{family: f}.commands(names)
		last := commands[len(commands)-1]
		if !slices.Equal(last[len(last)-2:], names) {
			t.Errorf("%s: the last command %q does not end in the packages", f, last)
		}
		if !strings.Contains(platform{family: f}.advice(names), "one two") {
			t.Errorf("%s: the advice does not name the packages", f)
		}
	}
	first := platform{family: debian}.commands(names)[0]
	if first[len(first)-1] != "update" {
		t.Errorf("debian installs without an update first: %q", first)
	}
	if platform.commands(platform{family: unknown}, names) != nil {
		t.Error("an unknown platform has commands")
	}
}

func TestCompilerForWindowsUsesWhatIsThere(t *testing.T) {
	only := func(program string) func(string) bool {
		return func(asked string) bool { return asked == program }
	}
	for _, manager := range []string{"winget", "choco"} {
		if got := compilerForWindows(only(manager)); len(got) != 1 || got[0][0] != manager {
			t.Errorf("with %s there: got %q", manager, got)
		}
	}
	if got := compilerForWindows(only("neither")); got != nil {
		t.Errorf("without a package manager: got %q, want none", got)
	}
}

func TestFindRoot(t *testing.T) {
	root := t.TempDir()
	deep := filepath.Join(root, "a", "b")
	if err := os.MkdirAll(deep, 0o755); err != nil {
		t.Fatal(err)
	}
	if _, err := findRoot(deep); err == nil {
		t.Error("found a root where there is no go.mod")
	}
	if err := os.WriteFile(filepath.Join(root, "go.mod"), []byte("module x\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	if got, err := findRoot(deep); err != nil || got != root {
		t.Errorf("got %q, %v, want %q", got, err, root)
	}
}
