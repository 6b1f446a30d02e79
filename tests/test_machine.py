"""A dial as it is typed, and what is looked up on it. Expected numbers are read off by hand."""

import itertools

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from calculators import numerals, units
from calculators.contract import Given, Number, Refusal, Words
from calculators.machine import FeedDial, Machine, VoltageKnob, VoltageTaps
from calculators.machine_fields import KNOB, MARKS, TAPS
from webapp.catalogue import Context, sentence

pytestmark = pytest.mark.quick

CONTEXT = Context("en", "us", "0")
IN_PER_MIN = 0.0254 / 60.0


def place_of(dial, feed):
    """Return the place of a feed on a dial, [in/min]."""
    found = dial.mark(feed * IN_PER_MIN)
    assert found is not None, feed
    return found[0]


def refusal(text, dial=FeedDial):
    with pytest.raises(Refusal) as caught:
        dial(text)
    assert caught.value.field == ("feed_dial" if dial is FeedDial else "voltage_dial")
    return sentence(caught.value.message, CONTEXT)


def plain(message):
    return sentence(message, CONTEXT).replace("\u00a0", " ")


def machine(**fields):
    given = Given()
    given.values = dict(fields)
    return Machine(given)


# ---------------------------------------------------------------- as it is typed


@pytest.mark.parametrize(
    "text",
    [
        "1=120 3=210 5=310 in/min",
        "5=310 3=210 1=120 in/min",
        "1=120, 3=210, 5=310 in/min",
        "1 = 120; 3 = 210; 5 = 310 ipm",
        "1=120in/min 3=210in/min 5=310in/min",
        "1=120 in/min, 3=210 in/min, 5=310 in/min",
        "1=120 in/min 3=210 in/min 5=310 in/min",
        "1=120\u00a0 3=210  5=310,0 in/min",
        "1.0=120 in/min 3=210 in/min 5=7.874 m/min",
    ],
)
def test_a_feed_dial_is_read_however_it_is_spaced(text):
    dial = FeedDial(text)
    assert [place for place, _ in dial.rows] == [1.0, 3.0, 5.0]
    assert [feed / IN_PER_MIN for _, feed in dial.rows] == pytest.approx([120, 210, 310], rel=1e-4)


def test_what_is_written_is_read_back():
    for text in (MARKS, "0=2 2.5=3.75 10=12 m/min"):
        assert FeedDial(text).written() == text
    assert FeedDial("1=123.456 3=1210.44 in/min").written() == "1=123.5 3=1210 in/min"  # six seconds are no better
    for text in (TAPS, "low=15 high=21.25 V"):
        assert VoltageTaps(text).written() == text
    for text in (KNOB, "0=14.5 50=21 100=31 V"):
        assert VoltageKnob(text).written() == text


def test_twelve_marks_and_names_of_twelve_letters_are_taken():
    assert len(VoltageTaps(" ".join(f"{mark}={14 + mark}" for mark in range(12))).marks) == 12
    assert VoltageTaps("abcdefghijkl=16 B=18").nearest(15.0) == ("abcdefghijkl", 16.0)
    assert "Not so at: abcdefghijklm=16" in refusal("abcdefghijklm=16 B=18", VoltageTaps)


def test_taps_need_no_unit_since_there_is_one():
    assert VoltageTaps("A=16.5 B=18").written() == "A=16.5 B=18 V"


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "Give 2 to 12 marks, like 1=120 3=210 5=310 in/min"),
        ("1=120 in/min", "Give 2 to 12 marks"),
        (" ".join(f"{mark}={100 + mark}" for mark in range(13)) + " in/min", "Give 2 to 12 marks"),
        ("as found", "Not so at: as"),
        ("1=120 3=fast in/min", "Not so at: 3=fast"),
        ("1=120,3=210 in/min", "Not so at: 1=120,3=210"),
        ("1==120 3=210 in/min", "Not so at: 1==120"),
        ("=120 3=210 in/min", "Not so at: =120"),
        ("1=1,234 3=210 in/min", "Not so at: 1"),
        ("one=120 two=210 in/min", "Not so at: one"),
        ("-1=120 3=210 in/min", "Marks must be numbers from 0 to 1000, like 1=120 3=210 5=310 in/min. Not so at: -1"),
        ("1000.1=120 3=210 in/min", "Not so at: 1000.1"),
        ("1=120 3=210", "Marks need one of these units at the end: in/min m/min mm/s."),
        ("1=120 3=210 V", "Marks need one of these units"),
        ("1=120 3=210 in/min mm/s", "Not so at: mm/s"),
        ("1=120 1=210 in/min", "Mark 1 stands there twice"),
        ("1=120 1.0=210 in/min", "Mark 1.0 stands there twice"),
        ("1=120 3=110 in/min", "Mark 3 must feed faster than mark 1."),
        ("1=120 3=120 in/min", "Mark 3 must feed faster than mark 1."),
        ("1=12 3=120 in/min", "Mark 1 must be between 19.7"),
        ("1=1e9 3=120 in/min", "Mark 1 must be between 19.7"),
        ("1=0.1 3=120 m/min", "Mark 1 must be between 0.5 m/min and 40 m/min"),
    ],
)
def test_junk_is_answered_in_words(text, said):
    assert said in refusal(text).replace("\u00a0", " ")


