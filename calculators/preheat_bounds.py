"""What each rule says of one joint: how warm at least, how warm at most, and which rule decides."""

from calculators import numerals, ranges, units
from calculators import preheat_methods as methods
from calculators.contract import Given
from calculators.facts import preheat as facts
from calculators.facts import steels

FAMILIES = (
    "structural",
    "quenched-tempered",
    "wear-plate",
    "hardening",
    "hardening-chemistry",
    "manganese",
    "stainless",
    "aluminum-heat-treated",
    "aluminum-magnesium",
    "unknown",
)
BY_METHOD_B = ("structural", "quenched-tempered", "wear-plate")
BY_SEFERIAN = ("hardening", "hardening-chemistry")
THICKNESS_COUNTS = BY_METHOD_B + BY_SEFERIAN + ("unknown",)
STRUCTURAL_GRADES = ("a36-group", "a572-50-group", "a572-65-group", "other")
HARDENING_GRADES = tuple([grade for grade, _, _ in steels.HARDENING])
CHEMISTRY = tuple([element for element, _, _ in steels.PREHEATED_BY_CHEMISTRY])
PROCESSES = ("gas-metal-arc", "flux-cored-arc", "low-hydrogen-stick", "other-stick", "submerged-arc")
AMBIENT = units.to_coherent(20.0, "degC")  # a warm shop: what is below it asks for no heating there
FREEZING = units.to_coherent(facts.FREEZING, "degF")
WARMED = units.to_coherent(facts.WARMED, "degF")

_PERCENT = 0.01
_INCH = units.factor_of("in")
_NARROW = 25.0  # K; a torch and a crayon hardly keep a narrower window


class Rule:
    """One rule and what it says: a lowest or a highest temperature [K], a practice from value to upper, or no number.

    `left` is the range that an input left, where that is why there is no number.
    """

    def __init__(
        self,
        name: str,
        value: float | None,
        left: ranges.OutOfRange | None = None,
        what: str = "lowest",
        upper: float | None = None,
    ) -> None:
        self.name = name
        self.value = value
        self.left = left
        self.what = what
        self.upper = upper


