// Command grainwise opens the window: with the project file named, or else with
// the demo project. It brings what is native: Fyne's driver and the platform's
// file dialogs.
package main

import (
	"fmt"
	"os"
	"path/filepath"
	"runtime/debug"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"

	"grainwise/assets/icon"
	"grainwise/assets/words"
	"grainwise/model/project"
	"grainwise/ui"
	"grainwise/ui/look"
)

// The program as FyneApp.toml names it to the platform.
const (
	appID   = "org.grainwise.designer"
	version = "0.1.0"
)

func main() {
	if len(os.Args) > 2 {
		fmt.Fprintln(os.Stderr, words.Say("main.usage"))
		os.Exit(2)
	}
	a := application()
	giveBack(a)
	scale := scaling(a)
	scale(ui.StoredTextSize(a))
	p := ports(os.Args[1:])
	p.Contrast, p.Scale = highContrast(), scale
	w := ui.New(a, p)
	w.Show()
	followContrast(w.SetContrast)
	a.Run()
}

// giveBack returns to the system what reading the fonts has left behind, some
// 20 MB, once the window is built. Collecting more often from then on would
// save as much again after a drag, but cost it a tenth of its frames.
func giveBack(a fyne.App) {
	a.Lifecycle().SetOnStarted(func() { go debug.FreeOSMemory() })
}

// application starts the toolkit. What comes from other goroutines reaches it
// through fyne.Do alone, so it need not look up the goroutine on every call.
func application() fyne.App {
	settleLocale()
	settleVariant()
	app.SetMetadata(fyne.AppMetadata{ID: appID, Name: words.Say("window.name"), Version: version, Migrations: map[string]bool{"fyneDo": true}})
	a := app.NewWithID(appID)
	a.SetIcon(fyne.NewStaticResource("icon.png", icon.PNG))
	a.Settings().SetTheme(look.Following())
	return a
}

// settleLocale keeps the toolkit from complaining about the locale "C.UTF-8",
// which it cannot read.
func settleLocale() {
	for _, name := range []string{"LC_ALL", "LANG"} {
		if os.Getenv(name) == "C.UTF-8" {
			os.Setenv(name, "C")
		}
	}
}

// ports is the project to begin with, and where the program keeps its own
// files. A file that cannot be opened leaves the demo, and says why.
func ports(files []string) ui.Ports {
	folder := project.OwnFolder()
	p := ui.Ports{
		Project:    project.Demo(),
		Dialogs:    nativeDialogs{},
		Favourites: project.FavouritesIn(folder),
		Recent:     project.RecentIn(folder),
		Studio:     project.StudioIn(folder),
		Shelf:      project.ShelfIn(folder),
		Saves:      project.SavesIn(folder),
		Recovery:   project.RecoveryIn(folder),
		Kept:       true,
		Screen:     screen,
		View:       openOutside,
	}
	if len(files) == 0 {
		return p
	}
	p.Asked = files[0]
	opened, base, err := p.Saves.Open(files[0])
	if err != nil {
		p.Trouble = err
		return p
	}
	p.Project, p.Base = opened, base
	if p.Path, err = filepath.Abs(files[0]); err != nil {
		p.Path = files[0]
	}
	return p
}