def test_taps_that_are_no_taps_are_answered_in_words():
    assert "Mark A stands there twice" in refusal("A=16 A=18", VoltageTaps)
    assert "Mark B must be between 5" in refusal("A=16 B=180", VoltageTaps)
    assert "like A=16.5 B=18 C=19.5 V" in refusal("A16 B18", VoltageTaps)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("A=16 B=18 V", "Marks must be numbers from 0 to 1000, like 1=16 5=20.5 9=26 V. Not so at: A"),
        ("1=16 1.0=18", "Mark 1.0 stands there twice"),
        ("1=16 5=15.9", "Mark 5 must give more volts than mark 1. Measure both again"),
        ("5=16 1=16", "Mark 5 must give more volts than mark 1."),
        ("1=16 5=180", "Mark 5 must be between 5"),
        ("1=16", "Give 2 to 12 marks, like 1=16 5=20.5 9=26 V"),
    ],
)
def test_a_knob_that_cannot_be_read_between_its_marks_is_answered_in_words(text, said):
    assert said in refusal(text, VoltageKnob)


@given(st.text("0123456789=., ;in/minABV-e\u00a0\u00bd", max_size=40) | st.text(max_size=30))
@example("1=120 3=210 \u0130N/MIN")
@example("\u0661=120 2=210 in/min")
def test_a_dial_is_read_or_refused_whatever_is_typed(text):
    for dial in (FeedDial, VoltageTaps, VoltageKnob):
        try:
            read = dial(text)
        except Refusal as refused:
            assert sentence(refused.message, CONTEXT)
        else:
            assert 2 <= len(read.marks) <= 12
            again = dial(read.written())
            assert [value for _, value in again.marks] == pytest.approx([value for _, value in read.marks], rel=6e-4)


# ---------------------------------------------------------------- a mark for a feed


@pytest.mark.parametrize(
    ("feed", "place", "between"),
    [
        (120, 1.0, ("1", "1")),
        (165, 2.0, ("1", "3")),
        (210, 3.0, ("3", "3")),
        (260, 4.0, ("3", "5")),
        (310, 5.0, ("5", "5")),
        (120 + 1e-11, 1.0, ("1", "1")),
    ],
)
def test_a_feed_lies_straight_between_its_marks(feed, place, between):
    found = FeedDial(MARKS).mark(feed * IN_PER_MIN)
    assert found is not None
    assert found[0] == pytest.approx(place)
    assert found[1:] == between


@pytest.mark.parametrize(("feed", "said"), [(119.9, "slower than mark 1 (120"), (310.1, "faster than mark 5 (310")])
def test_nothing_is_said_beyond_the_first_and_the_last_mark(feed, said):
    mine = machine(machine="Red box", feed_dial=MARKS)
    assert FeedDial(MARKS).mark(feed * IN_PER_MIN) is None
    assert mine.feed_results(feed * IN_PER_MIN) == ()
    words = sentence(mine.words(feed * IN_PER_MIN), CONTEXT)
    assert words.startswith("Red box: off the feed dial, ") and said in words.replace("\u00a0", " ")


def test_the_end_of_a_dial_is_told_in_the_unit_it_was_measured_in():
    words = plain(machine(feed_dial="1=3 9=12 m/min").words(units.to_coherent(13.0, "m/min")))
    assert words.startswith("Your machine: off the feed dial, faster than mark 9 (12 m/min")


