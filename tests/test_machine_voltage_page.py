"""Taps or a stepless knob: measured in machine-trim, told by settings and arc-voltage. Numbers by hand."""

import json
from urllib.parse import parse_qsl, urlsplit

import pytest

from calculators import asking, machine_fields, machine_trim
from tests import walking
from tests.html_reading import Page
from webapp import pocket
from webapp.catalogue import Context, sentence

CONTEXT = Context("en", "us", "0")
# 2 V a mark, all the way.
READ = {"taps-1-tap": "2", "taps-1-voltage": "14", "taps-2-tap": "8", "taps-2-voltage": "26"}
KNOB = {"machine": "Shop", "voltage_dial": "2=14 8=26 V", "voltage_control": "knob"}
EIGHTH = {"thickness": "1/8 in"}


def api(calculator, status=200, **typed):
    request = pocket.Request("/api/" + calculator, [*typed.items(), ("units", "us")], False)
    reply = pocket.respond(request, "en", "0")
    assert reply.status == status, reply.body
    return json.loads(reply.body.replace("\\u00a0", " "))


def measure(**typed):
    return asking.ask(machine_trim.CALCULATOR, list({**READ, **typed}.items()))


def problem(**typed):
    reply = measure(**typed)
    assert reply.state == "problem"
    ((field, message),) = reply.errors
    return field, sentence(message, CONTEXT)


def kept(**typed):
    """Return what the page offers to keep."""
    body = pocket.respond(pocket.Request("/machine-trim", list({**READ, **typed}.items()), True), "en", "0").body
    (offer,) = [each for each in Page(body).elements if "data-keeping" in each.attributes]
    return dict(parse_qsl(offer.attributes["data-keeping"]))


# ---------------------------------------------------------------- measuring it


def test_numbered_marks_alone_do_not_tell_taps_from_a_knob():
    field, said = problem()
    assert (field, said) == ("voltage_control", "Choose taps or knob: its marks alone do not tell")


def test_named_marks_are_taps_without_being_asked():
    assert kept(**{"taps-1-tap": "low"})["voltage_control"] == "taps"


def test_a_knob_is_kept_with_where_its_volts_were_read():
    assert kept(voltage_control="knob", machine="Shop") == {**KNOB, "voltage_read_at": "machine"}
    at_gun = kept(voltage_control="knob", voltage_read_at="gun")
    assert (at_gun["voltage_control"], at_gun["voltage_read_at"]) == ("knob", "gun")


def test_a_mark_between_two_may_be_typed_with_a_comma():
    assert kept(voltage_control="knob", **{"taps-1-tap": "1,5"})["voltage_dial"] == "1,5=14 8=26 V"


def test_what_is_kept_replaces_whatever_was_said_before_of_the_voltage():
    """The page adds new readings to a kept machine by field: each must be there, or an old one would stay."""
    for typed in ({"voltage_control": "taps"}, {"voltage_control": "knob", "voltage_read_at": "gun"}):
        assert {field.name for field in machine_fields.VOLTAGE_FIELDS} <= set(kept(**typed))


@pytest.mark.parametrize(
    ("typed", "field", "said"),
    [
        ({"taps-2-tap": "high"}, "taps-2-tap", "Marks must be numbers from 0 to 1000"),
        ({"taps-2-tap": "2.0"}, "", "Mark 2.0 stands there twice"),
        ({"taps-2-voltage": "13"}, "", "Mark 8 must give more volts than mark 2"),
        ({"taps-2-voltage": "14"}, "", "Mark 8 must give more volts than mark 2"),
    ],
)
def test_a_knob_that_cannot_be_one_is_answered_in_words(typed, field, said):
    found = problem(voltage_control="knob", **typed)
    assert found[0] == field
    assert said in found[1]


def test_measuring_at_the_gun_is_cautioned():
    def cautions(**typed):
        return [message.id for message in measure(voltage_control="knob", **typed).answer.cautions]

    assert "caution.gun-meter" in cautions(voltage_read_at="gun")
    assert "caution.gun-meter" not in cautions()


def test_the_machine_is_carried_to_where_it_is_set():
    (link,) = [each for each in measure(voltage_control="knob").answer.next_questions if each.calculator == "settings"]
    assert dict(link.carried) == {
        "voltage_dial": "2=14 8=26 V",
        "voltage_control": "knob",
        "voltage_read_at": "machine",
    }


# ---------------------------------------------------------------- settings


def test_settings_tell_the_place_of_the_knob_between_its_marks():
    found = api("settings", **EIGHTH, **KNOB)["results"]
    volts = found["voltage"]["value"]
    assert found["voltage_mark"]["value"] == pytest.approx(2.0 + (volts - 14.0) / 2.0)
    assert found["wire_feed_speed"]["text"].endswith("Shop: voltage knob " + f"{found['voltage_mark']['value']:.2g}")
    assert "voltage_tap" not in found


