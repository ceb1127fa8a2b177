"""Expected values for energy, averages and crossings of one invented session, by SciPy."""

import numpy as np
from scipy import integrate, interpolate

minutes = np.array([0, 1, 2.5, 4, 7, 10, 13, 17, 21, 26, 31])
soc = np.array([9, 11, 15, 19.5, 28, 37, 45, 55, 64, 73, 81.5])
power = np.array([72, 118, 141, 150, 149.5, 147, 139, 121, 104, 82, 61.5])
seconds = minutes * 60

print("quantity,value")
print(f"energy_kwh,{integrate.trapezoid(power, seconds) / 3600:.12g}")
cumulative = integrate.cumulative_trapezoid(power, seconds, initial=0) / 3600
soc_to_time = interpolate.interp1d(soc, seconds)
for mark in range(10, 90, 10):
    print(f"time_to_soc_{mark}_s,{soc_to_time(mark):.12g}")

power_at = interpolate.interp1d(seconds, power)


def energy(a, b):
    knots = [t for t in seconds if a < t < b]
    value, _ = integrate.quad(power_at, a, b, points=knots, epsabs=1e-12, epsrel=1e-12)
    return value / 3600


for low, high in ((10, 80), (20, 60), (45, 73)):
    a, b = float(soc_to_time(low)), float(soc_to_time(high))
    e = energy(a, b)
    print(f"energy_soc_{low}_{high}_kwh,{e:.12g}")
    print(f"average_power_{low}_{high}_kw,{e * 3600 / (b - a):.12g}")
    power_over_soc = interpolate.interp1d(soc, power)
    knots = [s for s in soc if low < s < high]
    mean, _ = integrate.quad(power_over_soc, low, high, points=knots, epsabs=1e-12, epsrel=1e-12)
    print(f"soc_average_power_{low}_{high}_kw,{mean / (high - low):.12g}")

# Time at which 25 kWh have been added: root of the cumulative integral.
from scipy.optimize import brentq

t25 = brentq(lambda t: energy(0, t) - 25, 1, seconds[-1], xtol=1e-10)
print(f"time_of_25_kwh_s,{t25:.12g}")