@given(st.lists(st.tuples(st.integers(0, 500), st.integers(30, 1500)), min_size=2, max_size=12), st.floats(0, 1))
def test_the_place_rises_with_the_feed_and_meets_every_mark(rows, share):
    places = sorted({place for place, _ in rows})
    feeds = sorted({feed for _, feed in rows})
    marks = list(zip(places, feeds, strict=False))
    if len(marks) < 2:
        return
    dial = FeedDial(" ".join(f"{place}={feed}" for place, feed in marks) + " in/min")
    for place, feed in marks:
        assert place_of(dial, feed) == pytest.approx(place)
    for (low, slow), (high, fast) in itertools.pairwise(marks):
        found = place_of(dial, slow + share * (fast - slow))
        assert low <= found <= high
        assert found == pytest.approx(low + share * (high - low), abs=1e-3)


def test_the_unit_of_the_dial_plays_no_part():
    feeds = [units.from_coherent(feed, "mm/s") for _, feed in FeedDial(MARKS).rows]
    metric = FeedDial(f"1={feeds[0]:.8g} 3={feeds[1]:.8g} 5={feeds[2]:.8g} mm/s")
    assert place_of(metric, 230.0) == pytest.approx(place_of(FeedDial(MARKS), 230.0), rel=1e-6)


def test_a_place_is_told_to_a_tenth_of_a_mark():
    words = sentence(machine(feed_dial=MARKS).words(216.5 * IN_PER_MIN), CONTEXT)
    assert words == "Your machine: feed dial 3.1, between 3 and 5"
    assert sentence(machine(feed_dial=MARKS).words(210 * IN_PER_MIN), CONTEXT) == "Your machine: feed dial 3"
    (result,) = machine(feed_dial="0=100 1000=400 in/min").feed_results(300 * IN_PER_MIN)
    assert isinstance(result, Number) and result.figures and result.label
    assert sentence(result.label, CONTEXT) == "Your machine: feed dial"
    assert numerals.significant(result.value, result.figures) == "667"
    (result,) = machine(feed_dial="0=100 1000=1100 in/min").feed_results(200.6 * IN_PER_MIN)
    assert numerals.significant(result.value, result.figures) == "101"


# ---------------------------------------------------------------- a tap for a voltage


@pytest.mark.parametrize(
    ("voltage", "said"),
    [
        (18.0, "tap B (18 V)"),
        (17.5, "tap B (18 V, 0.5 V high; A gives 16.5 V)"),
        (18.5, "tap B (18 V, 0.5 V low; C gives 19.5 V)"),
        (16.9, "tap A (16.5 V, 0.4 V low; B gives 18 V)"),
        (17.25, "tap A (16.5 V, 0.75 V low; B gives 18 V)"),  # as near to both: the lower
        (24.0, "tap C (19.5 V, 4.5 V low), the highest measured"),
        (14.0, "tap A (16.5 V, 2.5 V high), the lowest measured"),
        (16.25, "tap A (16.5 V, 0.25 V high), the lowest measured"),
        (17.8372, "tap B (18 V, 0.16 V high; A gives 16.5 V)"),
    ],
)
@pytest.mark.parametrize("dial", [TAPS, "C=19.5 A=16.5 B=18 V", "C=19.5 B=18 A=16.5 V"])
@pytest.mark.parametrize("control", [{}, {"voltage_control": "taps"}])
def test_the_nearest_tap_how_far_it_is_off_and_the_one_across(voltage, said, dial, control):
    (result,) = machine(machine="Red box", voltage_dial=dial, **control).voltage_results(voltage)
    assert isinstance(result, Words)
    assert plain(result.message) == said
    assert plain(result.label) == "Red box: voltage tap"


def test_of_the_taps_either_side_the_nearest_ones_are_named():
    words = plain(machine(voltage_dial="1=15 2=17 3=17.8 4=21 5=24 V").words(0.1, 19.0))
    assert words == "Your machine: tap 3 (17.8 V, 1.2 V low; 4 gives 21 V)"
    words = plain(machine(voltage_dial="1=15 2=17 3=17.8 4=21 5=24 V").words(0.1, 20.0))
    assert words == "Your machine: tap 4 (21 V, 1 V high; 3 gives 17.8 V)"


# ---------------------------------------------------------------- a mark of a knob for a voltage

# 16 V at 1 and 20.5 V at 5 are 1.125 V a mark, 26 V at 9 is 1.375 V a mark above that: by hand.
TURNED = [
    (16.0, "voltage knob 1", 1.0),
    (18.25, "voltage knob 3", 3.0),
    (20.5, "voltage knob 5", 5.0),
    (21.6, "voltage knob 5.8", 5.8),
    (26.0, "voltage knob 9", 9.0),
]


