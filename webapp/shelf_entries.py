"""Name, place, title, question and search words of every calculator. The phone's bundle carries a file of this name
with them as literals: a cold phone would spend most of a second loading forty calculators only to list them.
"""

from calculators import made
from webapp import translations


def entries(language: str = "en") -> tuple[tuple[str, int, str, str, str], ...]:
    """Return (name, place, title, question, search words) of every calculator, in the order of the work."""
    found = []
    for module in made.CALCULATOR_MODULES:
        calculator = __import__("calculators." + module, None, None, ("CALCULATOR",)).CALCULATOR
        words = {**calculator.english, **translations.words_of(language, module)}
        found.append((calculator.place, calculator.name, words["title"], words["question"], words["found-by"]))
    return tuple((name, place, title, question, words) for place, name, title, question, words in sorted(found))
