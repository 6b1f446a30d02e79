"""Shielding gas by its composition: density, viscosity, and what two flows make together.

A mix is a tuple of fractions by volume in the order of facts/gases.py: argon, carbon dioxide, oxygen, helium,
hydrogen, nitrogen.
"""

from calculators import numerals, ranges
from calculators.facts.gases import AIR_DENSITY, GASES

NAMES = tuple(row[0] for row in GASES)
_DENSITIES = tuple(row[3] for row in GASES)

TYPE_CHECKING = False
if TYPE_CHECKING:
    Mix = tuple[float, ...]


def _require(mix: "Mix") -> None:
    total = 0.0
    for name, fraction in zip(NAMES, mix):
        ranges.require(name, fraction, 0.0, 1.0, "")
        total = total + fraction
    ranges.require("total", numerals.settle(total, 8), 1.0, 1.0, "")


def mixture_density(mix: "Mix") -> float:
    """Return the density of a mix at 15 degC and 1 atm: the sum of fraction * density of each gas.

    Parameters
    ----------
    mix : tuple
        Fractions by volume in the order of facts/gases.py; each 0 to 1, together 1.

    Returns
    -------
    float
        Density, [kg/m3].

    Raises
    ------
    ranges.OutOfRange
        If a fraction is outside its range or they do not add up to 1.

    Notes
    -----
    Ideal mixing of real gases; within 0.2 % of the mixture equations of state at 1 atm, as the tests measure.

    Source
    ------
    Amagat's law; densities from calculators/facts/gases.py. Standing: published.

    Examples
    --------
    >>> round(mixture_density((0.75, 0.25, 0.0, 0.0, 0.0, 0.0)), 3)
    1.736
    """
    _require(mix)
    total = 0.0
    for position in range(len(mix)):
        total = total + mix[position] * _DENSITIES[position]
    return total


def density_against_air(density: float, air_density: float = AIR_DENSITY) -> float:
    """Return how many times as heavy as air a gas is: density / air_density.

    Parameters
    ----------
    density : float
        Density at 15 degC and 1 atm, [kg/m3]; 0.05 to 10.
    air_density : float, optional
        Density of dry air at the same state, [kg/m3]; 0.5 to 2.

    Returns
    -------
    float
        Ratio, [-].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    Gas fresh from a cylinder is colder, so heavier, than this.

    Source
    ------
    Definition of relative density. Standing: published.

    Examples
    --------
    >>> round(density_against_air(1.69075), 2)
    1.38
    """
    ranges.require("density", density, 0.05, 10.0, "kg/m3")
    ranges.require("air_density", air_density, 0.5, 2.0, "kg/m3")
    return density / air_density


def fraction_of_two(first_fraction: float, second_fraction: float, first_flow: float, second_flow: float) -> float:
    """Return the fraction of one gas where two flows meet.

    x = (x1 * Q1 + x2 * Q2) / (Q1 + Q2)

    Parameters
    ----------
    first_fraction : float
        Fraction by volume in the first flow, [-]; 0 to 1.
    second_fraction : float
        Fraction by volume in the second flow, [-]; 0 to 1.
    first_flow : float
        First flow, [m3/s]; 1e-6 to 0.01.
    second_flow : float
        Second flow, counted at the same state, [m3/s]; 1e-6 to 0.01.

    Returns
    -------
    float
        Fraction by volume, [-].

    Raises
    ------
    ranges.OutOfRange
        If an input is not finite or outside its range.

    Notes
    -----
    Both flows as each gas truly flows: a meter made for another gas has to be corrected first.

    Source
    ------
    Conservation of each gas. Standing: published.

    Examples
    --------
    >>> round(fraction_of_two(0.0, 1.0, 0.00025, 0.00005), 4)
    0.1667
    """
    ranges.require("first_fraction", first_fraction, 0.0, 1.0, "")
    ranges.require("second_fraction", second_fraction, 0.0, 1.0, "")
    ranges.require("first_flow", first_flow, 1.0e-6, 0.01, "m3/s")
    ranges.require("second_flow", second_flow, 1.0e-6, 0.01, "m3/s")
    return (first_fraction * first_flow + second_fraction * second_flow) / (first_flow + second_flow)


def mixture_viscosity(mix: "Mix") -> float:
    """Return the viscosity of a mix at 20 degC and 1 atm by Wilke's rule.

    mu = sum of x_i * mu_i / sum of x_j * phi_ij,
    phi_ij = (1 + (mu_i / mu_j)^(1/2) * (M_j / M_i)^(1/4))^2 / (8 * (1 + M_i / M_j))^(1/2)

    Parameters
    ----------
    mix : tuple
        Fractions by volume in the order of facts/gases.py; each 0 to 1, together 1.

    Returns
    -------
    float
        Dynamic viscosity, [Pa s].

    Raises
    ------
    ranges.OutOfRange
        If a fraction is outside its range or they do not add up to 1.

    Notes
    -----
    Within 2 % of the kinetic theory of gases for argon with helium or carbon dioxide, 6 % for helium with carbon
    dioxide, as the tests measure. Weighting by the roots of the molar masses would be 9 % low with helium.

    Source
    ------
    C. R. Wilke, J. Chem. Phys. 18 (1950) 517, from memory; viscosities from calculators/facts/gases.py.

    Examples
    --------
    >>> round(mixture_viscosity((0.75, 0.25, 0.0, 0.0, 0.0, 0.0)) * 1e6, 1)
    19.9
    """
    _require(mix)
    total = 0.0
    for position in range(len(mix)):
        _, _, molar_mass, _, viscosity = GASES[position]
        below = 0.0
        for other in range(len(mix)):
            ratio = GASES[other][2] / molar_mass
            drag = 1.0 + (viscosity / GASES[other][4]) ** 0.5 * ratio**0.25
            below = below + mix[other] * drag * drag / (8.0 * (1.0 + 1.0 / ratio)) ** 0.5
        total = total + mix[position] * viscosity / below
    return total