@pytest.mark.parametrize(("voltage", "said", "place"), TURNED)
def test_a_knob_is_read_between_its_marks(voltage, said, place):
    mine = machine(machine="Red box", voltage_dial=KNOB, voltage_control="knob")
    assert plain(mine.words(0.1, voltage)) == "Red box: " + said
    (result,) = mine.voltage_results(voltage)
    assert isinstance(result, Number) and result.name == "voltage_mark"
    assert result.value == pytest.approx(place)
    assert plain(result.label) == "Red box: voltage knob"


@pytest.mark.parametrize(("voltage", "wanted"), [(15.9, "15.9 V"), (26.1278, "26.1 V")])
def test_beyond_a_knob_s_marks_there_is_no_mark_and_the_range_is_named(voltage, wanted):
    mine = machine(voltage_dial=KNOB, voltage_control="knob")
    said = wanted + " is off the voltage knob, measured from 1 (16 V) to 9 (26 V)"
    assert plain(mine.words(0.1, voltage)) == "Your machine: " + said
    (result,) = mine.voltage_results(voltage)
    assert isinstance(result, Words) and plain(result.message) == said
    assert (result.name, plain(result.label)) == ("voltage_mark", "Your machine: voltage knob")


def test_a_knob_marked_in_volts_or_percent_is_told_to_a_tenth_of_a_volt_or_less():
    (volts,) = machine(voltage_dial="14=15 30=33 V", voltage_control="knob").voltage_results(19.0)
    assert numerals.significant(volts.value, volts.figures) == "17.6"  # 14 + 4 x 16 / 18
    (low,) = machine(voltage_dial="0=15 10=33 V", voltage_control="knob").voltage_results(19.0)
    assert numerals.significant(low.value, low.figures) == "2.2"
    (ten,) = machine(voltage_dial="0=15 20=33 V", voltage_control="knob").voltage_results(24.0)
    assert numerals.significant(ten.value, ten.figures) == "10"
    assert ten.figures == 3


@given(st.lists(st.tuples(st.integers(0, 100), st.integers(120, 400)), min_size=2, max_size=12), st.floats(0, 1))
def test_the_place_of_a_knob_gives_the_volts_wanted(rows, share):
    places, volts = sorted({place for place, _ in rows}), sorted({value / 10 for _, value in rows})
    marks = list(zip(places, volts, strict=False))
    if len(marks) < 2:
        return
    text = " ".join(f"{place}={value}" for place, value in marks) + " V"
    wanted = marks[0][1] + share * (marks[-1][1] - marks[0][1])
    (result,) = machine(voltage_dial=text, voltage_control="knob").voltage_results(wanted)
    for (low, less), (high, more) in itertools.pairwise(marks):
        if low <= result.value <= high:
            given = less + (result.value - low) / (high - low) * (more - less)
            assert given == pytest.approx(wanted, abs=1e-6)
            return
    raise AssertionError(result.value)


# ---------------------------------------------------------------- read on the machine or at the gun


@pytest.mark.parametrize("where", [{}, {"voltage_read_at": "machine"}])
@pytest.mark.parametrize("control", ["taps", "knob"])
def test_of_volts_read_on_the_machine_what_the_leads_lose_comes_on_top(where, control):
    mine = machine(voltage_dial="1=16 5=20 9=24 V", voltage_control=control, **where)
    said = {"taps": "tap 5 (20 V)", "knob": "voltage knob 5"}[control]
    assert plain(mine.words(0.1, 18.0, 2.0)) == "Your machine: " + said
    (result,) = mine.voltage_results(18.0, 2.0)
    assert result.name == "voltage_" + {"taps": "tap", "knob": "mark"}[control]
    assert mine.voltage_notes(True) == ()
    (note,) = mine.voltage_notes(False)
    assert "nothing is added for the leads" in plain(note)


@pytest.mark.parametrize("drop", [0.0, 2.0, 4.0])
def test_volts_read_at_the_gun_hold_the_leads_already(drop):
    mine = machine(voltage_dial="1=16 5=20 9=24 V", voltage_control="taps", voltage_read_at="gun")
    assert plain(mine.words(0.1, 19.0, drop)) == "Your machine: tap 5 (20 V at the gun, 1 V high; 1 gives 16 V)"
    knob = machine(voltage_dial="1=16 5=20 9=24 V", voltage_control="knob", voltage_read_at="gun")
    assert plain(knob.words(0.1, 19.0, drop)) == "Your machine: voltage knob 4"
    assert knob.voltage_results(19.0, drop)[0].value == pytest.approx(4.0)
    assert "1 (16 V at the gun) to 9 (24 V at the gun)" in plain(knob.words(0.1, 25.0, drop))
    for known in (True, False):
        (note,) = knob.voltage_notes(known)
        assert "what the leads lose is in them already" in plain(note)


