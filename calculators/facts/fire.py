"""Fire near hot work. Lengths in m, times in s."""

_FOOT = 0.3048

# 29 CFR 1910.252(a)(2), word for word in WAC 296-307-49503 (seen): combustible material closer than 35 ft calls for a
# fire watch, kept for at least half an hour after the work. Law.
CIRCLE = 35.0 * _FOOT
WATCH_BY_LAW = 1800.0
# NFPA 51B, 2019, 5.6.1.1: 1 hour, where it was half an hour before. Seen quoted by a safety adviser. Standard.
WATCH_BY_FIRE_CODE = 3600.0
