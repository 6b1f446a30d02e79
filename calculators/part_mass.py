"""What a piece of a given section weighs, or how long, how many or how dense pieces of a given weight are."""

from calculators import ranges
from calculators.facts import densities


def metal_density(material: str) -> tuple[float, float, float]:
    """Return the density of a metal, and the lowest and highest of its kind.

    Empirical: a table.

    Parameters
    ----------
    material : str
        `carbon-steel`, `stainless`, `aluminum`, `cast-iron`, `brass`, `copper` or `titanium`, [-].

    Returns
    -------
    tuple of float
        Density, lowest and highest [kg/m3].

    Raises
    ------
    KeyError
        If the metal is not in the table.

    Source
    ------
    facts/densities.py, where the source of each stands.

    Examples
    --------
    >>> metal_density("carbon-steel")[0]
    7850.0
    """
    for name, density, low, high in densities.PARTS:
        if name == material:
            return density, low, high
    raise KeyError(material)


def total_mass(section_area: float, density: float, part_length: float, piece_count: float) -> float:
    """Return the mass of some pieces of one section and length.

    m = piece_count * part_length * section_area * density

    Parameters
    ----------
    section_area : float
        Cross-section, [m2]; 1e-8 to 100.
    density : float
        Density of the metal, [kg/m3]; 500 to 25000.
    part_length : float
        Length of a piece, [m]; 0.0001 to 1000.
    piece_count : float
        Number of pieces, [-]; above 0 to 1000000.

    Returns
    -------
    float
        Mass, [kg].

    Raises
    ------
    ranges.OutOfRange
        If an input is outside its range.

    Notes
    -----
    Square ends. Nominal sizes: a mill works to a tolerance, and coatings and welds come on top.

    Source
    ------
    Definition of density: law.

    Examples
    --------
    >>> round(total_mass(section_area=0.001, density=7850.0, part_length=2.0, piece_count=3.0), 3)
    47.1
    """
    ranges.require("section_area", section_area, 1e-8, 100.0, "m2")
    ranges.require("density", density, 500.0, 25000.0, "kg/m3")
    ranges.require("part_length", part_length, 0.0001, 1000.0, "m")
    ranges.require("piece_count", piece_count, 0.0, 1e6, "")
    return piece_count * part_length * section_area * density


def solve_total_mass(unknown: str, values: dict[str, float]) -> float:
    """Return the unknown one of part_length, piece_count, density, section_area and total_mass, [coherent SI].

    m = n * L * A * rho, turned round for each of its letters.

    Parameters
    ----------
    unknown : str
        Name of the blank.
    values : dict
        The others by name, in the units and ranges of `total_mass`.

    Returns
    -------
    float
        The unknown, in coherent SI.

    Raises
    ------
    ranges.OutOfRange
        If the mass is asked for and an input is outside its range.

    Source
    ------
    As `total_mass`; the turned forms are algebra.

    Examples
    --------
    >>> solve_total_mass("part_length", {"section_area": 0.001, "density": 8000.0, "piece_count": 2.0,
    ...     "total_mass": 48.0})
    3.0
    """
    if unknown == "total_mass":
        return total_mass(values["section_area"], values["density"], values["part_length"], values["piece_count"])
    product = 1.0
    for name in ("section_area", "density", "part_length", "piece_count"):
        if name != unknown:
            product = product * values[name]
    return values["total_mass"] / product
