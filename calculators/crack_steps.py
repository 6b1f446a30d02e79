"""The order of work: which steps a part goes through, and the number each of them is done by."""

from calculators import units
from calculators.contract import Measured, Plain
from calculators.crack_case import ALUMINUM, HIGHEST_FIRST, Repair
from calculators.facts import repair as facts

TYPE_CHECKING = False
if TYPE_CHECKING:
    # (what to do, how and why, its number or "", parameters of the number)
    Step = tuple[str, str, str, dict[str, object]]

_FILLERS = (("manganese", "manganese"), ("wear-plate", "soft"), ("unknown", "soft"), ("stainless", "cool"))
_STOPPED = ("out-of-use", "mark-ends", "agree")


class Steps:
    """`rows` are the steps in their order."""

    def __init__(self, repair: Repair) -> None:
        self.repair = repair
        self.rows: list[Step] = []
        if repair.stopped:
            self._stopped()
        elif repair.damage == "worn":
            self._worn()
        elif repair.family == "cast-iron":
            self._iron()
        else:
            self._crack()

    def _add(self, what: str, why: str = "", figure: str = "", **parameters: object) -> None:
        self.rows.append((what, why or what, figure, parameters))

    def _size(self, value: float, unit_of: str) -> Measured:
        return Measured(value, "joint_size", None, self.repair.given.units.get(unit_of))

    # ------------------------------------------------------------ steps that more than one path has

    def _stopped(self) -> None:
        for step in _STOPPED:
            self._add(step, step + "-" + self.repair.stopped if step == "agree" else step)

    def _begin(self) -> None:
        self._add("cause", "cause-" + self.repair.service)
        self._add("unload")
        self._add("ends", "ends" if self.repair.takes_powder() else "ends-dye")

    def _holes(self) -> None:
        repair = self.repair
        hole = repair.stop_hole()
        if hole is not None:
            where = "hole-iron" if repair.family == "cast-iron" else "hole"
            self._add("stop", where, "hole", hole=self._size(hole, "thickness"))
        elif repair.is_drilled():
            self._add("stop", "hole")
        elif repair.ends_inside():
            self._add("no-hole", "no-hole-" + ("manganese" if repair.family == "manganese" else "hard"))

    def _dig(self) -> None:
        repair = self.repair
        key = "dig-iron" if repair.family == "cast-iron" else "dig-warm" if repair.is_dug_warm() else "dig"
        if repair.length is None:
            self._add("dig", key)
        else:
            self._add("dig", key, "length", length=Measured(repair.length, "piece_size", None, self._length_unit()))
        shown_by = "prove" if repair.takes_powder() else "prove-dye"
        self._add("prove", "prove-iron" if repair.family == "cast-iron" else shown_by)

    def _length_unit(self) -> str | None:
        return self.repair.given.units.get("crack_length")

    def _heat(self) -> None:
        repair = self.repair
        low, high = repair.lowest(), repair.highest()
        shown = [None if each is None else Measured(each, "preheat_temperature") for each in (low, high)]
        what = why = "warm"
        if not repair.is_heated():
            # Hardened plate without its lowest yet may well ask for heat: never say that it wants none.
            hardened = low is None and repair.family in ("quenched-tempered", "wear-plate")
            cool = repair.family in HIGHEST_FIRST and not hardened
            what = "keep-cool" if cool else "chill"
            why = what + "-" + repair.family if cool else what
        if high is None and low is None:
            self._add("warm", "warm-find")
        elif high is None:
            self._add(what, why, "least", least=shown[0])
        elif low is None:
            if why == "chill":
                what, why = "warm", "warm-no-lowest"
            self._add(what, why, "most", most=shown[1])
        else:
            self._add(what, "warm-window" if repair.is_heated() else why, "most-least", most=shown[1], least=shown[0])

    def _weld(self) -> None:
        repair = self.repair
        why = dict(_FILLERS).get(repair.family, "steel")
        if repair.family in ALUMINUM:
            why = "aluminum"
        if repair.family == "unknown" and not repair.is_magnetic():
            why = "find"
        if repair.job is None:
            self._add("weld", "weld-" + why)
        else:
            bead = self._size(repair.largest_bead(), "largest_bead")
            self._add("weld", "weld-" + why, "passes", passes=repair.job.passes, bead=bead)

    def _cool(self) -> None:
        repair = self.repair
        hold = repair.hold()
        if hold is not None:
            key = "hold-below" if repair.highest() is not None else "hold"
            self._add("hold", key, "time", time=Measured(hold, "hold_time", 3, "h"))
        elif repair.family in ("hardening", "cast-iron") or repair.is_magnetic():
            self._add("slow", "slow-iron" if repair.family == "cast-iron" else "slow")
        elif repair.family in HIGHEST_FIRST and not repair.is_heated() and repair.wait() is None:
            self._add("quick", "quick-" + ("manganese" if repair.family == "manganese" else "other"))
        else:
            self._add("still-air")

    def _inspect(self) -> None:
        wait = self.repair.wait()
        if wait is None:
            self._add("inspect")
        else:
            self._add("wait", "wait", "hours", time=Measured(wait, "hold_time", 3, "h"))

    # ------------------------------------------------------------ the paths

    def _crack(self) -> None:
        if self.repair.family == "unknown":
            self._add("which-metal")
        self._begin()
        if self.repair.family == "manganese":
            self._add("skin")
        self._holes()
        self._dig()
        self._heat()
        self._weld()
        if self.repair.given.word("access") == "both-sides" and self.repair.given.word("crack_through") != "no":
            self._add("back")
        self._cool()
        self._inspect()
        self._add("after", "after-" + self.repair.service)

    def _iron(self) -> None:
        repair = self.repair
        self._add("otherwise")
        if repair.iron == "not-known":
            self._add("which-iron")
        self._begin()
        self._holes()
        self._dig()
        bake = _fahrenheit(facts.IRON_BAKE)
        self._add("bake", "bake", "bake", bake=bake)
        low, high = [_fahrenheit(each) for each in facts.IRON_LEAST]
        if repair.iron == "ductile":
            low, high = [_celsius(each) for each in facts.DUCTILE_LEAST]
        ductile = "warm-ductile" if repair.iron == "ductile" else "warm-iron"
        self._add("warm-or-cold", ductile, "least-range", low=low, high=high)
        self._add("weld", "weld-iron")
        self._cool()
        self._add("leak")
        self._add("after", "after-" + repair.service)

    def _worn(self) -> None:
        repair = self.repair
        iron = repair.family == "cast-iron"
        self._add("wear-cause")
        self._add("strip", "strip-manganese" if repair.family == "manganese" else "strip")
        self._add("look")
        if iron:
            low, high = [_fahrenheit(each) for each in facts.IRON_BUILD_UP]
            self._add("warm", "warm-iron-worn", "least-range", low=low, high=high)
        else:
            self._heat()
        assert repair.depth is not None and repair.facing is not None
        under = repair.depth - repair.facing
        if under > 1e-6:
            self._add("build-up", "build-up", "deep", depth=self._size(under, "worn_depth"))
        layers = Plain(facts.HARD_FACING_LAYERS, 1)
        self._add("face", "face", "facing", depth=self._size(repair.facing, "worn_depth"), layers=layers)
        self._cool()
        self._inspect()


def _fahrenheit(temperature: float) -> Measured:
    return Measured(units.to_coherent(temperature, "degF"), "preheat_temperature")


def _celsius(temperature: float) -> Measured:
    return Measured(units.to_coherent(temperature, "degC"), "preheat_temperature")
