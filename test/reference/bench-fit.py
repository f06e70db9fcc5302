"""Posterior of a tackle's unknowns after six bench readings, worked out by scipy: stands beside
bench-fit.json, which holds what it printed. Own data; the law is written here on its own.

    raise  R = W / (e + e^2 + ... + e^p) + z - l t
    lower  R = W e^p (1 - e) / (1 - e^p) + z + l t       W = (m + b) g

e efficiency of a sheave, z what the scale is off by, t tube friction, b mass of the lower block are
the unknowns, each with a normal prior; hand (3 % of the figure as expected before), graduation and
the lag l (0.5 with u = 1/sqrt(12)) scatter each reading.
"""
import json
import numpy as np
import scipy
from scipy.optimize import least_squares

g = 9.80665
best = np.array([0.93, 0.0, 0.035, 0.031])
prior = np.array([0.03 / 1.96, 0.1 / np.sqrt(3), 0.03 / np.sqrt(12), 0.0005 / 1.96])
# way, parts, load in kg, read in N
rows = [("raise", 4, 1.5, 4.6), ("lower", 4, 1.5, 3.0), ("raise", 2, 0.5, 3.0),
        ("raise", 4, 0.75, 2.4), ("raise", 4, 1.5, 4.4), ("lower", 2, 0.5, 2.4)]
step = 0.2

def figure(theta, row):
    e, z, t, b = theta
    way, p, m, _ = row
    W = (m + b) * g
    k = np.arange(1, p + 1)
    if way == "raise":
        return W / np.sum(e ** k) + z - 0.5 * t
    return W * e ** p * (1 - e) / (1 - e ** p) + z + 0.5 * t

expected = np.array([figure(best, row) for row in rows])
sd = np.sqrt((0.03 * expected) ** 2 + step ** 2 / 12 + best[2] ** 2 / 12)
y = np.array([row[3] for row in rows])

def residuals(x):
    theta = best + prior * x
    return np.concatenate([x, (y - [figure(theta, row) for row in rows]) / sd])

found = least_squares(residuals, np.zeros(4), jac="3-point", xtol=1e-15, ftol=1e-15, gtol=1e-15)
covariance = np.linalg.inv(found.jac.T @ found.jac) * np.outer(prior, prior)

# The same posterior without any normal approximation: weighted draws from the prior.
random = np.random.default_rng(20260430)
draws = random.standard_normal((1_000_000, 4))
theta = best + prior * draws
off = np.zeros(len(draws))
for n, (way, p, m, read) in enumerate(rows):
    e, z, t, b = theta.T
    W = (m + b) * g
    total = sum(e ** k for k in range(1, p + 1))
    shown = W / total + z - 0.5 * t if way == "raise" else W * e ** p * (1 - e) / (1 - e ** p) + z + 0.5 * t
    off += ((read - shown) / sd[n]) ** 2
weight = np.exp(-0.5 * (off - off.min()))
weight /= weight.sum()
mean = weight @ theta
spread = np.sqrt(weight @ (theta - mean) ** 2)

print(json.dumps({
    "source": f"computed: scipy {scipy.__version__}, numpy {np.__version__}, bench-fit.py beside this file",
    "unknowns": ["efficiency", "scale", "tube friction", "block"],
    "best": list(best), "prior": list(prior), "graduation": step,
    "readings": [dict(zip(["way", "parts", "load", "read"], row)) for row in rows],
    "mode": list(best + prior * found.x),
    "covariance": covariance.tolist(),
    "drawn": {"mean": list(mean), "u": list(spread), "draws in effect": float(1 / np.sum(weight ** 2))},
}, indent=2))
