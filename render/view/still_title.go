package view

import (
	"strings"

	"grainwise/render/scene"
	"grainwise/render/typeface"
)

// setTitle breaks a title into lines that stand as large as they can within a
// width and a height, mm. Nothing stands of an empty title.
func setTitle(title string, wide, high float64) (lines []string, size float64) {
	words := strings.Fields(title)
	for n := 1; n <= min(titleLines, len(words)); n++ {
		broken := balanced(words, n)
		em := min(titleMost, high/(titleLead*float64(n)))
		for _, line := range broken {
			em = min(em, wide/max(typeface.Width(scene.Serif, 1, line), 1e-6))
		}
		if em > size*1.05 {
			lines, size = broken, em
		}
	}
	return lines, size
}

// balanced breaks words into n lines of which the widest is as narrow as it can be.
func balanced(words []string, n int) []string {
	if n == 1 {
		return []string{strings.Join(words, " ")}
	}
	var best []string
	narrowest := 0.0
	for k := 1; k <= len(words)-n+1; k++ {
		lines := append([]string{strings.Join(words[:k], " ")}, balanced(words[k:], n-1)...)
		widest := 0.0
		for _, line := range lines {
			widest = max(widest, typeface.Width(scene.Serif, 1, line))
		}
		if best == nil || widest < narrowest {
			best, narrowest = lines, widest
		}
	}
	return best
}
