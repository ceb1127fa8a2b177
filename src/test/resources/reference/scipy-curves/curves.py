"""Area, time and crossing of two piecewise-linear power curves by SciPy."""
import csv
import os

import numpy as np
from scipy.integrate import trapezoid
from scipy.interpolate import interp1d
from scipy.optimize import brentq

here = os.path.dirname(os.path.abspath(__file__))
rows = list(csv.DictReader(open(os.path.join(here, "readings.csv"))))


def session(name):
    table = np.array(
        [[float(r[k]) for k in ("second", "soc", "power")] for r in rows if r["session"] == name]
    )
    # State of charge rises throughout, so time and power are functions of it, linear between rows.
    return table[:, 1], interp1d(table[:, 1], table[:, 0]), interp1d(table[:, 1], table[:, 2])


soc_a, time_a, power_a = session("one")
soc_b, time_b, power_b = session("other")
low = max(soc_a[0], soc_b[0])
high = min(soc_a[-1], soc_b[-1])
knots = np.unique(np.concatenate([soc_a, soc_b, [low, high]]))
knots = knots[(knots >= low) & (knots <= high)]


def lead(q):
    return power_a(q) - power_b(q)


mean = trapezoid(lead(knots), knots) / (high - low)
gain = (time_b(high) - time_b(low)) - (time_a(high) - time_a(low))
changes = [
    brentq(lead, left, right, xtol=1e-13)
    for left, right in zip(knots, knots[1:])
    if lead(left) * lead(right) < 0
]
print("id,value")
print("shared_soc_from,%.12g" % low)
print("shared_soc_to,%.12g" % high)
print("mean_lead_shared,%.12g" % mean)
print("time_gain_shared,%.12g" % gain)
for k, q in enumerate(changes, 1):
    print("crossing_%d_soc,%.12g" % (k, q))
