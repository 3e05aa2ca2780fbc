package ui

import "grainwise/model/stock"

// shelfKeeping remembers what the file of the maker's shelf is known to hold.
type shelfKeeping struct {
	held stock.Shelf
	turn int // of the session's shelf that this is
}

// readShelf takes over the maker's own shelf; a file that cannot be read is said.
func (w *Window) readShelf() {
	shelf, err := w.ports.Shelf.Read()
	if err != nil {
		w.complain(err)
	}
	w.holdShelf(shelf)
}

// holdShelf shows what the file holds.
func (w *Window) holdShelf(shelf stock.Shelf) {
	w.shelf.held = shelf
	if !w.session.Own().Equal(shelf) {
		w.shelf.turn = w.session.OwnTurn() + 1
		w.session.SetOwn(shelf)
	}
}

// changeShelf changes the maker's shelf in its file, one step to undo under that
// name; what another window has put there meanwhile is seen first. It says
// whether that went well; what did not is said.
func (w *Window) changeShelf(name string, change func(stock.Shelf) stock.Shelf) bool {
	now, err := w.ports.Shelf.Read()
	if err != nil {
		w.complain(err)
		return false
	}
	w.holdShelf(now)
	to, err := w.ports.Shelf.Change(now, change(now))
	if err != nil {
		w.complain(err)
		return false
	}
	w.shelf.held, w.shelf.turn = to, w.session.OwnTurn()+1
	w.session.ChangeOwn(name, to)
	w.shelf.turn = w.session.OwnTurn()
	return true
}

// followShelf brings undo and redo to the file.
func (w *Window) followShelf() {
	if w.shelf.turn == w.session.OwnTurn() {
		return
	}
	w.shelf.turn = w.session.OwnTurn()
	shelf, err := w.ports.Shelf.Change(w.shelf.held, w.session.Own())
	if err != nil {
		w.complain(err)
		return
	}
	w.holdShelf(shelf)
}
