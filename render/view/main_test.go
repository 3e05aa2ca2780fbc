package view_test

import (
	"flag"
	"os"
	"testing"

	_ "pgregory.net/rapid" // its flags
)

// TestMain draws the same designs in every run, so that what a run says depends
// on the code alone. To look further: go test ./render/view -rapid.seed=N, with
// -rapid.checks=1000.
func TestMain(m *testing.M) {
	flag.Parse()
	given := false
	flag.Visit(func(f *flag.Flag) { given = given || f.Name == "rapid.seed" })
	if !given {
		if err := flag.Set("rapid.seed", "1"); err != nil {
			panic(err)
		}
	}
	os.Exit(m.Run())
}
