package measure

import "grainwise/assets/words"

// System is the family of units in which sizes are shown or cut.
type System uint8

// The systems.
const (
	Metric   System = iota // millimetres
	Imperial               // inches
)

// String is the system's name in files and on the command line: "mm" or "inch".
func (s System) String() string {
	if s == Imperial {
		return "inch"
	}
	return "mm"
}

// Unit is the one unit that bare numbers take: a millimetre or an inch.
func (s System) Unit() Length {
	if s == Imperial {
		return Inch
	}
	return Millimetre
}

// Label is the unit as it is written after a number.
func (s System) Label() string {
	if s == Imperial {
		return words.Say("unit.inch")
	}
	return words.Say("unit.mm")
}

// ParseSystem reads what [System.String] writes, and "in" as well.
func ParseSystem(text string) (System, error) {
	switch text {
	case "mm":
		return Metric, nil
	case "inch", "in":
		return Imperial, nil
	}
	return Metric, wrong(text, "measure.want.system")
}

// MarshalText writes the system's name.
func (s System) MarshalText() ([]byte, error) { return []byte(s.String()), nil }

// UnmarshalText reads the system's name.
func (s *System) UnmarshalText(text []byte) (err error) {
	*s, err = ParseSystem(string(text))
	return err
}
