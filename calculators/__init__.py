"""What the trade knows: plain Python, no input or output, no framework. Runs on CPython and MicroPython."""
