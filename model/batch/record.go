package batch

import (
	"slices"

	"grainwise/model/measure"
	"grainwise/model/stock"
)

// Record is what a batch came to, frozen on the day it was closed: beside what was
// found stands what was predicted. It is a fact, and never computed anew.
type Record struct {
	Name      string           `json:"name"`
	Closed    measure.Date     `json:"closed"`
	Books     []BookRecord     `json:"books"`
	Materials []MaterialRecord `json:"materials"`
	Found     []Calibration    `json:"found,omitempty"` // what the blocks say of paper and thread
	Minutes   int              `json:"minutes"`         // hands' work as predicted
	Worked    int              `json:"worked"`          // as it was noted; 0 where nobody did
}

// BookRecord is one book. Sizes that were not measured are nothing.
type BookRecord struct {
	Order       string        `json:"order"`
	Copy        int           `json:"copy"`
	Customer    string        `json:"customer,omitempty"`
	Variant     string        `json:"variant,omitempty"`
	Predicted   Length        `json:"predicted"`      // at the spine
	Spine       Length        `json:"spine,omitzero"` // as measured
	ForePredict Length        `json:"predictedFore"`  // at the fore edge
	ForeEdge    Length        `json:"fore,omitzero"`  // as measured
	SpinePiece  Length        `json:"spinePiece"`     // as cut
	Minutes     int           `json:"minutes,omitempty"`
	Price       measure.Money `json:"price,omitzero"` // asked
	Fault       string        `json:"fault,omitempty"`
	Reason      string        `json:"reason,omitempty"`
}

// MaterialRecord is what one material took: predicted, and used.
type MaterialRecord struct {
	Kind      stock.Kind    `json:"kind"`
	Material  string        `json:"material"`
	Lot       string        `json:"lot,omitempty"`
	Predicted Amount        `json:"predicted"`
	Used      Amount        `json:"used"`
	Waste     float64       `json:"waste"`          // share of what was cut that is in no piece
	Price     stock.Price   `json:"price,omitzero"` // on the day
	Cost      measure.Money `json:"cost,omitzero"`  // of what was used
}

// Calibration is what measured blocks say of their paper and its thread.
type Calibration struct {
	Paper     string  `json:"paper"`
	Blocks    int     `json:"blocks"`
	Thickness Length  `json:"thickness,omitzero"` // of a leaf; 0 where no fore edge was measured
	Thread    Length  `json:"thread"`             // diameter
	Crush     float64 `json:"crush,omitempty"`    // share of it that is left; 0 where that cannot be said
}

// Clone returns a copy that shares nothing with r.
func (r Record) Clone() Record {
	r.Books, r.Materials, r.Found = slices.Clone(r.Books), slices.Clone(r.Materials), slices.Clone(r.Found)
	return r
}

// Equal reports whether two records are the same.
func (r Record) Equal(s Record) bool {
	return r.Name == s.Name && r.Closed == s.Closed && r.Minutes == s.Minutes && r.Worked == s.Worked &&
		slices.Equal(r.Books, s.Books) && slices.Equal(r.Materials, s.Materials) && slices.Equal(r.Found, s.Found)
}

// Validate returns the first thing that no record can be, or nil.
func (r Record) Validate() error {
	switch {
	case !mark(r.Name, LongestName):
		return want("name", "order.want.id", "most", LongestName)
	case !r.Closed.Valid():
		return want("closed", "measure.want.date")
	case len(r.Books) > MostBooks:
		return want("books", "batch.want.fewer", "most", MostBooks)
	case r.Minutes < 0 || r.Worked < 0:
		return want("minutes", "batch.want.minutes", "most", mostMinutes)
	}
	for _, b := range r.Books {
		if !mark(b.Order, longestMark) || b.Copy < 1 || !plainText(b.Customer, LongestName) || b.Spine < 0 || b.ForeEdge < 0 || b.Minutes < 0 {
			return want("books", "batch.want.bookRecord")
		}
	}
	for _, m := range r.Materials {
		if !mark(m.Material, LongestName) || m.Used.negative() || m.Predicted.negative() {
			return want("materials", "batch.want.materialRecord")
		}
	}
	for _, c := range r.Found {
		if !mark(c.Paper, LongestName) || c.Blocks < 1 || c.Thickness < 0 || !(c.Crush >= 0 && c.Crush <= 2) {
			return want("found", "batch.want.found")
		}
	}
	return nil
}
