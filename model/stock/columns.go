package stock

import (
	"errors"
	"strconv"
	"strings"

	"grainwise/assets/words"
	"grainwise/model/measure"
)

// Column is one fact of a material as a table holds it: as text, lengths as
// numbers of its unit.
type Column struct {
	Name string // "sheetLength", as files of the program name the same fact
	Unit string // of bare numbers, "mm" or "g/m²"; empty where there is none
	get  func(m *Material) string
	set  func(m *Material, text string, bare measure.System) error
	none func(m *Material) // takes the fact away
}

// Head is the column's name with its unit in brackets.
func (c Column) Head() string {
	if c.Unit == "" {
		return c.Name
	}
	return c.Name + " (" + c.Unit + ")"
}

// Text is what a material has there, empty where it has nothing.
func (c Column) Text(m Material) string { return c.get(&m) }

// Set takes a material's fact from a text; a bare number has the unit of bare, and
// an empty text takes the fact away. The error is a sentence.
func (c Column) Set(m *Material, text string, bare measure.System) error {
	if strings.TrimSpace(text) == "" {
		c.none(m)
		return nil
	}
	err := c.set(m, text, bare)
	var wrong *Fault
	if errors.As(err, &wrong) {
		return errors.New(wrong.Text)
	}
	return err
}

// ColumnOf is the column of a name.
func ColumnOf(name string) (Column, bool) {
	for _, c := range Columns() {
		if c.Name == name {
			return c, true
		}
	}
	return Column{}, false
}

// Columns are all facts of a material, in the order of a table. Kind and name
// come first and are the only two that a table must have.
func Columns() []Column {
	all := []Column{
		textColumn("kind", func(m *Material) *Kind { return &m.Kind }),
		textColumn("name", func(m *Material) *string { return &m.Name }),
		lengthColumn("sheetLength", func(m *Material) *measure.Length { return &m.Sheet.Length }),
		lengthColumn("sheetWidth", func(m *Material) *measure.Length { return &m.Sheet.Width }),
		lengthColumn("rollWidth", func(m *Material) *measure.Length { return &m.RollWidth }),
		textColumn("grain", func(m *Material) *Grain { return &m.Grain }),
		thicknessColumn(), stackColumn(), grammageColumn("grammage", func(m *Material) *measure.Grammage { return &m.Grammage }), poundsColumn(),
		numberColumn(),
	}
	all = append(all, priceColumns()...)
	all = append(all,
		textColumn("colour", func(m *Material) *string { return &m.Colour }),
		textColumn("weave", func(m *Material) *Weave { return &m.Weave }),
		switchColumn("backed", func(m *Material) *bool { return &m.Backed }),
		switchColumn("glueTested", func(m *Material) *bool { return &m.GlueTested }),
		proseColumn("frontTest", func(m *Material) *string { return &m.FrontTest }),
		proseColumn("backTest", func(m *Material) *string { return &m.BackTest }),
		proseColumn("lot", func(m *Material) *string { return &m.Lot }),
		proseColumn("supplier", func(m *Material) *string { return &m.Supplier }),
		proseColumn("notes", func(m *Material) *string { return &m.Notes }),
		textColumn("photo", func(m *Material) *string { return &m.Photo }),
	)
	return append(all, adhesiveColumns()...)
}

func textColumn[T ~string](name string, at func(*Material) *T) Column {
	return Column{Name: name,
		none: func(m *Material) { *at(m) = "" },
		get:  func(m *Material) string { return string(*at(m)) },
		set: func(m *Material, text string, _ measure.System) error {
			*at(m) = T(strings.TrimSpace(text))
			return nil
		}}
}

// proseColumn keeps the text as it is, ends and all.
func proseColumn(name string, at func(*Material) *string) Column {
	c := textColumn(name, at)
	c.set = func(m *Material, text string, _ measure.System) error {
		*at(m) = text
		return nil
	}
	return c
}

func lengthColumn(name string, at func(*Material) *measure.Length) Column {
	return Column{Name: name, Unit: measure.Metric.Label(),
		none: func(m *Material) { *at(m) = 0 },
		get:  func(m *Material) string { return lengthText(*at(m)) },
		set: func(m *Material, text string, bare measure.System) (err error) {
			*at(m), err = measure.ParseLength(text, bare)
			return err
		}}
}

