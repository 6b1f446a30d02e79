"""The twelve questions that a welder asks most in the middle of a job, and where the answer to each stands.

No published ranking of them was found: which twelve, and their order, is common practice as we see it. A question
that names what it is about (the fault, the steel) carries it in its address; nothing else is filled in, since a
guessed number would look like a measured one.
"""

# (sentence, calculator, what the question itself says, as pairs; what one would type to find it)
OFTEN: tuple[tuple[str, str, tuple[tuple[str, str], ...], str], ...] = (
    ("often.settings", "settings", (), "where do I set the machine"),
    ("often.feed", "wire-feed", (), "what wire feed for these amps"),
    ("often.gas-lasts", "gas-supply", (), "will this bottle finish"),
    ("often.wire-lasts", "spool-life", (), "how much wire is left on the spool"),
    ("often.gas-flow", "gas-flow", (), "how much gas, is it too windy"),
    ("often.spatter", "fault-finder", (("fault", "spatter"),), "why is it spitting"),
    ("often.porosity", "fault-finder", (("fault", "porosity"),), "holes in the weld"),
    ("often.preheat", "preheat", (("family", "structural"), ("grade", "a36-group")), "how hot before I weld"),
    ("often.heat-input", "heat-input", (), "heat input limit"),
    ("often.gauge", "sheet-gauge", (), "what gauge is this"),
    ("often.filler", "filler-match", (), "what wire for stainless"),
    ("often.rest", "duty-cycle", (), "machine overheats"),
)
