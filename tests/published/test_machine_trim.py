"""Machine trim against the world: least squares against certified data, the law against other people's coefficients.

No published list of pairs read off one machine with all that the law asks for (wire, distance, gas) was found; so
the fit itself is held against reference data made for that, and the trim against published coefficients and a
measured pair.
"""

import random

import numpy
import pytest
import scipy.optimize
from hypothesis import assume, given
from hypothesis import strategies as st

from calculators import asking, machine_trim, melting_fit
from calculators.melting_law import MeltingLaw
from calculators.melting_trim import MeltingTrim, Pair

# NIST Statistical Reference Datasets, linear least squares. Standing: published (certified values, seen quoted).
NORRIS_X = (
    *(0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5),
    *(11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1),
    *(448.9, 0.5),
)
NORRIS_Y = (
    *(0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9),
    *(10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4),
    *(449.2, 0.2),
)


def test_one_factor_is_that_of_noint1():
    """NIST StRD NoInt1, a line through the origin: slope 2.07438016528926. Published."""
    x = [60.0 + step for step in range(11)]
    y = [130.0 + step for step in range(11)]
    assert melting_fit.one_factor(x, y) == pytest.approx(2.07438016528926, rel=1e-14)


def test_one_factor_is_that_of_noint2():
    """NIST StRD NoInt2: slope 0.727272727272727. Published."""
    assert melting_fit.one_factor([4.0, 5.0, 6.0], [3.0, 4.0, 4.0]) == pytest.approx(0.727272727272727, rel=1e-14)


def test_two_factors_are_those_of_norris():
    """NIST StRD Norris: -0.262323073774029 and 1.00211681802045, terms that are 1 and x. Published."""
    found = melting_fit.two_factors([1.0] * 36, list(NORRIS_X), list(NORRIS_Y))
    assert found == pytest.approx((-0.262323073774029, 1.00211681802045), rel=1e-11)


# ---------------------------------------------------------------- the trim of a wire

STEEL = {"wire_material": "mild-steel", "wire_diameter": 1.2e-3, "transfer_mode": "short-circuit"}


def read(values, feeds):
    """Return pairs as machine_trim makes them: (feed [m/s], current [A], extension [m])."""
    law = MeltingLaw(values)
    found = []
    for place, (feed, current, extension) in enumerate(feeds, 1):
        arc = law.arc * current
        found.append(Pair(place, feed, current, arc, law.feed(current, extension) - arc))
    return found


def test_another_pair_of_coefficients_comes_out_as_the_trim():
    """Naidu, Ozcelik and Moore, Modeling, Sensing and Control of GMAW: referred to 1.2 mm steel 0.255 mm/(A s) and
    7.3e-5 1/(A² s). Over Amin's 0.30 and 5.0e-5 that is 0.85 and 1.46. From memory, both."""
    feeds = [
        (0.255e-3 * current + 7.3e-5 * extension * current * current, current, extension)
        for current, extension in ((120.0, 0.010), (170.0, 0.015), (220.0, 0.018))
    ]
    found = MeltingTrim(read(STEEL, feeds))
    assert found.fitted_terms == 2
    assert found.terms == pytest.approx((0.85, 1.46), abs=0.005)
    assert found.farthest < 0.005


def test_a_measured_pair_melts_a_tenth_more_than_the_law():
    """2.4 m/min at 101.9 A, 17.8 V in short-circuit, from a Brazilian thesis; published, seen as an excerpt without the
    wire's size, for which 1.2 mm fits: about a tenth above 2.16 to 2.20 m/min of the law, 10 to 12 mm of wire."""
    for extension in (0.010, 0.012):
        found = MeltingTrim(read(STEEL, [(0.040, 101.9, extension)]))
        assert 1.05 < found.terms[0] == found.terms[1] < 1.15


def test_a_wire_one_size_off_is_refused_as_no_machine_s():
    """Length melted goes with one over the cross-section: 0.030 in taken for 0.035 in feeds 36 % more. Law."""
    real = MeltingLaw({**STEEL, "wire_diameter": 0.762e-3})
    typed = {"measured": "pairs", "wire_diameter": "0.035 in", "transfer_mode": "short-circuit"}
    for row, current in enumerate((90.0, 110.0), 1):
        feed = real.feed(current, 0.010) * 60.0
        typed |= {f"pairs-{row}-wire_feed_speed": f"{feed:.4f} m/min", f"pairs-{row}-current": f"{current}"}
        typed[f"pairs-{row}-contact_tip_to_work"] = "12 mm"
    reply = asking.ask(machine_trim.CALCULATOR, list(typed.items()))
    assert [message.id for _, message in reply.errors] == ["machine-trim.refusal.far-above"]


# ---------------------------------------------------------------- a second method

positive = st.floats(0.05, 20.0)


@given(st.lists(st.tuples(positive, positive), min_size=1, max_size=8))
def test_one_factor_is_numpy_s(rows):
    modelled, measured = [row[0] for row in rows], [row[1] for row in rows]
    wanted = numpy.linalg.lstsq(numpy.array(modelled)[:, None], numpy.array(measured), rcond=None)[0][0]
    assert melting_fit.one_factor(modelled, measured) == pytest.approx(wanted, rel=1e-9)


@given(st.lists(st.tuples(positive, positive, positive), min_size=2, max_size=8))
def test_two_factors_are_numpy_s(rows):
    matrix = numpy.array([row[:2] for row in rows])
    assume(numpy.linalg.cond(matrix) < 1e4)
    measured = [row[2] for row in rows]
    wanted = numpy.linalg.lstsq(matrix, numpy.array(measured), rcond=None)[0]
    found = melting_fit.two_factors(list(matrix[:, 0]), list(matrix[:, 1]), measured)
    assert found == pytest.approx(tuple(wanted), rel=1e-6, abs=1e-6)


def test_the_trim_minimizes_percentage_errors_as_scipy_finds_it():
    """scipy.optimize.least_squares, told only the residuals: law over measured feed, less one."""
    chance = random.Random(5)
    compared = 0
    for _ in range(30):
        feeds = []
        for _ in range(6):
            current, extension = chance.uniform(110.0, 300.0), chance.uniform(0.008, 0.018)
            feed = 0.315e-3 * current + 4.75e-5 * extension * current * current
            feeds.append((feed * chance.uniform(0.97, 1.03), current, extension))
        found = MeltingTrim(read(STEEL, feeds))
        if found.fitted_terms == 1:
            continue

        def errors(terms, rows=tuple(feeds)):
            arc, resistance = 0.30e-3 * terms[0], 5.0e-5 * terms[1]
            return [(arc * here + resistance * wire * here * here) / feed - 1.0 for feed, here, wire in rows]

        wanted = scipy.optimize.least_squares(errors, (1.0, 1.0), xtol=1e-12, ftol=1e-12).x
        assert found.terms == pytest.approx(tuple(wanted), rel=6e-3)  # three figures are kept
        compared += 1
    assert compared > 20
