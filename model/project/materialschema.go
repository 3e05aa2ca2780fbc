package project

import (
	"grainwise/model/measure"
	"grainwise/model/stock"
)

// materialSchema is one material of the shelf; package stock holds the same
// limits when it reads one.
func materialSchema() members {
	text := members{{"type", "string"}}
	yesNo := members{{"type", "boolean"}}
	size := members{
		{"type", "object"}, {"required", []string{"length", "width"}}, {"additionalProperties", false},
		{"properties", members{{"length", above(10_000)}, {"width", above(10_000)}}},
	}
	return members{
		{"type", "object"},
		{"required", []string{"kind", "name"}},
		{"additionalProperties", false},
		{"properties", members{
			{"kind", members{{"enum", stock.Kinds()}}},
			{"name", members{{"type", "string"}, {"minLength", 1}, {"maxLength", 80}}},
			{"sheet", size},
			{"rollWidth", above(10_000)},
			{"grain", members{{"enum", stock.Grains()}}},
			{"thickness", above(20)},
			{"stack", members{
				{"type", "object"}, {"required", []string{"count", "height"}}, {"additionalProperties", false},
				{"properties", members{{"count", wholeTo(999_999)}, {"height", above(10_000)}}},
			}},
			{"grammage", above(20_000)},
			{"pounds", members{
				{"type", "object"}, {"required", []string{"weight", "basis"}}, {"additionalProperties", false},
				{"properties", members{{"weight", above(20_000)}, {"basis", members{{"enum", basisNames()}}}}},
			}},
			{"price", priceSchema()},
			{"colour", members{{"type", "string"}, {"pattern", "^#[0-9A-Fa-f]{6}$"}}},
			{"weave", members{{"enum", stock.Weaves()}}},
			{"backed", yesNo},
			{"glueTested", yesNo},
			{"frontTest", members{{"type", "string"}, {"maxLength", 2000}}},
			{"backTest", members{{"type", "string"}, {"maxLength", 2000}}},
			{"lot", text},
			{"supplier", text},
			{"notes", text},
			{"photo", members{{"type", "string"}, {"pattern", `^[0-9a-f]{32}\.jpg$`}}},
			{"number", members{
				{"type", "object"}, {"required", []string{"lea", "ply"}}, {"additionalProperties", false},
				{"properties", members{{"lea", wholeTo(9999)}, {"ply", wholeTo(9999)}}},
			}},
			{"adhesive", adhesiveSchema()},
		}},
	}
}

func priceSchema() members {
	return members{
		{"type", "object"},
		{"required", []string{"amount", "per"}},
		{"additionalProperties", false},
		{"properties", members{
			{"amount", members{{"type", "string"}, {"pattern", `^[0-9]+([.,][0-9]+)? [A-Z]{3}$`}}},
			{"per", members{{"enum", []string{stock.PerSheet, stock.PerMetre}}}},
			{"on", members{{"type", "string"}, {"pattern", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"}}},
		}},
	}
}

func adhesiveSchema() members {
	whole := members{{"type", "integer"}, {"minimum", 0}}
	return members{
		{"type", "object"},
		{"required", []string{"wetSpread", "dryShare"}},
		{"additionalProperties", false},
		{"properties", members{
			{"wetSpread", above(20_000)},
			{"dryShare", above(1)},
			{"workingMinutes", whole},
			{"dryHours", whole},
			{"paste", members{{"type", "boolean"}}},
		}},
	}
}

// basisNames are the basic sheets of a weight in pounds.
func basisNames() []string {
	var names []string
	for _, b := range measure.Bases() {
		names = append(names, b.Name)
	}
	return names
}

// wholeTo is a whole number from 1.
func wholeTo(most int) members {
	return members{{"type", "integer"}, {"minimum", 1}, {"maximum", most}}
}

// above is a number greater than nothing and at most so much.
func above(most float64) members {
	return members{{"type", "number"}, {"exclusiveMinimum", 0}, {"maximum", most}}
}
