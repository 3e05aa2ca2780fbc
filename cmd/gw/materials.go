package main

import (
	"bytes"
	"errors"
	"io"
	"io/fs"

	"grainwise/model/project"
	"grainwise/model/stock"
	"grainwise/render/table"
)

// materialsCommand lists the materials on a shelf, after taking in those of a
// table: gw materials [--shelf FILE] [--import F.csv] [--export F.csv].
func materialsCommand(args []string, out io.Writer) (int, error) {
	a, err := parse(args, []string{"shelf", "import", "export"}, nil)
	if err == nil {
		err = a.noFiles()
	}
	if err != nil {
		return exitInput, err
	}
	file := project.ShelfIn(project.OwnFolder())
	if a.has("shelf") {
		file = project.ShelfAt(a.value("shelf"))
	}
	shelf, err := file.Open()
	if errors.Is(err, fs.ErrNotExist) && (!a.has("shelf") || a.has("import")) {
		shelf, err = file.Read() // what ships with the program
	}
	if err == nil && a.has("import") {
		shelf, err = takeIn(file, shelf, a.value("import"))
	}
	if err == nil && a.has("export") {
		err = exportMaterials(a.value("export"), shelf)
	}
	if err != nil {
		return exitInput, err
	}
	return exitDone, writeJSON(out, shelf)
}

// takeIn puts the materials of a table on the shelf; those of the same kind and
// name are replaced.
func takeIn(file project.ShelfFile, shelf stock.Shelf, path string) (stock.Shelf, error) {
	more, err := project.ImportMaterials(path)
	if err != nil {
		return shelf, err
	}
	with := shelf
	for _, m := range more {
		with = with.With(m)
	}
	return file.Change(shelf, with)
}

func exportMaterials(path string, shelf stock.Shelf) error {
	var b bytes.Buffer
	if err := table.CSV(&b, table.Materials(shelf.Materials)); err != nil {
		return err
	}
	return project.WriteFile(path, b.Bytes())
}
