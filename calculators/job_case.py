"""A job, asked of the other calculators: what each of its joints takes, how warm, and what carries it."""

from calculators import machine_fields, numerals
from calculators.contract import UNKNOWN, Given, Line, Measured, Message, Next, Number, say
from calculators.job_asking import Asked, Told

TYPE_CHECKING = False
if TYPE_CHECKING:
    from calculators.job_asking import Pairs

MELTED = ("mild-steel", "stainless", "aluminum")  # what Settings knows; the others are looked into first
_LIMITS = ("largest_current", "largest_feed", "least_feed", "largest_voltage", "least_voltage", "lead_voltage_drop")
_SAME = ("wire_diameter", "gas", "carbon_dioxide", "wind") + _LIMITS + machine_fields.NAMES
_ALLOYS = ("base_alloy", "filler_alloy")
_OF_ROW = ("thickness", "joint", "position", "leg")
# What the power on site is taken for: the smaller outlet, and the welder's own generator where there is none.
_SUPPLIES = (
    ("generator", "generator-240"),
    ("none", "generator-240"),
    ("mains-240", "outlet-240-30"),
    ("mains-120", "outlet-120-15"),
)
_FAMILIES = (
    ("mild-steel", "structural"),
    ("stainless", "stainless"),
    ("6061", "aluminum-heat-treated"),
    ("5083", "aluminum-magnesium"),
)


class Joint:
    """One joint: its settings and what fills it, or what stands in the way of them."""

    def __init__(self, told: Told, row: Given) -> None:
        self.given = row
        self.more = "-" + str(row.place)
        self.row = "joints" + self.more + "-"
        self.settings: Asked | None = None
        self.fill: Asked | None = None
        if told.given.word("base_metal") in MELTED and self.is_measured():
            self.settings = self._ask_settings(told)
            onward = self.settings.onward("joint-fill")
            if onward is not None:
                self.fill = self._ask_fill(told, onward)

    def is_measured(self) -> bool:
        """Return whether the thickness is a number."""
        return self.given.has("thickness") and self.given.values["thickness"] != UNKNOWN

    def named(self) -> Message:
        """Return the joint as its row is called and the welder calls it."""
        typed = self.given.word("name")
        return (
            say("job.joint-named", row=self.given.place, typed=typed)
            if typed
            else say("job.joint", row=self.given.place)
        )

    def _ask_settings(self, told: Told) -> Asked:
        metal = told.given.word("base_metal")
        takes = [("wire_material", "base_metal")] + [(name, self.row + name) for name in _OF_ROW]
        takes += [(name, name) for name in (_ALLOYS if metal == "aluminum" else ()) + _SAME]
        surface = {"galvanized": "galvanized", "painted": "rust"}.get(told.given.word("coating"))
        pairs = told.pairs(tuple(takes), self.given)
        return Asked("settings", pairs + ([("surface", surface)] if surface else []), tuple(takes))

    def _ask_fill(self, told: Told, onward: "tuple[tuple[str, object], ...]") -> Asked:
        assert self.settings is not None
        pairs = told.carried(onward)
        takes = [("weld_length", self.row + "weld_length")]
        takes += [(name, self.row + name) for name, _ in pairs if name in ("thickness", "leg")]
        flow = self.settings.number("gas_flow")
        if flow is not None:
            pairs += told.carried((("gas_flow", Measured(flow.value, "gas_flow")),))
        return Asked("joint-fill", pairs + told.pairs(tuple(takes[:1]), self.given), tuple(takes))

    def need(self, name: str) -> Number | None:
        """Return what filling it takes, if its length is known: `wire_mass`, `gas_volume` or `arc_time`."""
        return self.fill.number(name) if self.fill is not None and self.given.has("weld_length") else None


class Total:
    """The sum over the joints of what filling them takes, with its band; `joints` are those that it counts."""

    def __init__(self, joints: list[Joint], name: str) -> None:
        self.name = name
        self.joints = [each for each in joints if each.need(name) is not None]
        self.parts = [number for number in [each.need(name) for each in joints] if number is not None]
        self.value, self.low, self.high = 0.0, 0.0, 0.0
        for number in self.parts:
            self.value += number.value
            self.low += number.value if number.low is None else number.low
            self.high += number.value if number.high is None else number.high

    def measured(self, value: float) -> Measured:
        """Return an amount of the same kind."""
        return Measured(value, self.parts[0].quantity.name)

    def shown(self) -> Message | Measured:
        """Return it with its band."""
        if numerals.settle(self.low) == numerals.settle(self.high):
            return self.measured(self.value)
        ends = [self.measured(self.low), self.measured(self.high)]
        return say("job.band", value=self.measured(self.value), low=ends[0], high=ends[1])

    def working(self) -> Message:
        """Return the sum, term by term."""
        label = say("job.total." + self.name)
        terms: Message | Measured = self.measured(self.parts[0].value)
        for number in self.parts[1:]:
            terms = say("job.plus", first=terms, second=self.measured(number.value))
        return say("job.working.sum", label=label, terms=terms, total=self.measured(self.value))


