package project

import (
	"bytes"
	"encoding/json"
	"math/big"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/cutting"
)

// Instance is a question to the cutting planner, read from a file of its own: a
// job, a roll, or the most valuable way to cut one sheet. Its numbers are exact:
// sizes are whole multiples of Unit.
type Instance struct {
	Job   cutting.Job
	Roll  *cutting.Roll // nil for sheets
	Stack int64         // sheets that are cut at once
	Value bool          // the most valuable sheet is asked for
	Unit  *big.Rat      // of sizes, in the file's own unit
	Cost  *big.Rat      // of costs
	Worth *big.Rat      // of values
}

// OpenInstance reads an instance. What is wrong with its text gives a
// [*Problem]; what is wrong with the question, the planner says.
func OpenInstance(path string) (Instance, error) {
	data, problem := readFile(path)
	if problem != nil {
		return Instance{}, problem
	}
	return DecodeInstance(data, path)
}

// DecodeInstance reads an instance from a file's text.
func DecodeInstance(data []byte, file string) (Instance, error) {
	s := source{file, bytes.TrimPrefix(data, byteOrderMark)}
	entries, problem := s.readWhole()
	if problem != nil {
		if problem.Kind == Foreign {
			problem = s.notInstance()
		}
		return Instance{}, problem
	}
	i, problem := s.instance(entries)
	if problem != nil {
		return Instance{}, problem
	}
	return i, nil
}

// notInstance says what keeps the text from being JSON at all.
func (s source) notInstance() *Problem {
	var value json.RawMessage
	err := json.Unmarshal(s.data, &value)
	switch {
	case err == nil:
		return s.damaged(0, "", words.Say("project.want.object"))
	default:
		offset := len(s.data)
		if syntax, ok := err.(*json.SyntaxError); ok {
			offset = int(syntax.Offset) - 1
		}
		return s.damaged(offset, "", words.Say("instance.notJSON"))
	}
}

// draftInstance holds the numbers as they are written, until their common unit
// is known.
type draftInstance struct {
	sheets []draftSheet
	roll   *draftRoll
	pieces []draftPiece
	trim   [4]*big.Rat // left, right, top, bottom
	kerf   *big.Rat
	stack  *big.Rat
	value  bool
}

type draftSheet struct {
	id                         string
	at                         int
	width, height, cost, count *big.Rat // count nil for any number
}

type draftRoll struct {
	at          int
	width, unit *big.Rat
}

type draftPiece struct {
	id                   string
	at                   int
	width, height, count *big.Rat
	value                *big.Rat
	turn                 bool
}

func (s source) instance(entries object) (Instance, *Problem) {
	d := draftInstance{kerf: new(big.Rat), stack: big.NewRat(1, 1)}
	for i := range d.trim {
		d.trim[i] = new(big.Rat)
	}
	problem := s.known(entries, "sheet", "sheets", "roll", "trim", "kerf", "stack", "pieces", "value")
	for _, read := range []func(object, *draftInstance) *Problem{s.parents, s.trims, s.pieces, s.values} {
		if problem != nil {
			return Instance{}, problem
		}
		problem = read(entries, &d)
	}
	if problem != nil {
		return Instance{}, problem
	}
	return s.exact(d)
}

// parents reads what is cut: one sheet, several, or a roll.
func (s source) parents(entries object, d *draftInstance) *Problem {
	sheet, one := entries.find("sheet")
	sheets, several := entries.find("sheets")
	roll, isRoll := entries.find("roll")
	if one == several && !isRoll || isRoll && (one || several) {
		return s.damaged(0, "", words.Say("instance.want.parent"))
	}
	switch {
	case isRoll:
		return s.readRoll(roll, d)
	case one:
		return s.sheet(sheet, d)
	}
	list, problem := s.readArray(sheets)
	if problem == nil && len(list) == 0 {
		problem = s.damaged(sheets.at, "sheets", words.Say("instance.want.parent"))
	}
	for _, f := range list {
		if problem != nil {
			return problem
		}
		problem = s.sheet(f, d)
	}
	return problem
}

func (s source) sheet(in field, d *draftInstance) *Problem {
	e, problem := s.readObject(in)
	if problem == nil {
		problem = s.known(e, "id", "width", "height", "cost", "count")
	}
	if problem != nil {
		return problem
	}
	sheet := draftSheet{at: in.at, cost: big.NewRat(1, 1)}
	if sheet.id, problem = s.instanceID(e, in, false); problem != nil {
		return problem
	}
	for _, n := range []wantedNumber{{"width", &sheet.width, true}, {"height", &sheet.height, true}, {"cost", &sheet.cost, false}, {"count", &sheet.count, false}} {
		if problem = s.number(in, e, n.name, n.to, n.must); problem != nil {
			return problem
		}
	}
	d.sheets = append(d.sheets, sheet)
	return nil
}

func (s source) readRoll(in field, d *draftInstance) *Problem {
	e, problem := s.readObject(in)
	if problem == nil {
		problem = s.known(e, "width", "unit")
	}
	if problem != nil {
		return problem
	}
	d.roll = &draftRoll{at: in.at, unit: new(big.Rat)}
	if problem = s.number(in, e, "width", &d.roll.width, true); problem != nil {
		return problem
	}
	return s.number(in, e, "unit", &d.roll.unit, false)
}

