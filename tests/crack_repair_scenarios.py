"""Cracked parts as a welder would describe them, each with the path it has to take.

A row: what it is, what is typed, the verdict ("" where nothing asked stands against it, "refused" where there is no
answer at all), steps that have to be there, steps that must not. The reasoning stands beside each; where a source
is behind it, it is named in tests/published/test_crack_repair.py or in calculators/crack_repair_sources.py.
"""

_CRACK = "crack_length=4 in; thickness=1/2 in"
_WORN = "damage=worn; worn_length=10 in; worn_width=3 in; thickness=1/2 in"
_LOW = "family=structural; grade=a36-group"
_SCENARIOS: tuple[tuple[str, str, str, tuple[str, ...], tuple[str, ...]], ...] = (
    # Code vessels and lifting gear: refused whatever else is typed.
    ("air tank", f"service=pressure; family=structural; {_CRACK}", "refused", (), ()),
    ("hydraulic cylinder", "service=pressure", "refused", (), ()),
    ("chain hook", f"service=lifting; family=hardening; hardening_grade=4140; {_CRACK}", "refused", (), ()),
    ("lift fork", "service=lifting; family=unknown", "refused", (), ()),
    # Others have to agree, and no number is given.
    ("cast hitch", "service=road; family=unknown", "outside", ("out-of-use", "agree"), ("dig", "warm", "weld")),
    ("frame rail", "service=road; family=quenched-tempered", "outside", ("agree",), ("weld",)),
    ("leaf spring", "service=heat-treated; family=hardening", "outside", ("agree",), ("weld",)),
    ("roll bar", "service=people; family=structural", "outside", ("agree",), ("weld",)),
    # White iron, and any iron that takes blows.
    (
        "white iron",
        f"service=steady; family=cast-iron; iron_kind=white; {_CRACK}",
        "outside",
        ("agree",),
        ("weld", "bake"),
    ),
    ("iron anvil", f"service=impact; family=cast-iron; iron_kind=gray; {_CRACK}", "outside", ("agree",), ("weld",)),
    # Gray iron housing: braze, stitch or bolt first; baked, warm, peened, slow.
    (
        "iron housing",
        f"service=steady; family=cast-iron; iron_kind=gray; {_CRACK}",
        "unclear",
        ("otherwise", "bake", "weld", "slow", "leak"),
        ("which-iron", "hold"),
    ),
    ("iron, which?", f"service=steady; family=cast-iron; {_CRACK}", "unclear", ("otherwise", "which-iron"), ()),
    (
        "iron shoe, worn",
        f"service=wear; family=cast-iron; {_WORN}; worn_depth=1/4 in",
        "unclear",
        ("strip", "warm", "face"),
        (),
    ),
    # Plain bracket, thin: nothing stands against it, no heat asked for in a warm shop.
    (
        "bracket",
        f"service=steady; family=structural; grade=a36-group; {_CRACK}",
        "",
        ("cause", "ends", "stop", "dig", "prove", "chill", "weld", "wait"),
        ("hold", "agree"),
    ),
    # Thick plate is warmed and held.
    (
        "thick base plate",
        "service=steady; family=structural; grade=a36-group; crack_length=6 in; thickness=3 in",
        "",
        ("warm", "hold", "wait"),
        ("chill",),
    ),
    # Shaker frame: the cause decides.
    (
        "shaker frame",
        f"service=vibrating; family=structural; grade=a36-group; {_CRACK}",
        "unclear",
        ("cause", "after"),
        (),
    ),
    # A514 boom foot: two ends of the window, holding, 48 hours.
    (
        "A514 plate",
        f"service=steady; family=quenched-tempered; {_CRACK}; cet=0.42",
        "unclear",
        ("warm", "hold", "wait"),
        ("keep-cool",),
    ),
    # Heavy A514 with much hydrogen: it asks for more than it bears.
    (
        "no window",
        "service=steady; family=quenched-tempered; thickness=3 in; cet=0.50; process=flux-cored-arc",
        "outside",
        ("warm",),
        (),
    ),
    # Bucket liner: no drill, soft filler; without CET the lowest is not known and heat is not talked down.
    (
        "bucket liner",
        f"service=wear; family=wear-plate; {_CRACK}",
        "",
        ("no-hole", "warm", "weld", "wait"),
        ("stop", "keep-cool"),
    ),
    ("wear plate as a beam", f"service=steady; family=wear-plate; {_CRACK}", "unclear", ("no-hole",), ()),
    # 4140 bracket: warm, hold, 48 hours, somebody else agrees.
    (
        "4140 bracket",
        "service=steady; family=hardening; hardening_grade=4140; crack_length=2 in; thickness=1 in",
        "unclear",
        ("warm", "hold", "wait"),
        ("keep-cool", "quick"),
    ),
    # Crusher jaw: skin off, no drill, kept cool, cooled quickly, never held.
    (
        "crusher jaw",
        f"service=impact; family=manganese; {_CRACK}",
        "",
        ("skin", "no-hole", "keep-cool", "quick", "inspect"),
        ("hold", "slow", "warm", "stop", "wait"),
    ),
    (
        "worn jaw",
        f"service=impact; family=manganese; {_WORN}; worn_depth=1/2 in",
        "",
        ("strip", "look", "keep-cool", "build-up", "face"),
        ("hold", "slow", "dig"),
    ),
    ("thinly worn blade", f"service=wear; {_LOW}; {_WORN}; worn_depth=1/8 in", "", ("face",), ("build-up",)),
    ("worn stainless", f"service=wear; family=stainless; {_WORN}; worn_depth=1/8 in", "refused", (), ()),
    # Stainless chute and aluminum rail: cool, no holding.
    (
        "stainless chute",
        f"service=steady; family=stainless; {_CRACK}",
        "",
        ("keep-cool", "quick", "inspect"),
        ("hold", "slow", "wait"),
    ),
    (
        "6061 rail",
        f"service=steady; family=aluminum-heat-treated; {_CRACK}",
        "unclear",
        ("keep-cool",),
        ("hold", "slow", "wait"),
    ),
    # Nobody knows: find out first.
    (
        "unknown steel",
        f"service=steady; family=unknown; magnet=sticks; {_CRACK}",
        "unclear",
        ("which-metal", "warm", "wait"),
        (),
    ),
    (
        "unknown, no magnet",
        f"service=steady; family=unknown; magnet=does-not-stick; {_CRACK}",
        "unclear",
        ("which-metal",),
        ("slow", "hold"),
    ),
    ("unknown load", f"service=not-known; family=structural; {_CRACK}", "unclear", ("cause",), ()),
    # Grooves that cannot be cut.
    ("double V from one side", f"service=steady; family=structural; groove=double-v; {_CRACK}", "refused", (), ()),
    (
        "double V part way",
        f"service=steady; {_LOW}; groove=double-v; access=both-sides; crack_through=no; {_CRACK}",
        "refused",
        (),
        (),
    ),
    (
        "U in sheet",
        "service=steady; family=structural; groove=single-u; crack_length=2 in; thickness=1/8 in",
        "refused",
        (),
        (),
    ),
    (
        "deeper than the plate",
        f"service=steady; family=structural; crack_through=no; crack_depth=3/4 in; {_CRACK}",
        "refused",
        (),
        (),
    ),
)


def _pairs(text: str) -> dict[str, str]:
    return dict([each.strip().split("=") for each in text.split(";")])


Scenario = tuple[str, dict[str, str], str, tuple[str, ...], tuple[str, ...]]
SCENARIOS: tuple[Scenario, ...] = tuple(
    [(name, _pairs(typed), verdict, there, absent) for name, typed, verdict, there, absent in _SCENARIOS]
)