func lengthText(l measure.Length) string {
	if l == 0 {
		return ""
	}
	return measure.FileForm(l)
}

// thicknessColumn takes a stack as well: "20 leaves = 4.4 mm".
func thicknessColumn() Column {
	c := lengthColumn("thickness", func(m *Material) *measure.Length { return &m.Thickness })
	c.none = func(m *Material) { m.Thickness, m.Stack = 0, Stack{} }
	c.set = func(m *Material, text string, bare measure.System) (err error) {
		m.Thickness, m.Stack, err = ParseThickness(text, bare)
		return err
	}
	return c
}

// ParseThickness reads a thickness, or the stack that it was measured on.
func ParseThickness(text string, bare measure.System) (measure.Length, Stack, error) {
	count, height, counted, err := measure.ParseSeveral(text, bare)
	if counted && err == nil {
		s := Stack{count, height}
		return s.Each(), s, nil
	}
	l, err := measure.ParseLength(text, bare)
	if err != nil {
		return 0, Stack{}, &measure.ParseError{Text: text, Want: words.Say("stock.want.stack")}
	}
	return l, Stack{}, nil
}

// stackColumn is the stack alone, "20 = 4.4 mm"; where a table has no thickness
// of the material, it follows.
func stackColumn() Column {
	return Column{Name: "stack", Unit: measure.Metric.Label(),
		none: func(m *Material) { m.Stack = Stack{} },
		get: func(m *Material) string {
			if m.Stack == (Stack{}) {
				return ""
			}
			return m.Stack.Text(measure.Style{Decimals: 6})
		},
		set: func(m *Material, text string, bare measure.System) error {
			count, height, counted, err := measure.ParseSeveral(text, bare)
			switch {
			case err != nil:
				return err
			case !counted:
				_, err = ParseCaliper("", bare) // says what a stack is
				return err
			}
			if m.Stack = (Stack{count, height}); m.Thickness == 0 {
				m.Thickness = m.Stack.Each()
			}
			return nil
		}}
}

// Text is the stack as it is typed: "20 = 4.4 mm".
func (s Stack) Text(style measure.Style) string {
	return strconv.Itoa(s.Count) + " = " + style.WithUnit(s.Height)
}

func grammageColumn(name string, at func(*Material) *measure.Grammage) Column {
	return Column{Name: name, Unit: "g/m²",
		none: func(m *Material) { *at(m) = 0 },
		get:  func(m *Material) string { return plainNumber(float64(*at(m))) },
		set: func(m *Material, text string, _ measure.System) (err error) {
			*at(m), err = measure.ParseGrammage(text)
			return err
		}}
}

// poundsColumn is the weight in pounds with its basis, "80 lb text"; where a
// table has no grammage of the material, it follows.
func poundsColumn() Column {
	return Column{Name: "pounds",
		none: func(m *Material) { m.Pounds = Pounds{} },
		get:  func(m *Material) string { return m.Pounds.String() },
		set: func(m *Material, text string, _ measure.System) error {
			p, err := ParsePounds(text)
			if err != nil {
				return err
			}
			if m.Pounds = p; m.Grammage == 0 {
				m.Grammage, _ = p.Grammage()
			}
			return nil
		}}
}

// numberColumn is a linen thread's number, "25/3"; where a table has no diameter,
// the estimate by it follows.
func numberColumn() Column {
	return Column{Name: "number",
		none: func(m *Material) { m.Number = Number{} },
		get:  func(m *Material) string { return m.Number.String() },
		set: func(m *Material, text string, _ measure.System) error {
			n, err := ParseNumber(text)
			if err != nil {
				return err
			}
			if m.Number = n; m.Thickness == 0 {
				m.Thickness = n.Diameter()
			}
			return nil
		}}
}

