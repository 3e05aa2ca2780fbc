package look

// LightContrast is black on white: all text at 7:1 or more, all that is needed
// to use a control at 3:1 or more.
func LightContrast() Palette {
	return Palette{
		Panel: rgb(0xFFFFFF), Sheet: rgb(0xFFFFFF), Card: rgb(0xFFFFFF), Desk: rgb(0xE4E4E4),
		Ink: rgb(0x000000), Quiet: rgb(0x303030),
		Hairline: rgb(0x6E6E6E), Ruled: rgb(0x3A3A3A), Field: rgb(0x1A1A1A),
		Accent: rgb(0x0A3A86), OnAccent: rgb(0xFFFFFF), Wash: share(0x0A3A86, 13),
		Stop: rgb(0x86150A), Check: rgb(0x573B00), Note: rgb(0x2B352F), OnStop: rgb(0xFFFFFF),
		Track: rgb(0x6E6E6E), Ruler: rgb(0xE4E4E4), RulerNow: rgb(0xA6A6A6),
		SheetInk: rgb(0x000000), SheetQuiet: rgb(0x303030), SheetAccent: rgb(0x0A3A86), SheetHairline: rgb(0x6E6E6E),
		Tip: rgb(0x000000), TipInk: rgb(0xFFFFFF), Shade: share(0x000000, 60),
		Hover: share(0x000000, 8), Pressed: share(0x000000, 16),
		Stark: true,
	}
}

// DarkContrast is white on black; the drawing's sheet stays white.
func DarkContrast() Palette {
	return Palette{
		Panel: rgb(0x000000), Sheet: rgb(0xFFFFFF), Card: rgb(0x000000), Desk: rgb(0x000000),
		Ink: rgb(0xFFFFFF), Quiet: rgb(0xD6D6D6),
		Hairline: rgb(0x8A8A8A), Ruled: rgb(0xC4C4C4), Field: rgb(0xE6E6E6),
		Accent: rgb(0xA9C8FF), OnAccent: rgb(0x000000), Wash: share(0xA9C8FF, 22),
		Stop: rgb(0xFFB3A3), Check: rgb(0xFFD35C), Note: rgb(0xD5DDD6), OnStop: rgb(0x000000),
		Track: rgb(0x7A7A7A), Ruler: rgb(0x2C2C2C), RulerNow: rgb(0x4E4E4E),
		SheetInk: rgb(0x000000), SheetQuiet: rgb(0x303030), SheetAccent: rgb(0x0A3A86), SheetHairline: rgb(0x6E6E6E),
		Tip: rgb(0xFFFFFF), TipInk: rgb(0x000000), Shade: share(0xFFFFFF, 60),
		Hover: share(0xFFFFFF, 14), Pressed: share(0xFFFFFF, 24),
		Night: true, Stark: true,
	}
}
