"""The catalogue's sentences, one file a language. A calculator's own English sentences live in its own file."""
