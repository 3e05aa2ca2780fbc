package project

import (
	"grainwise/model/batch"
	"grainwise/model/stock"
)

// The schemas of a batch's entries; package batch holds the same limits where it
// validates them, and those that a schema cannot say.

func moneySchema() members {
	return members{{"type", "string"}, {"pattern", `^[0-9]+([.,][0-9]+)? [A-Z]{3}$`}}
}

func dateSchema() members {
	return members{{"type", "string"}, {"pattern", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"}}
}

func textSchema(most int) members { return members{{"type", "string"}, {"maxLength", most}} }

func markSchema(most int) members {
	return members{{"type", "string"}, {"minLength", 1}, {"maxLength", most}}
}

func fromNothing() members { return members{{"type", "number"}, {"minimum", 0}} }

func wholeFrom(least int) members { return members{{"type", "integer"}, {"minimum", least}} }

func shareSchema() members {
	return members{{"type", "number"}, {"minimum", 0}, {"exclusiveMaximum", 1}}
}

func enumOf(all any) members { return members{{"enum", all}} }

func objectSchema(required []string, properties members) members {
	return members{{"type", "object"}, {"required", required}, {"additionalProperties", false}, {"properties", properties}}
}

func arrayOf(item members) members { return members{{"type", "array"}, {"items", item}} }

func orderSchema() members {
	var dates members
	for _, s := range batch.States() {
		dates = append(dates, member{string(s), dateSchema()})
	}
	return objectSchema([]string{"id", "kind", "count", "state"}, members{
		{"id", markSchema(60)},
		{"customer", textSchema(batch.LongestName)},
		{"kind", enumOf(batch.Kinds())},
		{"variant", textSchema(longestVariant)},
		{"count", members{{"type", "integer"}, {"minimum", 1}, {"maximum", batch.MostCopies}}},
		{"parcel", textSchema(60)},
		{"zone", textSchema(60)},
		{"state", enumOf(batch.States())},
		{"dates", objectSchema([]string{}, dates)},
		{"address", textSchema(LongestReason)},
		{"note", textSchema(LongestReason)},
	})
}

func blockSchema() members {
	return objectSchema([]string{"order", "copy", "spine"}, members{
		{"order", markSchema(60)},
		{"copy", wholeFrom(1)},
		{"spine", fromNothing()},
		{"foreEdge", fromNothing()},
		{"minutes", wholeFrom(0)},
		{"fault", textSchema(LongestReason)},
		{"reason", textSchema(LongestReason)},
	})
}

func holdingSchema() members {
	return objectSchema([]string{"kind", "material"}, members{
		{"kind", enumOf(stock.Kinds())},
		{"material", markSchema(batch.LongestName)},
		{"sheets", wholeFrom(0)},
		{"length", fromNothing()},
		{"grams", fromNothing()},
		{"lot", textSchema(60)},
		{"pack", wholeFrom(0)},
		{"least", fromNothing()},
		{"substitute", textSchema(batch.LongestName)},
	})
}

func cutSchema() members {
	return objectSchema([]string{"kind", "material", "part", "height", "width", "count"}, members{
		{"kind", enumOf(stock.Kinds())},
		{"material", markSchema(batch.LongestName)},
		{"part", markSchema(60)},
		{"height", above(10_000)},
		{"width", above(10_000)},
		{"count", wholeFrom(1)},
		{"on", dateSchema()},
		{"took", amountSchema()},
	})
}

func buyingSchema() members {
	spoilage := objectSchema([]string{"kind", "share"}, members{{"kind", enumOf(stock.Kinds())}, {"share", shareSchema()}})
	return objectSchema([]string{}, members{
		{"spoilage", arrayOf(spoilage)}, {"spareBlocks", wholeFrom(0)}, {"spareCases", wholeFrom(0)},
	})
}

func workingSchema() members {
	other := objectSchema([]string{"name", "minutes"}, members{
		{"name", markSchema(60)}, {"minutes", wholeFrom(1)}, {"piece", wholeFrom(0)}, {"from", dateSchema()},
	})
	return objectSchema([]string{}, members{
		{"start", dateSchema()},
		{"from", wholeFrom(0)},
		{"minutes", wholeFrom(0)},
		{"days", arrayOf(enumOf(batch.Weekdays()))},
		{"off", arrayOf(dateSchema())},
		{"press", wholeFrom(0)},
		{"round", wholeFrom(0)},
		{"slack", wholeFrom(0)},
		{"pace", fromNothing()},
		{"others", arrayOf(other)},
	})
}

func postSchema() members {
	band := objectSchema([]string{"most", "price"}, members{
		{"name", textSchema(60)}, {"zone", textSchema(60)}, {"most", above(1_000_000)},
		{"length", fromNothing()}, {"width", fromNothing()}, {"thickness", fromNothing()}, {"girth", fromNothing()},
		{"price", moneySchema()},
	})
	slot := objectSchema([]string{"name"}, members{
		{"name", markSchema(60)}, {"thickness", fromNothing()}, {"length", fromNothing()}, {"width", fromNothing()},
	})
	return objectSchema([]string{}, members{
		{"bands", arrayOf(band)}, {"slots", arrayOf(slot)}, {"packing", fromNothing()}, {"each", fromNothing()}, {"padding", fromNothing()},
	})
}

func pricingSchema() members {
	return objectSchema([]string{}, members{
		{"rate", moneySchema()},
		{"overheads", moneySchema()},
		{"packing", moneySchema()},
		{"feeShare", shareSchema()},
		{"feeFixed", moneySchema()},
		{"profit", shareSchema()},
	})
}

func amountSchema() members {
	return objectSchema([]string{}, members{{"sheets", wholeFrom(0)}, {"length", fromNothing()}, {"grams", fromNothing()}})
}

func recordSchema() members {
	one := objectSchema([]string{"order", "copy", "predicted", "predictedFore", "spinePiece"}, members{
		{"order", markSchema(60)}, {"copy", wholeFrom(1)}, {"customer", textSchema(batch.LongestName)},
		{"variant", textSchema(longestVariant)}, {"predicted", fromNothing()}, {"spine", fromNothing()},
		{"predictedFore", fromNothing()}, {"fore", fromNothing()}, {"spinePiece", fromNothing()},
		{"minutes", wholeFrom(0)}, {"price", moneySchema()},
		{"fault", textSchema(LongestReason)}, {"reason", textSchema(LongestReason)},
	})
	material := objectSchema([]string{"kind", "material", "predicted", "used", "waste"}, members{
		{"kind", enumOf(stock.Kinds())}, {"material", markSchema(batch.LongestName)}, {"lot", members{{"type", "string"}}},
		{"predicted", amountSchema()}, {"used", amountSchema()}, {"waste", fromNothing()}, {"price", priceSchema()}, {"cost", moneySchema()},
	})
	found := objectSchema([]string{"paper", "blocks", "thread"}, members{
		{"paper", markSchema(batch.LongestName)}, {"blocks", wholeFrom(1)}, {"thickness", fromNothing()},
		{"thread", fromNothing()}, {"crush", fromNothing()},
	})
	return objectSchema([]string{"name", "closed", "books", "materials", "minutes", "worked"}, members{
		{"name", markSchema(batch.LongestName)},
		{"closed", dateSchema()},
		{"books", arrayOf(one)},
		{"materials", arrayOf(material)},
		{"found", arrayOf(found)},
		{"minutes", wholeFrom(0)},
		{"worked", wholeFrom(0)},
	})
}
