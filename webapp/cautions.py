"""The caution library: where each caution comes from. Runs on both Pythons.

The sentences stand with the calculators that say them, those that several say in the words; this is the one place that
gives each its source. An entry is the id of a caution, or `<calculator>.caution` for all of a calculator's others.
"""

from calculators import safety_sources
from calculators.contract import Message, Source

LIBRARY = (
    (
        Source(
            "The welding procedure, the drawing, the code and the maker's book come before any sum", "common practice"
        ),
        "caution.decides carbon-equivalent.caution cooling-time.caution fillet-size.caution.aid"
        " gas-blend.caution.procedure gas-flow.caution.procedure gas-supply.caution.supplier heat-input.caution"
        " joint-fill.caution make-safe.caution.maker preheat.caution process-choice.caution"
        " sheet-gauge.caution.order shrinkage.caution travel-speed.caution visual-check.caution"
        " fault-finder.caution filler-match.caution filler-name.caution weld-cost.caution weld-entry.caution"
        " wire-feed.caution.start",
    ),
    (
        Source("Try it on scrap, measure it bare, keep a spare, look twice: welders' habit", "common practice"),
        "arc-voltage.caution caution.gun-meter caution.live caution.run-out crack-repair.caution fillet-size.caution"
        " lead-drop.caution lone-worker.caution machine-trim.caution make-safe.caution.jack metal-id.caution"
        " settings.caution sheet-gauge.caution spool-life.caution transfer-mode.caution",
    ),
    (
        Source("AWS D1.1: scope, prequalification, wind, profiles; seen quoted", "standard"),
        "fillet-size.caution.short-circuit fillet-size.caution.static joint-fill.caution.convex"
        " preheat.caution.freezing process-choice.caution.high-wind settings.caution.breeze settings.caution.code"
        " transfer-mode.caution.cold-lap",
    ),
    (
        Source("29 CFR 1910.252(b) and (c): eyes, skin, air; zinc, lead, cadmium, beryllium by name", "law"),
        "caution.arc fume.caution.painted fume.caution.plated fume.caution.unknown fume.caution.zinc"
        " metal-id.caution.coating metal-id.caution.copper-alloy metal-id.caution.lead metal-id.caution.zinc"
        " caution.zinc fault-finder.caution.paint process-choice.caution.paint"
        " settings.caution.galvanized settings.caution.rust"
        " sheet-gauge.caution.zinc",
    ),
    (
        Source("29 CFR 1910.1026: chromium(VI), 5 \u00b5g/m\u00b3 over 8 hours", "law"),
        "crack-repair.caution.alloy-fume fume.caution.chromium settings.caution.stainless wire-feed.caution.stainless",
    ),
    (safety_sources.FIRE, "crack-repair.caution.back hot-work.caution preheat.caution.burn"),
    (safety_sources.CONTAINERS, "caution.held crack-repair.caution.closed metal-id.caution.closed"),
    (safety_sources.CYLINDERS, "caution.cylinder"),
    (
        Source("29 CFR 1910.146 and 1910.1000: air below 19.5 % oxygen; carbon dioxide has a limit of its own", "law"),
        "caution.valve fume.caution.tight gas-supply.caution.carbon-dioxide oxygen.caution",
    ),
    (
        Source("29 CFR 1910.253 and 49 CFR 173: regulators, oil, caps, filling, manifolds", "from memory"),
        "gas-blend.caution gas-flow.caution gas-supply.caution leak-test.caution",
    ),
    (
        Source("29 CFR 1910.254: leads, work clamp, machine off to change; seen as WAC 296-24-68505", "law"),
        "lead-drop.caution.work lead-drop.caution.worn process-choice.caution.leads process-choice.caution.stick"
        " fault-finder.caution.feed shock.caution",
    ),
    (
        Source("NEC: transfer switch, supply circuits. Exhaust: no engine indoors", "from memory"),
        "generator-size.caution",
    ),
    (Source("IEC 60974-1: ratings in air of 40 \u00b0C; seen quoted", "standard"), "duty-cycle.caution"),
    (Source("29 CFR 1910.184: rigging; nobody under a load", "from memory"), "part-weight.caution"),
    (
        Source("29 CFR 1910.252(b)(2): helpers and attendants, screens round the arc; seen quoted", "law"),
        "shade.caution",
    ),
    (
        Source("IARC Monographs 118 (2018): welding fume and its ultraviolet rays cause cancer", "published"),
        "fume.caution.cancer",
    ),
    (
        Source("Face against room, pace, long beads, solvents at the arc", "common practice"),
        "fume.caution.plume fume.caution.solvent",
    ),
    (
        Source("NIOSH 86-110, Preventing occupational fatalities in confined spaces", "published"),
        "oxygen.caution.rescue",
    ),
    (Source("Consumer and tax law differ from place to place", "common practice"), "job-price.caution"),
    (Source("Plugs and muffs at the arc; a voice raised at arm's length", "common practice"), "noise.caution"),
    (
        Source("Cloth, cut and leathers: what welders wear, and the burns that taught it", "common practice"),
        "clothing.caution",
    ),
)
_found: dict[str, Source] = {}


def source_of(id: str) -> Source | None:
    """Return where the caution `id` comes from, or None if the library does not say."""
    if not _found:
        for source, ids in LIBRARY:
            for each in ids.split(" "):
                _found[each] = source
    general = id.partition(".caution")[0] + ".caution"
    return _found.get(id) or _found.get(general)


def sources_of(named: tuple[Source, ...], cautions: tuple[Message, ...]) -> list[Source]:
    """Return the sources of an answer and of its cautions, each once."""
    found = list(named)
    titles = [source.title for source in named]
    for caution in cautions:
        source = source_of(caution.id)
        if source is not None and source.title not in titles:
            titles.append(source.title)
            found.append(source)
    return found
