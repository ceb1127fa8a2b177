"""Road load, air and wind by SciPy and plain arithmetic, independent of the program under test.

Run: python3 road_load.py > expected.csv   (SciPy for its constants and for quadrature)
"""
import math
from scipy import constants, integrate

g = constants.g                      # 9.80665 m/s2, exact by definition
R_DRY = 287.05287                    # J/(kg K), ISO 2533:1975, from memory


def row(name, value):
    print(f"{name},{value:.9g}")


def density(celsius, hectopascals):
    return hectopascals * constants.hecto / (R_DRY * constants.convert_temperature(celsius, "C", "K"))


def wind_mean(w, v):
    """Mean over all directions of |V| (V along the road) / v^2."""
    f = lambda a: math.hypot(v + w * math.cos(a), w * math.sin(a)) * (v + w * math.cos(a)) / v**2
    return integrate.quad(f, 0, 2 * math.pi, epsabs=1e-12, epsrel=1e-12)[0] / (2 * math.pi)


print("name,value")
row("density_12_990", density(12, 990))
row("density_30_900", density(30, 900))
# Drag at 107 km/h in air of 1.2095 kg/m3 with 0.66 m2: force in N, times 1000 m, in Wh.
v = 107 * constants.kmh
drag = 0.5 * 1.2095 * 0.66 * v**2
row("drag_wh_per_km", drag * 1000 / constants.hour)
# Rolling of 1775 kg with 0.010.
row("rolling_wh_per_km", 0.010 * 1775 * g * 1000 / constants.hour)
# 250 m of height for 1775 kg over 50 km.
row("climb_wh_per_km", 1775 * g * 250 / constants.hour / 50)
row("wind_all_around_14_107", wind_mean(14, 107))
row("wind_all_around_30_90", wind_mean(30, 90))
# Pressure with height: dp/dh = -rho g with T falling by 6.5 K/km, integrated numerically.
sol = integrate.solve_ivp(
    lambda h, p: [-p[0] * g / (R_DRY * (288.15 - 0.0065 * h))], (0, 1500), [1013.25],
    rtol=1e-12, atol=1e-12, t_eval=[212, 1000, 1500])
for h, p in zip((212, 1000, 1500), sol.y[0]):
    row(f"pressure_{h}", p)
