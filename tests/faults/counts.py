"""How often each fault is made: a little at each commit, much when tests/faults/long runs."""

import os

LONG = os.environ.get("PUDDLEBOOK_LONG_FAULTS") == "1"


def count(commit: int, long: int) -> int:
    """Return how often to do it."""
    return long if LONG else commit
