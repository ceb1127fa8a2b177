"""Straight line with errors in both coordinates, found without York's equations.

Prints quantity,value. Orthogonal distance regression by scipy.odr (ODRPACK), the same minimum by
scipy.optimize over slope, intercept and all true abscissae, and standard errors from the inverse
of that problem's normal matrix.
"""

import csv
import pathlib
import warnings

import numpy as np
from scipy import odr, optimize

HERE = pathlib.Path(__file__).parent


def line(beta, x):
    return beta[0] * x + beta[1]


def by_distance(x, y, ux, uy):
    data = odr.RealData(x, y, sx=ux, sy=uy)
    fit = odr.ODR(data, odr.Model(line), beta0=[-0.5, 5.0], sstol=1e-15, partol=1e-15)
    fit.set_job(deriv=1)
    out = fit.run()
    return out.beta, np.sqrt(np.diag(out.cov_beta)), out.sum_square


def by_least_squares(x, y, ux, uy):
    def residuals(p):
        return np.concatenate([(y - p[0] * p[2:] - p[1]) / uy, (x - p[2:]) / ux])

    start = np.concatenate([[-0.5, 5.0], x])
    fit = optimize.least_squares(residuals, start, xtol=1e-15, ftol=1e-15, gtol=1e-15)
    b, true = fit.x[0], fit.x[2:]
    n = len(x)
    jacobian = np.zeros((2 * n, n + 2))
    jacobian[:n, 0] = -true / uy
    jacobian[:n, 1] = -1 / uy
    jacobian[np.arange(n), 2 + np.arange(n)] = -b / uy
    jacobian[n + np.arange(n), 2 + np.arange(n)] = -1 / ux
    covariance = np.linalg.inv(jacobian.T @ jacobian)
    return fit.x[:2], np.sqrt(np.diag(covariance))[:2], 2 * fit.cost


def main():
    warnings.simplefilter("ignore")
    with open(HERE / "readings.csv", newline="", encoding="utf-8") as rows:
        table = np.array([[float(c) for c in r] for r in list(csv.reader(rows))[1:]])
    x, y = table[:, 0], table[:, 2]
    ux, uy = 1 / np.sqrt(table[:, 1]), 1 / np.sqrt(table[:, 3])
    print("way,slope,intercept,slope_error,intercept_error,chi_square")
    for way, fit in (("odr", by_distance), ("least_squares", by_least_squares)):
        beta, error, chi = fit(x, y, ux, uy)
        print(f"{way},{beta[0]:.10g},{beta[1]:.10g},{error[0]:.7g},{error[1]:.7g},{chi:.9g}")


if __name__ == "__main__":
    main()
