"""Where the order of work and its numbers come from, and the standing of each."""

from calculators.contract import Source
from calculators.crack_case import Repair
from calculators.preheat_sources import OF_RULE

DIG = Source("AWS D1.1/D1.1M:2015, 5.25.1.4, cracks in weld or base metal, as reproduced", "standard")
ORDER = Source("US Army TB 55-1900-201-45/1, section IV, E-23: cause first, grind out, test, weld", "published")
STOP_HOLES = Source("Holes at the ends of a crack, 1/8 and 1/4 in", "common practice")
HOLES_ARREST = Source(
    "US Army Corps of Engineers EM 1110-2-6054 (2001), chapter 8: small cracks at low stress only", "published"
)
GROOVES = Source("AWS D1.1, prequalified grooves B-U2, B-U3 and B-U6: angle, opening and radius", "from memory")
CASTINGS = Source("Indian Boiler Regulations, regulation 80: grooves in steel castings, at least 70°", "law")
BEADS = Source("A bead the size of a 1/4 in fillet; 10 % over for the cap", "common practice")
HOLD = Source("Held at preheat 1 h for each inch, and 1 h at least", "common practice")
POST_HEAT = Source("TWI, What is meant by post-heating and how is it applied?", "published")
WAIT_HARD = Source("AWS D1.1 (A514, A517) and CSA W59: 48 hours, as quoted by the CWB Group", "standard")
WAIT_GENERAL = Source("EN 1011-2:2001, clause 18: 16 hours in general, as quoted", "standard")
IRON = Source("US Army subcourse OD1651, lesson 1, task 1: cracks in cast iron engine blocks", "published")
DUCTILE = Source("TWI, How do you weld spheroidal or nodular cast iron by MMA (SMAW) welding?", "published")
IRON_OTHERWISE = Source("Iron is brazed, stitched or bolted first; short cool beads with nickel rod", "common practice")
MANGANESE = Source(
    "TWI, rules for manganese steel (2001), as quoted: grind off what is work-hardened, little heat", "published"
)
WEAR_PLATE = Source(
    "The Fabricator, Cracking the case: wear plate is not for structural or load-bearing use", "published"
)
HARD_FACING = Source("NAVFAC P-433 (1991), section 2: build-up, hard-facing in two layers, cast iron", "published")
HEAT_TREATED = Source("US Army subcourse OD1651, lesson 1, task 1: heat-treated parts and vehicle frames", "published")
CODE_VESSEL = Source(
    "National Board Inspection Code: the inspector authorizes a repair before it starts, as in its Bulletin", "standard"
)
LIFTING = Source("29 CFR 1910.184(e) and 1910.179(l)(3): slings and crane parts", "law")
HITCHES = Source("Maryland COMAR 11.22.02.27: a cast or forged hitch that was welded is rejected", "law")
FRAMES = Source("49 CFR 393.201(d): welding on frames of commercial motor vehicles", "law")
ROLL_OVER = Source("30 CFR 56.14130(e)(2): repairs of roll-over structures, as quoted", "law")
SOFTENED = Source("6061-T6 loses about 40 % of its strength beside a weld", "from memory")

OWN = (
    DIG,
    ORDER,
    STOP_HOLES,
    HOLES_ARREST,
    GROOVES,
    CASTINGS,
    BEADS,
    HOLD,
    POST_HEAT,
    WAIT_HARD,
    WAIT_GENERAL,
    IRON,
    DUCTILE,
    IRON_OTHERWISE,
    MANGANESE,
    WEAR_PLATE,
    HARD_FACING,
    HEAT_TREATED,
    CODE_VESSEL,
    LIFTING,
    HITCHES,
    FRAMES,
    ROLL_OVER,
    SOFTENED,
)

_OF_METAL = (
    (("manganese",), MANGANESE),
    (("wear-plate",), WEAR_PLATE),
    (("quenched-tempered", "hardening"), HEAT_TREATED),
    (("aluminum-heat-treated",), SOFTENED),
)
_OF_STOP = (("road", (HITCHES, FRAMES)), ("people", (ROLL_OVER,)), ("heat-treated", (HEAT_TREATED,)))


class Sources:
    """`found` are the sources behind one answer."""

    def __init__(self, repair: Repair) -> None:
        wanted = [ORDER]
        if repair.stopped:
            wanted += dict(_OF_STOP).get(repair.stopped, (IRON_OTHERWISE,))
        elif repair.damage == "worn":
            wanted = [HARD_FACING, BEADS] + _of_metal(repair)
        elif repair.family == "cast-iron":
            wanted += [IRON, DUCTILE, IRON_OTHERWISE, GROOVES, CASTINGS]
        else:
            wanted += [DIG, GROOVES, CASTINGS, BEADS]
            if repair.stop_hole() is not None:
                wanted += [STOP_HOLES, HOLES_ARREST]
            wanted += _of_metal(repair)
        self.found = tuple(wanted)


def _of_metal(repair: Repair) -> list[Source]:
    wanted = []
    for families, source in _OF_METAL:
        if repair.family in families:
            wanted.append(source)
    if repair.hold() is not None:
        wanted += [HOLD, POST_HEAT]
    if repair.wait() is not None:
        wanted += [WAIT_HARD, WAIT_GENERAL]
    for rule in repair.rules:
        wanted += [each for each in dict(OF_RULE)[rule.name] if each not in wanted]
    return wanted
