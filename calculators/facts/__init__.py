"""Published tables as literals, one file a table, with the source line on top."""
