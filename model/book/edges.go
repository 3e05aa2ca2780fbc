package book

import (
	"slices"
	"strings"

	"grainwise/assets/words"
)

// edgeNames are the liner's edges as files and --set spell them.
var edgeNames = []string{"head", "tail", "left", "right"}

// each returns the four switches in the order of edgeNames.
func (t *TornEdges) each() []*bool { return []*bool{&t.Head, &t.Tail, &t.Left, &t.Right} }

// String is "none" or the torn edges, comma between.
func (t TornEdges) String() string {
	var torn []string
	for i, on := range t.each() {
		if *on {
			torn = append(torn, edgeNames[i])
		}
	}
	if torn == nil {
		return "none"
	}
	return strings.Join(torn, ",")
}

// parseEdges is the inverse of String; spaces are allowed.
func parseEdges(text string) (TornEdges, bool) {
	var t TornEdges
	if strings.TrimSpace(text) == "none" {
		return t, true
	}
	for _, name := range strings.Split(text, ",") {
		i := slices.Index(edgeNames, strings.TrimSpace(name))
		if i < 0 {
			return TornEdges{}, false
		}
		*t.each()[i] = true
	}
	return t, true
}

// edgesInWords is the list as a reader sees it.
func edgesInWords(text string) string {
	names := strings.Split(text, ",")
	for i, name := range names {
		names[i] = words.Say("edge." + strings.TrimSpace(name))
	}
	return strings.Join(names, ", ")
}
