// Command dev is the one entrance for a fresh machine. It installs what the
// platform lacks, saying so, and then runs, tests or measures the program:
//
//	go run ./cmd/dev run [FILE]   build the window and open it (the demo project without FILE)
//	go run ./cmd/dev test         formatting, vet, every test, the test of the real window
//	go run ./cmd/dev bench        benchmarks, the drag in the real window among them
//
// It uses the standard library only, so that it runs before anything is installed.
package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
)

const usage = `usage: go run ./cmd/dev run [FILE]   build the window and open it
       go run ./cmd/dev test         run every test
       go run ./cmd/dev bench        print the benchmarks
`

func main() {
	if len(os.Args) < 2 {
		fmt.Fprint(os.Stderr, usage)
		os.Exit(2)
	}
	if err := command(os.Args[1], os.Args[2:]); err != nil {
		fmt.Fprintln(os.Stderr, "dev:", err)
		os.Exit(1)
	}
}

// command does what the user asked for, from the root of the repository.
func command(name string, arguments []string) error {
	commands := map[string]func([]string) error{
		"run":   runWindow,
		"test":  testAll,
		"bench": benchAll,
	}
	do, known := commands[name]
	if !known {
		return fmt.Errorf("no command %q\n%s", name, usage)
	}
	arguments, err := absolute(arguments)
	if err != nil {
		return err
	}
	if err := enterRoot(); err != nil {
		return err
	}
	return do(arguments)
}

// absolute keeps file arguments true while the working directory changes.
func absolute(arguments []string) ([]string, error) {
	var files []string
	for _, argument := range arguments {
		file, err := filepath.Abs(argument)
		if err != nil {
			return nil, err
		}
		files = append(files, file)
	}
	return files, nil
}

// enterRoot makes the folder that holds go.mod the working directory.
func enterRoot() error {
	here, err := os.Getwd()
	if err != nil {
		return err
	}
	root, err := findRoot(here)
	if err != nil {
		return err
	}
	return os.Chdir(root)
}

// findRoot is the nearest folder at or above start that holds go.mod.
func findRoot(start string) (string, error) {
	for folder := start; ; folder = filepath.Dir(folder) {
		_, err := os.Stat(filepath.Join(folder, "go.mod"))
		if err == nil {
			return folder, nil
		}
		if !errors.Is(err, fs.ErrNotExist) {
			return "", err
		}
		if folder == filepath.Dir(folder) {
			return "", fmt.Errorf("no go.mod in %s or above it: run this inside the project", start)
		}
	}
}
