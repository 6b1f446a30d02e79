"""Addresses as a welder would send them to another: each must get an answer, the same on both Pythons."""

ADDRESSES = (
    "/heat-input?voltage=24+V&current=180+A&travel_speed=12+in/min",
    "/heat-input?voltage=24+V&current=180+A&limit_basis=arc-energy&heat_input_limit=30+kJ/in",
    "/heat-input?process=gas-tungsten-arc&voltage=12&current=90&weld_length=6+in&arc_time=110+s",
    "/heat-input?voltage=24,5&current=180&travel_speed=5+mm/s&thermal_efficiency=80+%25&heat_input=700+J/mm&units=si",
    "/sheet-gauge?gauge_system=galvanized&gauge=16",
    "/sheet-gauge?gauge_system=steel&thickness=0.0747+in",
    "/sheet-gauge?gauge_system=aluminum&thickness=2+mm&units=si",
    "/wire-feed?wire_material=mild-steel&wire_kind=solid&transfer_mode=spray&wire_diameter=0.045+in&current=220+A"
    "&contact_tip_to_work=3/4+in",
    "/wire-feed?wire_material=mild-steel&wire_kind=solid&transfer_mode=short-circuit&wire_diameter=0.9+mm"
    "&run_out_length=25+in&run_out_time=6+s&contact_tip_to_work=unknown",
    "/gas-supply?gas=argon&cylinder=50-litre&cylinder_pressure=100+bar&gas_flow=15+L/min&units=si",
    "/gas-supply?gas=argon&cylinder=80-ft3&cylinder_pressure=2000+psi&cylinder_temperature=20+degF&gas_flow=35+ft3/h"
    "&arc_time=90+min",
    "/spool-life?wire_material=mild-steel&wire_diameter=0.035+in&wire_mass=33+lb&wire_feed_speed=300+in/min",
    "/joint-fill?leg=1/4+in&weld_length=40+ft&wire_diameter=0.035+in&wire_feed_speed=300+in/min&largest_bead=5/16+in",
    "/joint-fill?joint=fillet-by-throat&throat=4+mm&joint_angle=75+deg&root_gap=2+mm&wire_mass=5+kg&units=si",
    "/joint-fill?joint=single-u&thickness=1+in&root_gap=1/8+in&root_face=1/8+in&included_angle=20+deg&root_radius=1/4+in"
    "&reinforcement=1/16+in&wire_mass=33+lb",
    "/joint-fill?joint=slot&thickness=3/8+in&slot_width=3/4+in&slot_length=2+in&weld_count=12",
    "/travel-speed?wire_feed_speed=300+in/min&wire_diameter=0.035+in&weld_length=6+in&arc_time=40+s",
    "/travel-speed?wire_feed_speed=8+m/min&wire_diameter=1.0+mm&leg=5+mm&units=si",
    "/carbon-equivalent?carbon=0.18&silicon=0.25&manganese=1.2&chromium=0.05&molybdenum=0.01&vanadium=0.04&nickel=0.05"
    "&copper=unknown",
    "/preheat?family=structural&grade=a572-50-group&thickness=25+mm&cet=0.34&hydrogen=5&heat_input=1+kJ/mm&units=si",
    "/preheat?family=quenched-tempered&thickness=2+in&cet=0.42+%25&process=flux-cored-arc",
    "/preheat?family=hardening&hardening_grade=4140&thickness=1+in",
    "/specimen?joint=butt&weld_length=6+in&travel_speed=12+in/min&contact_tip_to_work=unknown&thickness=1/4+in",
    "/specimen?joint=fillet&arc_time=2+min&travel_speed=12+in/min&contact_tip_to_work=5/8+in&wire_feed_speed=250+in/min"
    "&limit_on=time&longest_time=60+s&extras-2-kind=seam&extras-2-length=3+1/2+in&extras-2-gap=1+mm&remark=%C2%BD+done",
)
