package project

import (
	"errors"

	"grainwise/model/batch"
	"grainwise/model/stock"
)

// ImportOrders reads a table of orders for a project and puts them in: those whose
// ids are there are replaced. On an error, a [*Problem] that names line and
// column, nothing of it is taken.
func ImportOrders(path string, p Project) (batch.Batch, error) {
	data, problem := readFile(path)
	if problem != nil {
		return p.Batch, problem
	}
	orders, err := p.Batch.DecodeOrders(data, path)
	var wrong *stock.Fault
	if errors.As(err, &wrong) {
		return p.Batch, &Problem{Kind: Damaged, File: path, Place: wrong.Inner(path), Reason: wrong.Text}
	}
	if err != nil {
		return p.Batch, err
	}
	with, err := p.Batch.WithOrders(orders...)
	if err != nil {
		return p.Batch, &Problem{Kind: Damaged, File: path, Reason: err.Error()}
	}
	return with, nil
}
