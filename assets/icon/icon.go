// Package icon embeds the program's icon: a pleated liner seen end on, a W of
// two valleys and a ridge, standing in an open case of dark green cloth.
// icon.png is icon.svg at 512 × 512 pixels.
package icon

import _ "embed"

// PNG is the icon, 512 × 512 pixels.
//
//go:embed icon.png
var PNG []byte
