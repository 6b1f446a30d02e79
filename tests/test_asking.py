"""Putting a question: what is read, what is refused and where, what is solved, and what is said of the answer."""

from typing import Any

import pytest

from calculators import asking, numerals, ranges, reading, units
from calculators.contract import (
    UNKNOWN,
    Answer,
    Calculator,
    Given,
    Measured,
    Message,
    Number,
    Quantity,
    Refusal,
    Relation,
    say,
)
from tests import walking
from webapp import shelf
from webapp.catalogue import Context, amount, sentence

pytestmark = [pytest.mark.quick, pytest.mark.usefixtures("specimen")]

CONTEXT = Context("en", "us", "")
# 6 in at 12 in/min takes half a minute; 250 in/min of wire for half a minute is 125 in, 3.175 m.
FILLET = {"joint": "fillet", "contact_tip_to_work": "15 mm"}
TYPED = {"weld_length": "6 in", "arc_time": "30 s", "travel_speed": "12 in/min"}
COHERENT = {"weld_length": 0.1524, "arc_time": 30.0, "travel_speed": 0.00508}
WIRE = {"wire_length": "3.175 m", "wire_feed_speed": "250 in/min"}
WIRE_COHERENT = {"wire_length": 3.175, "wire_feed_speed": 0.10583333333333333}


def put(asked: Calculator, pairs: list[tuple[str, str]]) -> Any:
    return asking.ask(asked, pairs)


def ask(*pairs: tuple[str, str], on: str = "specimen", **typed: str) -> Any:
    return put(walking.calculator(on), list(pairs) + list(typed.items()))


def filled(without=(), **more):
    """Return what answers the specimen (once one of TYPED is left out), with changes."""
    values = {**FILLET, **TYPED, **more}
    return {name: text for name, text in values.items() if name not in without}


def said(message):
    return sentence(message, CONTEXT).replace("\u00a0", " ")


def errors(reply):
    return {name: said(message) for name, message in reply.errors}


def close(value):
    return pytest.approx(value, rel=1e-9)


# ---------------------------------------------------------------- leave one blank


@pytest.mark.parametrize("blank", TYPED)
def test_any_one_of_a_relation_can_be_the_blank(blank):
    reply = ask(**filled(without=[blank]))
    assert reply.state == "answer"
    assert reply.given.solved_for == blank
    assert reply.given.number(blank) == close(COHERENT[blank])
    assert reply.given.made == [blank]
    assert reply.agreement is None
    assert reply.answer.results[0].name == blank


@pytest.mark.parametrize("blank", WIRE)
def test_a_relation_that_is_not_required_is_solved_once_one_of_its_own_is_given(blank):
    wire = {name: text for name, text in WIRE.items() if name != blank}
    reply = ask(**filled(without=["arc_time"], **wire))
    assert reply.given.number(blank) == close(WIRE_COHERENT[blank])
    assert reply.given.solved_for == "arc_time"


def test_a_relation_that_is_not_required_stays_out_while_its_own_are_blank():
    reply = ask(**filled(without=["arc_time"]))
    assert reply.state == "answer"
    assert not reply.given.has("wire_length")


def test_one_relation_can_fill_the_blank_of_another():
    reply = ask(**filled(without=["arc_time", "weld_length"], **WIRE))
    assert reply.given.number("arc_time") == close(30.0)
    assert reply.given.number("weld_length") == close(0.1524)
    assert reply.given.solved_for == "weld_length"


HEAT = {"voltage": "24 V", "current": "180 A", "travel_speed": "5 mm/s", "heat_input": "691.2 J/mm"}
HEAT_COHERENT = {"voltage": 24.0, "current": 180.0, "travel_speed": 0.005, "heat_input": 691200.0}


@pytest.mark.parametrize("blank", HEAT)
def test_heat_input_from_any_three(blank):
    # 0.8 x 24 V x 180 A / 5 mm/s = 691.2 J/mm
    reply = ask(on="heat-input", **{name: text for name, text in HEAT.items() if name != blank})
    assert reply.given.solved_for == blank
    assert reply.given.number(blank) == close(HEAT_COHERENT[blank])


def relations():
    return [(name, at) for name in shelf.names() for at in range(len(walking.calculator(name).relations))]


