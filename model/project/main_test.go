package project

import (
	"flag"
	"os"
	"testing"
)

// The test binary starts itself again as a program that saves, to be killed or
// to run out of room.
const childVariable = "PROJECT_TEST_CHILD"

func TestMain(m *testing.M) {
	flag.Parse()
	if child := os.Getenv(childVariable); child != "" {
		os.Exit(runChild(child))
	}
	os.Exit(m.Run())
}
