"""What the safety questions rest on: law as quoted or as a state has adopted it, fire code, and the trade's habit."""

from calculators.contract import Source

LOCKOUT = Source(
    "29 CFR 1910.147(d): shut off, isolate, lock, relieve or restrain what is stored, verify; seen quoted", "law"
)
FIRE = Source(
    "29 CFR 1910.252(a)(2): 35 ft, openings, the other side, fire watch for half an hour; seen as WAC 296-307-49503",
    "law",
)
FIRE_CODE = Source(
    "NFPA 51B, 2019, 5.6.1.1: fire watch for 1 hour; seen quoted, not read in the code itself", "standard"
)
CONTAINERS = Source(
    "29 CFR 1910.252(a)(3): used containers, pipes into them, hollow parts vented; seen as 8 CCR 5166", "law"
)
RIMS = Source("29 CFR 1910.177: no rim is heated; seen as WAC 296-864-20010 and Michigan R 408.17235", "law")
RETURN = Source(
    "29 CFR 1910.254(c)(2): no chains, wire rope, cranes or conduit for welding current; seen as WAC 296-24-68505",
    "law",
)
CYLINDERS = Source("29 CFR 1926.350(a): cylinders upright, secured, caps on when moved; seen as Oregon's", "law")
ENTRY = Source("29 CFR 1910.146: permit, air test and attendant for confined spaces", "law")
VEHICLES = Source("Collision repair training: clamp near the weld, both battery leads off, negative first", "published")
TRADE = Source("Blocking, wedging and what to look at first: repair welders' habit", "common practice")