@pytest.mark.parametrize(("name", "at"), relations())
def test_every_relation_on_the_shelf_can_be_turned_round(name, at):
    """Solve for one field, then for another from the first: solving for the first again must give it back."""
    asked = walking.calculator(name)
    relation = asked.relations[at]
    solved = set()
    for pairs, came in walking.answered(name):
        first = solved_by(asked, relation, pairs, came)
        for second in relation.fields if first else ():
            there = walking.turned_round(asked, pairs, came, relation, second)
            went = put(asked, there)
            if second == first or went.state != "answer" or solved_by(asked, relation, there, went) != second:
                continue
            again = walking.turned_round(asked, there, went, relation, first)
            back = put(asked, again)
            if back.state == "answer" and solved_by(asked, relation, again, back) == first:
                if back.given.number(first) == pytest.approx(came.given.number(first), rel=1e-6):
                    continue
                # A limit cut the second short, a thin cord for one: then what it was cut to must stay.
                third = put(asked, walking.turned_round(asked, again, back, relation, second))
                assert third.given.number(second) == pytest.approx(went.given.number(second), rel=1e-6), (pairs, second)
        solved.add(first)
    assert solved - {None}, "no question made at random was solved by it"


def solved_by(asked, relation, pairs, reply):
    """Return the one field that a relation filled in, not `prepare` nor another relation, or None."""
    given = read(asked, pairs)[0]
    if asked.prepare is not None:
        asked.prepare(given)
    made = [name for name in relation.fields if name in reply.given.made and name not in given.made]
    if len(made) != 1 or not all(reply.given.has(name) for name in relation.fields):
        return None
    others = {name: value for name, value in asking._numbers(relation, reply.given).items() if name != made[0]}
    return made[0] if relation.solve(made[0], others) == close(reply.given.number(made[0])) else None


def read(asked, pairs):
    """Return what is read of pairs, and the errors beside their boxes."""
    given = Given()
    found: list[tuple[str, Message]] = []
    reading.read_fields(asked, asked.fields, reading.last_typed(pairs), "", given, found)
    return given, dict(found)


# ---------------------------------------------------------------- blanks that are asked for


def test_two_blanks_ask_for_one_of_them():
    reply = ask(**filled(without=["arc_time", "weld_length"]))
    assert (reply.state, reply.answer) == ("waiting", None)
    assert said(reply.waiting) == "Waiting for one of: Weld length or Arc time"


def test_three_blanks_ask_for_two_of_them():
    reply = ask(**FILLET)
    assert said(reply.waiting) == "Waiting for 2 of: Weld length, Arc time or Travel speed"


def test_two_blanks_of_an_optional_relation_ask_too():
    reply = ask(**filled(without=["arc_time", "travel_speed"], wire_length="3.175 m"))
    assert reply.state == "waiting"
    assert said(reply.waiting) == "Waiting for one of: Arc time or Travel speed"


def test_a_compulsory_choice_is_waited_for():
    assert said(ask(**filled(without=["joint", "arc_time"])).waiting) == "Waiting for: Joint"


def test_a_field_outside_the_relations_is_waited_for():
    assert (
        said(ask(**filled(without=["contact_tip_to_work", "arc_time"])).waiting) == "Waiting for: Contact tip to work"
    )


@pytest.mark.parametrize(
    "typed",
    [{}, {"position": "flat"}, {"weld_length": " \u00a0"}, {"units": "si"}, {"arc_time_unit": "s"}, {"what": "1"}],
)
def test_nothing_asked_is_blank_and_no_error(typed):
    reply = ask(**typed)
    assert (reply.state, reply.errors, reply.waiting) == ("blank", [], None)


def test_another_choice_than_the_default_is_a_question_begun():
    assert ask(position="vertical").state == "waiting"


# ---------------------------------------------------------------- no blank


@pytest.mark.parametrize(
    ("typed", "id", "percent"),
    [
        ("30 s", "agree.yes", 0.0),
        ("30.3 s", "agree.yes", 1.0),
        ("29.7 s", "agree.yes", 1.0),
        ("30.31 s", "agree.over", 1.0333333),
        ("33 s", "agree.over", 10.0),
        ("27 s", "agree.under", 10.0),
        ("1 min", "agree.over", 100.0),
    ],
)
def test_no_blank_says_whether_the_numbers_agree_and_by_how_much(typed, id, percent):
    reply = ask(**filled(arc_time=typed))
    assert (reply.state, reply.agreement.id) == ("answer", id)
    parameters = dict(reply.agreement.parameters)
    assert parameters["percent"].value == pytest.approx(percent, rel=1e-5)
    assert parameters["reckoned"].value == close(30.0)
    assert reply.given.solved_for is None
    assert reply.given.made == []


