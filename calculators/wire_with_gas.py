"""Which wire in which gas, and how it is run: the words of every question about what a weld takes."""

ENGLISH = {
    "field.wire_material": "Wire",
    "option.wire_material.mild-steel": "Mild steel",
    "option.wire_material.stainless": "Stainless",
    "option.wire_material.aluminum": "Aluminum",
    "field.wire_and_gas": "Wire and gas",
    "option.wire_and_gas.": "Solid wire, usual gas",
    "option.wire_and_gas.solid-argon-rich": "Solid, argon-rich, spray",
    "option.wire_and_gas.solid-argon-25-carbon-dioxide": "Solid, 75 argon 25 CO₂",
    "option.wire_and_gas.solid-carbon-dioxide": "Solid, CO₂",
    "option.wire_and_gas.metal-cored": "Metal-cored",
    "option.wire_and_gas.flux-cored-gas-shielded": "Flux-cored, gas-shielded",
    "option.wire_and_gas.flux-cored-self-shielded": "Flux-cored, self-shielded",
    "field.wire_diameter": "Wire diameter",
    "field.wire_feed_speed": "Wire feed speed",
    "field.gas_flow": "Gas flow",
    "field.deposition_efficiency": "Deposition efficiency",
    "hint.deposition_efficiency": "Blank: the usual of this wire and gas.",
    "field.waste": "Waste",
    "hint.waste": "Trimmed ends, starts, wire left in the liner. Blank: 5 %.",
    "field.operating_factor": "Operating factor",
}
