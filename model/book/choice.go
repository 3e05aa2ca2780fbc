package book

// Choice is a decision that the program can derive: automatic, or typed by the
// maker. The zero Choice is automatic.
type Choice[T any] struct {
	typed bool
	value T
}

// Typed returns a choice that the maker has made.
func Typed[T any](value T) Choice[T] { return Choice[T]{true, value} }

// Auto returns the choice that leaves the value to the program.
func Auto[T any]() Choice[T] { return Choice[T]{} }

// Get returns the typed value, or false where the choice is automatic.
func (c Choice[T]) Get() (T, bool) { return c.value, c.typed }

// Or returns the typed value, or automatic where none was typed.
func (c Choice[T]) Or(automatic T) T {
	if c.typed {
		return c.value
	}
	return automatic
}

// IsTyped reports whether the maker has typed the value.
func (c Choice[T]) IsTyped() bool { return c.typed }