def test_disagreement_reads_as_a_sentence_in_the_unit_typed():
    assert said(ask(**filled(arc_time="33 s")).agreement) == (
        "Your numbers do not agree: Arc time comes to 30 s from the others. You typed 33 s, 10 % more."
    )


@pytest.mark.parametrize("wire_length", ["3.175 m", "2.54 m"])
def test_a_disagreement_is_not_hidden_by_another_relation(wire_length):
    # 33 s against 30 s from the travel; the wire agrees with 33 s only at 3.4925 m.
    reply = ask(**filled(arc_time="33 s", wire_feed_speed="250 in/min", wire_length=wire_length))
    assert "Arc time" in said(reply.agreement)
    agreeing = ask(**filled(arc_time="33 s", wire_feed_speed="250 in/min", wire_length="3.4925 m"))
    assert agreeing.agreement.id == "agree.over"


def test_a_disagreement_of_the_second_relation_is_told():
    reply = ask(**filled(wire_feed_speed="250 in/min", wire_length="2.54 m"))
    assert reply.agreement.id == "agree.under"
    assert "Wire length" in said(reply.agreement)


# ---------------------------------------------------------------- fields that hang on a choice


def test_a_conditional_value_without_its_choice_asks_for_the_choice():
    reply = ask(**filled(without=["arc_time", "joint"], thickness="6 mm"))
    assert errors(reply) == {"joint": "Choose Joint: it decides how Thickness is used"}


def test_a_conditional_choice_without_its_choice_asks_for_it_once():
    reply = ask(**filled(without=["arc_time", "joint"], thickness="6 mm", groove="vee"))
    assert list(errors(reply)) == ["joint"]
    assert len(reply.errors) == 1


def test_a_conditional_value_of_another_choice_is_left_out():
    reply = ask(**filled(without=["arc_time"], thickness="6 mm", groove="vee"))
    assert reply.state == "answer"
    assert not reply.given.has("thickness")
    assert not reply.given.has("groove")


def test_a_conditional_field_is_waited_for_once_its_choice_is_made():
    reply = ask(**filled(without=["arc_time"], joint="butt"))
    assert said(reply.waiting) == "Waiting for: Thickness"
    reply = ask(**filled(without=["arc_time"], joint="butt", thickness="6 mm"))
    assert reply.given.number("thickness") == close(0.006)
    assert reply.given.word("groove") == "square"


def test_a_wrong_choice_is_told_once_and_lists_the_words():
    reply = ask(**filled(without=["arc_time"], joint="lap", thickness="6 mm"))
    assert errors(reply) == {"joint": "Joint must be one of: butt, fillet"}


# ---------------------------------------------------------------- units


@pytest.mark.parametrize("text", ["6 furlong", "6 s", "6 mm mm", "6 kg", "6 in/min", "6 %"])
def test_an_unknown_or_unfit_unit_names_those_offered(text):
    unit = text.partition(" ")[2]
    told = {"weld_length": f"Weld length cannot be read in \u201c{unit}\u201d. Use in, ft, mm or m"}
    assert errors(ask(weld_length=text)) == told


def test_a_unit_on_a_bare_number_is_refused_in_words():
    assert "pass_count" in errors(ask(pass_count="3 mm"))


@pytest.mark.parametrize(
    ("typed", "value"),
    [
        ({"weld_length": "6 in"}, 0.1524),
        ({"weld_length": '6"'}, 0.1524),
        ({"weld_length": "6 Inches"}, 0.1524),
        ({"weld_length": "152,4mm"}, 0.1524),
        ({"weld_length": "0.5ft"}, 0.1524),
        ({"weld_length": "6", "weld_length_unit": "in"}, 0.1524),
        ({"weld_length": "152.4", "weld_length_unit": ""}, 0.1524),
        ({"weld_length": "152.4", "weld_length_unit": "furlong"}, 0.1524),
        ({"weld_length": "152.4 mm", "weld_length_unit": "in"}, 0.1524),
        ({"weld_length": "6", "weld_length_unit": " in\u00a0"}, 0.1524),
        ({"weld_length": "1 1/2 ft"}, 0.4572),
        ({"metal_temperature": "32 degF"}, 273.15),
        ({"metal_temperature": "\u22124 \u00b0F"}, 253.15),
        ({"operating_factor": "30 %"}, 0.3),
        ({"operating_factor": "0.3"}, 0.3),
    ],
)
def test_a_unit_comes_from_the_text_else_from_its_box_else_it_is_the_default(typed, value):
    reply = ask(**typed)
    assert reply.errors == []
    assert reply.given.number(next(iter(typed))) == close(value)


