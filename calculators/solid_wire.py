"""Which wire: the fields every question about wire begins with, and their words."""

from calculators.contract import Choice, Quantity

PRESETS = (
    "0.023 in", "0.030 in", "0.035 in", "0.040 in", "0.045 in", "1/16 in",
    "0.6 mm", "0.8 mm", "0.9 mm", "1.0 mm", "1.2 mm", "1.6 mm",
)  # fmt: skip
FIELDS = (
    Choice("wire_material", ("mild-steel", "stainless", "aluminum"), default="mild-steel"),
    Choice("filler_alloy", ("4043", "5356", "5183"), optional=True, when=("wire_material", ("aluminum",))),
    Choice("wire_kind", ("solid", "metal-cored", "flux-cored"), default="solid"),
    Quantity("wire_diameter", presets=PRESETS),
)

ENGLISH = {
    "field.wire_material": "Wire metal",
    "option.wire_material.mild-steel": "Mild steel",
    "option.wire_material.stainless": "Stainless steel",
    "option.wire_material.aluminum": "Aluminum",
    "field.filler_alloy": "Aluminum alloy",
    "option.filler_alloy.": "Not known",
    "option.filler_alloy.4043": "4043",
    "option.filler_alloy.5356": "5356",
    "option.filler_alloy.5183": "5183",
    "field.wire_kind": "Kind of wire",
    "option.wire_kind.solid": "Solid, with gas",
    "option.wire_kind.metal-cored": "Metal-cored",
    "option.wire_kind.flux-cored": "Flux-cored",
    "field.wire_diameter": "Wire diameter",
}
