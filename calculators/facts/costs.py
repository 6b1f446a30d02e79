"""What a welder's hour holds of arc, and what a machine makes of its current. Standing beside each."""

from calculators.facts import wires

# Operating factor, arc time over working time: (lowest, usual, highest).
# In repair, with fitting and cleaning in the hour: 10 to 20 %; common practice.
IN_REPAIR = (0.10, wires.OPERATING_FACTOR, 0.20)
# Of the welding alone, where fitting and cleaning are counted apart: semiautomatic 25 to 30 % as a rule; from memory.
# Second route, seen: Handbook of Structural Steel Connection Design and Details gives 40 % in a shop.
OF_THE_WELDING = (0.20, 0.30, 0.45)

# Share of the power drawn that reaches the arc, old transformers to inverters; from memory, as in facts/supply.py.
MACHINE_EFFICIENCY = 0.80
