// Package assets embeds what ships with the program: translation files,
// built-in stock and formats, the demo project and the file format's schema.
// It imports nothing of the project, so that every layer may use it.
package assets

import "embed"

// Files holds lang/LANGUAGE/*.json, one object of key → text each; stock.json,
// the shelf that ships with the program; demo.json, the project of the first
// start; formats.json, the built-in formats; schema/*.schema.json, the forms of
// the files.
//
//go:embed lang stock.json demo.json formats.json schema
var Files embed.FS