func priceColumns() []Column {
	return []Column{
		{Name: "price",
			none: func(m *Material) { m.Price = Price{} },
			get: func(m *Material) string {
				if m.Price == (Price{}) {
					return ""
				}
				return m.Price.Amount.String()
			},
			set: func(m *Material, text string, _ measure.System) (err error) {
				m.Price.Amount, err = measure.ParseMoney(strings.TrimSpace(text))
				if err == nil && m.Price.Per == "" {
					m.Price.Per = m.soldBy()
				}
				return err
			}},
		textColumn("pricePer", func(m *Material) *string { return &m.Price.Per }),
		{Name: "priceDate",
			none: func(m *Material) { m.Price.On = measure.Date{} },
			get: func(m *Material) string {
				if m.Price.On.IsZero() {
					return ""
				}
				return m.Price.On.String()
			},
			set: func(m *Material, text string, _ measure.System) (err error) {
				m.Price.On, err = measure.ParseDate(strings.TrimSpace(text))
				return err
			}},
	}
}

// soldBy is the unit that a material's price is for.
func (m *Material) soldBy() string {
	if m.RollWidth != 0 || m.Kind == Thread {
		return PerMetre
	}
	return PerSheet
}

func switchColumn(name string, at func(*Material) *bool) Column {
	return Column{Name: name,
		none: func(m *Material) { *at(m) = false },
		get: func(m *Material) string {
			if *at(m) {
				return yes
			}
			return ""
		},
		set: func(m *Material, text string, _ measure.System) error {
			switch strings.ToLower(strings.TrimSpace(text)) {
			case yes, "true", "1":
				*at(m) = true
			case "no", "false", "0":
				*at(m) = false
			default:
				return fault(name, "stock.want.yesNo", text)
			}
			return nil
		}}
}

const yes = "yes"

// adhesiveColumns are the facts of an adhesive; any of them makes it one.
func adhesiveColumns() []Column {
	facts := func(m *Material) *AdhesiveFacts {
		if m.Adhesive == nil {
			m.Adhesive = &AdhesiveFacts{}
		}
		return m.Adhesive
	}
	of := func(read func(*AdhesiveFacts) string) func(*Material) string {
		return func(m *Material) string {
			if m.Adhesive == nil {
				return ""
			}
			return read(m.Adhesive)
		}
	}
	whole := func(name string, at func(*AdhesiveFacts) *int) Column {
		return Column{Name: name,
			none: func(m *Material) { *at(facts(m)) = 0 },
			get:  of(func(a *AdhesiveFacts) string { return strconv.Itoa(*at(a)) }),
			set: func(m *Material, text string, _ measure.System) error {
				n, err := strconv.Atoi(strings.TrimSpace(text))
				if err != nil {
					return fault(name, "stock.want.time", text)
				}
				*at(facts(m)) = n
				return nil
			}}
	}
	spread := grammageColumn("wetSpread", func(m *Material) *measure.Grammage { return &facts(m).WetSpread })
	spread.get = of(func(a *AdhesiveFacts) string { return plainNumber(float64(a.WetSpread)) })
	paste := switchColumn("paste", func(m *Material) *bool { return &facts(m).Paste })
	pasteText := paste.get
	paste.get = func(m *Material) string {
		if m.Adhesive == nil {
			return ""
		}
		return pasteText(m)
	}
	return []Column{
		spread,
		{Name: "dryShare",
			none: func(m *Material) { facts(m).DryShare = 0 },
			get:  of(func(a *AdhesiveFacts) string { return plainNumber(a.DryShare) }),
			set: func(m *Material, text string, _ measure.System) error {
				share, err := strconv.ParseFloat(strings.Replace(strings.TrimSpace(text), ",", ".", 1), 64)
				if err != nil {
					return fault("dryShare", "stock.want.share", text)
				}
				facts(m).DryShare = share
				return nil
			}},
		whole("workingMinutes", func(a *AdhesiveFacts) *int { return &a.WorkingMinutes }),
		whole("dryHours", func(a *AdhesiveFacts) *int { return &a.DryHours }),
		paste,
	}
}

// plainNumber writes a number in full, nothing for none.
func plainNumber(v float64) string {
	if v == 0 {
		return ""
	}
	return strconv.FormatFloat(v, 'f', -1, 64)
}
