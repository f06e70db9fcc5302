"""A table's time from past visits by brute force: python3 times-from-visits.py > times-from-visits.json

Prior times the likelihood of a multivariate normal law with its whole correlation matrix (scipy), summed over a grid of centre and ln variance;
no conjugate formula. The answer is the law of ln t of a coming stay, at five shares.
"""
import json, sys
import numpy as np, scipy
from scipy import stats, special, optimize

WORTH, SHARE, SPREAD = 6, 0.25, 0.15


def sigma_of(value, u):
    return optimize.brentq(lambda s: value * np.exp(s * s / 2) * np.sqrt(np.expm1(s * s)) - u, 1e-9, 3)


def law(case):
    sigma = sigma_of(case['value'], case['u']) if case['u'] else SPREAD
    scale0 = sigma / np.sqrt(1 + 1 / WORTH)
    y = np.log([t for _, t in case['past']])
    dates = [d for d, _ in case['past']]
    corr = np.array([[1.0 if i == j else (SHARE if a == b else 0.0) for j, b in enumerate(dates)]
                     for i, a in enumerate(dates)])
    mus = np.log(case['value']) + np.linspace(-1.2, 1.2, 1201)
    lvs = np.log(scale0 ** 2) + np.linspace(-3.5, 5, 501)
    logp = np.empty((len(lvs), len(mus)))
    for i, lv in enumerate(lvs):
        var = np.exp(lv)
        # Inverse gamma for the variance, as a density of its logarithm; normal for the centre given it.
        prior = stats.invgamma(WORTH / 2, scale=WORTH * scale0 ** 2 / 2).logpdf(var) + lv
        prior = prior + stats.norm(np.log(case['value']), np.sqrt(var / WORTH)).logpdf(mus)
        like = stats.multivariate_normal(np.zeros(len(y)), var * corr).logpdf(y[None, :] - mus[:, None])
        logp[i] = prior + like
    p = np.exp(logp - special.logsumexp(logp))
    sd = np.exp(lvs / 2)[:, None]
    cdf = lambda x: float((p * stats.norm.cdf((x - mus[None, :]) / sd)).sum())
    middle = float((p * mus[None, :]).sum())
    return [optimize.brentq(lambda x: cdf(x) - share, middle - 3, middle + 3) for share in case['shares']]


shares = [0.025, 0.16, 0.5, 0.84, 0.975]
cases = [
    {'name': 'two stays of one day', 'value': 360, 'u': 45, 'past': [['a', 420], ['a', 390]]},
    {'name': 'six stays of one day', 'value': 360, 'u': 60, 'past': [['a', t] for t in (400, 460, 380, 430, 450, 420)]},
    {'name': 'three days of unequal size', 'value': 300, 'u': 0,
     'past': [['a', 350], ['a', 280], ['b', 310], ['c', 330], ['c', 360], ['c', 300], ['c', 345]]},
    {'name': 'twelve days of one stay', 'value': 240, 'u': 60,
     'past': [[str(n), t] for n, t in enumerate((250, 270, 290, 260, 240, 300, 280, 265, 255, 310, 275, 262))]},
]
for case in cases:
    case['shares'] = shares
    case['quantiles'] = law(case)
json.dump({'numpy': np.__version__, 'scipy': scipy.__version__, 'cases': cases}, sys.stdout, indent=1)
print()
