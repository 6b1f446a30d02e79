"""What pairs of feed and current read off one machine may do to the melting law, and when they are not believed.

The rules are common practice of fitting a law of two terms to a few readings, none of them published for welding
wire: at one stick-out, over a narrow span of current, the two terms rise together and cannot be told apart.
"""

# Pairs, and highest over lowest current, from which two terms are fitted; fewer or closer scale one factor.
FEWEST_PAIRS = 3
LEAST_SPAN = 1.30
# Terms outside these are no wire's: one factor is taken instead. They are the limits of the fields too. [-]
LOWEST_TERM, HIGHEST_TERM = 0.5, 2.0
# Past the law's own band a factor of one may still be tape, stop-watch and meter, by this much and no more. [-]
READINGS = 0.15
# Where a pair lies farther than this from the fitted law, the fit is refused; farther than `ODD`, the odd one may be
# named: that without which the others agree so many times better, readings scattering at least so much. [-]
FARTHEST = 0.15
ODD = 0.05
TIMES_TIGHTER = 3.0
LEAST_SCATTER = 0.01
# Band of a trimmed law: twice the scatter of the pairs, and no less than six seconds by hand and a meter on a
# moving arc allow; with fewer than three pairs there is no scatter to judge by. [-]
LEAST_BAND = 0.05
BAND_OF_FEW = 0.10
WIDEST_BAND = 0.30
