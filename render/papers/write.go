package papers

import (
	"context"
	"path/filepath"
	"strings"

	"grainwise/model/project"
)

// WriteAll writes files into a folder, which is made where it is not there, all or
// none. It stops between two files when ctx is done.
func WriteAll(ctx context.Context, folder string, files []File) error {
	set := project.FilesIn(folder)
	defer set.Discard()
	for _, f := range files {
		if err := ctx.Err(); err != nil {
			return err
		}
		ending := filepath.Ext(f.Name)
		if _, err := set.Write(strings.TrimSuffix(f.Name, ending), ending, f.Data); err != nil {
			return err
		}
	}
	return set.Done()
}
