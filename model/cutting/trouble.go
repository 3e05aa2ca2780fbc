package cutting

import "fmt"

// Fault names what is wrong with a job.
type Fault string

// The faults of a job.
const (
	NoSheets   Fault = "no sheets"
	NoPieces   Fault = "no pieces"
	NotASize   Fault = "not a size"      // nought or below
	NotACount  Fault = "not a count"     // below nought
	NotACost   Fault = "not a cost"      // below nought, or nought for sheets without end
	LostEdges  Fault = "lost edges"      // they leave nothing, or are below nought
	TooLarge   Fault = "too large"       // a piece, for every sheet
	TooMuch    Fault = "too much"        // numbers beyond what is reckoned exactly
	StockSmall Fault = "stock too small" // for what is wanted
)

// Trouble is what is wrong with a job, and where.
type Trouble struct {
	Fault Fault
	Piece int // index of the kind, −1 where none is to blame
	Sheet int // likewise

	// Of a piece too large: by how much, on the sheet it comes nearest to fit,
	// and whether it would fit turned, which it may not be.
	OverWidth, OverHeight int64
	FitsTurned            bool

	// Of too small a stock: the fewest sheets that are needed, 0 where what is
	// there would suffice in number but not in size, and how many there are.
	Need, Have int64
}

func (t *Trouble) Error() string {
	switch t.Fault {
	case TooLarge:
		turned := ""
		if t.FitsTurned {
			turned = "; turned it would fit, but it may not be turned"
		}
		return fmt.Sprintf("piece %d is too large for every sheet: by %d wide and %d high%s", t.Piece, t.OverWidth, t.OverHeight, turned)
	case StockSmall:
		return fmt.Sprintf("the stock is too small: %d sheets, %d needed", t.Have, t.Need)
	}
	return fmt.Sprintf("%s (piece %d, sheet %d)", t.Fault, t.Piece, t.Sheet)
}

// Bounds within which all sums are exact in 64 bits.
const (
	mostSize  = int64(1) << 50 // nanometres: over a million metres
	mostCount = int64(1) << 31
	mostKinds = 200
)

// check finds the first fault of a job.
func (j Job) check() error {
	if len(j.Sheets) == 0 {
		return &Trouble{Fault: NoSheets, Piece: -1, Sheet: -1}
	}
	if len(j.Pieces) == 0 {
		return &Trouble{Fault: NoPieces, Piece: -1, Sheet: -1}
	}
	if j.Kerf < 0 || j.Kerf > mostSize || len(j.Pieces) > mostKinds {
		return &Trouble{Fault: TooMuch, Piece: -1, Sheet: -1}
	}
	for i, s := range j.Sheets {
		if fault := s.fault(); fault != "" {
			return &Trouble{Fault: fault, Piece: -1, Sheet: i}
		}
	}
	for i, p := range j.Pieces {
		if fault := p.fault(); fault != "" {
			return &Trouble{Fault: fault, Piece: i, Sheet: -1}
		}
		if trouble := j.tooLarge(p); trouble != nil {
			trouble.Piece = i
			return trouble
		}
	}
	return nil
}

func (s Sheet) fault() Fault {
	width, height := s.usable()
	t := s.Trim
	switch {
	case s.Width <= 0 || s.Height <= 0:
		return NotASize
	case s.Width > mostSize || s.Height > mostSize || s.Cost > mostCount:
		return TooMuch
	case min(t.Left, t.Right, t.Top, t.Bottom) < 0 || max(t.Left, t.Right, t.Top, t.Bottom) > mostSize || width <= 0 || height <= 0:
		return LostEdges
	case s.Stock < 0 && s.Stock != Unlimited:
		return NotACount
	case s.Stock > mostCount:
		return TooMuch
	case s.Cost < 0 || s.Cost == 0 && s.Stock == Unlimited:
		return NotACost
	}
	return ""
}

func (p Piece) fault() Fault {
	switch {
	case p.Width <= 0 || p.Height <= 0:
		return NotASize
	case p.Count < 0:
		return NotACount
	case p.Width > mostSize || p.Height > mostSize || p.Count > mostCount || p.Value < 0 || p.Value > mostCount<<16:
		return TooMuch
	}
	return ""
}

// tooLarge says by how much a piece misses the sheet it comes nearest to fit.
func (j Job) tooLarge(p Piece) *Trouble {
	var nearest *Trouble
	turnedFits := false
	for _, s := range j.Sheets {
		width, height := s.usable()
		turnedFits = turnedFits || p.Height <= width && p.Width <= height
		for _, size := range p.ways() {
			t := &Trouble{Fault: TooLarge, Sheet: -1, OverWidth: max(0, size[0]-width), OverHeight: max(0, size[1]-height)}
			if t.OverWidth == 0 && t.OverHeight == 0 {
				return nil
			}
			if nearest == nil || t.OverWidth+t.OverHeight < nearest.OverWidth+nearest.OverHeight {
				nearest = t
			}
		}
	}
	nearest.FitsTurned = turnedFits
	return nearest
}

// ways are the sizes in which a piece may lie.
func (p Piece) ways() [][2]int64 {
	if p.Turn {
		return [][2]int64{{p.Width, p.Height}, {p.Height, p.Width}}
	}
	return [][2]int64{{p.Width, p.Height}}
}
