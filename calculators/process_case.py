"""The job in hand against each arc process: what speaks against it and what has to be done first."""

from calculators import process_limits, ranges, transfer_limits
from calculators.contract import Given, Measured, Refusal, say
from calculators.facts import processes as facts
from calculators.facts import transfer
from calculators.truck_gas import TruckGas

# How much speaks against a process: something to do first, a last resort, or no.
DO, TROUBLE, WEAK, NO = 1, 3, 5, 9
GRADES = ("good", "change", "weak", "no")
# (process, field of the truck's list, how much it is put back while nothing else speaks)
PROCESSES = (
    ("solid-wire", "solid_wire", 0),
    ("spool-gun", "spool_gun", 0),
    ("pulse", "pulse_machine", 0),
    ("flux-cored-gas-shielded", "gas_shielded_cored", 1),
    ("metal-cored", "metal_cored", 1),
    ("flux-cored-self-shielded", "self_shielded_cored", 2),
    ("stick", "stick_box", 2),
)
SELF_SHIELDED = "flux-cored-self-shielded"
NEEDS_GAS = ("solid-wire", "spool-gun", "pulse", "flux-cored-gas-shielded", "metal-cored")
SLAG = ("flux-cored-gas-shielded", SELF_SHIELDED, "stick")


class Suit:
    """How one process suits: `against` are (how much, reason, its parameters)."""

    def __init__(self, process: str, put_back: int, on_truck: bool) -> None:
        self.process = process
        self.put_back = put_back
        self.on_truck = on_truck
        self.against: list[tuple[int, str, dict[str, object]]] = []

    def add(self, how_much: int, reason: str, **parameters: object) -> None:
        """Note something against it."""
        self.against.append((how_much, reason, parameters))

    def grade(self) -> str:
        """Return `good`, `change`, `weak` or `no`."""
        worst = max([each[0] for each in self.against] + [0])
        return "no" if worst >= NO else "weak" if worst >= WEAK else "change" if worst else "good"

    def order(self) -> int:
        """Return how far back it ranks by what speaks against it."""
        return self.put_back + sum([each[0] for each in self.against])