def test_the_answer_is_shown_in_the_unit_typed_or_chosen():
    reply = ask(**filled(without=["arc_time"], arc_time_unit="s"))
    assert reply.given.units["weld_length"] == "in"
    assert reply.given.units["arc_time"] == "s"


# ---------------------------------------------------------------- numbers


def test_a_comma_that_could_be_either_is_asked_about():
    told = {"weld_length": "Weld length could be 1234 or 1.234. Type one of these"}
    assert errors(ask(weld_length="1,234 mm")) == told
    assert ask(weld_length="1234 mm").errors == [] == ask(weld_length="1.234 mm").errors


@pytest.mark.parametrize(
    ("text", "id"),
    [
        ("1.234,5", "number.two-marks"),
        ("1,2,3", "number.two-marks"),
        ("six", "number.unreadable"),
        ("1/0", "number.fraction"),
        ("-", "number.unreadable"),
        ("1234567890123456", "number.too-long"),
        ("1e99", "number.too-long"),
        ("\u0663", "number.unreadable"),
        ("9" * 201, "text.too-long"),
        ("unknown", "number.unreadable"),
    ],
)
def test_what_cannot_be_read_is_told_beside_its_box(text, id):
    reply = ask(weld_length=text)
    assert reply.state == "problem"
    assert [(name, message.id) for name, message in reply.errors] == [("weld_length", id)]
    assert said(reply.errors[0][1]).startswith("Weld length ")


def test_every_wrong_box_is_told_in_the_order_of_the_form():
    reply = ask(travel_speed="fast", weld_length="long", position="up", arc_time="30 s")
    assert [name for name, _ in reply.errors] == ["position", "weld_length", "travel_speed"]


@pytest.mark.parametrize(
    ("text", "value"), [("3", 3.0), ("3.0", 3.0), ("200 %", 2.0), ("2.5", None), ("150 %", None), ("1/2", None)]
)
def test_a_whole_number_is_whole_whatever_its_unit(text, value):
    reply = ask(pass_count=text)
    if value is None:
        assert errors(reply) == {"pass_count": "Passes must be a whole number"}
    else:
        assert reply.given.number("pass_count") == value


def test_text_is_kept_as_typed():
    assert (
        ask(remark="\u00bd coupler, 1\u00a0000 \u2212 <b>").given.word("remark")
        == "\u00bd coupler, 1\u00a0000 \u2212 <b>"
    )


def test_text_has_a_longest():
    assert ask(remark="x" * 40).errors == []
    assert errors(ask(remark="x" * 41)) == {"remark": "Remark must be 40 characters or fewer"}


# ---------------------------------------------------------------- a name more than once


def test_a_preset_button_after_its_own_box_wins():
    reply = ask(("weld_length", "8"), ("weld_length_unit", "mm"), ("weld_length", "6 in"))
    assert reply.given.number("weld_length") == close(0.1524)


@pytest.mark.parametrize("empty", ["", " ", "\u00a0", "\t"])
def test_an_empty_box_after_a_value_does_not_empty_it(empty):
    assert ask(("weld_length", "6 in"), ("weld_length", empty)).given.number("weld_length") == close(0.1524)


# ---------------------------------------------------------------- limits


def problem_of(name, box, text):
    """Return the message beside a box when only it and the choice it hangs on are filled in."""
    pairs = [(box, text), *walking.choices_for(walking.calculator(name), box)]
    return read(walking.calculator(name), pairs)[1].get(box)


def test_limits_are_inside_in_every_unit_offered_and_just_beyond_them_is_not():
    for name in shelf.names():
        for box, field in walking.boxes(walking.calculator(name)):
            if isinstance(field, Quantity):
                check_limits(name, box, field)