class Plan:
    """All that a job asks, once each."""

    def __init__(self, given: Given) -> None:
        self.given = given
        self.told = Told(given)
        self.metal = given.word("base_metal")
        self.joints = [Joint(self.told, row) for row in given.rows("joints")]
        self.set = [each.settings for each in self.joints if each.settings is not None and each.settings.answer]
        self.wire = Total(self.joints, "wire_mass")
        self.gas = Total(self.joints, "gas_volume")
        self.time = Total(self.joints, "arc_time")
        self.hottest = self._hottest()
        self.supply = self._ask_supply()
        self.preheat = self._ask_preheat()
        self.shade = self._ask_shade()
        kept = (("held", "held"),)
        work = (("work_on", "work_on"), ("place", "where")) + kept
        self.hot_work = Asked("hot-work", self.told.pairs(work), work)
        job = (("job", "job_kind"),) + kept
        self.make_safe = Asked("make-safe", self.told.pairs(job), job)
        self.instead = [found for found in [self._instead(each) for each in self.joints] if found is not None]

    def _hottest(self) -> Asked | None:
        """Return the settings that draw most."""
        found, most = None, 0.0
        for each in self.set:
            current = each.number("current")
            if current is not None and numerals.settle(current.value) > numerals.settle(most):
                found, most = each, current.value
        return found

    def _ask_supply(self) -> Asked | None:
        onward = None if self.hottest is None else self.hottest.onward("generator-size")
        supply = dict(_SUPPLIES).get(self.given.word("power"))
        if onward is None or supply is None:
            return None
        pairs: Pairs = [("supply", supply)] + self.told.carried(onward)
        takes = (("generator_power", "generator_power"),) if supply == "generator-240" else ()
        return Asked("generator-size", self.told.pairs(takes) + pairs, takes)

    def _ask_preheat(self) -> Asked | None:
        family = dict(_FAMILIES).get(self.given.word("base_alloy") if self.metal == "aluminum" else self.metal)
        if family is None:
            return None
        if family != "structural":
            return Asked("preheat", [("family", family)])
        takes = (("grade", "grade"), ("thickness", "thickest"), ("cet", "carbon_equivalent"))
        pairs = [("family", family)] + self.told.pairs(takes)
        if not self.given.has("thickest"):
            pairs += self._thickest()
        if self.given.has("carbon_equivalent"):
            pairs += self._least_heat()
        return Asked("preheat", pairs, takes)

    def _thickest(self) -> "Pairs":
        found: Given | None = None
        for each in self.joints:
            if each.is_measured() and (found is None or each.given.number("thickness") > found.number("thickness")):
                found = each.given
        return [] if found is None else self.told.pairs((("thickness", "joints-0-thickness"),), found)

    def _least_heat(self) -> "Pairs":
        """Return the least heat of the joints: it asks the most preheat."""
        heats = [number.value for number in [each.number("heat_input") for each in self.set] if number is not None]
        return self.told.carried((("heat_input", Measured(min(heats), "heat_input")),)) if heats else []

    def _ask_shade(self) -> Asked | None:
        current = None if self.hottest is None else self.hottest.number("current")
        if current is None:
            return None
        return Asked("shade", self.told.carried((("current", Measured(current.value, "current")),)))

    def _instead(self, joint: Joint) -> Line | None:
        """Return where a refused setting leads: another process, by its own calculator, or the same with what does it."""
        settings = joint.settings
        if settings is None or settings.answer or not settings.reply.next_questions:
            return None
        first = settings.reply.next_questions[0]
        pairs = self.told.carried(first.carried)
        label = say("job.instead")
        if first.calculator != "process-choice":
            leads = Next(first.calculator, first.message, tuple(pairs))
            return Line("instead" + joint.more, label, first.message, leads, settings.takes)
        process = Asked(first.calculator, pairs)
        lines = process.lines(("first", "stop"), joint.more)
        if not lines:
            return process.trouble("instead" + joint.more, label)
        return Line("instead" + joint.more, label, lines[0].value, process.leads)
