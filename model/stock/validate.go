package stock

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"unicode"

	"grainwise/assets/words"
	"grainwise/model/measure"
)

// Fault is something wrong with a shelf or one of its materials.
type Fault struct {
	Place string // "sheet.width", "materials[3] “Kelp”: thickness", with the file before it
	Text  string // what is wrong and what was expected, in the user's language
}

// Error is place and text.
func (f *Fault) Error() string { return f.Place + ": " + f.Text }

// Inner is the place without the file that stands before it.
func (f *Fault) Inner(file string) string { return strings.TrimPrefix(f.Place, file+": ") }

// within returns err with a wider place before its own.
func within(place string, err error) error {
	if fault, ok := err.(*Fault); ok {
		return &Fault{place + ": " + fault.Place, fault.Text}
	}
	return &Fault{place, err.Error()}
}

// Limits of what a material can be. They keep slips of the hand out, no more.
const (
	longestSheet = 10 * measure.Metre
	thickest     = 20 * measure.Millimetre
	heaviest     = measure.Grammage(20_000)
	longestName  = 80
)

// Validate returns the first thing that is wrong with the material, as a
// [*Fault] with its place, or nil.
func (m Material) Validate() error {
	for _, rule := range []func(Material) error{
		Material.checkKind, Material.checkName, Material.checkGrain, Material.checkSize,
		Material.checkBody, Material.checkStack, Material.checkPounds, Material.checkPrice, Material.checkColour,
		Material.checkWeave, Material.checkNumber, Material.checkAdhesive, Material.checkTexts,
	} {
		if err := rule(m); err != nil {
			return err
		}
	}
	return nil
}

// Validate returns the first thing wrong with a material, or two of one kind and
// name, as a [*Fault], or nil.
func (s Shelf) Validate() error {
	type key struct {
		kind Kind
		name string
	}
	seen := map[key]bool{}
	for i, m := range s.Materials {
		if err := m.Validate(); err != nil {
			return within(place(i, m.Name), err)
		}
		if seen[key{m.Kind, m.Name}] {
			return within(place(i, m.Name), fault("name", "stock.want.oneName", nil))
		}
		seen[key{m.Kind, m.Name}] = true
	}
	return nil
}

func place(i int, name string) string {
	if name == "" {
		return fmt.Sprintf("materials[%d]", i)
	}
	return fmt.Sprintf("materials[%d] “%s”", i, name)
}

// fault returns a Fault whose text is the words of key, {found} filled in.
func fault(place, key string, found any) error {
	return &Fault{place, words.Say(key, words.With{"found": found})}
}

func (m Material) checkKind() error {
	if !slices.Contains(Kinds(), m.Kind) {
		return fault("kind", "stock.want.kind", m.Kind)
	}
	return nil
}

func (m Material) checkName() error {
	switch {
	case m.Name != strings.TrimSpace(m.Name), m.Name == "", len([]rune(m.Name)) > longestName,
		strings.ContainsFunc(m.Name, unicode.IsControl):
		return fault("name", "stock.want.name", m.Name)
	}
	return nil
}

func (m Material) checkGrain() error {
	if !m.Kind.InSheets() && m.Grain == "" || slices.Contains(Grains(), m.Grain) {
		return nil
	}
	return fault("grain", "stock.want.grain", m.Grain)
}

func (m Material) checkSize() error {
	roll, sheet := m.RollWidth != 0, m.Sheet != Size{}
	switch {
	case !m.Kind.InSheets() && (roll || sheet):
		return fault("sheet", "stock.want.noSheet", nil)
	case !m.Kind.InSheets():
		return nil
	case roll == sheet:
		return fault("sheet", "stock.want.sheetOrRoll", nil)
	case roll && !between(m.RollWidth, longestSheet):
		return fault("rollWidth", "stock.want.sheetSide", millimetres(m.RollWidth))
	case roll:
		return nil
	case !between(m.Sheet.Length, longestSheet):
		return fault("sheet.length", "stock.want.sheetSide", millimetres(m.Sheet.Length))
	case !between(m.Sheet.Width, longestSheet):
		return fault("sheet.width", "stock.want.sheetSide", millimetres(m.Sheet.Width))
	case m.Sheet.Width > m.Sheet.Length:
		return fault("sheet.width", "stock.want.longSide", millimetres(m.Sheet.Width))
	}
	return nil
}

func (m Material) checkBody() error {
	switch {
	case m.Kind == Adhesive && m.Thickness == 0 && m.Grammage == 0:
		return nil
	case !between(m.Thickness, thickest):
		return fault("thickness", "stock.want.thickness", millimetres(m.Thickness))
	case m.Kind == Thread && m.Grammage == 0:
		return nil
	case m.Kind == Thread:
		return fault("grammage", "stock.want.noGrammage", m.Grammage)
	case !(m.Grammage > 0 && m.Grammage <= heaviest):
		return fault("grammage", "stock.want.grammage", m.Grammage)
	}
	return nil
}

func (m Material) checkPrice() error {
	p := m.Price
	switch {
	case p == Price{}:
		return nil
	case p.Amount.Minor < 0 || p.Amount.Currency == "":
		return fault("price.amount", "stock.want.amount", p.Amount)
	case p.Per != PerSheet && p.Per != PerMetre:
		return fault("price.per", "stock.want.per", p.Per)
	case m.Kind != Adhesive && (p.Per == PerMetre) != (m.RollWidth != 0 || m.Kind == Thread):
		return fault("price.per", "stock.want.perMatches", p.Per)
	case !p.On.IsZero() && !p.On.Valid():
		return fault("price.on", "measure.want.date", p.On)
	}
	return nil
}

var hexColour = regexp.MustCompile(`^#[0-9A-Fa-f]{6}$`)

func (m Material) checkColour() error {
	if m.Colour != "" && !hexColour.MatchString(m.Colour) {
		return fault("colour", "stock.want.colour", m.Colour)
	}
	return nil
}

func (m Material) checkAdhesive() error {
	a := m.Adhesive
	switch {
	case (a != nil) != (m.Kind == Adhesive):
		return fault("adhesive", "stock.want.adhesive", nil)
	case a == nil:
		return nil
	case !(a.WetSpread > 0 && a.WetSpread <= heaviest):
		return fault("adhesive.wetSpread", "stock.want.grammage", a.WetSpread)
	case !(a.DryShare > 0 && a.DryShare <= 1):
		return fault("adhesive.dryShare", "stock.want.share", a.DryShare)
	case a.WorkingMinutes < 0:
		return fault("adhesive.workingMinutes", "stock.want.time", a.WorkingMinutes)
	case a.DryHours < 0:
		return fault("adhesive.dryHours", "stock.want.time", a.DryHours)
	}
	return nil
}

func between(l, most measure.Length) bool { return l > 0 && l <= most }

func millimetres(l measure.Length) string {
	return measure.Style{Decimals: 6}.WithUnit(l)
}
