"""What the transfer modes and the arc voltages stand on."""

from calculators.contract import Source

TRANSITIONS = Source("AWS Welding Handbook, volume 2: spray transition currents; positions of each mode", "from memory")
PONOMAREV = Source(
    "Ponomarev and Slivinsky, MIG/MAG spray and streaming metal transfer modes (lecture, NTUU KPI and UFU): transition currents by wire and gas",
    "published",
)
METHONG = Source(
    "Methong and others, Sci. Technol. Weld. Join. 23 (2018) 87, abstract: 330 to 350 A with 20 % carbon dioxide",
    "published",
)
SHORT_CIRCUIT = Source("AWS C5.6: currents of mild steel wire in short-circuit", "from memory")
MODERN_WELDING = Source(
    "Modern Welding, 2020, figures 8-16 to 8-18 and 8-20: currents and voltages of stainless, aluminum and flux-cored wire",
    "published",
)
LINES = Source("Voltage lines of steel, the bands around them and the borders of voltage", "common practice")
MORE_VOLTAGE = Source("Metals 16 (2026) 264, abstract: more carbon dioxide asks for more voltage", "published")
API_577 = Source("API RP 577, 4.4: positions and thickness of each mode; seen in a copy", "published")
BULLETIN = Source("National Board Bulletin, January 1985: short-circuit laps cold", "published")
SHEET_CODE = Source(
    "AWS D1.1 and D1.3: short-circuit is not prequalified; sheet ends at 3/16 in; seen quoted", "standard"
)
SERVES = Source("Thickness, sound and look of each mode; no vertical-down above 1/8 in", "common practice")
LOAD_LINE = Source("IEC 60974-1, 11.2: conventional load voltage", "standard")
LEADS = Source("AWS Safety and Health Fact Sheet 39: leads sized to lose 4 V at most", "published")
