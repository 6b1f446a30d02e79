"""Times of the day as people type them, and as they are shown: `14:30` or `2:30 pm`."""

from calculators import numerals

DAY = 1440  # minutes


class Clock:
    """A time of the day, [min after midnight], that is shown the way it was typed."""

    def __init__(self, minutes: int, halves: bool) -> None:
        self.minutes = minutes % DAY
        self.halves = halves

    def after(self, minutes: int) -> "Clock":
        """Return the time so many minutes later."""
        return Clock(self.minutes + minutes, self.halves)

    def text(self) -> str:
        """Return the time in figures alone."""
        hour, minute = self.minutes // 60, self.minutes % 60
        if self.halves:
            hour = (hour + 11) % 12 + 1
        return ("0" if hour < 10 and not self.halves else "") + str(hour) + (":0" if minute < 10 else ":") + str(minute)

    def half(self) -> str:
        """Return am or pm, or an empty string where the day is counted through."""
        return "" if not self.halves else "pm" if self.minutes >= 720 else "am"


def _read(text: str) -> Clock | None:
    text = numerals.tidy(text).lower().replace(".", ":")
    half = ""
    for end in ("am", "pm", "a:m:", "p:m:"):
        if text.endswith(end):
            half, text = end[0], text[: -len(end)].strip(" ")
    hour, mark, minute = text.partition(":")
    if not mark:
        minute = "00" if half else ""
    if not (_digits(hour, 1) and _digits(minute, 2)):
        return None
    hours, minutes = int(hour), int(minute)
    if minutes > 59 or hours > (12 if half else 23) or (half and hours == 0):
        return None
    if half:
        hours = hours % 12 + (12 if half == "p" else 0)
    return Clock(hours * 60 + minutes, half != "")


def _digits(text: str, least: int) -> bool:
    return least <= len(text) <= 2 and not [each for each in text if each not in "0123456789"]


class Typed:
    """A time read from what was typed: `clock` is None if it is none."""

    def __init__(self, text: str) -> None:
        self.clock = _read(text)
