"""Quantiles of Student's and the chi-square distribution, and statistics of groups, by SciPy."""
import numpy as np
from scipy import stats

print("what,degrees,share,value")
for f in list(range(1, 31)) + [50, 100]:
    print(f"t,{f},0.975,{stats.t.ppf(0.975, f):.12g}")
for f in list(range(1, 13)) + [20, 30]:
    for p in (0.025, 0.5, 0.975):
        print(f"chi2,{f},{p},{stats.chi2.ppf(p, f):.12g}")
# Interval of the mean of a group: scipy.stats.t.interval and ttest_1samp's own interval.
groups = {"two": [21.5, 22.1], "three": [117.2, 119.6, 115.5], "five": [6.48, 6.31, 6.6, 6.42, 6.55]}
for name, x in groups.items():
    low, high = stats.ttest_1samp(x, 0).confidence_interval(0.95)
    print(f"mean_low_{name},{len(x) - 1},0.95,{low:.12g}")
    print(f"mean_high_{name},{len(x) - 1},0.95,{high:.12g}")
    print(f"spread_{name},{len(x) - 1},0,{np.std(x, ddof=1):.12g}")
