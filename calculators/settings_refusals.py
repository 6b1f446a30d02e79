"""Why this truck cannot do this joint, and the nearest thing that can."""

from calculators import starting_current
from calculators.contract import Measured, Message, Refusal, say
from calculators.settings_case import Trial
from calculators.settings_onward import ToProcess


class Unserved:
    """The refusal of the mode that comes nearest to serving: short-circuit, or spray on thick metal."""

    def __init__(self, trials: "list[Trial]") -> None:
        trial = trials[0]
        beside = ""
        if len(trials) > 1:
            short, spray = trials if trials[0].mode == "short-circuit" else (trials[1], trials[0])
            trial = short
            if short.problem == ("thickness", "thick"):
                trial, beside = spray, "thick-"
        assert trial.problem is not None
        field, id = trial.problem
        if id in ("no-spray", "position"):
            id = beside + id
        self.refusal = Refusal(
            field, say("settings.refusal." + id, **_shown(trial, field)), ToProcess(trial.given).questions
        )


def _shown(trial: Trial, field: str) -> "dict[str, object]":
    return {
        "mode": say("settings.mode." + trial.mode),
        "thickness": trial.given.measured("thickness", "joint_size"),
        "wire": Measured(trial.diameter, "wire_diameter"),
        "wanted": Measured(trial.wanted[1], "current", 3),
        "lowest": Measured(trial.lowest, "current", 3),
        "highest": Measured(trial.highest, "current", 3),
        "instead": _instead(trial, field),
    }


def _instead(trial: Trial, field: str) -> Message:
    """Return what to take instead of a wire that is too thick or too thin for the metal."""
    if field != "wire_diameter":
        return say("settings.instead.machine")
    if trial.metal == "aluminum":
        assert trial.problem is not None
        return say("settings.instead.thinner" if trial.problem[1] == "too-hot" else "settings.instead.thicker")
    if trial.mode != "short-circuit":
        return say("settings.instead.short-circuit")
    nearest = starting_current.nearest_wire(trial.metal, trial.wanted[1], trial.position)
    if nearest is None:
        return say("settings.instead.none")
    return say("settings.instead.wire", wire=Measured(nearest, "wire_diameter"))
