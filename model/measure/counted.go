package measure

import (
	"regexp"
	"strconv"
)

// Several laid together or wound side by side, and what they measure: "20
// leaves = 4.4 mm", "20 turns = 10 mm". The word may be any, or none.
var (
	several      = regexp.MustCompile(`^\s*([0-9]{1,6})\s*(?:\p{L}+\.?\s*)?=(.+)$`)
	severalBegun = regexp.MustCompile(`^\s*[0-9]{1,6}\s*(?:\p{L}+\.?\s*)?(?:=\s*)?$`)
)

// ParseSeveral reads how many were measured together, and what they measured;
// counted is false for a text that is not of that form. A bare number takes the
// unit of bare.
func ParseSeveral(text string, bare System) (count int, all Length, counted bool, err error) {
	m := several.FindStringSubmatch(text)
	if m == nil {
		return 0, 0, false, nil
	}
	count, _ = strconv.Atoi(m[1])
	all, err = ParseLength(m[2], bare)
	if err != nil || count == 0 || all <= 0 {
		return 0, 0, true, wrong(text, "measure.want.counted")
	}
	return count, all, true, nil
}

// ParseCounted reads the size of one from several measured together, to the
// nearest nanometre; counted is false for a text that is not of that form. A
// bare number takes the unit of bare.
func ParseCounted(text string, bare System) (each Length, counted bool, err error) {
	count, all, counted, err := ParseSeveral(text, bare)
	if !counted || err != nil {
		return 0, counted, err
	}
	n := Length(count)
	return all/n + (2*(all%n)+n)/(2*n), true, nil
}

// UnfinishedCounted reports whether text is the beginning of what ParseCounted
// reads.
func UnfinishedCounted(text string) bool {
	if severalBegun.MatchString(text) {
		return true
	}
	m := several.FindStringSubmatch(text)
	return m != nil && Unfinished(m[2])
}
