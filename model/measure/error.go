package measure

import "grainwise/assets/words"

// ParseError says that a text is not the quantity it should be.
type ParseError struct {
	Text string // as it was given
	Want string // what is wrong with it and what would be right, in the user's language
}

// Error is the sentence to show beside the field.
func (e *ParseError) Error() string { return e.Want }

// wrong builds the error whose sentence the translation files keep under key.
func wrong(text, key string) *ParseError {
	return &ParseError{Text: text, Want: words.Say(key, words.With{"text": text})}
}