def exactly(value, unit):
    """Return a number with as many digits as may be typed, and its unit."""
    return f"{value:.15g} {unit}".strip()


def check_limits(name, box, field):
    for unit in field.quantity.units:
        low, high = (units.from_coherent(limit, unit) for limit in reading.limits(field))
        span = 1.0 if field.whole else 0.001 * (abs(low) + abs(high))
        for limit, beyond in ((low, low - span), (high, high + span)):
            at = f"{name} {box} {limit} {unit}"
            assert problem_of(name, box, exactly(limit, unit)) is None, at
            message = problem_of(name, box, exactly(beyond, unit))
            assert message is not None, f"{at}: {beyond} is let in"
            check_shown_limits(name, box, unit, message)


def check_shown_limits(name, box, unit, message):
    """What a refusal shows as the limits must be let in when typed."""
    if message.id not in ("number.between", "number.between-because"):
        return
    for key in ("low", "high"):
        shown = dict(message.parameters)[key]
        assert shown.unit == unit
        text = amount(shown, unit)
        assert problem_of(name, box, f"{text} {unit}") is None, f"{name} {box}: {text} {unit} is shown as allowed"


def test_a_refusal_by_range_names_both_ends_in_the_unit_typed():
    told = {"travel_speed": "Travel speed must be between 0.473 in/min and 236 in/min"}
    assert errors(ask(travel_speed="0.472 in/min")) == told
    assert ask(travel_speed="0.473 in/min").errors == []


def test_a_refusal_by_a_narrower_range_says_why():
    told = {"thickness": "Thickness must be between 0.100 mm and 50 mm: nobody tests thicker ones"}
    assert errors(ask(joint="butt", thickness="60 mm")) == told


# ---------------------------------------------------------------- rows


def test_rows_are_read_in_order_and_empty_ones_left_out():
    typed = {"extras-1-length": "2 in", "extras-3-kind": "seam", "extras-3-length": "3 in", "extras-3-gap": "1 mm"}
    rows = ask(**filled(without=["arc_time"], **typed)).given.rows("extras")
    assert [row.place for row in rows] == [1, 3]
    assert [row.number("length") for row in rows] == [close(0.0508), close(0.0762)]
    assert [row.word("kind") for row in rows] == ["tack", "seam"]
    assert rows[1].number("gap") == close(0.001)


def test_a_row_of_defaults_alone_is_no_row():
    reply = ask(**filled(without=["arc_time"], **{"extras-1-kind": "tack", "extras-2-length_unit": "in"}))
    assert reply.given.rows("extras") == []


def test_a_row_begun_is_waited_for():
    reply = ask(**filled(without=["arc_time"], **{"extras-2-name": "gate"}))
    assert said(reply.waiting) == "Waiting for: Length in row 2"


def test_an_error_in_a_row_names_its_box_and_row():
    told = {"extras-2-length": "Length in row 2 must be a number, like 6 or 6.5"}
    assert errors(ask(**{"extras-2-length": "-"})) == told


def test_a_conditional_field_of_a_row_asks_for_the_choice_of_that_row():
    told = {"extras-2-kind": "Choose Kind in row 2: it decides how Gap in row 2 is used"}
    assert errors(ask(**{"extras-2-gap": "1 mm", "kind": "seam", "extras-1-kind": "seam"})) == told


def test_rows_beyond_the_last_are_not_read():
    assert ask(**{"extras-4-length": "2 in", "extras-0-length": "2 in"}).state == "blank"


# ---------------------------------------------------------------- honestly unknown


@pytest.mark.parametrize("text", ["unknown", "Unknown", " UNKNOWN\u00a0"])
def test_unknown_is_an_answer_where_it_may_be(text):
    reply = ask(**filled(without=["arc_time"], contact_tip_to_work=text))
    assert reply.state == "answer"
    assert reply.given.values["contact_tip_to_work"] == UNKNOWN


def test_unknown_is_no_number_elsewhere():
    assert list(errors(ask(weld_length="unknown"))) == ["weld_length"]


# ---------------------------------------------------------------- solved values that cannot be


def test_a_solved_value_outside_the_range_is_refused_with_both_ends():
    reply = ask(**filled(without=["travel_speed"], weld_length="1 m", arc_time="1 s"))
    assert (reply.state, reply.answer) == ("problem", None)
    told = (
        "Travel speed would have to be 2360 in/min, from Weld length 1 m and Arc time 1 s. "
        "It must be between 0.473 in/min and 236 in/min. Check these numbers"
    )
    assert errors(reply) == {"": told}