def test_a_knob_taken_as_taps_was_volts_off_and_is_not_now():
    """The fault: the nearest of two marks was the answer, here some 4 V off. A knob stands anywhere between."""
    as_taps = api("settings", **EIGHTH, **{**KNOB, "voltage_control": ""})["results"]
    volts = as_taps["voltage"]["value"]
    assert min(volts - 14.0, 26.0 - volts) > 3.0
    assert "low; 8 gives 26 V)" in as_taps["voltage_tap"]["text"]
    place = api("settings", **EIGHTH, **KNOB)["results"]["voltage_mark"]["value"]
    assert 14.0 + 2.0 * (place - 2.0) == pytest.approx(volts)


@pytest.mark.parametrize(("where", "marks"), [("", 1.0), ("machine", 1.0), ("gun", 0.0)])
def test_what_the_leads_lose_is_added_once(where, marks):
    """2 V lost are one mark more where the volts were read on the machine; read at the gun they are in already."""
    typed = {**EIGHTH, **KNOB, "voltage_read_at": where}
    plain = api("settings", **typed)["results"]["voltage_mark"]["value"]
    long = api("settings", **typed, lead_voltage_drop="2 V")["results"]["voltage_mark"]["value"]
    assert long - plain == pytest.approx(marks)


def test_leads_that_were_not_told_are_named():
    def said(**typed):
        return " ".join(api("settings", **EIGHTH, **KNOB, **typed)["notes"])

    assert "nothing is added for the leads" in said()
    assert "nothing is added for the leads" not in said(lead_voltage_drop="2 V")
    assert "what the leads lose is in them already" in said(voltage_read_at="gun")
    assert "nothing is added for the leads" not in said(voltage_read_at="gun")


def test_volts_off_the_knob_are_not_guessed():
    found = api("settings", **EIGHTH, **{**KNOB, "voltage_dial": "2=21 8=26 V"})["results"]
    assert "is off the voltage knob, measured from 2 (21 V) to 8 (26 V)" in found["voltage_mark"]["text"]
    assert "value" not in found["voltage_mark"]


def test_an_old_link_is_read_as_it_was_and_says_so():
    old = {"machine": "Shop", "voltage_dial": "2=14 5=18 8=26 V"}
    found = api("settings", **EIGHTH, **old)
    assert found["results"]["voltage_tap"]["text"].startswith("tap 5 (18 V")
    assert any(note.startswith("Its voltage marks are taken as taps") for note in found["notes"])
    assert not [note for note in api("settings", **EIGHTH, **old, voltage_control="taps")["notes"] if "as taps" in note]


@pytest.mark.parametrize("calculator", ["settings", "arc-voltage"])
def test_a_knob_with_names_is_refused_in_its_box(calculator):
    typed = {**KNOB, "voltage_dial": "A=14 B=26 V"}
    more = EIGHTH if calculator == "settings" else {"machine_voltage": "20", "voltage": "19"}
    assert list(api(calculator, 422, **typed, **more)["errors"]) == ["voltage_dial"]


# ---------------------------------------------------------------- arc voltage


def test_arc_voltage_tells_where_the_volts_asked_for_stand():
    found = api("arc-voltage", voltage="18 V", lead_voltage_drop="2 V", **KNOB)["results"]
    assert found["machine_voltage"]["value"] == pytest.approx(20.0)
    assert found["voltage_mark"]["value"] == pytest.approx(5.0)
    at_gun = api("arc-voltage", voltage="18 V", lead_voltage_drop="2 V", voltage_read_at="gun", **KNOB)["results"]
    assert at_gun["voltage_mark"]["value"] == pytest.approx(4.0)
    taps = api("arc-voltage", voltage="18 V", lead_voltage_drop="2 V", **{**KNOB, "voltage_control": "taps"})["results"]
    assert taps["voltage_tap"]["text"] == "tap 2 (14 V, 6 V low; 8 gives 26 V)"


def test_arc_voltage_tells_where_the_usual_volts_stand():
    read = {"machine_voltage": "17 V", "lead_voltage_drop": "1 V", "current": "125 A"}
    found = api("arc-voltage", **read, **KNOB)["results"]
    assert found["voltage_mark"]["value"] == pytest.approx(2.0 + (found["usual_meter"]["value"] - 14.0) / 2.0)
    assert "voltage_mark" not in api("arc-voltage", machine_voltage="17 V", lead_voltage_drop="1 V", **KNOB)["results"]
    page = walking.reply("/arc-voltage", list({**read, **KNOB}.items()), partial=True).body
    assert "Shop: voltage knob for the usual volts" in page


def test_settings_hand_the_voltage_marks_on_to_arc_voltage():
    body = walking.reply("/settings", list({**EIGHTH, **KNOB}.items()), partial=True).body
    links = [urlsplit(each.attributes["href"]) for each in Page(body).all("a")]
    (carried,) = [dict(parse_qsl(link.query)) for link in links if link.path == "arc-voltage"]
    assert {name: carried[name] for name in KNOB} == KNOB
    (feed,) = [dict(parse_qsl(link.query)) for link in links if link.path == "wire-feed"]
    assert feed["machine"] == "Shop" and "voltage_dial" not in feed
