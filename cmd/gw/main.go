// Command gw does without a window what the program computes: project files,
// plans, findings and drawings.
//
// Results go to standard output, messages to standard error. It ends with 0
// when done, 1 when done but a stop finding stands, 2 when the input is bad.
package main

import (
	"errors"
	"fmt"
	"io"
	"os"

	"grainwise/assets/words"
	"grainwise/model/book"
)

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

// The exit statuses.
const (
	exitDone  = 0
	exitStop  = 1 // done, but a stop finding stands
	exitInput = 2
)

// command is one thing that gw does.
type command struct {
	name string
	run  func(args []string, out io.Writer) (exit int, err error)
}

func commands(notes io.Writer) []command {
	return []command{
		{"new", newCommand},
		{"keys", keysCommand},
		{"plan", planCommand},
		{"check", checkCommand},
		{"compare", compareCommand},
		{"draw", func(args []string, out io.Writer) (int, error) { return drawCommand(args, out, notes) }},
		{"cut", cutCommand},
		{"materials", materialsCommand},
		{"batch", batchCommand},
		{"papers", func(args []string, out io.Writer) (int, error) { return papersCommand(args, out, notes) }},
	}
}

func run(args []string, stdout, stderr io.Writer) int {
	if len(args) == 0 {
		fmt.Fprint(stderr, usage())
		return exitInput
	}
	if args[0] == "help" || args[0] == "--help" || args[0] == "-h" {
		fmt.Fprint(stdout, usage())
		return exitDone
	}
	for _, c := range commands(stderr) {
		if c.name == args[0] {
			return report(c, args[1:], stdout, stderr)
		}
	}
	complain(stderr, inputError("gw.unknownCommand", "found", args[0]))
	return exitInput
}

// usage says what every command takes.
func usage() string {
	said := words.Say("gw.usage")
	for _, c := range commands(nil) {
		said += words.Say("gw.usage." + c.name)
	}
	return said + words.Say("gw.usage.end")
}

func report(c command, args []string, stdout, stderr io.Writer) int {
	exit, err := c.run(args, stdout)
	if err != nil {
		complain(stderr, err)
		return exitInput
	}
	return exit
}

// complain is one line, whatever the error.
func complain(stderr io.Writer, err error) {
	fmt.Fprintln(stderr, "gw: "+oneLine(err.Error()))
}

// inputError is a message with name, value pairs for its blanks.
func inputError(key string, blanks ...string) error {
	with := words.With{}
	for i := 0; i+1 < len(blanks); i += 2 {
		with[blanks[i]] = blanks[i+1]
	}
	return errors.New(words.Say(key, with))
}

// setError says in which --set a value was refused.
func setError(set string, err error) error {
	var refused *book.ValueError
	if errors.As(err, &refused) {
		return fmt.Errorf("--set %s: %s: %s", set, refused.Text, refused.Want)
	}
	return fmt.Errorf("--set %s: %w", set, err)
}
