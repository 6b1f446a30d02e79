"""Reading between the rows of an evenly spaced table, with nothing but + - * / so that both Pythons agree."""


def four_points(position: float, rows: int) -> tuple[int, float, float, float, float]:
    """Return (first row, four weights): the cubic through the four rows around a position.

    With s = position - first row, the weight of row i of the four is Lagrange's: the product of
    (s - j) / (i - j) over the three other rows j.

    Parameters
    ----------
    position : float
        Place in the table, counted in rows from row 0, [-]; 0 to ``rows - 1``.
    rows : int
        How many rows the table has, [-]; at least 4.

    Returns
    -------
    tuple
        First of the four rows and their weights, [-]; the weights add up to 1.

    Raises
    ------
    Nothing: the caller has already refused what lies outside its table.

    Notes
    -----
    The two middle rows enclose the position, except at the ends of the table. The curve meets every row.

    Source
    ------
    Lagrange's interpolation formula; M. Abramowitz and I. Stegun, *Handbook of Mathematical Functions*, NBS,
    1964, 25.2.13 (four-point formula). Standing: published.

    Examples
    --------
    >>> four_points(2.0, 6)
    (1, -0.0, 1.0, 0.0, -0.0)
    """
    first = int(position) - 1
    first = max(0, min(first, rows - 4))
    s = position - first
    a, b, c = s - 1.0, s - 2.0, s - 3.0
    return first, -a * b * c / 6.0, s * b * c / 2.0, -s * a * c / 2.0, s * a * b / 6.0
