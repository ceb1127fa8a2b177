"""Expected values for energy, averages and times of one invented session, by SciPy.

Power is a polygon over time; charge is its integral, 0.83 kWh for each per cent from 9 % on. The
session is read without rounding every 30 s, which meets every corner.
"""

import numpy as np
from scipy import integrate, interpolate
from scipy.optimize import brentq

minutes = np.array([0, 1, 2.5, 4, 7, 10, 13, 17, 21, 26, 31])
power = np.array([72, 118, 141, 150, 149.5, 147, 139, 121, 104, 82, 61.5])
seconds = minutes * 60
START, PER_PERCENT = 9, 0.83

power_at = interpolate.interp1d(seconds, power)


def knots(a, b):
    return [t for t in seconds if a < t < b]


def energy(a, b):
    value, _ = integrate.quad(power_at, a, b, points=knots(a, b) or None, epsabs=1e-12, epsrel=1e-12)
    return value / 3600


def time_of(added):
    return brentq(lambda t: energy(0, t) - added, 0, seconds[-1], xtol=1e-10)


print("quantity,value")
for t in np.arange(0, seconds[-1] + 1, 30):
    print(f"power_at_{t:.0f}_s,{power_at(t):.12g}")
    print(f"soc_at_{t:.0f}_s,{START + energy(0, t) / PER_PERCENT:.12g}")
print(f"energy_kwh,{integrate.trapezoid(power, seconds) / 3600:.12g}")
for mark in range(10, 90, 10):
    print(f"time_to_soc_{mark}_s,{time_of((mark - START) * PER_PERCENT):.12g}")

for low, high in ((10, 80), (20, 60), (45, 73)):
    a, b = (time_of((soc - START) * PER_PERCENT) for soc in (low, high))
    e = energy(a, b)
    print(f"energy_soc_{low}_{high}_kwh,{e:.12g}")
    print(f"average_power_{low}_{high}_kw,{e * 3600 / (b - a):.12g}")
    # Over charge: dq is P dt over the energy of a per cent, so that the mean is that of P squared.
    square, _ = integrate.quad(
        lambda t: power_at(t) ** 2, a, b, points=knots(a, b), epsabs=1e-9, epsrel=1e-12
    )
    print(f"soc_average_power_{low}_{high}_kw,{square / 3600 / e:.12g}")

print(f"time_of_25_kwh_s,{time_of(25):.12g}")