@pytest.mark.parametrize(
    ("dial", "control", "told"),
    [
        ("1=16 5=20 V", "", True),
        ("1=16 5=20 V", "taps", False),
        ("1=16 5=20 V", "knob", False),
        ("low=16 5=20 V", "", False),  # a name is a tap's
    ],
)
def test_an_old_link_s_numbered_marks_are_taken_as_taps_and_that_is_said(dial, control, told):
    mine = machine(voltage_dial=dial, voltage_control=control)
    assert ("machine.as-taps" in [note.id for note in mine.voltage_notes(True)]) is told
    if not control:
        assert (
            plain(mine.words(0.1, 19.0))
            == "Your machine: tap 5 (20 V, 1 V high; " + dial.split("=")[0] + " gives 16 V)"
        )


def test_both_knobs_stand_in_one_line():
    mine = machine(machine="Red box", feed_dial=MARKS, voltage_dial=TAPS)
    both = plain(mine.words(165 * IN_PER_MIN, 17.9))
    assert both == "Red box: feed dial 2; tap B (18 V, 0.1 V high; A gives 16.5 V)"
    assert plain(machine(voltage_dial=TAPS).words(165 * IN_PER_MIN, 18.0)) == "Your machine: tap B (18 V)"
    assert machine(voltage_dial=TAPS).words(165 * IN_PER_MIN) is None


def test_taps_may_stand_in_any_order():
    assert VoltageTaps("C=19.5 A=16.5 B=18").nearest(17.25) == ("A", 16.5)


def test_a_machine_of_which_nothing_is_known_says_nothing():
    mine = machine()
    assert (mine.words(0.1), mine.feed_results(0.1), mine.voltage_results(18.0)) == (None, (), ())
    assert (mine.notes(), mine.carried(), mine.voltage_notes(False)) == ((), (), ())


def test_a_machine_known_by_name_alone_says_so():
    assert plain(machine(machine="Red box").notes()[0]).startswith("Red box: neither its marks nor how it melts wire")
    for known in ({"feed_dial": MARKS}, {"voltage_dial": TAPS}, {"voltage_dial": KNOB, "voltage_control": "knob"}):
        assert machine(machine="Red box", **known).notes() == ()


def test_a_trim_is_told_to_three_figures_and_what_was_not_fitted_is_one():
    (note,) = machine(arc_term=1.0837).notes()
    assert plain(note).startswith("Your machine: arc term × 1.08 and resistance term × 1, from its own pairs.")


def test_a_trim_of_another_metal_is_left_out_where_the_wire_is_known():
    trimmed = {"machine": "Red box", "arc_term": 1.1, "trim_material": "stainless"}
    for fits in ({}, {"wire_material": "stainless"}):
        assert machine(**trimmed, **fits).trim == {"arc_term": 1.1}
        assert plain(machine(**trimmed, **fits).notes()[0]).startswith("Red box: arc term × 1.1 and")
    other = machine(**trimmed, wire_material="mild-steel")
    assert other.trim == {}
    assert [plain(note)[:60] for note in other.notes()] == [
        "Red box: how it melts wire was measured with another wire me"
    ]
    assert {"arc_term", "trim_material"} < set(dict(other.carried())), "the next question may be about its own metal"
    assert machine(machine="Red box", trim_material="stainless", wire_material="mild-steel").left_out is False


def test_a_machine_is_carried_to_the_next_question_whole():
    fields = {"machine": "Red box", "feed_dial": MARKS, "arc_term": 1.1, "trim_band": 0.06, "voltage_dial": KNOB}
    fields |= {"voltage_control": "knob", "voltage_read_at": "gun"}
    carried = dict(machine(**fields).carried())
    assert set(carried) == set(fields)
    assert (carried["machine"], carried["feed_dial"]) == ("Red box", MARKS)
    assert (carried["voltage_dial"], carried["voltage_control"], carried["voltage_read_at"]) == (KNOB, "knob", "gun")
    assert (carried["arc_term"].value, carried["trim_band"].value) == (1.1, 0.06)
    assert (carried["arc_term"].quantity.name, carried["trim_band"].quantity.name) == ("trim_factor", "percentage")
