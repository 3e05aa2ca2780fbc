package measure

import (
	"math"
	"regexp"
	"strconv"
)

// Tex returns the mass in grams of 1000 m of linen thread numbered lea/ply: a
// lea is 300 yards, and lea of them weigh a pound, which makes 1653.5/lea tex
// for one ply.
func Tex(lea, ply float64) float64 { return 1653.5 / lea * ply }

// ThreadDiameter estimates the diameter of linen thread from its tex: about
// 0.036·√tex mm. Twenty turns round a rule, measured, are better.
func ThreadDiameter(tex float64) Length { return MM(0.036 * math.Sqrt(tex)) }

var threadNumber = regexp.MustCompile(`^([0-9]{1,4}) ?/ ?([0-9]{1,3})$`)

// ParseThread reads a thread's diameter, as [ParseLength] does, or turns of it
// wound side by side, "20 turns = 10 mm", or its linen number "25/3". A bare fraction is a number when its first figure is the
// larger, as in every thread sold, and otherwise a fraction of a length.
func ParseThread(text string, bare System) (Length, error) {
	if each, counted, err := ParseCounted(text, bare); err != nil {
		return 0, wrong(text, "measure.want.turns")
	} else if counted {
		return each, nil
	}
	m := threadNumber.FindStringSubmatch(plain(text))
	if m == nil {
		return threadLength(text, bare)
	}
	lea, _ := strconv.ParseFloat(m[1], 64)
	ply, _ := strconv.ParseFloat(m[2], 64)
	switch {
	case lea == 0 || ply == 0:
		return 0, wrong(text, "measure.want.thread")
	case lea <= ply:
		return threadLength(text, bare)
	}
	return ThreadDiameter(Tex(lea, ply)), nil
}

func threadLength(text string, bare System) (Length, error) {
	l, err := ParseLength(text, bare)
	if err != nil {
		return 0, wrong(text, "measure.want.thread")
	}
	return l, nil
}
