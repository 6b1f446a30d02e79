"""The welder's own machine: the fields in which it travels in an address, and their words.

A calculator that answers with feed or volts adds FEED_FIELDS or FIELDS to its own and names them to its
Calculator as `machine`: they are folded, and the phone fills them in from a machine that was kept there.
`machine.Machine` reads them.
"""

from calculators.contract import Choice, Quantity, Text

MARKS = "1=120 3=210 5=310 in/min"
TAPS = "A=16.5 B=18 C=19.5 V"
KNOB = "1=16 5=20.5 9=26 V"
CONTROLS = ("taps", "knob")
READ_AT = ("machine", "gun")

FEED_FIELDS = (
    Text("machine", longest=40, optional=True),
    Text("feed_dial", longest=160, optional=True, hint=True, examples=(MARKS,)),
    Quantity("arc_term", "trim_factor", optional=True, hint=True),
    Quantity("resistance_term", "trim_factor", optional=True, hint=True),
    Quantity("trim_band", "percentage", optional=True, hint=True, low=5.0, high=30.0),
    Choice("trim_material", ("mild-steel", "stainless", "aluminum"), optional=True, hint=True),
)
# Blank is taps, read on the machine: what every dial was taken for before it could be said.
VOLTAGE_FIELDS = (
    Choice("voltage_control", CONTROLS, optional=True),
    Text("voltage_dial", longest=160, optional=True, hint=True, examples=(TAPS, KNOB)),
    Choice("voltage_read_at", READ_AT, optional=True),
)
FIELDS = FEED_FIELDS + VOLTAGE_FIELDS
VOLTAGE_ONLY = FEED_FIELDS[:1] + VOLTAGE_FIELDS
FEED_NAMES = tuple(field.name for field in FEED_FIELDS)
VOLTAGE_NAMES = tuple(field.name for field in VOLTAGE_ONLY)
NAMES = tuple(field.name for field in FIELDS)
# What a relation that melts wire takes `also`.
TRIM = ("arc_term", "resistance_term", "trim_band", "trim_material")

ENGLISH = {
    "field.machine": "Machine",
    "field.feed_dial": "Feed dial",
    "hint.feed_dial": "Each mark with its measured feed, like " + MARKS + ".",
    "field.arc_term": "Arc term, times",
    "hint.arc_term": "From your own pairs. Blank is 1: the law as it is.",
    "field.resistance_term": "Resistance term, times",
    "hint.resistance_term": "As above.",
    "field.trim_band": "Its own band, either way",
    "hint.trim_band": "Blank keeps the law's own band.",
    "field.trim_material": "Measured with wire of",
    "hint.trim_material": "Both terms hold for the metal they were measured with.",
    "option.trim_material.": "Not said",
    "option.trim_material.mild-steel": "Mild steel",
    "option.trim_material.stainless": "Stainless steel",
    "option.trim_material.aluminum": "Aluminum",
}
VOLTAGE_ENGLISH = {
    "field.machine": "Machine",
    "field.voltage_control": "Voltage control",
    "option.voltage_control.": "Not said: as taps",
    "option.voltage_control.taps": "Taps: a switch with steps",
    "option.voltage_control.knob": "Knob: stepless",
    "field.voltage_dial": "Voltage marks",
    "hint.voltage_dial": "Each with its measured volts: taps like " + TAPS + ", a knob like " + KNOB + ".",
    "field.voltage_read_at": "Volts read",
    "option.voltage_read_at.": "Not said: on the machine",
    "option.voltage_read_at.machine": "On the machine",
    "option.voltage_read_at.gun": "At the gun",
}
