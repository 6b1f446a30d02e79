"""What air has to hold, and what gas in it is too much. Shares of the air by volume, in parts of one."""

# Oxygen in clean dry air; common practice (20.95 %).
CLEAN_OXYGEN = 0.209

# Oxygen. 19.5 %: 29 CFR 1910.146(b), below it the atmosphere is hazardous, and by 1910.134(d)(2)(iii) immediately
# dangerous; law, seen. The rest: OSHA's preamble to 1910.134, seen quoted (effort and thought suffer from 19.5 to 16 %,
# fail from 14 to 10 %, nobody lives at 6 %). (share left, what it means)
OXYGEN = ((0.195, "meter"), (0.16, "dull"), (0.10, "faint"), (0.06, "death"))

# Carbon dioxide: 29 CFR 1910.1000 table Z-1, 5000 ppm over 8 h; law, seen as OSHA's own page gives it. 30 000 ppm for
# 15 minutes: NIOSH and ACGIH; published, seen on the same page. 40 000 ppm immediately dangerous: NIOSH, documentation
# of 1994; published, seen quoted. (share, what it means)
CARBON_DIOXIDE = ((0.005, "law"), (0.03, "short"), (0.04, "danger"))

# The tri-mix for stainless holds 2.5 % of it; common practice.
IN_HELIUM_MIX = 0.025

# Sinking gas may fill only the lowest part of a space; a third is from memory, no published number found.
POOL = 1.0 / 3.0
