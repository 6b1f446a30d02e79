"""What feeds a welding machine: machines, outlets, cords, and what height and heat take from an engine. Coherent SI."""

# (power source, efficiency low usual high, power factor low usual high). From memory, medium confidence. Second route
# for the 0.80: Commission Regulation (EU) 2019/1784, which asks it of single-phase machines (law, seen quoted).
# "Corrected": with a circuit that brings the power factor near 1.
POWER_SOURCES = (
    ("inverter", (0.80, 0.84, 0.88), (0.60, 0.68, 0.75)),
    ("inverter-corrected", (0.80, 0.84, 0.88), (0.95, 0.97, 0.99)),
    ("transformer", (0.65, 0.72, 0.80), (0.60, 0.68, 0.75)),
)

# The most an idle machine may draw, W: Commission Regulation (EU) 2019/1784. Standing: law, seen quoted.
IDLE_POWER = 50.0

# (what feeds it, supply voltage, amperes of its breaker; a generator has its own rating). American outlets.
SUPPLIES = (
    ("generator-240", 240.0, 0.0),
    ("generator-120", 120.0, 0.0),
    ("outlet-240-50", 240.0, 50.0),
    ("outlet-240-30", 240.0, 30.0),
    ("outlet-120-20", 120.0, 20.0),
    ("outlet-120-15", 120.0, 15.0),
)

# Room left over the running load. Standing: common practice, 25 to 50 %. A quarter more is also what the 80 % of
# NEC 210.23(A)(1) comes to for one machine on a 15 or 20 A circuit (from memory).
MARGIN = 0.25

# A breaker trips within 2 to 4 minutes at so many times its current: UL 489. From memory.
TRIPS_SOON = 2.0

# What an engine loses: (share for each metre of height, share for each kelvin above 25 degC).
# Usual: 3.5 % for 300 m, 1 % for 5.5 K: from memory. Second route: pressure of the standard atmosphere, and power
# with the root of temperature.
# Worse: ARMY TM 9-6115-673-13&P, table 2-3, a 2 kW set: 1.3 % for 100 m, 3 % for 10 K, counted there from 1219 m and
# 35 degC. Standing: published.
DERATING_USUAL = (0.035 / 300.0, 0.01 / 5.5)
DERATING_WORSE = (0.013 / 100.0, 0.03 / 10.0)
RATED_TEMPERATURE = 298.15

# Extension cords, two wires carrying: (name, gauge, amperes). NEC Table 400.5(A): 18 and 25 A seen quoted, the
# others from memory. Standing: standard.
CORDS = (("awg-14", 14, 18.0), ("awg-12", 12, 25.0), ("awg-10", 10, 30.0), ("awg-8", 8, 40.0), ("awg-6", 6, 55.0))

# Share of the supply voltage that may be lost on the way: NEC 210.19, informational note. From memory.
CORD_LIMIT = 0.05