def test_a_solved_value_at_the_limit_is_inside():
    reply = ask(**filled(without=["travel_speed"], weld_length="0.1 m", arc_time="1 s"))
    assert reply.given.number("travel_speed") == close(0.1)


# ---------------------------------------------------------------- small calculators for one thing each


def small(relations, answer=None, fields=None):
    """Return a calculator of arc time, weld length and travel speed under the specimen's words."""
    return Calculator(
        name="specimen",
        fields=fields or (Quantity("weld_length", low=0.0), Quantity("arc_time"), Quantity("travel_speed", low=0.0)),
        answer=answer or (lambda given: Answer((Number("arc_time", given.number("arc_time")),))),
        english=walking.calculator("specimen").english,
        sources=(),
        place=1,
        relations=relations,
    )


def quotient(unknown, values):
    if unknown == "arc_time":
        return values["weld_length"] / values["travel_speed"]
    if unknown == "weld_length":
        return values["travel_speed"] * values["arc_time"]
    return values["weld_length"] / values["arc_time"]


NAMES = ("weld_length", "arc_time", "travel_speed")


def test_a_division_by_nothing_is_a_refusal():
    asked = small((Relation(NAMES, quotient, check="arc_time"),))
    reply = put(asked, [("weld_length", "6 in"), ("travel_speed", "0 mm/s")])
    assert "would have to be endless" in errors(reply)[""]
    reply = put(asked, [("weld_length", "6 in"), ("travel_speed", "0 mm/s"), ("arc_time", "1 s")])
    assert "would have to be endless" in errors(reply)[""]


def test_numbers_that_should_come_to_nothing_are_compared():
    asked = small((Relation(NAMES, quotient, check="weld_length"),))
    nothing = [("travel_speed", "0 mm/s"), ("arc_time", "1 s")]
    assert put(asked, [*nothing, ("weld_length", "0 mm")]).agreement.id == "agree.yes"
    assert put(asked, [*nothing, ("weld_length", "5 mm")]).agreement.id == "agree.over"


def test_a_relation_without_a_check_says_nothing_of_agreement():
    asked = small((Relation(NAMES, quotient, check=""),))
    reply = put(asked, list(TYPED.items()))
    assert (reply.state, reply.agreement) == ("answer", None)


def test_a_relation_may_agree_within_more():
    asked = small((Relation(NAMES, quotient, check="arc_time", agree_within=0.2),))
    reply = put(asked, [*TYPED.items(), ("arc_time", "35 s")])
    assert reply.agreement.id == "agree.yes"


def test_a_relation_may_hang_on_more_than_its_fields():
    only_when_fast = Relation(
        NAMES, quotient, check="arc_time", takes_part=lambda given: given.number("arc_time") < 60.0
    )
    asked = small((only_when_fast,))
    assert put(asked, [("weld_length", "6 in"), ("arc_time", "30 s")]).given.has("travel_speed")


def test_a_relation_sees_the_fields_that_shape_it():
    def shaped(unknown, values):
        return quotient(unknown, values) * (2.0 if values["position"] == "vertical" else 1.0)

    whole = walking.calculator("specimen")
    asked = small(
        (Relation(NAMES, shaped, check="arc_time", also=("position",)),),
        fields=tuple(whole.field(name) for name in ("position", *NAMES)),
    )
    typed = [("weld_length", "6 in"), ("travel_speed", "12 in/min")]
    assert put(asked, typed).given.number("arc_time") == close(30.0)
    assert put(asked, [*typed, ("position", "vertical")]).given.number("arc_time") == close(60.0)
    agreeing = put(asked, [*typed, ("position", "vertical"), ("arc_time", "60 s")])
    assert agreeing.agreement.id == "agree.yes"


# ---------------------------------------------------------------- refusals from within the answer


def test_a_refusal_stands_beside_its_field():
    reply = ask(**filled(without=["weld_length"], position="vertical", arc_time="11 h"))
    assert errors(reply) == {"position": "Nobody holds a vertical fillet for 11 h"}


