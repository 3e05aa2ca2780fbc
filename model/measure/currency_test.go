package measure

import (
	"bufio"
	"fmt"
	"os"
	"strings"
	"testing"
)

// Source: ISO 4217, list one, as testdata/iso4217.txt says.
func TestDecimalsOfEveryCurrency(t *testing.T) {
	file, err := os.Open("testdata/iso4217.txt")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	count := map[int]int{}
	for lines := bufio.NewScanner(file); lines.Scan(); {
		code, want := "", 0
		if n, _ := fmt.Sscan(lines.Text(), &code, &want); n != 2 || strings.HasPrefix(code, "#") {
			continue
		}
		count[want]++
		if got := Decimals(code); got != want {
			t.Errorf("%s has %d decimals, want %d", code, got, want)
		}
	}
	if count[0] != 17 || count[2] < 140 || count[3] != 7 || count[4] != 2 {
		t.Errorf("read %v", count)
	}
	for _, odd := range []string{"", "P C", "F B", "ABC", "XX", "BIFX"} {
		if Decimals(odd) != 2 {
			t.Errorf("%q has %d decimals", odd, Decimals(odd))
		}
	}
}
