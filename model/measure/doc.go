// Package measure holds the quantities of the trade: lengths in whole
// nanometres, paper weights, thread, money and civil dates, with their parsing
// and printing. It imports no other package of the model.
//
// Two identities are exact. [ParseFileForm] of [FileForm] returns every Length.
// [ParseLength] of [Style.Format] returns every multiple of the style's own grid
// (its last decimal, or one part of its denominator).
package measure
