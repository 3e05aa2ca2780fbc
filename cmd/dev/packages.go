package main

// purpose is what a package is needed for.
type purpose string

const (
	toBuild purpose = "build"
	toRun   purpose = "run"
	toTest  purpose = "test"
)

// purposes is every purpose, in the order in which they are needed.
func purposes() []purpose { return []purpose{toBuild, toRun, toTest} }

// packages names what each platform must have, as its package manager calls
// it. An empty list says that nothing is needed there.
func packages() map[family]map[purpose][]string {
	return map[family]map[purpose][]string{
		// GTK and Xxf86vm bring every X11, GL and Wayland header that the build
		// needs. The run list is for bare machines; a desktop has it already.
		debian: {
			toBuild: {"gcc", "libc6-dev", "pkg-config", "libgtk-3-dev", "libxxf86vm-dev"},
			toRun:   {"adwaita-icon-theme", "librsvg2-common", "fonts-dejavu-core", "xdg-utils"},
			toTest: {"git", "xvfb", "openbox", "xdotool", "x11-utils", "imagemagick", "poppler-utils",
				"adwaita-icon-theme", "librsvg2-common", "fonts-dejavu-core", "glpk-utils"},
		},
		// The lists of Fedora and Arch follow their package catalogues and have
		// not been tried on such a machine.
		fedora: {
			toBuild: {"gcc", "glibc-devel", "pkgconf-pkg-config", "gtk3-devel", "libXxf86vm-devel",
				"libXcursor-devel", "libXrandr-devel", "libXinerama-devel", "libXi-devel", "mesa-libGL-devel"},
			toRun: {"adwaita-icon-theme", "librsvg2", "dejavu-sans-fonts", "xdg-utils", "mesa-dri-drivers"},
			toTest: {"git", "xorg-x11-server-Xvfb", "openbox", "xdotool", "xprop", "xwininfo", "ImageMagick",
				"poppler-utils", "adwaita-icon-theme", "librsvg2", "dejavu-sans-fonts", "glpk-utils", "mesa-dri-drivers"},
		},
		arch: {
			toBuild: {"gcc", "pkgconf", "gtk3", "libxxf86vm", "libxcursor", "libxrandr", "libxinerama", "libxi", "mesa"},
			toRun:   {"adwaita-icon-theme", "librsvg", "ttf-dejavu", "xdg-utils"},
			toTest: {"git", "xorg-server-xvfb", "openbox", "xdotool", "xorg-xprop", "xorg-xwininfo", "imagemagick",
				"poppler", "adwaita-icon-theme", "librsvg", "ttf-dejavu", "glpk"},
		},
		// Untried as well: one package gives the compiler, the window needs no more.
		macos: {
			toBuild: {"command line tools"},
			toRun:   {},
			toTest:  {},
		},
		windows: {
			toBuild: {"gcc"},
			toRun:   {},
			toTest:  {},
		},
	}
}

// needed is the packages of the given purposes, each once, in table order.
func needed(f family, wanted ...purpose) []string {
	var names []string
	seen := map[string]bool{}
	for _, p := range wanted {
		for _, name := range packages()[f][p] {
			if !seen[name] {
				seen[name] = true
				names = append(names, name)
			}
		}
	}
	return names
}

// missing is the names that installed does not know.
func missing(names []string, installed func(name string) bool) []string {
	var lacking []string
	for _, name := range names {
		if !installed(name) {
			lacking = append(lacking, name)
		}
	}
	return lacking
}
