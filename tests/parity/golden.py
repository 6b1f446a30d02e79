"""Addresses as a welder would send them to another: each must get an answer, the same on both Pythons."""

ADDRESSES = (
    "/heat-input?voltage=24+V&current=180+A&travel_speed=12+in/min",
    "/heat-input?voltage=24+V&current=180+A&limit_basis=arc-energy&heat_input_limit=30+kJ/in",
    "/heat-input?process=gas-tungsten-arc&voltage=12&current=90&weld_length=6+in&arc_time=110+s",
    "/heat-input?voltage=24,5&current=180&travel_speed=5+mm/s&thermal_efficiency=80+%25&heat_input=700+J/mm&units=si",
    "/heat-input?measured_by=power&arc_power=4.2+kW&travel_speed=12+in/min&limit_basis=heat-input&heat_input_limit=15+kJ/in",
    "/heat-input?measured_by=energy&instantaneous_energy=60+kJ&weld_length=3+in",
    "/heat-input?measured_by=passes&passes-1-voltage=24&passes-1-current=180&passes-1-weld_length=6+in"
    "&passes-1-arc_time=30+s&passes-2-readings=energy&passes-2-instantaneous_energy=60+kJ&passes-2-weld_length=3+in"
    "&limit_basis=arc-energy&heat_input_limit=19+kJ/in",
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
    "/part-weight?part_width=48+in&thickness=1/4+in&part_length=96+in",
    "/part-weight?shape=pipe&pipe_size=dn-100&pipe_schedule=80&part_length=20+ft&piece_count=3",
    "/part-weight?shape=angle&first_leg=4+in&second_leg=3+in&thickness=3/8+in&total_mass=100+lb",
    "/part-weight?shape=rectangular-tube&material=aluminum&part_width=50+mm&part_height=30+mm&wall=3+mm&part_length=6+m"
    "&units=si",
    "/part-weight?shape=round-bar&material=other&diameter=1+in&part_length=1+ft&total_mass=0.93+lb",
    "/specimen?joint=butt&weld_length=6+in&travel_speed=12+in/min&contact_tip_to_work=unknown&thickness=1/4+in",
    "/specimen?joint=fillet&arc_time=2+min&travel_speed=12+in/min&contact_tip_to_work=5/8+in&wire_feed_speed=250+in/min"
    "&limit_on=time&longest_time=60+s&extras-2-kind=seam&extras-2-length=3+1/2+in&extras-2-gap=1+mm&remark=%C2%BD+done",
)
