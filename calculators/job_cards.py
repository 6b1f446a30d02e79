"""The cards of a job, in the order of the work."""

from calculators import numerals
from calculators.contract import Card, Drawing, Line, Measured, Message, Next, Plain, Verdict, carry, say
from calculators.job_case import MELTED, Joint, Plan, Total
from calculators.preheat_bounds import AMBIENT

# As they are dialled: the welder's own marks first.
_SETTINGS = (
    "feed_mark", "voltage_tap", "voltage_mark", "wire_feed_speed", "machine_voltage", "voltage", "transfer_mode",
    "current", "contact_tip_to_work", "gas_flow", "polarity", "leg", "bead_area", "passes", "travel_speed", "arc_energy",
    "heat_input",
)  # fmt: skip
_FILL = ("wire_mass", "gas_volume", "arc_time")
_COATINGS = (
    ("galvanized", "zinc", "galvanized-hot-dip"),
    ("painted", "painted", "painted"),
    ("plated", "plated", "plated"),
    ("unknown", "unknown", "unknown"),
)
_TAKES_METAL = ()


def _to(name: str, *carried: tuple[str, object]) -> Next:
    return Next(name, say(name + ".title"), carried)


def _open(key: str, name: str, value: Message | None = None, state: str = "", *carried: tuple[str, object]) -> Line:
    """Return a line that opens a question by its title."""
    return Line(key, say(name + ".title"), value or say(name + ".question"), _to(name, *carried), (), state)


def _missing(key: str, field: str, value: Message | None = None, leads: Next | None = None) -> Line:
    """Return a line for a field of the job that is blank."""
    label = say("job.field." + field)
    return Line(key, label, value or say("waiting.field", label=label), leads, (), "missing")