def test_a_formulas_range_stands_beside_its_field_in_the_unit_typed():
    reply = ask(**filled(without=["arc_time"], weld_length="2000 ft", travel_speed="1 m/min"))
    assert errors(reply) == {"weld_length": "Weld length must be between 0.00657 ft and 1640 ft"}


def test_a_formulas_range_of_something_that_is_no_field_stands_by_itself():
    reply = ask(**filled(without=["arc_time"], weld_length="400 m", travel_speed="100 mm/s"))
    told = {"": "The sum leaves the range where it holds (distance between ends). Check the numbers"}
    assert errors(reply) == told


@pytest.mark.parametrize(("low", "high"), [(None, 0.1), (0.2, None)])
def test_a_range_open_on_one_side_takes_the_fields_own_limit_there(low, high):
    def refuse(given):
        ranges.require("weld_length", given.number("weld_length"), low, high, "m")

    asked = small((), answer=refuse, fields=(Quantity("weld_length"),))
    reply = put(asked, [("weld_length", "0.15 m")])
    parameters: Any = dict(reply.errors[0][1].parameters)
    assert reply.errors[0][0] == "weld_length"
    assert parameters["low"].value == close(low or 0.001)
    assert parameters["high"].value == close(high or 1000.0)


def test_a_refusal_without_a_field_stands_by_itself():
    def refuse(given):
        raise Refusal("", say("specimen.caution"))

    reply = put(small((), answer=refuse, fields=(Quantity("weld_length"),)), [("weld_length", "1 m")])
    assert errors(reply) == {"": "Do not weld a specimen."}


# ---------------------------------------------------------------- what moves the answer


def moves(headline, **typed):
    """Return what is said to move a headline, a function of the given numbers."""

    def answer(given):
        return Answer((Number("arc_time", headline(given)),))

    fields = tuple(walking.calculator("specimen").field(name) for name in typed)
    reply = put(small((), answer=answer, fields=fields), list(typed.items()))
    assert reply.state == "answer", errors(reply)
    return None if reply.sensitivity is None else said(reply.sensitivity)


def test_the_number_that_moves_the_answer_most_is_named():
    reply = ask(**filled(without=["arc_time"]))
    assert (
        said(reply.sensitivity) == "Moves the answer most: Weld length. 10 % more gives 10 % more \u201cArc time\u201d."
    )


def test_numbers_that_move_it_alike_are_named_together():
    reply = ask(**filled(without=["weld_length"]))
    told = "Moves the answer most: Arc time and Travel speed. 10 % more gives 10 % more \u201cWeld length\u201d."
    assert said(reply.sensitivity) == told


def test_a_number_that_moves_it_down_is_said_to():
    told = moves(lambda given: 1.0 / given.number("travel_speed") / given.number("travel_speed"), travel_speed="5 mm/s")
    assert told == "Moves the answer most: Travel speed. 10 % more gives 17 % less \u201cArc time\u201d."


def test_what_hardly_moves_it_is_not_named():
    assert moves(lambda given: 100.0 + given.number("travel_speed"), travel_speed="5 mm/s") is None


def test_a_whole_number_is_not_named_since_it_cannot_be_10_percent_more():
    assert moves(lambda given: given.number("pass_count"), pass_count="3") is None


def test_a_temperature_is_not_named_since_nobody_reads_it_as_10_percent_more():
    assert moves(lambda given: given.number("metal_temperature"), metal_temperature="20 degC") is None


def test_a_number_that_may_not_be_10_percent_more_is_passed_over():
    def headline(given):
        ranges.require("weld_length", given.number("weld_length"), 0.0, 0.105, "m")
        return given.number("weld_length") * given.number("travel_speed")

    told = moves(headline, weld_length="100 mm", travel_speed="5 mm/s")
    assert told == "Moves the answer most: Travel speed. 10 % more gives 10 % more \u201cArc time\u201d."


def test_an_answer_without_a_number_is_moved_by_nothing():
    asked = small((), answer=lambda given: Answer(()), fields=(Quantity("weld_length"),))
    assert put(asked, [("weld_length", "1 m")]).sensitivity is None


def test_the_answer_shown_is_not_touched_by_asking_what_moves_it():
    reply = ask(**filled(without=["arc_time"]))
    assert reply.answer.results[0].value == close(30.0)
    assert isinstance(dict(reply.answer.working[0].parameters)["arc_time"], Measured)
    assert numerals.settle(reply.given.number("weld_length")) == 0.1524
