package main

import (
	"errors"
	"fmt"
	"os"
	"os/exec"
	"strings"
)

// install brings what the platform lacks for the purposes, and says what it does.
func install(wanted ...purpose) error {
	p := detect()
	say("platform: " + p.name)
	if p.family == unknown {
		// Nothing can be asked: the compiler will tell what is lacking.
		say(p.advice(needed(debian, wanted...)))
		return nil
	}
	lacking := missing(needed(p.family, wanted...), p.installed)
	if len(lacking) == 0 {
		say("every package needed is installed")
		return nil
	}
	say("missing: " + strings.Join(lacking, " "))
	if err := p.install(lacking); err != nil {
		return fmt.Errorf("cannot install: %w\n%s", err, p.advice(lacking))
	}
	if still := missing(lacking, p.installed); len(still) > 0 {
		return fmt.Errorf("still missing: %s\n%s", strings.Join(still, " "), p.advice(still))
	}
	return nil
}

// install runs the platform's commands, with sudo where root is wanted.
func (p platform) install(names []string) error {
	commands := p.commands(names)
	if len(commands) == 0 {
		return errors.New("no package manager found")
	}
	for _, words := range commands {
		if p.asRoot() && os.Geteuid() != 0 {
			if !has("sudo") {
				return errors.New("root is needed and there is no sudo; as root: " + strings.Join(words, " "))
			}
			say("not root: sudo will ask for your password if it needs it")
			words = append([]string{"sudo", "env", "DEBIAN_FRONTEND=noninteractive"}, words...)
		}
		if err := show([]string{"DEBIAN_FRONTEND=noninteractive"}, words...); err != nil {
			return err
		}
	}
	return nil
}

// say tells the user what is being done.
func say(text string) { fmt.Println("dev:", text) }

// show prints a command and runs it in the open, with more in its environment.
func show(environment []string, words ...string) error {
	say(strings.Join(words, " "))
	command := exec.Command(words[0], words[1:]...)
	command.Env = append(os.Environ(), environment...)
	command.Stdin, command.Stdout, command.Stderr = os.Stdin, os.Stdout, os.Stderr
	if err := command.Run(); err != nil {
		return fmt.Errorf("%s: %w", strings.Join(words, " "), err)
	}
	return nil
}
