"""The noise question: a mixed day, two thresholds, the stricter advice, and what is typical."""

import json

import pytest

from tests import walking


def day(*periods):
    pairs = []
    for number, (level, time) in enumerate(periods, 1):
        if isinstance(level, str):
            pairs.append((f"periods-{number}-work", level))
        else:
            pairs += [(f"periods-{number}-work", "measured"), (f"periods-{number}-sound_level", str(level))]
        pairs.append((f"periods-{number}-exposure_time", time))
    return pairs


def ask(pairs, status=200):
    reply = walking.reply("/api/noise", pairs)
    assert reply.status == status, reply.body
    return json.loads(reply.body)


def page(pairs):
    return walking.reply("/noise", pairs).body.replace("\u00a0", " ")


def state(pairs):
    return page(pairs).partition('class="verdict ')[2].partition('"')[0]


def test_a_mixed_day_by_the_law():
    """A guide's example: 95 dB 2 h, 90 dB 4 h, 85 dB 2 h: 112.5 %, of which 100 % counts for the limit; 90.85 dB."""
    results = ask(day((95, "2 h"), (90, "4 h"), (85, "2 h")))["results"]
    assert results["dose"]["value"] == pytest.approx(112.5)
    assert results["limit_dose"]["value"] == pytest.approx(100)
    assert results["law_average"]["value"] == pytest.approx(90.85, abs=0.01)
    # NIOSH by hand: 2 / 0.794 + 4 / 2.520 + 2 / 8.
    assert results["recommended_dose"]["value"] == pytest.approx(435.7, abs=0.1)


def test_on_the_limit_is_not_over_it():
    assert "limit of 100 %" not in page(day((90, "8 h")))
    assert state(day((90, "8 h"))) == "outside"  # over the programme's half, and over NIOSH
    assert "hearing programme" in page(day((90, "8 h")))
    assert "limit of 100 %" in page(day((91, "8 h")))


def test_half_a_dose_is_where_the_programme_begins():
    assert state(day((84, "8 h"))) == "inside"
    assert state(day((85, "8 h"))) == "outside"


def test_advice_is_stricter_than_law():
    """100 dB for 20 min: 17 % by law, 133 % by NIOSH."""
    results = ask(day((100, "20 min")))["results"]
    assert results["dose"]["value"] == pytest.approx(16.7, abs=0.1)
    assert results["recommended_dose"]["value"] == pytest.approx(133, abs=1)
    assert state(day((100, "20 min"))) == "outside"


def test_usual_levels_give_a_band_and_say_so():
    answer = ask(day(("gas-metal-arc", "2 h"), ("grinding", "1 h")))
    dose = answer["results"]["dose"]
    assert dose["low"] < dose["value"] < dose["high"]
    # Low end by hand: 95 dB for 3 h is 75 %.
    assert dose["low"] == pytest.approx(75)
    assert "Measure" in " ".join(answer["notes"])
    assert "low" not in ask(day((95, "1 h")))["results"]["dose"]


def test_a_band_across_the_limit_is_unclear():
    pairs = day(("gas-metal-arc", "3 h"))  # 75 to 198 %
    assert state(pairs) == "unclear"
    assert "from below" in page(pairs)


def test_above_the_end_of_the_table_no_time_is_short_enough():
    assert state(day((116, "1 min"))) == "outside"
    assert "however short" in page(day((116, "1 min")))
    assert "however short" not in page(day((115, "1 min")))


def test_quiet_work_has_no_average():
    results = ask(day((70, "8 h")))["results"]
    assert results["dose"]["value"] == 0
    assert "law_average" not in results
    assert state(day((70, "8 h"))) == "inside"


def test_a_day_has_no_more_than_24_hours():
    assert list(ask(day((90, "20 h"), (80, "5 h")), 422)["errors"]) == [""]
    ask(day((90, "20 h"), (80, "4 h")))


def test_plugs_guard_against_noise_and_muffs_against_sparks_too():
    """Common practice."""
    cautions = " ".join(ask(day((95, "1 h")))["cautions"])
    assert "Ear plugs guard against noise. Ear muffs guard against noise and sparks." in cautions


def test_a_level_beyond_the_table_is_refused_in_decibels():
    errors = ask(day((131, "1 h")), 422)["errors"]
    assert "130 dB(A)" in errors["periods-1-sound_level"].replace("\u00a0", " ")


def test_a_level_may_be_typed_as_it_is_said():
    pairs = [("periods-1-work", "measured"), ("periods-1-sound_level", "95 dBA"), ("periods-1-exposure_time", "4 h")]
    assert ask(pairs)["results"]["dose"]["value"] == pytest.approx(100)


def test_a_level_is_waited_for():
    assert ask(day(("measured", "1 h")), 422)["errors"] == {"": "Waiting for: Level at the ear in row 1"}
