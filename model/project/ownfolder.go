package project

import (
	"os"
	"path/filepath"
)

// OwnFolder is where the program keeps its own files; in the working folder
// where the platform names none.
func OwnFolder() string {
	folder, err := os.UserConfigDir()
	if err != nil {
		return "grainwise"
	}
	return filepath.Join(folder, "grainwise")
}
