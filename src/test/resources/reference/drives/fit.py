"""Reference values for Student's t, for the mean of repeats and for weighted straight lines."""
import numpy as np
from scipy import optimize, stats

for f in (1, 2, 3, 4, 5, 9, 30, 200):
    print(f"t;{f};{stats.t.ppf(0.975, f):.12g};{stats.t.ppf(0.98, f):.12g}")

values = np.array([171.2, 176.9, 168.4, 173.0])
print(f"mean;{values.mean():.12g};{values.std(ddof=1):.12g};"
      f"{stats.t.ppf(0.975, 3) * stats.sem(values):.12g}")

# Consumption in Wh/km over the square of the speed, exact abscissae: weighted least squares.
v = np.array([80.0, 90.0, 100.0, 110.0, 120.0, 130.0])
c = np.array([131.0, 147.5, 160.2, 178.9, 196.1, 217.0])
u = np.array([1.2, 1.5, 0.9, 2.0, 1.4, 1.8])
line = lambda x, a, b: a + b * x
p, cov = optimize.curve_fit(line, v**2, c, p0=(70, 0.01), sigma=u, absolute_sigma=True)
chi = float((((c - line(v**2, *p)) / u) ** 2).sum())
print(f"wls;{p[0]:.12g};{p[1]:.12g};{chi:.12g}")
for w in (85.0, 110.0, 128.0):
    g = np.array([1, w**2])
    own = float(np.sqrt(g @ cov @ g))
    half = own * max(stats.norm.ppf(0.975), stats.t.ppf(0.975, 4) * np.sqrt(chi / 4))
    print(f"at;{w:.12g};{line(w**2, *p):.12g};{own:.12g};{half:.12g}")

# Implied full energy in kWh over the odometer in km, for the slope by ageing.
km = np.array([4200.0, 18600.0, 33100.0, 61800.0])
e = np.array([61.9, 61.2, 60.9, 59.1])
s = np.array([0.4, 0.3, 0.5, 0.35])
p, cov = optimize.curve_fit(line, km, e, p0=(62, -1e-5), sigma=s, absolute_sigma=True)
chi = float((((e - line(km, *p)) / s) ** 2).sum())
half = np.sqrt(cov[1, 1]) * max(stats.norm.ppf(0.975), stats.t.ppf(0.975, 2) * np.sqrt(chi / 2))
print(f"slope;{p[1] * 1e4:.12g};{half * 1e4:.12g}")
