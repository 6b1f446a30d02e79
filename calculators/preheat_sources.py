"""Where each preheat rule comes from, and its standing."""

from calculators.contract import Source

METHOD_B = Source(
    "EN 1011-2:2001, C.3, Method B (CET), also in ISO/TR 17671-2 and ISO/TR 17844; not read in the standard itself",
    "standard",
)
CODE = Source(
    "AWS D1.1/D1.1M:2015, table 3.3, categories A and B, as reproduced; the same in US Army TI 809-26 (2000), table 3-1",
    "standard",
)
CODE_OTHER_ROWS = Source("AWS D1.1:2015, table 3.3 category C, and table 4.9 for A514 and A517", "from memory")
CODE_ZONE = Source("AWS D1.1:2015, 5.6: how far around the weld, as quoted", "standard")
CODE_FOOTNOTE = Source("AWS D1.1, table 3.3, footnote a: metal below 32 °F is first warmed to 70 °F", "from memory")
SEFERIAN = Source("Seferian, Métallurgie de la soudure (1959): preheat from carbon, alloy and thickness", "from memory")
SAE = Source("SAE J403 and J404: ranges of the grades; 4130 as in FAA report ANM-112N-14-02 (2014)", "from memory")
NIMI = Source(
    "NIMI (Directorate General of Training, India), Welder (CITS) Trade Theory, p. 169: preheating temperatures",
    "published",
)
NAVY = Source("US Navy S9074-AR-GIB-010/278, tables IV and V: preheat and interpass temperatures", "standard")
ALUMINUM = Source("Practical Welding Today, Aluminum Workshop: Preheating aluminum", "published")
DATA_SHEETS = Source(
    "About 200 °C for quenched and tempered plate and wear plate, 260 °C for manganese steel", "from memory"
)
HYDROGEN = Source("EN 1011-2:2001, C.2.2.2: scale D for solid wire; AWS H16 for low hydrogen", "from memory")
SHOP_CHARTS = Source("Widely copied shop charts of preheat by grade; origin not known", "common practice")
UNKNOWN_GRADES = Source(
    "Hinton and Wiswesser, Welding Journal 87 (2008) 273-s: unknown steels by the hardness of a flame-cut edge",
    "published",
)
ISO_13916 = Source("ISO 13916:1996: where and when to measure", "from memory")

# Rule (calculators/preheat_bounds.py) -> where it comes from.
OF_RULE = (
    ("code-a", (CODE,)),
    ("code-b", (CODE,)),
    ("code-c", (CODE_OTHER_ROWS,)),
    ("code-q", (CODE_OTHER_ROWS,)),
    ("code-none", (CODE,)),
    ("cet", (METHOD_B,)),
    ("cet-hydrogen", (METHOD_B,)),
    ("seferian", (SEFERIAN,)),
    ("by-carbon", (NIMI,)),
    ("navy-s1", (NAVY,)),
    ("navy-s4", (NAVY,)),
    ("shop-charts", (SHOP_CHARTS,)),
    ("guess-carbon", (NIMI,)),
    ("guess-plate", (DATA_SHEETS,)),
    ("guess-stainless", (NAVY,)),
    ("quenched-tempered", (DATA_SHEETS, NAVY)),
    ("wear-plate", (DATA_SHEETS,)),
    ("manganese", (DATA_SHEETS, NIMI)),
    ("stainless", (NAVY,)),
    ("aluminum-heat-treated", (ALUMINUM,)),
    ("aluminum-magnesium", (ALUMINUM, NAVY)),
)

ALL = (
    METHOD_B,
    CODE,
    CODE_OTHER_ROWS,
    CODE_ZONE,
    CODE_FOOTNOTE,
    SEFERIAN,
    SAE,
    NIMI,
    NAVY,
    ALUMINUM,
    DATA_SHEETS,
    HYDROGEN,
    SHOP_CHARTS,
    UNKNOWN_GRADES,
    ISO_13916,
)
