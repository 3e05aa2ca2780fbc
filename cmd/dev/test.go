package main

import (
	"bytes"
	"fmt"
	"go/format"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"strings"
)

// step is one part of the test command.
type step struct {
	name string
	do   func() error
}

// testSteps is what the test command does, cheapest first.
func testSteps() []step {
	return []step{
		{"formatting", checkFormatting},
		{"vet", func() error { return show(nil, "go", "vet", "./...") }},
		{"vet of the real-window test", func() error { return show(nil, "go", "vet", "-tags", "window", "./cmd/grainwise/...") }},
		{"gw without cgo", buildWithoutCgo},
		{"tests", func() error { return goTest("./...") }},
		{"tests for data races", func() error { return goTest("-race", "-short", "./model/...", "./ui/...") }},
		{"real window", testWindow},
	}
}

// testAll installs the test tools and does every step, failed ones or not, so
// that one run tells everything.
func testAll([]string) error {
	if err := install(toBuild, toTest); err != nil {
		return err
	}
	var failed []string
	for _, s := range testSteps() {
		say("== " + s.name)
		if err := s.do(); err != nil {
			say("FAIL " + s.name + ": " + err.Error())
			failed = append(failed, s.name)
		}
	}
	if len(failed) > 0 {
		return fmt.Errorf("failed: %s", strings.Join(failed, ", "))
	}
	say("all passed")
	return nil
}

// patience is how long one package's tests may take: much of it is random designs,
// and a slow machine is no failure.
const patience = "40m"

// goTest runs go test and prints its own lines; all of them where CI reads along.
func goTest(arguments ...string) error {
	words := []string{"go", "test", "-timeout", patience}
	if os.Getenv("CI") != "" {
		words = append(words, "-v")
	}
	return show(plainLocale(), append(words, arguments...)...)
}

// plainLocale keeps the toolkit from complaining about C.UTF-8 and from the user's settings.
func plainLocale() []string {
	return []string{"LANG=C", "LC_ALL=C", "GSETTINGS_BACKEND=memory"}
}

// buildWithoutCgo holds that gw is pure Go.
func buildWithoutCgo() error {
	return show([]string{"CGO_ENABLED=0"}, "go", "build", "-o", filepath.Join("bin", executable("gw")), "./cmd/gw")
}

// testWindow drives the real program on a display of its own.
func testWindow() error {
	if runtime.GOOS != "linux" {
		say("the real window is tested on Linux only, where a display can be made for it: not tested here")
		return nil
	}
	return onOwnDisplay(func(environment []string) error {
		words := []string{"go", "test", "-timeout", patience, "-count=1", "-tags", "window"}
		if os.Getenv("CI") != "" {
			words = append(words, "-v")
		}
		return show(environment, append(words, "./cmd/grainwise/...")...)
	})
}

// checkFormatting names every Go file that gofmt would change.
func checkFormatting() error {
	files, err := goFiles(".")
	if err != nil {
		return err
	}
	var bad []string
	for _, file := range files {
		text, err := os.ReadFile(file)
		if err != nil {
			return err
		}
		formatted, err := format.Source(text)
		if err != nil {
			return fmt.Errorf("%s: %w", file, err)
		}
		if !bytes.Equal(text, formatted) {
			bad = append(bad, file)
		}
	}
	if len(bad) > 0 {
		return fmt.Errorf("gofmt would change %s", strings.Join(bad, ", "))
	}
	say(fmt.Sprintf("%d files are formatted", len(files)))
	return nil
}

// goFiles is every Go file of the project under root, slash-separated from there.
func goFiles(root string) ([]string, error) {
	var files []string
	err := fs.WalkDir(os.DirFS(root), ".", func(path string, entry fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case entry.IsDir() && path != "." && skipped(entry.Name()):
			return fs.SkipDir
		case !entry.IsDir() && strings.HasSuffix(path, ".go"):
			files = append(files, path)
		}
		return nil
	})
	return files, err
}

// skipped tells which folders hold no code of the project.
func skipped(folder string) bool {
	return strings.HasPrefix(folder, ".") || folder == "bin" || folder == "out" || folder == "testdata"
}
