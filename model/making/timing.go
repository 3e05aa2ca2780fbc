package making

import (
	"math"

	"grainwise/model/book"
)

// StageTime is how long one stage takes: minutes of hands' work, and hours of
// rest that fall into it and must pass before the next stage.
type StageTime struct {
	Stage   Stage
	SetUp   int // once, whatever the number of books
	First   int // the first book, with the set-up
	Further int // each further one
	Minutes int // all books together
	Rest    int // hours of drying and pressing, the books resting together
}

// pace is the minutes of one stage, own reasoning: set-up once, and for each
// book. Together they are held to the demo project's 195 minutes of set-up and
// 84 minutes a book, the only times that are known.
type pace struct {
	setUp float64
	each  func(book.Book) float64
}

// Minutes for one thing, at an easy pace.
const (
	perFolioCut   = 0.25
	perPieceCut   = 2.0 // liner, endpaper, guard sheets by the stack
	perFolioFold  = 0.5
	perSection    = 0.5 // gathered, or knotted
	perGuard      = 0.25
	perCrease     = 1.0
	perEndpaper   = 4.0
	perSeam       = 1.5
	perPamphlet   = 6.0
	perLinked     = 8.0
	perTape       = 2.0
	perCasePiece  = 1.5
	perCovering   = 12.0
	perSide       = 5.0
	perFinishing  = 5.0
	perLining     = 6.0
	perTrimmedSet = 4.0
)

func paceOf(stage Stage) pace {
	switch stage {
	case StageCut:
		return pace{45, cutMinutes}
	case StageFold:
		return pace{10, foldMinutes}
	case StageLiner:
		return pace{30, linerMinutes}
	case StageEndpapers:
		return pace{15, func(b book.Book) float64 { return perEndpaper * float64(b.Endpaper.Count) }}
	case StageSew:
		return pace{25, sewMinutes}
	case StageCase:
		return pace{45, caseMinutes}
	case StageCaseIn:
		return pace{20, func(book.Book) float64 { return 10 }}
	case StagePress:
		return pace{10, func(book.Book) float64 { return 3 }}
	}
	return pace{10, finishMinutes}
}

func cutMinutes(b book.Book) float64 {
	held, guards := perPieceCut, 0.0
	if linked(b) {
		held *= float64(b.Endpaper.Count)
	}
	if p, has := b.Part(book.PartInterleaf); has {
		guards = perGuard * float64(p.Count)
	}
	return perFolioCut*float64(folios(b)) + held + guards
}

func foldMinutes(b book.Book) float64 {
	guards, _ := b.Part(book.PartInterleaf)
	return perFolioFold*float64(folios(b)+guards.Count) + perSection*float64(b.Resolved.Sections.Count)
}

func linerMinutes(b book.Book) float64 {
	return perCrease * float64(1+len(b.Liner.Valleys)+len(b.Liner.Ridges))
}

func sewMinutes(b book.Book) float64 {
	n := float64(b.Resolved.Sections.Count)
	sum := 0.0
	switch b.Resolved.Sewing.Method {
	case book.Machine:
		sum = (perSeam + perSection) * n
	case book.Pamphlet:
		sum = perPamphlet * n
	default:
		sum = perLinked*n + perTape*float64(len(b.Tapes.At))
	}
	if trimmed(b) {
		sum += perTrimmedSet
	}
	if _, lined := b.Part(book.PartMull); lined {
		sum += perLining
	}
	return sum
}

// caseMinutes: two boards, spine piece and covering, and what comes besides.
func caseMinutes(b book.Book) float64 {
	sum := 4*perCasePiece + perCovering
	if quarter(b) {
		sum += 2 * (perCasePiece + perSide)
	}
	for _, id := range []book.PartID{book.PartElastic, book.PartBand} {
		if _, has := b.Part(id); has {
			sum += perFinishing
		}
	}
	return sum
}

func finishMinutes(b book.Book) float64 {
	sum := 6.0
	for _, id := range []book.PartID{book.PartRibbon, book.PartLabel} {
		if _, has := b.Part(id); has {
			sum += perFinishing
		}
	}
	return sum
}

// Timing is the time that some copies of a book take, stage by stage. A stage
// that the book has not got is left out.
func Timing(b book.Book, books int) []StageTime {
	books = max(books, 1)
	rest := map[Stage]int{}
	has := map[Stage]bool{}
	for _, s := range Steps(b) {
		has[s.Stage] = true
		rest[s.Stage] += s.Wait.Hours
	}
	var all []StageTime
	for _, stage := range Stages() {
		if has[stage] {
			all = append(all, timeOf(b, stage, books, rest[stage]))
		}
	}
	return all
}

func timeOf(b book.Book, stage Stage, books, rest int) StageTime {
	p := paceOf(stage)
	setUp, each := int(math.Round(p.setUp)), int(math.Round(p.each(b)))
	return StageTime{
		Stage: stage, SetUp: setUp, First: setUp + each, Further: each,
		Minutes: setUp + each*books, Rest: rest,
	}
}
