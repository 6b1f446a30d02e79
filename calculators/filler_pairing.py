"""Judging filler classes for one joint: which suit, which do not, and why."""

from calculators import aluminum_fillers
from calculators.contract import Given, Message, say
from calculators.facts import filler_match as facts
from calculators.facts import fillet_rules
from calculators.facts.gases import BLENDS
from calculators.filler_grammar import Reading
from calculators.filler_name import Meaning
from calculators.gas_designation import suits

NO_GAS = "none"
_VERDICTS = ("suits", "care", "no")
_OF_BASE = {row[0]: row for row in facts.BASES}
_STRENGTHS = fillet_rules.STEELS + facts.STRENGTHS
_SINGLE_PASS = ("GS", "2", "3", "10", "13", "14")
_SELF_SHIELDED = ("4", "6", "7", "8", "11", "GS", "3", "10", "13", "14")


class Candidate:
    """One class on this joint: its `verdict` and the Message `why`."""

    def __init__(self, name: str, verdict: str, why: Message) -> None:
        self.name = name
        self.verdict = verdict
        self.why = why


class Joint:
    """Two base metals, or one twice, with gas and service.

    `stop` is the word for why it is not to be welded, or ""; else `candidates` holds the classes, the best first.
    """

    def __init__(self, given: Given) -> None:
        self.bases = [given.word("base")]
        if given.word("second_base") not in ("", self.bases[0]):
            self.bases.append(given.word("second_base"))
        self.gas, self.service = given.word("gas"), given.word("service")
        self.kinds = [_OF_BASE[base][1] for base in self.bases]
        self.stop, self.list = self._stop(), ""
        self.candidates: list[Candidate] = []
        if not self.stop:
            self.list = self._list()
            for name, rows in facts.FILLERS:
                if name == self.list:
                    found = [self._candidate(each, row[0], row[1]) for row in rows for each in row[2].split(" ")]
                    self.candidates = [each for verdict in _VERDICTS for each in found if each.verdict == verdict]

    def _stop(self) -> str:
        for base in self.bases:
            if _OF_BASE[base][3] == "":
                return base
        return "aluminum-to-other" if "aluminum" in self.kinds and len(set(self.kinds)) > 1 else ""

    def _list(self) -> str:
        lists = [_OF_BASE[base][3] for base in self.bases]
        if lists[0] == lists[-1]:
            return lists[0]
        if "stainless" in self.kinds and ("mild-steel" in self.kinds or "manganese" in self.kinds):
            return "stainless-steel"
        for name in facts.SHARED:
            if name in lists:
                return name
        return "steel-hard" if any(name in facts.HARD for name in lists) else "steel"

    # ------------------------------------------------------------ one class

    def _candidate(self, name: str, verdict: str, reason: str) -> Candidate:
        found = Reading(name).found
        assert found is not None
        meaning = Meaning(found)
        why = say("filler-match.why." + reason)
        for judge in (self._by_gas, self._by_service, self._by_alloy):
            harsher = judge(meaning)
            if harsher is not None and _VERDICTS.index(harsher[0]) > _VERDICTS.index(verdict):
                verdict, why = harsher
        return Candidate(name, verdict, why)

    def _by_gas(self, meaning: Meaning) -> "tuple[str, Message] | None":
        system, found = meaning.system, meaning.found
        wire = found.symbol("process") == "ER" or found.symbol("form") in ("C", "T")
        if not self.gas or not wire or found.symbol("usability") in _SELF_SHIELDED:
            return None
        if self.gas == NO_GAS:
            return "no", say("filler-match.why.needs-gas")
        for row in BLENDS:
            if row[0] == self.gas:
                mix = tuple([percent / 100.0 for percent in row[1:]])
        metal = {"A5.9": "stainless", "A5.10": "aluminum"}.get(system, "mild-steel")
        if found.symbol("type") == "2209":
            metal = "duplex"
        verdict, reason = suits(mix, metal)
        if verdict == "no":
            return "no", say("gas-blend.why." + metal + "." + reason)
        if system == "A5.18" and found.symbol("type") == "3" and mix[1] == 1.0:
            return "care", say("filler-match.why.deoxidizer")
        return None

    def _by_service(self, meaning: Meaning) -> "tuple[str, Message] | None":
        found, steel = meaning.found, meaning.system in ("A5.1", "A5.5", "A5.18", "A5.20", "A5.28", "A5.29")
        if self.service == "structural" and found.symbol("usability") in _SINGLE_PASS:
            return "no", say("filler-match.why.single-structural")
        if self.service == "cold" and steel and meaning.toughness is None:
            return "no", say("filler-match.why.no-toughness")
        if self.service == "cold" and steel:
            assert meaning.toughness is not None
            return "care", say("filler-match.why.tough-to", toughness=meaning.toughness)
        if self.service == "hot" and (steel or found.symbol("variant")[:1] == "L"):
            return "care", say("filler-match.why.creep" if steel else "filler-match.why.hot-low-carbon")
        if self.service == "corrosion" and self.list == "316" and found.symbol("type") == "308":
            return "no", say("filler-match.why.molybdenum")
        return None

    def _by_alloy(self, meaning: Meaning) -> "tuple[str, Message] | None":
        if meaning.system != "A5.10":
            return None
        worst = None
        for base in self.bases:
            fault = aluminum_fillers.fault(base, meaning.found.symbol("type"), self.service == "hot")
            if fault in ("hot", "4043-on-5083"):
                return "no", say("filler-match.why." + fault)
            if fault:
                worst = ("care", say("filler-match.why." + fault))
        return worst

    # ------------------------------------------------------------ strength

    def base_strength(self) -> float:
        """Return the least tensile strength of the weaker base metal, [Pa], or 0 where this book has none."""
        found = [tensile for base in self.bases for name, _, tensile in _STRENGTHS if name == base]
        return min(found) if len(found) == len(self.bases) else 0.0
