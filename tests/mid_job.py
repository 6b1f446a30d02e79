"""What a welder still has to give for each of the twelve questions asked most: what is picked, and the numbers."""

# By sentence: (what is picked from a list, as pairs; numbers, as pairs; the name of the answer in the API)
GIVEN = {
    "often.settings": ((), (("thickness", "1/4 in"),), "wire_feed_speed"),
    "often.feed": (
        (),
        (("wire_diameter", "0.035 in"), ("current", "150 A"), ("contact_tip_to_work", "1/2 in")),
        "wire_feed_speed",
    ),
    "often.gas-lasts": (
        (("cylinder", "125-ft3"),),
        (("carbon_dioxide", "25 %"), ("cylinder_pressure", "1500 psi"), ("gas_flow", "30 ft3/h")),
        "arc_time",
    ),
    "often.wire-lasts": (
        (),
        (("wire_diameter", "0.035 in"), ("wire_mass", "11 lb"), ("wire_feed_speed", "300 in/min")),
        "arc_time",
    ),
    "often.gas-flow": ((), (("nozzle_bore", "5/8 in"),), "usual_flow"),
    "often.spatter": ((), (), "first"),
    "often.porosity": ((), (), "first"),
    "often.preheat": ((), (("thickness", "1 in"),), "preheat_minimum"),
    "often.heat-input": ((), (("voltage", "24 V"), ("current", "180 A"), ("travel_speed", "12 in/min")), "heat_input"),
    "often.gauge": ((("gauge_system", "steel"),), (("thickness", "1/16 in"),), "gauge"),
    "often.filler": ((("base", "304"),), (), "first"),
    "often.rest": (
        (),
        (("rated_current", "200 A"), ("rated_duty_cycle", "60 %"), ("current", "180 A")),
        "duty_cycle",
    ),
}
TAPS_TO_ASK = 2  # the fold, and the question in it
MOST_TAPS = 3
