"""Figures of median, MAD, sign test and Kendall's W by numpy and scipy: python3 class-statistics.py > class-statistics.json"""
import itertools, json
import numpy as np, scipy
from scipy import stats

rng = np.random.default_rng(20260512)

# Median deviation of n normal values: factor that makes its mean 1, and its scatter as a share of itself.
few = []
for n in range(3, 13):
    x = rng.standard_normal((1_000_000, n))
    m = np.median(x, axis=1)
    mad = 1.482602218505602 * np.median(np.abs(x - m[:, None]), axis=1)
    few.append({'n': n, 'factor': float(1 / mad.mean()), 'share': float(mad.std() / mad.mean()),
                'medianU': float(m.std())})

samples = [
    [2.2, 2.3, 1.9, 2.5, 2.2, 2.0],
    [4.4, 3.3, 4.0, 4.3],
    [0.6, 0.6, 0.5, 0.6, 0.6, 0.7, 0.6, 3.1],
    [1.61, 1.58, 1.66, 1.49, 1.7, 1.62, 1.55, 1.6, 1.64, 1.57, 1.93],
]
centres = [{'values': v, 'median': float(np.median(v)),
            'mad': float(stats.median_abs_deviation(v, scale='normal'))} for v in samples]
intervals = []
for v in [each for each in samples if len(each) >= 6]:
    ci = stats.quantile_test(v, q=0, p=0.5, alternative='two-sided').confidence_interval(0.95)
    intervals.append({'values': v, 'from': float(ci.low), 'to': float(ci.high)})

signs = [{'less': a, 'more': b, 'p': float(stats.binomtest(a, a + b, 0.5).pvalue)}
         for a, b in [(5, 1), (6, 0), (3, 3), (8, 2), (1, 0), (9, 1), (12, 3)]]

def w_of(r):
    r = np.array([stats.rankdata(x) for x in r]); m, k = r.shape
    s = ((r.sum(axis=0) - m * (k + 1) / 2) ** 2).sum()
    t = sum(sum(c ** 3 - c for c in np.unique(x, return_counts=True)[1]) for x in r)
    return 12 * s / (m * m * (k ** 3 - k) - m * t), s, r

def exact(r):
    w, s, r = w_of(r)
    m, k = r.shape
    perms = [[np.array(p) for p in itertools.permutations(x)] for x in r]
    hits = total = 0
    # The first judge's order can stand: only what the others say about it matters.
    for rest in itertools.product(*perms[1:]):
        sums = r[0] + sum(rest)
        total += 1
        hits += ((sums - m * (k + 1) / 2) ** 2).sum() >= s - 1e-9
    return hits / total

orders = [
    [[1, 2, 3], [1, 3, 2], [1, 2, 3], [2, 1, 3]],
    [[1, 2, 3], [1, 2, 3], [1, 2, 3], [1, 2, 3], [1, 3, 2], [1, 2, 3]],
    [[1, 1, 3], [1, 2, 3], [2, 1, 2], [1, 2, 2], [1, 3, 2]],
    [[1, 2, 3, 4], [2, 1, 3, 4], [1, 3, 2, 4], [1, 2, 4, 3]],
    [[3, 1, 2, 4], [1, 2, 3, 4], [4, 3, 2, 1]],
]
many = rng.normal(size=(30, 6)) + np.arange(6) * 0.2
agreements = [{'orders': o, 'w': float(w_of(o)[0]), 'exact': float(exact(o))} for o in orders]
friedman = stats.friedmanchisquare(*many.T)
big = {'orders': [[round(float(x), 3) for x in row] for row in many]}
friedman = stats.friedmanchisquare(*np.array(big['orders']).T)
big |= {'w': float(friedman.statistic / (30 * 5)), 'p': float(friedman.pvalue)}

print(json.dumps({'numpy': np.__version__, 'scipy': scipy.__version__, 'few': few, 'centres': centres,
                  'intervals': intervals, 'signs': signs, 'agreements': agreements, 'friedman': big}, separators=(",", ":")))
