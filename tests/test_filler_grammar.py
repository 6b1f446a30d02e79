"""The grammar of filler names: every name its tables make is read back, and no corrupted one is misread."""

import itertools
import random

import pytest

from calculators.facts import fillers
from calculators.filler_grammar import FORMS, Class, Reading
from calculators.filler_name import Meaning
from calculators.filler_name_words import ENGLISH

SEED = 20_260
CORRUPTED = 12_000
LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789"


def combinations(row):
    """Return every tuple of symbols that a row makes."""
    return itertools.product(*[["" if each == "~" else each for each in slot.split(" ")] for slot in row[1:]])


def letters_of(name):
    return name.replace(" ", "").replace("-", "").upper()


def found_in(typed):
    """Return the class that a name is read as."""
    reading = Reading(typed)
    assert reading.found is not None, typed
    assert reading.fault is None, typed
    return reading.found


def fault_of(typed):
    """Return what is wrong with a name."""
    reading = Reading(typed)
    assert reading.found is None, typed
    assert reading.fault is not None, typed
    return reading.fault


@pytest.fixture(scope="module")
def classes():
    """Every class that the tables make."""
    return [Class(row, symbols) for row in FORMS for symbols in combinations(row)]


def test_there_are_tens_of_thousands_and_no_two_are_written_alike(classes):
    assert len(classes) > 80_000
    assert len({letters_of(each.name) for each in classes}) == len(classes)


def test_every_name_of_the_tables_is_read_back(classes):
    for each in classes:
        found = found_in(each.name)
        assert (found.system, found.parts, found.name) == (each.system, each.parts, each.name)


def test_capitals_and_hyphens_do_not_matter(classes):
    chance = random.Random(SEED)
    for each in chance.sample(classes, 2000):
        for typed in (letters_of(each.name), each.name.lower(), each.name.replace("-", " ")):
            assert found_in(typed).parts == each.parts, typed


def test_no_name_of_the_tables_is_taken_for_another_standard_s(classes):
    chance = random.Random(SEED)
    for each in chance.sample(classes, 2000):
        body = "AWS " + each.system + " " + each.name if each.system[0] == "A" else each.system + "-" + each.name
        assert found_in(body).name == each.name, body


def corrupted(name, chance):
    """Return a name with one or two characters lost, doubled, swapped, replaced or put in."""
    for _ in range(chance.choice((1, 1, 1, 2))):
        place = chance.randrange(len(name))
        kind = chance.choice(("lose", "double", "swap", "replace", "insert"))
        if kind == "lose" and len(name) > 1:
            name = name[:place] + name[place + 1 :]
        elif kind == "double":
            name = name[:place] + name[place] + name[place:]
        elif kind == "swap" and place + 1 < len(name):
            name = name[:place] + name[place + 1] + name[place] + name[place + 2 :]
        elif kind == "replace":
            name = name[:place] + chance.choice(LETTERS) + name[place + 1 :]
        else:
            name = name[:place] + chance.choice(LETTERS) + name[place:]
    return name


def test_corrupted_names_are_other_valid_names_or_refused_naming_a_part(classes):
    chance = random.Random(SEED)
    valid = {letters_of(each.name): each for each in classes}
    beginnings = {letters[:3] for letters in valid}
    by_system: dict[str, list[Class]] = {}
    for each in classes:
        by_system.setdefault(each.system, []).append(each)
    systems = sorted(by_system)
    kinds = dict.fromkeys(("valid", "wrong", "missing", "extra", "elsewhere", "start"), 0)
    for number in range(CORRUPTED):
        name = corrupted(chance.choice(by_system[systems[number % len(systems)]]).name, chance)
        if letters_of(name) in valid:
            kinds["valid"] += 1
            assert found_in(name).parts == valid[letters_of(name)].parts, name
            continue
        fault = fault_of(name)
        kinds[fault.kind] += 1
        if fault.kind in ("wrong", "missing"):
            assert "part." + fault.part in ENGLISH, name
            assert fault.choices, name
            assert fault.before, name
        if fault.kind in ("wrong", "extra"):
            assert fault.typed, name
            assert letters_of(fault.before + fault.typed) in letters_of(name), name
        if fault.kind == "start":
            assert letters_of(name)[:3] not in beginnings, name
        if fault.kind == "elsewhere":
            assert fault.standard in [standard for standard, _ in fillers.ELSEWHERE], name
    assert all(kinds[kind] > 20 for kind in kinds), kinds


def test_what_is_said_may_stand_there_makes_a_valid_name_where_one_part_is_wrong(classes):
    """A choice put into the place of the wrong part mends the name, for at least one of the choices."""
    chance = random.Random(SEED)
    mended = 0
    for each in chance.sample(classes, 3000):
        place = chance.randrange(len(each.name))
        name = each.name[:place] + chance.choice("QVX") + each.name[place + 1 :]
        fault = Reading(name).fault
        if fault is None or fault.kind != "wrong" or not name.endswith(each.name[-1]):
            continue
        start = name.index(fault.before) + len(fault.before)
        after = name[start:].lstrip(" -")[len(fault.typed) :]
        if any(Reading(fault.before + choice + after).found for choice in fault.choices):
            mended += 1
    assert mended > 1000


def test_every_part_of_every_class_has_its_words(classes):
    chance = random.Random(SEED)
    some = [each for each in classes if each.system[0] == "A"]
    some += chance.sample([each for each in classes if each.system[0] == "I"], 3000)
    for each in some:
        meaning = Meaning(each)
        assert len(meaning.parts) == len(each.parts)
        for part, _, message in meaning.parts:
            assert message.id.partition(".")[2] in ENGLISH, (each.name, part, message.id)
            for key, value in message.parameters:
                assert value != "" or ".open." in message.id, (each.name, part, message.id, key)


def test_tables_hold_nothing_that_no_row_uses(classes):
    used = {(each.system, part, symbol) for each in classes for part, symbol in each.parts}
    for system, parts, symbols, _ in fillers.TOUGH:
        for part in parts.split(" "):
            assert any((system, part, symbol) in used for symbol in {s for _, p, s in used if p == part}), (
                system,
                part,
            )
        assert symbols
    strengths = {symbol for system, part, symbol in used if part == "strength" and system[0] == "A"}
    assert strengths == {symbol for symbols, _ in fillers.TENSILE for symbol in symbols.split(" ")}