class Case:
    """The job as it was told; `ranked` has every process, the best on the truck first."""

    def __init__(self, given: Given) -> None:
        self.given = given
        self.metal = given.word("wire_material")
        self.thickness = given.number("thickness")
        self.position = given.word("position")
        self.structural = given.word("service") == "structural"
        self.surface = given.word("surface") if self.metal == "mild-steel" else ""
        self.gas = TruckGas(given, self.metal)
        self.reach = given.number("machine_distance") if given.has("machine_distance") else 0.0
        self.wind = self._wind()
        if self._downhill() and self.structural and ranges.above(self.thickness, transfer.VERTICAL_DOWN_THICKEST):
            most = Measured(transfer.VERTICAL_DOWN_THICKEST, "joint_size", 3, given.units.get("thickness"))
            raise Refusal("position", say("process-choice.refusal.downhill", most=most))
        self.ranked = self._ranked()

    def carried_by(self, transfer_mode: str) -> bool:
        """Return whether solid wire in that mode and this gas serves thickness and position, cold lap or not."""
        return not self.gas.problem() and self._fit(transfer_mode) in ("serves", "cold-lap")

    def _fit(self, transfer_mode: str) -> str:
        return self.gas.fit(transfer_mode, self.thickness, self.position)

    def wants_spray_gas(self) -> bool:
        """Return whether steel this thick could be sprayed here, were it not for the gas."""
        no_spray = self._fit("short-circuit") == "thick" and self._fit("spray") == "no-spray"
        return self.metal == "mild-steel" and not self.gas.problem() and no_spray

    def _downhill(self) -> bool:
        return self.position == "vertical-down"

    def _wind(self) -> str:
        if self.given.has("wind_speed"):
            speed = self.given.number("wind_speed")
            return process_limits.wind_state(speed, speed)
        for word, low, high in facts.WINDS:
            if word == self.given.word("wind"):
                return process_limits.wind_state(low, high or 50.0)
        raise KeyError("wind")

    def _ranked(self) -> list[Suit]:
        suits = []
        for process, field, put_back in PROCESSES:
            suit = Suit(process, put_back, self.given.word(field) == "yes")
            getattr(self, "_" + self.metal.replace("-", "_"))(suit)
            if suit.grade() != "no":
                self._everywhere(suit)
            suits.append(suit)
        places = [
            (
                GRADES.index(suit.grade()) // 3,
                0 if suit.on_truck else 1,
                GRADES.index(suit.grade()) // 2,
                suit.order(),
                place,
            )
            for place, suit in enumerate(suits)
        ]
        return [suits[each[4]] for each in sorted(places)]

    def usable(self) -> list[Suit]:
        """Return the processes that are not ruled out."""
        return [suit for suit in self.ranked if suit.grade() != "no"]

    def best(self) -> Suit | None:
        """Return the first on the truck that is not ruled out."""
        for suit in self.usable():
            if suit.on_truck:
                return suit
        return None

    def better(self) -> Suit | None:
        """Return one that is not on the truck, where what is on it is no more than a last resort."""
        best = self.best()
        if best is not None and best.grade() != "weak":
            return None
        others = [suit for suit in self.usable() if not suit.on_truck and suit.grade() != "weak"]
        return others[0] if others else None

    # ------------------------------------------------------------ what any metal brings

    def _everywhere(self, suit: Suit) -> None:
        if self.given.has("wind_speed") and ranges.above(self.given.number("wind_speed"), facts.STRONG_WIND):
            suit.add(WEAK if suit.process in NEEDS_GAS else TROUBLE, "gale")
        elif suit.process in NEEDS_GAS:
            if self.wind == "outside":
                suit.add(TROUBLE, "screen")
            elif self.wind == "unclear":
                suit.add(DO + 1, "breeze")
        if suit.process not in ("stick", "spool-gun") and self.metal != "aluminum":
            if ranges.above(self.reach, facts.PUSH_STEEL):
                suit.add(TROUBLE, "carry", most=self._reach(facts.PUSH_STEEL))
        if self.surface in ("paint", "galvanized"):
            suit.add(DO, self.surface)
        elif self.surface in ("rust", "mill-scale"):
            self._scale(suit)

    def _reach(self, most: float) -> Measured:
        return Measured(most, "part_length", 2, self.given.units.get("machine_distance"))

    def _scale(self, suit: Suit) -> None:
        if suit.process == "stick" and not self.structural:
            return  # the rod for it is chosen with the surface
        if suit.process in SLAG or suit.process == "metal-cored":
            suit.add(DO, "brush-off")
        else:
            suit.add(DO + 1, "grind")

    # ------------------------------------------------------------ steel

    def _mild_steel(self, suit: Suit) -> None:
        if suit.process == "spool-gun":
            suit.add(NO, "soft-wire")
        elif suit.process == "solid-wire":
            self._solid(suit)
        elif suit.process == "pulse":
            self._pulse(suit)
        elif suit.process == "metal-cored":
            self._metal_cored(suit)
        elif suit.process == "flux-cored-gas-shielded":
            self._gas_shielded(suit)
        elif suit.process == SELF_SHIELDED:
            self._self_shielded(suit)
        else:
            self._thin(suit)

    def _solid(self, suit: Suit) -> None:
        """Short-circuit where it serves, else spray, where the gas lets it: as settings would run it."""
        if self.gas.problem():
            suit.add(WEAK, "wrong-gas")
            return
        fit, spray = self._fit("short-circuit"), self._fit("spray")
        if fit == "cold-lap" and spray == "serves":
            suit.add(DO, "cold-lap-spray")
        elif fit in ("serves", "cold-lap"):
            if fit == "cold-lap":
                suit.add(DO + 1, "cold-lap-or-spray" if spray == "no-spray" else "cold-lap")
            if self.structural and self.metal == "mild-steel":
                suit.add(DO, "not-prequalified")
        elif fit == "thick" and spray == "serves":
            suit.add(DO, "spray")
        elif fit == "thick" and spray == "no-spray":
            suit.add(WEAK, "no-spray")
        else:
            suit.add(WEAK, "thin" if fit == "thin" else "laps-cold")

    def _pulse(self, suit: Suit) -> None:
        fit = transfer_limits.fit("pulse", self.metal, self.thickness, self.position)
        if self.metal != "aluminum" and not (self.gas.told and self.gas.sprays()):
            suit.add(DO, "argon-rich" if self.metal == "mild-steel" else "argon-rich-stainless")
        if fit in ("thin", "vertical-down"):
            suit.add(WEAK, "thin" if fit == "thin" else "laps-cold")

    def _metal_cored(self, suit: Suit) -> None:
        fit = transfer_limits.fit("spray", self.metal, self.thickness, self.position)
        if fit in ("position", "vertical-down"):
            pulse = self.given.word("pulse_machine") == "yes"
            suit.add(DO + 1 if pulse else NO, "with-pulse")
        elif fit == "thin":
            suit.add(WEAK, "thin")
        elif self.metal == "stainless":
            suit.add(DO, "argon-rich-stainless")

    def _gas_shielded(self, suit: Suit) -> None:
        if self._downhill():
            suit.add(NO, "runs-uphill")
        else:
            self._thin(suit)

    def _self_shielded(self, suit: Suit) -> None:
        self._thin(suit)
        if self.needs_t8():
            suit.add(DO + 1, "t8")

    def needs_t8(self) -> bool:
        """Return whether the everyday class of self-shielded wire will not do."""
        return self.position == "vertical-up" or ranges.above(self.thickness, facts.T11_THICKEST)

    def _thin(self, suit: Suit) -> None:
        for process, easy, hard in facts.THINNEST:
            if process == suit.process and ranges.above(easy, self.thickness):
                if process == "stick":
                    hopeless = ranges.above(facts.STICK_HARD_BELOW, self.thickness)
                    suit.add(WEAK if hopeless else TROUBLE, "thin-stick")
                else:
                    suit.add(NO if ranges.above(hard, self.thickness) else WEAK, "thin")

    # ------------------------------------------------------------ stainless, aluminum

    def _stainless(self, suit: Suit) -> None:
        self._mild_steel(suit)
        if suit.process in ("flux-cored-gas-shielded", "metal-cored"):
            suit.add(DO + 1, "own-wire")
        elif suit.process == SELF_SHIELDED:
            suit.add(NO, "steel-only")
        elif suit.process == "solid-wire" and not self.gas.told:
            suit.add(DO, "stainless-gas")

    def _aluminum(self, suit: Suit) -> None:
        if suit.process in ("flux-cored-gas-shielded", "metal-cored", "flux-cored-self-shielded"):
            suit.add(NO, "steel-only")
        elif suit.process == "stick":
            suit.add(WEAK, "aluminum-rod")
        elif suit.process == "pulse":
            self._pulse(suit)
            self._pushed(suit)
        else:
            fit = transfer_limits.fit("spray", self.metal, self.thickness, self.position)
            if self.gas.problem():
                suit.add(WEAK, "wrong-gas")
            elif fit == "vertical-down":
                suit.add(WEAK, "laps-cold")
            elif fit == "thin":
                suit.add(TROUBLE, "thin-aluminum")
            if suit.process == "solid-wire":
                self._pushed(suit)

    def _pushed(self, suit: Suit) -> None:
        if not ranges.above(self.reach, facts.PUSH_ALUMINUM):
            suit.add(DO, "soft-wire-liner")
        elif suit.process == "pulse" and self.given.word("spool_gun") == "yes":
            suit.add(DO, "pulse-spool-gun")
        else:
            suit.add(WEAK, "push-limit", most=self._reach(facts.PUSH_ALUMINUM))
