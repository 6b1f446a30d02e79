"""Gas cylinders by the names they are ordered by, in the units of the trade.

Standing: common practice, from memory. Water volumes of one named size differ by about 5 % between makes and
ages; the litres or pounds of water stamped on the cylinder decide. The US rows close on themselves: argon at
the full pressure in that water volume gives the named cubic feet within 4 %, as the tests show.
"""

# (name: cubic feet of argon when full, water volume [L], full pressure [psi gauge] at 70 degF)
US_GAS_CYLINDERS = (
    (40, 8.0, 2015),
    (80, 15.5, 2015),
    (125, 21.5, 2265),
    (150, 29.0, 2015),
    (250, 43.0, 2265),
    (330, 49.0, 2640),
)

# Water volume [L]; each is found at each of the full pressures [bar gauge] at 15 degC
METRIC_GAS_CYLINDERS = (5.0, 10.0, 20.0, 50.0)
METRIC_FULL_PRESSURES = (150, 200, 300)

# Carbon dioxide is sold by weight: charge when full [lb]
CARBON_DIOXIDE_CYLINDERS = (20, 50)

# What trade practice leaves in a cylinder, so that no air gets in: [psi gauge]
RESERVE_PRESSURE = 200

# Largest lawful charge of carbon dioxide as a share of the mass of water the cylinder holds, by marked
# service pressure [psi]. By weight only. 49 CFR 173.304a(a)(2), table 1, and (c). Standing: law.
CARBON_DIOXIDE_FILLING_DENSITY = (
    (1800, 0.680),
    (2000, 0.703),
    (2265, 0.732),
    (2400, 0.745),
)

# Filling density counts water at 60 degF, one pound of it being 27.737 in3. US regulations on liquefied gas;
# seen in Washington Administrative Code 296-307-40029, in 49 CFR 173.304a note 1 from memory. Standing: law.
CUBIC_INCHES_OF_A_POUND_OF_WATER = 27.737