class Bounds:
    """The rules that bear on a joint, its lowest and highest temperature [K], and what was taken for granted."""

    def __init__(self, given: Given) -> None:
        self.given = given
        self.family = given.word("family")
        self.thickness = given.number("thickness") if given.has("thickness") else 0.0
        self.process = given.word("process")
        self.cet: float | None = None
        self.hydrogen: float | None = None
        self.heat_input = methods.HEAT_INPUT_RANGE[0]
        self.parts: tuple[float, float, float, float] | None = None
        self.chemistry: tuple[tuple[float, ...], tuple[float, ...]] | None = None
        self.seferian: tuple[float, float] | None = None
        self.rules: list[Rule] = []
        if self.family in BY_METHOD_B:
            self._code()
            self._cet_method()
        elif self.family in BY_SEFERIAN:
            self._hardening()
        elif self.family == "unknown" and given.word("magnet") == "sticks":
            self.rules.append(Rule("guess-carbon", units.to_coherent(facts.UNKNOWN_LEAST, "degF")))
        self._most()
        found = [rule for rule in self.rules if rule.value is not None and rule.what == "lowest"]
        self.deciding = None
        for rule in found:
            if self.deciding is None or _settled(rule) > _settled(self.deciding):
                self.deciding = rule
        # What a sum gives below freezing is no temperature to weld at: the code's footnote begins at 32 degF.
        self.lowest = None if self.deciding is None else max(_settled(self.deciding), FREEZING)
        most = [_settled(rule) for rule in self.rules if rule.value is not None and rule.what == "highest"]
        self.highest = min(most) if most else None

    # ---- lowest

    def _code(self) -> None:
        grade = self.given.word("grade") if self.family == "structural" else self.family
        if grade in ("other", "wear-plate"):
            return
        low_hydrogen = self.process != "other-stick"
        for name, practice, row in facts.ROW_OF:
            if name == grade and practice == low_hydrogen:
                try:
                    self.rules.append(Rule("code-" + row, methods.code_minimum(row, self.thickness)))
                except ranges.OutOfRange as error:
                    self.rules.append(Rule("code-" + row, None, error))
                return
        self.rules.append(Rule("code-none", None))

    def _cet_method(self) -> None:
        given = self.given
        if not given.has("cet"):
            return
        self.cet = given.number("cet")
        if given.has("weld_metal_cet"):
            self.cet = methods.governing_cet(self.cet, given.number("weld_metal_cet"))
        if given.has("heat_input"):
            self.heat_input = given.number("heat_input")
        if given.has("hydrogen"):
            self.hydrogen = given.number("hydrogen")
        for process, hydrogen in facts.HYDROGEN_OF_PROCESS:
            if self.hydrogen is None and process == self.process:
                self.hydrogen = units.to_coherent(hydrogen, "mL/100g")
        if self.hydrogen is None:
            self.rules.append(Rule("cet-hydrogen", None))
            return
        try:
            value = methods.preheat_by_cet(self.cet, self.thickness, self.hydrogen, self.heat_input)
            self.parts = methods.cet_method_parts(self.cet, self.thickness, self.hydrogen, self.heat_input)
            self.rules.append(Rule("cet", value))
        except ranges.OutOfRange as error:
            self.rules.append(Rule("cet", None, error))

    def _hardening(self) -> None:
        given = self.given
        for grade, low, high in steels.HARDENING:
            if grade == given.word("hardening_grade"):
                self.chemistry = (_fractions(low), _fractions(high))
        if self.chemistry is None:
            typed = tuple([given.number(name) for name in CHEMISTRY])
            self.chemistry = (typed, typed)
        try:
            both = []
            for carbon, manganese, chromium, nickel, molybdenum in self.chemistry:
                total = methods.seferian_carbon(carbon, manganese, chromium, nickel, molybdenum, self.thickness)
                both.append(methods.seferian_preheat(total))
            self.seferian = (both[0], both[1])
            self.rules.append(Rule("seferian", both[1]))
        except ranges.OutOfRange as error:
            self.rules.append(Rule("seferian", None, error))
        self._by_carbon(self.chemistry[1][0])
        self._navy(self.chemistry[1][0], self.chemistry[1][2])
        for grade, lower, upper in facts.SHOP_CHARTS:
            if grade == given.word("hardening_grade"):
                ends = [units.to_coherent(end, "degF") for end in (lower, upper)]
                self.rules.append(Rule("shop-charts", ends[0], None, "practice", ends[1]))

    def _by_carbon(self, carbon: float) -> None:
        for end, low, _ in facts.BY_CARBON:
            if numerals.settle(carbon / _PERCENT) <= end:
                if low is not None:
                    self.rules.append(Rule("by-carbon", units.to_coherent(low, "degF")))
                return

    def _navy(self, carbon: float, chromium: float) -> None:
        inches = numerals.settle(self.thickness / _INCH)
        if numerals.settle(chromium / _PERCENT) >= 0.75 and inches > 0.5:
            self.rules.append(Rule("navy-s4", units.to_coherent(facts.NAVY_CHROMIUM_MOLYBDENUM_LEAST, "degF")))
        elif numerals.settle(carbon / _PERCENT) > 0.30 and inches > 1.0:
            self.rules.append(Rule("navy-s1", units.to_coherent(facts.NAVY_CARBON_LEAST, "degF")))

    # ---- highest

    def _most(self) -> None:
        if self.family == "unknown":
            name, degrees = "guess-stainless", dict(facts.HIGHEST)["stainless"]
            if self.given.word("magnet") == "sticks":
                name, degrees = "guess-plate", facts.UNKNOWN_HIGHEST
            self.rules.append(Rule(name, units.to_coherent(degrees, "degF"), None, "highest"))
        for family, degrees in facts.HIGHEST:
            if family == self.family:
                self.rules.append(Rule(family, units.to_coherent(degrees, "degF"), None, "highest"))

    # ---- what follows

    def window(self) -> str:
        """Return how the two ends lie: `open` where one is missing, `closed`, `narrow` or `wide`."""
        if self.lowest is None or self.highest is None:
            return "open"
        room = numerals.settle(self.highest - self.lowest, 8)
        return "closed" if room <= 0.0 else "narrow" if room < _NARROW else "wide"

    def distance(self) -> float:
        """Return how far around the weld the temperature must reach, [m]."""
        return max(self.thickness, facts.LEAST_DISTANCE * _INCH)

    def between_the_codes_limits(self) -> bool:
        """Return whether inches and millimetres of the code's table put this thickness in different rows."""
        millimetres = numerals.settle(self.thickness * 1000.0)
        for inches, metric in zip(facts.THICKNESS_ENDS, facts.THICKNESS_ENDS_METRIC):
            if numerals.settle(inches * _INCH * 1000.0) < millimetres <= metric:
                return True
        return False


def _settled(rule: Rule) -> float:
    assert rule.value is not None
    return numerals.settle(rule.value)


def _fractions(percents: tuple[float, ...]) -> tuple[float, ...]:
    return tuple([each * _PERCENT for each in percents])
