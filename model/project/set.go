package project

import (
	"math"
	"strconv"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/book"
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Set changes one decision by its key, from text as a maker types it; a bare
// number takes the unit shown. What cannot be set leaves the project as it was
// and gives a [*book.ValueError].
func (p *Project) Set(key, text string, shown measure.System) error {
	param, ok := book.Lookup(key)
	if !ok {
		return unknownKey(key, keysOf(book.Params()))
	}
	v, err := param.Parse(text, shown)
	if err != nil {
		return err
	}
	if err := onShelf(param, v, p.Shelf); err != nil {
		return err
	}
	return param.Set(&p.Decisions, v)
}

// onShelf refuses a material that the shelf does not have.
func onShelf(param book.Param, v book.Value, shelf stock.Shelf) error {
	if param.Kind != book.KindMaterial {
		return nil
	}
	if _, ok := shelf.Find(param.Stock, v.Word); ok {
		return nil
	}
	return &book.ValueError{
		Key: param.Key, Text: quoted(v.Word),
		Want: words.Say("project.want.onShelf", words.With{"names": namesOf(shelf.OfKind(param.Stock))}),
	}
}

func namesOf(materials []stock.Material) string {
	names := make([]string, len(materials))
	for i, m := range materials {
		names[i] = m.Name
	}
	return orNothing(names)
}

func orNothing(names []string) string {
	if len(names) == 0 {
		return words.Say("project.nothing")
	}
	return strings.Join(names, ", ")
}

func keysOf(params []book.Param) []string {
	keys := make([]string, len(params))
	for i, p := range params {
		keys[i] = p.Key
	}
	return keys
}

// unknownKey names the known key that is most like the one given.
func unknownKey(key string, known []string) *book.ValueError {
	return &book.ValueError{
		Key: clipped(key), Text: words.Say("project.noSuchKey"),
		Want: words.Say("project.want.key", words.With{"near": nearest(key, known)}),
	}
}

// nearest is the first candidate below the text, as joint.width is below joint,
// or else the one that takes the fewest changed letters.
func nearest(text string, candidates []string) string {
	best, least := "", math.MaxInt
	for _, c := range candidates {
		if text != "" && strings.HasPrefix(c, text+".") {
			return c
		}
		if d := distance(clipped(text), c); d < least {
			best, least = c, d
		}
	}
	return best
}

// distance counts the letters to change, add or drop (Levenshtein), capitals
// aside.
func distance(a, b string) int {
	a, b = strings.ToLower(a), strings.ToLower(b)
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := range len(a) {
		corner := row[0]
		row[0] = i + 1
		for j := range len(b) {
			swap := corner
			if a[i] != b[j] {
				swap++
			}
			corner = row[j+1]
			row[j+1] = min(swap, row[j]+1, row[j+1]+1)
		}
	}
	return row[len(b)]
}

// clipped keeps an error to one line of sensible length.
func clipped(text string) string {
	const most = 60
	runes := []rune(strings.ToValidUTF8(text, "?"))
	if len(runes) > most {
		return string(runes[:most]) + "…"
	}
	return string(runes)
}

func quoted(text string) string { return strconv.Quote(clipped(text)) }
