package project

import (
	"errors"
	"io"
	"io/fs"
	"os"

	"grainwise/assets/words"
)

// largest is how large a file may be; an ordinary project has some kilobytes.
const largest = 8 << 20

// Open reads a project from a file. Every error is a [*Problem].
func Open(path string) (Project, error) {
	data, problem := readFile(path)
	if problem != nil {
		return Project{}, problem
	}
	return Decode(data, path)
}

// Save writes the project to a file, wholly or not at all: on any error the
// file that was there is still there. Every error is a [*Problem].
func Save(path string, p Project) error {
	data, err := p.encodeWhole(path)
	if err != nil {
		return err
	}
	return WriteFile(path, data)
}

// encodeWhole encodes what will open again, and refuses the rest.
func (p Project) encodeWhole(path string) ([]byte, error) {
	data, err := p.Encode()
	if err != nil {
		return nil, unwritable(path, err)
	}
	return data, opensAgain(data, path, p)
}

// opensAgain keeps a project that no file can hold from replacing one that can.
func opensAgain(data []byte, path string, p Project) error {
	again, err := Decode(data, path)
	var problem *Problem
	switch {
	case errors.As(err, &problem):
		problem.Kind = Unwritable
		return problem
	case len(data) > largest || !again.Equal(p):
		return &Problem{Kind: Unwritable, File: path, Reason: words.Say("project.unholdable")}
	}
	return nil
}

func readFile(path string) ([]byte, *Problem) {
	info, err := os.Stat(path)
	if err == nil && !info.Mode().IsRegular() {
		return nil, &Problem{Kind: Unreadable, File: path, Reason: words.Say("project.notAFile")}
	}
	if err != nil {
		return nil, unreadable(path, err)
	}
	file, err := os.Open(path)
	if err != nil {
		return nil, unreadable(path, err)
	}
	defer file.Close()
	data, err := io.ReadAll(io.LimitReader(file, largest+1))
	switch {
	case err != nil:
		return nil, unreadable(path, err)
	case len(data) > largest:
		return nil, &Problem{Kind: Unreadable, File: path, Reason: words.Say("project.tooLarge", words.With{"most": largest >> 20})}
	}
	return data, nil
}

func unreadable(path string, err error) *Problem {
	p := &Problem{Kind: Unreadable, File: path, Err: err}
	switch {
	case errors.Is(err, fs.ErrNotExist):
		p.Reason = words.Say("project.notThere")
	case errors.Is(err, fs.ErrPermission):
		p.Reason = words.Say("project.notAllowed")
	default:
		p.Reason = words.Say("project.unreadable", words.With{"why": cause(err)})
	}
	return p
}

func unwritable(path string, err error) *Problem {
	return &Problem{Kind: Unwritable, File: path, Err: err,
		Reason: words.Say("project.unwritable", words.With{"why": cause(err)})}
}

// cause is the system's reason without the paths around it, or ours where the
// system's is none that a maker can read.
func cause(err error) string {
	var path *fs.PathError
	var link *os.LinkError
	switch {
	case openElsewhere(err):
		return words.Say("project.openElsewhere")
	case errors.As(err, &path):
		return path.Err.Error()
	case errors.As(err, &link):
		return link.Err.Error()
	}
	return err.Error()
}
