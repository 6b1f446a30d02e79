"""Least squares for a law of one factor and for a law of two, in plain Python.

measured = first_factor * first + second_factor * second, for every reading, as nearly as it can be
"""


def one_factor(modelled: list[float], measured: list[float]) -> float:
    """Return the factor that brings a model nearest to its readings, by least squares.

    factor = sum(modelled * measured) / sum(modelled * modelled)

    Parameters
    ----------
    modelled : list of float
        What the model says of each reading, in the unit of `measured`; not all zero.
    measured : list of float
        What was read.

    Returns
    -------
    float
        Factor, [-].

    Raises
    ------
    ZeroDivisionError
        If the model is zero everywhere.

    Notes
    -----
    Every reading counts the same. Divide both by the reading and every reading counts by its percentage error.

    Source
    ------
    Legendre (1805) and Gauss (1809), as in the NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.1:
    published.

    Examples
    --------
    >>> one_factor([1.0, 2.0, 4.0], [1.1, 2.2, 4.4])
    1.1
    """
    return _product(modelled, measured) / _product(modelled, modelled)


def two_factors(first: list[float], second: list[float], measured: list[float]) -> tuple[float, float]:
    """Return the two factors that bring a sum of two terms nearest to its readings, by least squares.

    second_factor = sum(rest * measured) / sum(rest * rest), rest = second - share * first
    first_factor = sum(first * measured) / sum(first * first) - share * second_factor
    share = sum(first * second) / sum(first * first)

    Parameters
    ----------
    first : list of float
        First term at each reading, in the unit of `measured`.
    second : list of float
        Second term at each reading, in the same unit; not the first times one number.
    measured : list of float
        What was read.

    Returns
    -------
    tuple of float
        Factor of the first term [-] and of the second [-].

    Raises
    ------
    ZeroDivisionError
        If the two terms rise together, so that no reading tells them apart.

    Notes
    -----
    The second term is freed of the first before it is fitted (Gram and Schmidt), which keeps the digits that the
    normal equations lose when both rise nearly together.

    Source
    ------
    Legendre (1805) and Gauss (1809), as in the NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.1:
    published.

    Examples
    --------
    >>> two_factors([1.0, 1.0, 1.0], [1.0, 2.0, 3.0], [5.0, 7.0, 9.0])
    (3.0, 2.0)
    """
    square = _product(first, first)
    share = _product(first, second) / square
    rest = [there - share * here for here, there in zip(first, second)]
    second_factor = _product(rest, measured) / _product(rest, rest)
    return _product(first, measured) / square - share * second_factor, second_factor


def _product(one: list[float], other: list[float]) -> float:
    total = 0.0
    for here, there in zip(one, other):
        total += here * there
    return total
