package project

import (
	"encoding/json"
	"errors"
	"maps"
	"strconv"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/check"
	"grainwise/model/measure"
)

// limitLines are the limits that the studio has set, each in its own unit, one a
// line.
func (s Studio) limitLines() []string {
	var lines []string
	for _, limit := range check.LimitTable() {
		if v, set := s.Limits[limit.Key]; set {
			lines = append(lines, jsonText(limit.Key)+": "+plainNumber(v))
		}
	}
	return lines
}

// WithLimit is the studio with another limit, or the usual one where none is
// set. The studio given stays as it is.
func (s Studio) WithLimit(key string, value float64, set bool) Studio {
	own := maps.Clone(s.Limits)
	if own == nil {
		own = check.Limits{}
	}
	if set {
		own[key] = value
	} else {
		delete(own, key)
	}
	s.Limits = own
	return s
}

func plainNumber(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

// limits reads the limits that the studio has set.
func (s source) limits(in field) (check.Limits, *Problem) {
	entries, problem := s.readObject(in)
	if problem != nil {
		return nil, problem
	}
	own := check.Limits{}
	var names []string
	for _, limit := range check.LimitTable() {
		names = append(names, limit.Key)
		f, there := entries.find(limit.Key)
		if !there {
			continue
		}
		var v float64
		if json.Unmarshal(f.raw, &v) != nil || string(f.raw) == "null" || !limit.Allows(v) {
			return nil, s.damaged(f.at, limit.Key, clipped(string(f.raw))+": "+wantedLimit(limit, measure.Metric))
		}
		own[limit.Key] = v
	}
	return own, s.known(entries, names...)
}

// ParseLimit reads a limit as a maker types it, in its own unit or, a length, in
// any; an empty text is the usual one, and not set.
func ParseLimit(text string, limit check.Limit, shown measure.System) (value float64, set bool, err error) {
	text = strings.TrimSpace(text)
	if text == "" {
		return 0, false, nil
	}
	if limit.Unit == check.Millimetres {
		l, wrong := measure.ParseLength(text, shown)
		value, err = l.MM(), wrong
	} else {
		value, err = strconv.ParseFloat(strings.Replace(text, ",", ".", 1), 64)
	}
	if err != nil || !limit.Allows(value) {
		return 0, false, errors.New(wantedLimit(limit, shown))
	}
	return value, true, nil
}

func wantedLimit(limit check.Limit, shown measure.System) string {
	return words.Say("studio.want.size", words.With{
		"low": LimitText(limit, limit.Least, shown), "high": limitWithUnit(limit, limit.Most, shown),
	})
}

// LimitText is a limit's value without its unit, so that it is read back as the
// same.
func LimitText(limit check.Limit, value float64, shown measure.System) string {
	if limit.Unit == check.Millimetres {
		return measure.Style{System: shown, Decimals: 3}.Format(measure.MM(value))
	}
	return plainNumber(value)
}

func limitWithUnit(limit check.Limit, value float64, shown measure.System) string {
	if unit := LimitUnit(limit, shown); unit != "" {
		return LimitText(limit, value, shown) + " " + unit
	}
	return LimitText(limit, value, shown)
}

// LimitUnit is what a limit is typed in; empty of a ratio.
func LimitUnit(limit check.Limit, shown measure.System) string {
	switch limit.Unit {
	case check.Millimetres:
		return shown.Label()
	case check.Percent:
		return "%"
	case check.Grams:
		return words.Say("unit.gram")
	}
	return ""
}
