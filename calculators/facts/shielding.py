"""How much shielding gas a nozzle takes, and the wind it stands; coherent SI (m, m/s, m3/s).

Standing is said beside each number.
"""

from calculators import units

_LITRE_PER_MINUTE = units.factor_of("L/min")
_MM = units.factor_of("mm")
_MPH = units.factor_of("mph")
_CUBIC_FOOT_PER_HOUR = units.factor_of("ft3/h")

# Flow in litres a minute about as the bore in millimetres, in still air. Common practice. It lies among the 12 to
# 19 L/min of Modern Welding (2020), figure 8-35, for steel up to 3/8 in, and the 12 L/min that proved enough in
# production (Beyer et al., Sci. Technol. Weld. Join. 2013; abstract seen). 9 L/min of argon, 5 of a mix were enough
# in a laboratory without any draught (Bitharas et al. 2018; abstract seen), which is no setting for a shop.
FLOW_PER_BORE = 1.0 * _LITRE_PER_MINUTE / _MM  # [m3/s for each m]
LEAST_SHARE, MOST_SHARE = 0.9, 1.3  # band of that rule: common practice

# Above this the jet stirs air in: about 25 L/min on a 13 mm nozzle, in proportion to the bore. Common practice;
# "not more than 50 ft3/h" is said of common nozzles. Beyer et al.: welders use up to 36 L/min, and that makes pores.
MOST_PER_BORE = 25.0 * _LITRE_PER_MINUTE / (13.0 * _MM)

# Out of position heavy gas falls away: 10 to 20 ft3/h more. Modern Welding (2020), 8.4.4. Published.
OUT_OF_POSITION = 10.0 * _CUBIC_FOOT_PER_HOUR
# An outside corner or an edge lets it spill. From memory.
OPEN_JOINT_SHARE = 1.2

# Wind at the weld. AWS D1.1: gas-shielded welding only up to 5 mph [8 km/h]; standard, seen quoted. AWS D1.8, seismic:
# 3 mph; from memory. (word, least, most [m/s]): US National Weather Service, Beaufort scale; published.
WIND_LIMIT = 5.0 * _MPH
SEISMIC_WIND_LIMIT = 3.0 * _MPH
WINDS = (("still", 0.0, 3.0 * _MPH), ("breeze", 4.0 * _MPH, 7.0 * _MPH), ("wind", 8.0 * _MPH, 46.0 * _MPH))
EXTRACTION = 100.0 * units.factor_of("ft") / 60.0  # 29 CFR 1910.252(c)(3): 100 ft/min at the weld; law

# Most to draw from one carbon dioxide cylinder. US Army TC 9-237 (1993); published.
FROSTING_FLOW = 25.0 * _CUBIC_FOOT_PER_HOUR
# Heat that evaporates carbon dioxide at 20 degC, Span and Wagner 1996 in CoolProp 8.0.0; published. [J/kg]
EVAPORATION_HEAT = 152.0e3