func (s source) trims(entries object, d *draftInstance) *Problem {
	if f, there := entries.find("trim"); there && !isNull(f) {
		e, problem := s.readObject(f)
		names := []string{"left", "right", "top", "bottom"}
		if problem == nil {
			problem = s.known(e, names...)
		}
		for i, name := range names {
			if problem == nil {
				problem = s.number(f, e, name, &d.trim[i], false)
			}
		}
		if problem != nil {
			return problem
		}
	}
	if problem := s.number(field{}, entries, "kerf", &d.kerf, false); problem != nil {
		return problem
	}
	return s.number(field{}, entries, "stack", &d.stack, false)
}

func (s source) pieces(entries object, d *draftInstance) *Problem {
	f, there := entries.find("pieces")
	if !there {
		return s.damaged(0, "pieces", words.Say("instance.want.pieces"))
	}
	list, problem := s.readArray(f)
	known := map[string]bool{}
	for _, in := range list {
		if problem != nil {
			return problem
		}
		problem = s.piece(in, d, known)
	}
	if problem == nil && len(list) == 0 {
		problem = s.damaged(f.at, "pieces", words.Say("instance.want.pieces"))
	}
	return problem
}

func (s source) piece(in field, d *draftInstance, known map[string]bool) *Problem {
	e, problem := s.readObject(in)
	if problem == nil {
		problem = s.known(e, "id", "width", "height", "count", "turn")
	}
	if problem != nil {
		return problem
	}
	p := draftPiece{at: in.at}
	if p.id, problem = s.instanceID(e, in, true); problem != nil {
		return problem
	}
	if known[p.id] {
		return s.damaged(in.at, p.id, words.Say("instance.twice"))
	}
	known[p.id] = true
	for _, n := range []wantedNumber{{"width", &p.width, true}, {"height", &p.height, true}, {"count", &p.count, false}} {
		if problem = s.number(in, e, n.name, n.to, n.must); problem != nil {
			return problem
		}
	}
	if f, there := e.find("turn"); there {
		if err := json.Unmarshal(f.raw, &p.turn); err != nil || isNull(f) {
			return s.damaged(f.at, "turn", words.Say("project.want.switch"))
		}
	}
	d.pieces = append(d.pieces, p)
	return nil
}

// values reads what pieces are worth; without them every piece needs a count.
func (s source) values(entries object, d *draftInstance) *Problem {
	f, there := entries.find("value")
	if !there || isNull(f) {
		for _, p := range d.pieces {
			if p.count == nil {
				return s.damaged(p.at, p.id, words.Say("instance.want.count"))
			}
		}
		return nil
	}
	if d.roll != nil || len(d.sheets) != 1 {
		return s.damaged(f.at, "value", words.Say("instance.want.oneSheet"))
	}
	e, problem := s.readObject(f)
	d.value = true
	var ids []string
	for i := range d.pieces {
		p := &d.pieces[i]
		ids = append(ids, p.id)
		if problem == nil {
			problem = s.number(f, e, p.id, &p.value, true)
		}
	}
	if problem != nil {
		return problem
	}
	return s.known(e, ids...)
}

func (s source) instanceID(e object, in field, must bool) (string, *Problem) {
	f, there := e.find("id")
	if !there && !must {
		return "", nil
	}
	var id string
	if !there || json.Unmarshal(f.raw, &id) != nil || strings.TrimSpace(id) == "" || len(id) > longestName {
		at := in.at
		if there {
			at = f.at
		}
		return "", s.damaged(at, "id", words.Say("project.want.someText", words.With{"most": longestName}))
	}
	return id, nil
}

// longestNumber bounds a number's text, and so what its exponent can blow up to.
const (
	longestNumber = 40
	mostExponent  = 30
)

// wantedNumber is an entry that is a number, and where it goes.
type wantedNumber struct {
	name string
	to   **big.Rat
	must bool
}

// number reads a plain number exactly; one that is missing or null stays as it
// is, unless it must be there.
func (s source) number(in field, e object, name string, to **big.Rat, must bool) *Problem {
	f, there := e.find(name)
	if !there || isNull(f) && !must {
		if must {
			return s.damaged(in.at, name, words.Say("instance.want.number"))
		}
		return nil
	}
	text := string(f.raw)
	if len(text) > longestNumber || !strings.ContainsRune("-0123456789", rune(text[0])) || exponentOf(text) > mostExponent {
		return s.damaged(f.at, name, words.Say("instance.want.number"))
	}
	r, ok := new(big.Rat).SetString(text)
	if !ok {
		return s.damaged(f.at, name, words.Say("instance.want.number"))
	}
	*to = r
	return nil
}

// exponentOf is the size of a number's exponent, 0 without one.
func exponentOf(text string) int {
	_, exponent, _ := strings.Cut(strings.ToLower(text), "e")
	size := 0
	for _, r := range strings.TrimLeft(exponent, "+-") {
		size = min(10*size+int(r-'0'), 1000)
	}
	return size
}

func isNull(f field) bool { return string(f.raw) == "null" }
