// Package fonts embeds the two faces of the window, the drawings and the
// papers: Gentium Book Plus for names and headings, Lato for everything else.
// Both are under the SIL Open Font License; the licences lie beside the files.
package fonts

import _ "embed"

// Serif is Gentium Book Plus Regular, TrueType.
//
//go:embed GentiumBookPlus-Regular.ttf
var Serif []byte

// Sans is Lato Regular, TrueType.
//
//go:embed Lato-Regular.ttf
var Sans []byte

// SansItalic is Lato Italic, TrueType.
//
//go:embed Lato-Italic.ttf
var SansItalic []byte

// SansBold is Lato Bold, TrueType.
//
//go:embed Lato-Bold.ttf
var SansBold []byte
