"""The work of montecarlo.mjs in numpy, as somebody who knows numpy writes it. A seed a line comes in."""

import json
import sys
import time

import numpy as np

TRIALS = int(sys.argv[1])
COVERAGE = 0.95


def work(seed):
    draw = np.random.Generator(np.random.SFC64(seed))
    load = draw.normal(2, 0.02, TRIALS)
    height = draw.normal(0.2, 0.002, TRIALS)
    friction = draw.uniform(0.25, 0.35, TRIALS)
    hand = draw.normal(0, 0.03, TRIALS)
    sine = height / 0.8
    pull = load * (sine + friction * np.sqrt(1 - sine * sine)) + hand
    value, u = pull.mean(), pull.std(ddof=1)
    pull.sort()
    low, high = (np.array([1 - COVERAGE, 1 + COVERAGE]) / 2 * TRIALS).astype(int)
    span = int(COVERAGE * TRIALS)
    start = int(np.argmin(pull[span:] - pull[:-span]))
    return {
        "value": float(value),
        "u": float(u),
        "symmetric": {"from": float(pull[low]), "to": float(pull[high])},
        "shortest": {"from": float(pull[start]), "to": float(pull[start + span])},
    }


print(json.dumps({"version": "numpy " + np.__version__}), flush=True)
for line in sys.stdin:
    begin = time.perf_counter()
    found = work(int(line))
    print(json.dumps({"ms": (time.perf_counter() - begin) * 1000, "found": found}), flush=True)