class Cards:
    """All cards; `all` is what the answer shows, `lines` are (heading, line) of what wants the welder, the worst first."""

    def __init__(self, plan: Plan) -> None:
        self.plan = plan
        self.given = plan.given
        joints = [self._joint(each) for each in plan.joints]
        load, hazards, preheat = self._load(), self._hazards(), self._preheat()
        weld, leave = self._weld(), self._leave()
        self.all: list[object] = [load, hazards, preheat]
        for joint, card in zip(plan.joints, joints):
            self.all += [card] + _sketch(joint)
        self.all += [weld, leave]
        self.lines: list[tuple[Message, Line]] = []
        for card in joints + [load, hazards, preheat, weld, leave]:
            for line in card.lines:
                known = line.key == "metal" and any(each.key == "metal" for _, each in self.lines)
                if line.state and not known:  # the metal is not known in every card
                    self.lines.append((card.heading, line))

    def _card(self, name: str, lines: list[Line]) -> Card:
        return Card(name, say("job.card." + name), tuple(lines))

    # ------------------------------------------------------------ before leaving

    def _load(self) -> Card:
        plan, lines = self.plan, []
        if not plan.joints:
            lines.append(_missing("joints", "joints", say("job.no-joints")))
        if plan.set:
            lines += self._wire_and_gas()
        for total, held in ((plan.wire, "spool_left"), (plan.gas, "gas_left")):
            if total.parts:
                lines += self._amount(total, held)
        lines += self._first_out()
        if plan.time.parts:
            lines.append(Line("arc_time", say("job.total.arc_time"), plan.time.shown(), _only(plan.time)))
        if self.given.word("wind") != "still":
            lines.append(Line("wind", say("job.field.wind"), say("settings.caution.breeze")))
        lowest = None if plan.preheat is None else plan.preheat.number("preheat_minimum")
        if plan.preheat is not None and lowest is not None and numerals.settle(lowest.value) > numerals.settle(AMBIENT):
            gear = say("job.preheat-gear", temperature=Measured(lowest.value, "preheat_temperature"))
            lines.append(plan.preheat.line("preheat_gear", say("preheat.title"), gear))
        lines += self._supply() + plan.instead[:1]
        lines.append(Line("extinguisher", say("job.fire"), say("job.extinguisher"), _to("hot-work")))
        return self._card("load", lines)

    def _wire_and_gas(self) -> list[Line]:
        asked = self.plan.set[0]
        diameter = Measured(
            asked.reply.given.number("wire_diameter"),
            "wire_diameter",
            None,
            asked.reply.given.units.get("wire_diameter"),
        )
        metal = say("settings.option.wire_material." + self.plan.metal)
        lines = [asked.line("wire", say("job.wire"), say("job.wire-and-tips", diameter=diameter, metal=metal))]
        carried = dict(asked.onward("arc-voltage") or ())
        if "gas" in carried:
            gas: object = say("settings.option.gas." + str(carried["gas"]))
            share = carried.get("carbon_dioxide")
            if isinstance(share, Measured):
                gas = say("job.mix", gas=gas, share=share)
            lines.append(asked.line("gas", say("settings.field.gas"), gas))
        return lines

    def _amount(self, total: Total, held: str) -> list[Line]:
        """Return what is needed, and whether what is left of it does."""
        joints, counted = len(self.plan.joints), len(total.joints)
        value: object = total.shown()
        if counted < joints:
            value = say("job.part", value=value, counted=counted, joints=joints)
        lines = [
            Line(
                total.name, say("job.total." + total.name), value, _only(total), (), "doubt" if counted < joints else ""
            )
        ]
        label = say("job.field." + held)
        if not self.given.has(held):
            return lines + [Line(held, label, say("job.not-said"))]
        left = self.given.number(held)
        spare = Measured(abs(left - total.value), total.parts[0].quantity.name, None, self.given.units.get(held))
        if numerals.settle(left) < numerals.settle(total.value):
            return lines + [Line(held, label, say("job.short", spare=spare), None, (), "doubt")]
        if numerals.settle(left) < numerals.settle(total.high):
            return lines + [
                Line(held, label, say("job.may", most=total.measured(total.high), spare=spare), None, (), "doubt")
            ]
        return lines + [Line(held, label, say("job.over", spare=spare))]

    def _first_out(self) -> list[Line]:
        plan, given = self.plan, self.given
        if not (plan.wire.parts and plan.gas.parts and given.has("spool_left") and given.has("gas_left")):
            return []
        wire = given.number("spool_left") / plan.wire.value
        gas = given.number("gas_left") / plan.gas.value
        which = "gas" if numerals.settle(gas) < numerals.settle(wire) else "wire"
        share = Plain(min(wire, gas), 2)
        return [Line("first_out", say("job.first-out"), say("job.first-out." + which, times=share))]

    def _supply(self) -> list[Line]:
        supply = self.plan.supply
        if not self.given.word("power"):
            return [_missing("power", "power")]
        if supply is None:
            return []
        label = say("generator-size.option.supply." + supply.reply.given.word("supply"))
        if supply.answer is None:
            return [supply.trouble("power", label)]
        verdict = supply.answer.verdict
        if verdict is None:
            return supply.lines(("generator_power",))
        return [supply.line("power", label, _said(verdict), "" if verdict.state == "inside" else "doubt")]

    # ------------------------------------------------------------ before striking

    def _hazards(self) -> Card:
        plan, given = self.plan, self.given
        lines = [] if plan.metal in MELTED else [self._metal()]
        coating = given.word("coating")
        if not coating:
            lines.append(_missing("coating", "coating", None, _to("fume")))
        elif coating == "oily":
            lines.append(
                Line("coating", say("job.field.coating"), say("fume.caution.solvent"), _to("fume"), (), "doubt")
            )
        for word, caution, there in _COATINGS:
            if word == coating:
                leads = _to("fume", ("coating", there))
                lines.append(
                    Line("coating", say("job.field.coating"), say("fume.caution." + caution), leads, (), "doubt")
                )
        if given.word("access") == "inside":
            lines.append(_open("oxygen", "oxygen", say("fume.caution.tight"), "doubt"))
        if given.word("access") in ("inside", "cramped"):
            lines.append(_open("shock", "shock", None, "", ("place", "cramped")))
        if given.word("access") == "height":
            lines.append(Line("height", say("job.option.access.height"), say("job.height"), _to("lone-worker")))
        lines.append(Line("never", say("job.never"), say("job.never-why"), _to("metal-id")))
        for asked, first in ((plan.make_safe, "job_kind"), (plan.hot_work, "work_on")):
            label = say(asked.name + ".title")
            if asked.answer is None:
                lines.append(asked.trouble(asked.name, label, first))
            for line in asked.lines(("first",)):
                lines.append(Line(asked.name, label, line.value, line.leads, line.takes))
        if plan.shade is not None:
            lines += plan.shade.lines(("least_shade", "comfort_shade"))
        return self._card("hazards", lines)

    def _metal(self) -> Line:
        """Return what has to be found out of a metal that Settings does not know."""
        if self.plan.metal == "cast-iron":
            return _open("metal", "crack-repair", say("job.cast-iron"), "doubt", ("family", "cast-iron"))
        return _missing("metal", "base_metal", say("job.find-metal"), _to("metal-id"))

    def _preheat(self) -> Card:
        plan, asked = self.plan, self.plan.preheat
        if asked is None:
            if plan.metal == "aluminum":
                return self._card("preheat", [_missing("preheat", "base_alloy", None, _to("preheat"))])
            return self._card("preheat", [self._metal()])
        family = asked.reply.given.word("family")
        lines = [asked.line("family", say("preheat.field.family"), say("preheat.option.family." + family))]
        if asked.answer is None:
            return self._card("preheat", lines + [asked.trouble("preheat", say("preheat.title"))])
        verdict = asked.answer.verdict
        if verdict is not None:
            lines.append(asked.line("window", say("preheat.title"), _said(verdict), "doubt"))
        names = ("preheat_minimum", "preheat_maximum", "no_lowest", "measuring_distance")
        return self._card("preheat", lines + asked.lines(names))

    def _joint(self, joint: Joint) -> Card:
        lines: list[Line] = []
        if self.plan.metal not in MELTED:
            lines.append(self._metal())
        if not joint.is_measured():
            lines.append(_missing("thickness", "thickness", say("job.find-thickness"), _to("sheet-gauge")))
        if joint.settings is not None:
            lines += self._settings(joint)
        return Card("joint" + joint.more, joint.named(), tuple(lines))

    def _settings(self, joint: Joint) -> list[Line]:
        settings = joint.settings
        assert settings is not None
        if settings.answer is None:
            lines = [settings.trouble("settings", say("settings.title"))]
            return lines + [each for each in self.plan.instead if each.key == "instead" + joint.more]
        lines = settings.lines(_SETTINGS)
        verdict = settings.answer.verdict
        if verdict is not None:
            lines.insert(0, settings.line("doubt", say("settings.title"), _said(verdict), "doubt"))
        if joint.fill is None:
            return lines + [settings.line("fill", say("joint-fill.title"), say("job.widened"), "doubt")]
        if joint.fill.answer is None:
            return lines + [joint.fill.trouble("fill", say("joint-fill.title"))]
        if not joint.given.has("weld_length"):
            label = say("job.field.weld_length")
            return lines + [joint.fill.line("fill", label, say("waiting.field", label=label), "missing")]
        return lines + joint.fill.lines(_FILL)

    # ------------------------------------------------------------ while welding, before leaving the site

    def _weld(self) -> Card:
        plan, lines = self.plan, []
        for joint in plan.joints:
            onward = None if joint.settings is None else joint.settings.onward("heat-input")
            if onward is not None and joint.settings is not None and joint.settings.answer:
                heat = joint.settings.number("arc_energy")
                assert heat is not None
                label = say("job.heat", joint=joint.named())
                leads = _to("heat-input", *plan.told.carried(onward))
                lines.append(Line("arc_energy" + joint.more, label, joint.settings.shown(heat), leads))
        if plan.preheat is not None and plan.preheat.answer is not None:
            highest = plan.preheat.lines(("preheat_maximum",))
            label = say("job.interpass")
            none = plan.preheat.line("interpass", label, say("job.no-interpass"))
            lines += [Line("interpass", label, each.value, each.leads, each.takes) for each in highest] or [none]
        passes = [number.value for number in [each.number("passes") for each in plan.set] if number is not None]
        if passes:
            lines.append(Line("passes", say("job.passes"), Measured(sum(passes), "count", 6)))
        lines.append(Line("log", say("weld-entry.title"), say("job.log"), self.entry()))
        return self._card("weld", lines)

    def entry(self) -> Next:
        """Return the question that logs a pass, with the job and the limits that are known."""
        carried: list[tuple[str, object]] = [("job", self.given.word("title"))]
        asked = self.plan.preheat
        for there, here in (("preheat_least", "preheat_minimum"), ("interpass_most", "preheat_maximum")):
            number = None if asked is None else asked.number(here)
            if number is not None:
                carried.append((there, Measured(number.value, "preheat_temperature")))
        return _to("weld-entry", *carried)

    def price(self) -> Next:
        """Return the question that prices the job, with what its joints take."""
        carried: list[tuple[str, object]] = []
        for total, high in ((self.plan.wire, 1000.0), (self.plan.gas, 20.0), (self.plan.time, 3.6e6)):
            if total.parts:
                carried += carry(total.name, total.measured(total.value), 0.001, high)
        return _to("job-price", *carried)

    def _leave(self) -> Card:
        lines = [_open("visual", "visual-check")]
        lines += self.plan.hot_work.lines(("fire_watch",)) or self._watch()
        lines.append(Line("used", say("job.used"), say("job.used-how")))
        return self._card("leave", lines)

    def _watch(self) -> list[Line]:
        """Return what the fire watch waits for; that it is open, or refused, was said among the hazards."""
        found = self.plan.hot_work.trouble("watch_open", say("hot-work.result.fire_watch"), "work_on")
        return [] if found.state == "doubt" else [Line(found.key, found.label, found.value, found.leads, found.takes)]


def _said(verdict: Verdict) -> Message:
    """Return a verdict with its word, as its own page has it."""
    return say("job.verdict", word=say("answer.verdict." + verdict.state), message=verdict.message)


def _only(total: Total) -> Next | None:
    """Return the question of the one joint that makes a total; a sum of several has none."""
    fill = total.joints[0].fill
    return fill.leads if fill is not None and len(total.joints) == 1 else None


def _sketch(joint: Joint) -> list[object]:
    """Return the drawing of what fills a joint, under the joint's name."""
    for result in joint.fill.answer.results if joint.fill is not None and joint.fill.answer is not None else ():
        if isinstance(result, Drawing):
            title = say("job.sketch", joint=joint.named(), title=result.title)
            name = "sketch" + joint.more
            return [Drawing(name, result.width, result.height, title, result.description, result.shapes)]
    return []
