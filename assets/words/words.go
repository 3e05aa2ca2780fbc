// Package words turns the keys of the translation files into text.
//
// A text may hold named blanks in braces: "wanted {limit} or more". The
// catalogue is read once and never changes afterwards.
package words

import (
	"encoding/json"
	"fmt"
	"io/fs"
	"os"
	"path"
	"strings"
	"sync"

	"grainwise/assets"
)

// With fills the named blanks of a text.
type With map[string]any

// Say returns the text of key in the user's language, English where that
// lacks it, and the key itself where no file has it.
func Say(key string, blanks ...With) string {
	text, ok := Lookup(key)
	if !ok {
		return key
	}
	for _, b := range blanks {
		for name, value := range b {
			text = strings.ReplaceAll(text, "{"+name+"}", fmt.Sprint(value))
		}
	}
	return text
}

// Lookup returns the text of key with its blanks unfilled.
func Lookup(key string) (string, bool) {
	text, ok := catalogue()[key]
	return text, ok
}

var catalogue = sync.OnceValue(func() map[string]string {
	texts := map[string]string{}
	for _, language := range []string{"en", preferred()} {
		read(language, texts)
	}
	return texts
})

// preferred is the two-letter language of the environment, as POSIX orders it.
func preferred() string {
	for _, name := range []string{"LC_ALL", "LC_MESSAGES", "LANG"} {
		if value := os.Getenv(name); len(value) >= 2 {
			return strings.ToLower(value[:2])
		}
	}
	return "en"
}

// read adds every file of one language; a language without a folder adds none.
func read(language string, texts map[string]string) {
	names, err := fs.Glob(assets.Files, path.Join("lang", language, "*.json"))
	if err != nil {
		return
	}
	for _, name := range names {
		data, err := assets.Files.ReadFile(name)
		if err != nil {
			panic(err) // the file is embedded: it was there when we compiled
		}
		var part map[string]string
		if err := json.Unmarshal(data, &part); err != nil {
			panic(name + ": " + err.Error())
		}
		for key, text := range part {
			texts[key] = text
		}
	}
}
