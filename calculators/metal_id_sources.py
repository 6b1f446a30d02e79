"""Where the metal-id question has its facts from, by the keys that facts/metals.py names."""

from calculators.contract import Source

BY_KEY = (
    ("engineers", Source("US Army subcourse EN0562, 5-21 and 5-22: color, magnet and spark", "published")),
    ("steelworker", Source("US Navy NAVEDTRA 14250, Steelworker, volume 1, chapter 1: appearance, chip, magnet", "published")),
    ("machinery", Source("US Navy NAVEDTRA 14345, Machinery Repairman: spark test and file hardness test", "published")),
    ("ordnance", Source("US Army subcourse OD1643, Metal Properties, lesson 1, task 2: appearance, fracture, chip, spark", "published")),
    ("damping", Source("Ring test: gray iron and lead deaden a blow, steel rings", "common practice")),
    ("common", Source("What shape, use and corrosion say of a metal, and parts that fail badly when heated", "common practice")),
    ("memory", Source("Spark, chip and color signs that were not found in the manuals named here", "from memory")),
    ("densities", Source("SImetric, Density of Metals, a public list", "published")),
    ("densities-narrowed", Source("Gray iron, white iron and zinc casting alloys, narrower than that list", "from memory")),
    ("slings", Source("29 CFR 1910.184(e), slings, with OSHA's CPL 02-01-014 and letter of August 2, 1976", "law")),
    ("hooks", Source("ASME B30.10, hooks: repair by welding", "from memory")),
    ("forks", Source("ANSI/ITSDF B56.1-2012, 6.2.8.2, forks, as quoted; ISO 5057:1993 to the same effect", "standard")),
    ("hitches", Source("Maryland COMAR 11.22.02.27: a cast or forged hitch that was welded is rejected", "law")),
    ("frames", Source("49 CFR 393.201(d): welding on frames of commercial motor vehicles", "law")),
    ("rollover", Source("30 CFR 56.14130(e)(2): repairs of roll-over structures, as quoted", "law")),
    ("wheels", Source("Michigan R 408.17235(2) and Washington WAC 296-864-20010: rims are not welded or heated", "law")),
    ("containers", Source("California Title 8, section 5166(b): used containers, cleaned and vented before hot work", "law")),
    ("vessels", Source("National Board Inspection Code: the inspector authorizes a repair before it starts, as in its Bulletin", "standard")),
    ("cylinders", Source("49 CFR 180.211(a): repair of gas cylinders only under an approval", "law")),
    ("bolts", Source("AISC Steel Construction Manual, 14th edition, 2-25, as quoted: heat-treated rods", "published")),
    ("aircraft", Source("FAA AC 43.13-1B, 4-76: identify the metal, or ask its maker or a laboratory", "published")),
    ("copper-bearing", Source("Mathers, The Welding of Aluminium and its Alloys, p. 50: 2xxx alloys", "published")),
    ("zinc-bearing", Source("7075 and its like crack when arc welded", "from memory")),
    ("maximum", Source("NAVSEA S9074-AR-GIB-010/278, table IV: families with a highest temperature between passes", "published")),
    ("fillers", Source("Questions of filler and heat, family by family", "common practice")),
)  # fmt: skip

# Sources that go with others.
WITH = (
    ("slings", ("hooks",)),
    ("copper-bearing", ("zinc-bearing",)),
    ("densities", ("densities-narrowed",)),
)
