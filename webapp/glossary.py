"""The glossary: what the trade's words mean, and which questions use them. One table, linked both ways."""

from calculators.contract import Source, say
from webapp import wording
from webapp.catalogue import Context, sentence
from webapp.markup import escape, tag

_A3 = Source("AWS A3.0 (terms; the standard itself was not seen)", "from memory")
_EN1 = Source("EN 1011-1:1998, as tabulated by TWI", "standard")
_EN2 = Source("EN 1011-2:2001, seen quoted", "standard")
_IEC = Source("IEC 60974-1, seen quoted", "standard")
_TR = Source("ISO/TR 18491, seen quoted", "standard")
SOURCES = (_A3, _EN1, _EN2, _IEC, _TR)

# (term, the questions that use it, where it is a standard's own term)
TERMS: tuple[tuple[str, str, Source | None], ...] = (
    ("arc-blow", "fault-finder", None),
    ("arc-energy", "heat-input weld-entry", _TR),
    ("arc-voltage", "arc-voltage settings heat-input", None),
    ("birdnest", "fault-finder wire-feed spool-life", None),
    ("burnback", "fault-finder", None),
    ("carbon-equivalent", "carbon-equivalent preheat", _EN2),
    ("cold-lap", "fault-finder transfer-mode", None),
    ("contact-tip", "wire-feed settings fault-finder transfer-mode machine-trim", None),
    ("convexity", "visual-check joint-fill", _A3),
    ("crater", "fault-finder visual-check", None),
    ("deposition-efficiency", "joint-fill travel-speed weld-cost", _A3),
    ("dew-point", "", None),
    ("duty-cycle", "duty-cycle generator-size", _IEC),
    ("fire-watch", "hot-work", None),
    ("flux-cored", "process-choice settings filler-name", _A3),
    ("fume", "fume", None),
    ("globular", "transfer-mode settings", _A3),
    ("heat-affected-zone", "cooling-time", _A3),
    ("heat-input", "heat-input cooling-time preheat weld-entry", _EN1),
    ("hydrogen", "preheat", None),
    ("inductance", "fault-finder", None),
    ("interpass", "preheat weld-entry pass-chart", _A3),
    ("lead-drop", "lead-drop arc-voltage", None),
    ("leg", "fillet-size joint-fill visual-check", _A3),
    ("metal-cored", "process-choice settings", _A3),
    ("open-circuit", "shock", _IEC),
    ("operating-factor", "joint-fill weld-cost", None),
    ("overmatch", "filler-match", None),
    ("overweld", "joint-fill travel-speed", None),
    ("polarity", "process-choice settings fault-finder filler-name", None),
    ("porosity", "fault-finder visual-check gas-flow", _A3),
    ("preheat", "preheat", _A3),
    ("pulse", "transfer-mode heat-input settings", _A3),
    ("reinforcement", "visual-check joint-fill", _A3),
    ("root-face", "joint-fill", _A3),
    ("root-gap", "joint-fill settings fillet-size", _A3),
    ("shade", "shade", None),
    ("short-circuit", "transfer-mode settings wire-feed", _A3),
    ("shrinkage", "shrinkage", None),
    ("spatter", "fault-finder transfer-mode", _A3),
    ("spray", "transfer-mode settings wire-feed", _A3),
    ("stubbing", "fault-finder arc-voltage transfer-mode", None),
    ("t85", "cooling-time", _EN2),
    ("tare", "gas-supply", None),
    ("thermal-efficiency", "heat-input cooling-time", _EN1),
    ("throat", "fillet-size joint-fill", _A3),
    ("transition-current", "transfer-mode", None),
    ("trim", "machine-trim", None),
    ("undercut", "visual-check fault-finder", _A3),
    ("water-volume", "gas-supply", None),
    ("wire-feed-speed", "wire-feed settings spool-life travel-speed machine-trim", None),
    ("wps", "weld-entry heat-input preheat", _A3),
)


def page(context: Context) -> str:
    """Return everything inside <main> of the glossary, in the order of the reader's alphabet."""
    words = wording.Wording(context)
    out = ""
    for _, key in _sorted([key for key, _, _ in TERMS], context):
        _, used, source = next(term for term in TERMS if term[0] == key)
        inner = tag("h2", words("term." + key)) + tag("p", words("meaning." + key))
        if source is not None:
            inner += tag("ul", wording.source(source, context), 'class="term-source"')
        links = [tag("a", words(name + ".title"), 'href="' + name + '"') for name in used.split(" ") if name]
        if links:
            inner += tag("p", " ".join(links), 'class="terms"')
        out += tag("section", inner, 'id="' + key + '"')
    return tag("h1", words("glossary.title")) + tag("p", words("glossary.lead")) + out


def of_question(name: str, context: Context) -> str:
    """Return the fold of the words that a question uses, each a link to what it means; "" if there are none."""
    words = wording.Wording(context)
    links = [
        tag("a", escape(term), 'href="glossary#' + key + '"')
        for term, key in _sorted([key for key, used, _ in TERMS if name in used.split(" ")], context)
    ]
    if not links:
        return ""
    return tag("details", tag("summary", words("glossary.here")) + tag("p", " ".join(links), 'class="terms"'))


def _sorted(keys: list[str], context: Context) -> list[tuple[str, str]]:
    """Return (term, key) in the order of the reader's alphabet."""
    return sorted([(sentence(say("term." + key), context), key) for key in keys])
