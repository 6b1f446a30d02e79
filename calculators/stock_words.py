"""What the stock says in English."""

from calculators import cylinder_gas, generator_size_words, lead_drop_words, machine_fields

ENGLISH = {
    "title": "On the truck",
    "question": "What is on the truck, and how much of it is left?",
    "found-by": "stock truck inventory spool bottle left remaining low count lead generator machine list what do i have",
    "lead": "Count a thing once. The log draws it down; a new count starts it over.",
    "field.item": "What is it?",
    "option.item.spool": "Spool of wire",
    "option.item.cylinder": "Cylinder of gas",
    "option.item.lead": "Welding leads",
    "option.item.generator": "Generator",
    "option.item.machine": "Machine",
    "field.name": "Name",
    "hint.name": "As you call it: front spool, big argon.",
    "field.wire_class": "Wire, class",
    "field.wire_material": "Wire metal",
    "option.wire_material.": "Cored, or not known",
    "option.wire_material.mild-steel": "Mild steel, solid",
    "option.wire_material.stainless": "Stainless steel, solid",
    "option.wire_material.aluminum": "Aluminum, solid",
    "field.wire_diameter": "Wire diameter",
    "field.spool_left": "Wire on it now",
    "hint.spool_left": "The wire alone. Spool life tells it from a scale or a rule.",
    "field.cylinder_pressure": "Pressure on the gauge",
    "range.cylinder_pressure": "at 0 nothing comes out any more, and at the top the tables of the gas end",
    "range.full_pressure": "the tables of the gas end there",
    "field.gas_mass": "Weight of the gas",
    "hint.gas_mass": "What the scale shows, less the tare stamped on the neck.",
    "field.lead_length": "Lead, one way",
    "hint.lead_length": "From the machine to the work, once.",
    "field.current": "Current",
    "field.generator_power": "Running power",
    "field.rated_current": "Rated current",
    "field.rated_duty_cycle": "Rated duty cycle",
    "field.largest_current": "Most amps",
    "field.largest_feed": "Fastest feed",
    "field.least_feed": "Slowest feed",
    "field.largest_voltage": "Most volts",
    "field.least_voltage": "Fewest volts",
    "field.wire_feed_speed": "Usual wire feed",
    "field.gas_flow": "Usual gas flow",
    "field.new_wire_mass": "Wire on it when new",
    "field.full_pressure": "Pressure when full",
    "field.full_gas_mass": "Gas in it when full",
    "field.low_at": "Low at",
    "hint.low_at": "Blank is 20 %.",
    "field.used_wire": "Used since it was counted",
    "hint.used_wire": "The log fills it in.",
    "field.used_gas": "Used since it was counted",
    "hint.used_gas": "The log fills it in.",
    "field.notes": "Notes",
    "result.wire_left": "Wire left",
    "result.gas_left": "Gas left",
    "result.current": "Current at 60 % arc time",
    "result.name": "To keep",
    "named": "{item}: {name}",
    "line.used": "Used since",
    "line.counted": "Counted",
    "left-of-full": "{percent} % of a full one left. Low is {low} %.",
    "left-of-counted": "{percent} % of the count left. Low is {low} %.",
    "over": "More was used than was there. Count it again.",
    "working.kept": "Nothing is worked out of this.",
    "working.left": "Left = counted − used, never below 0 = {counted} − {used} = {left}",
    "note.used": "This is no count, so it is not kept. To count again, take out what was used.",
    "note.count": "What the log knows is taken off: arc time only. Weigh it or read its gauge now and then.",
    "refusal.more": "There cannot be more in it than when it is full",
    "refusal.rating": "A rating takes both its current and its duty cycle",
}
for _words in (machine_fields.ENGLISH, machine_fields.VOLTAGE_ENGLISH, cylinder_gas.ENGLISH):
    for _id in list(_words):
        if not _id.startswith("refusal."):
            ENGLISH[_id] = _words[_id]
for _id in list(lead_drop_words.ENGLISH):
    if _id.startswith(("option.cable_size.awg", "option.cable_size.mm2", "field.cable_size")):
        ENGLISH[_id] = lead_drop_words.ENGLISH[_id]
for _id in list(generator_size_words.ENGLISH):
    if _id.startswith(("option.supply.generator", "field.supply")):
        ENGLISH[_id] = generator_size_words.ENGLISH[_id]
