"""Periods played through event by event, with numpy's own generator: python3 period-chance.py > period-chance.json

A second simulation of what src/core/rotation/chance-to-finish.ts does. Times come from one covariance matrix over all
stays and resets (no table, group and rest apart); a period is a queue of events (someone comes free), not a walk
through the stays in order. Each case holds its plan, so that both simulate the same.
"""
import heapq, itertools, json, sys
import numpy as np

TRIALS = 60_000
rng = np.random.default_rng(20261125)


def sigma_of(median, u):
    """The deviation of ln t for which t has this median and standard deviation, by halving."""
    if u == 0:
        return 0.0
    low, high = 0.0, 5.0
    for _ in range(200):
        s = (low + high) / 2
        if median * np.exp(s * s / 2) * np.sqrt(np.exp(s * s) - 1) < u:
            low = s
        else:
            high = s
    return (low + high) / 2


def draws(case):
    """ln of run and reset of every stay: TRIALS rows."""
    kinds = [(s['group'], s['table'], which) for s in case['stays'] for which in ('run', 'reset')]
    tables = {t['mark']: t for t in case['tables']}
    mu = np.array([np.log(max(tables[t][w], 1e-9)) for _, t, w in kinds])
    sd = np.array([sigma_of(tables[t][w], tables[t][w + 'U']) for _, t, w in kinds])
    split = case['split']
    n = len(kinds)
    cov = np.empty((n, n))
    for i, j in itertools.product(range(n), range(n)):
        a, b = kinds[i], kinds[j]
        c = 0.0
        if a[0] == b[0]:
            c += split['group']
        if a[1] == b[1] and a[2] == b[2]:
            c += split['table']
        if i == j:
            c += split['rest']
        cov[i, j] = c * sd[i] * sd[j]
    x = np.exp(rng.multivariate_normal(mu, cov, size=TRIALS, method='eigh'))
    return x[:, 0::2], x[:, 1::2]


def through_breaks(breaks, start, work):
    """Minute-hand way: work only outside breaks."""
    t = start
    for a, b in breaks:
        if a <= t < b:
            t = b
        if t < a < t + work:
            work -= a - t
            t = b
    return t + work


def open_time(breaks, a, b):
    return max(0.0, b - a) - sum(max(0.0, min(b, y) - max(a, x)) for x, y in breaks) if b > a else 0.0


def free_period(case, run, reset):
    """Who is where is decided only when something happens."""
    stays, breaks, walk = case['stays'], case['breaks'], case['walk']
    length = {t['mark']: t['run'] for t in case['tables']}
    queue_of = {}
    for n, s in enumerate(stays):
        for key in [('g', s['group']), ('c', s['table'], s['copy'])] + ([('a', s['adult'])] if s['adult'] else []):
            queue_of.setdefault(key, []).append(n)
    free_at = {key: case['begins'] for key in queue_of}
    for g in case['groups']:
        free_at[('g', g['label'])] = max(case['begins'], g['arrives'])
    start, done = [None] * len(stays), [None] * len(stays)
    events = sorted({*free_at.values(), *(b for _, b in breaks)})
    heapq.heapify(events)
    waits = {g['label']: 0.0 for g in case['groups']}
    idle = {key: 0.0 for key in queue_of if key[0] == 'c'}
    heads = {key: 0 for key in queue_of}
    while events:
        now = heapq.heappop(events)
        for n, s in enumerate(stays):
            if start[n] is not None:
                continue
            keys = s['keys']
            if any(queue_of[k][heads[k]] != n or free_at[k] > now for k in keys):
                continue
            if any(now < b and now + length[s['table']] > a for a, b in breaks):
                continue
            start[n] = now
            done[n] = through_breaks(breaks, now, run[n])
            waits[s['group']] += open_time(breaks, free_at[keys[0]], now)
            idle[keys[1]] += open_time(breaks, free_at[keys[1]], now)
            for k in keys:
                heads[k] += 1
                if heads[k] == len(queue_of[k]):
                    heads[k] = 0
                    free_at[k] = float('inf')
                    continue
                free_at[k] = done[n] + {'g': walk, 'c': reset[n], 'a': reset[n]}[k[0]]
                heapq.heappush(events, free_at[k])
    late = sum(d > case['bell'] for d in done)
    return max(done), late, list(waits.values()), list(idle.values()), []


def signal_period(case, run, reset):
    stays, breaks, walk = case['stays'], case['breaks'], case['walk']
    is_planned = case['signal'] == 'planned'
    table_free, group_free = {}, {g['label']: max(case['begins'], g['arrives']) for g in case['groups']}
    waits = {g['label']: 0.0 for g in case['groups']}
    idle, ends, late, lates = {}, [], 0, []
    clock = case['begins']
    for r, (a, b) in enumerate(case['rounds']):
        opens = a if is_planned else clock
        if not is_planned:
            for x, y in breaks:
                if opens < y and opens + (b - a) > x:
                    opens = y
        here = [n for n, s in enumerate(stays) if s['round'] == r + 1]
        overs = []
        for n in here:
            s = stays[n]
            key = (s['table'], s['copy'])
            begins = max(opens, table_free.get(key, 0))
            over = begins + run[n] if is_planned else through_breaks(breaks, begins, run[n])
            overs.append(over)
            if is_planned:
                begins, over = min(begins, b), min(over, b)
            waits[s['group']] += open_time(breaks, group_free[s['group']], begins)
            idle[key] = idle.get(key, 0) + open_time(breaks, table_free.get(key, case['begins']), begins)
            group_free[s['group']] = over + walk
            table_free[key] = over + reset[n]
            ends.append(over)
        lates.append(sum(o > b for o in overs))
        late += sum(o > (b if is_planned else case['bell']) for o in overs)
        clock = max(overs) + walk
    return max(ends), late, list(waits.values()), list(idle.values()), lates


def simulate(case):
    for s in case['stays']:
        s['keys'] = [('g', s['group']), ('c', s['table'], s['copy'])] + ([('a', s['adult'])] if s['adult'] else [])
    runs, resets = draws(case)
    play = free_period if case['way'] == 'free' else signal_period
    rows = [play(case, run, reset) for run, reset in zip(runs.tolist(), resets.tolist())]
    ends = np.array([r[0] for r in rows])
    late = np.array([r[1] for r in rows])
    waits, idle = np.array([r[2] for r in rows]), np.array([r[3] for r in rows])
    lates = np.array([r[4] for r in rows])
    for s in case['stays']:
        del s['keys']
    root = np.sqrt(len(rows))
    case['expected'] = {
        'trials': len(rows),
        'allDone': float(np.mean((late == 0) & (ends <= case['bell']))),
        'ends': [float(x) for x in np.quantile(ends, [0.025, 0.5, 0.975])],
        'endsDensity': [float(np.mean(np.abs(ends - q) < 10) / 20) for q in np.quantile(ends, [0.025, 0.5, 0.975])],
        'unfinished': float(late.mean()), 'unfinishedU': float(late.std() / root),
        'waits': waits.mean(axis=0).tolist(), 'waitsU': (waits.std(axis=0) / root).tolist(),
        'idle': idle.mean(axis=0).tolist(), 'idleU': (idle.std(axis=0) / root).tolist(),
        'signalsDone': [float(x) for x in (lates == 0).mean(axis=0)] if case['rounds'] else [],
    }
    return case


def table(mark, run, run_u, reset, reset_u, copies=1):
    return {'mark': mark, 'run': run, 'runU': run_u, 'reset': reset, 'resetU': reset_u, 'copies': copies}


def planned(case, order):
    """The plan at the stated times, as tables free up, from the order of each group."""
    group_free = {g['label']: max(case['begins'], g['arrives']) for g in case['groups']}
    copy_free, adult_free = {}, {}
    tables = {t['mark']: t for t in case['tables']}
    todo = {g: list(marks) for g, marks in order.items()}
    stays = []
    while any(todo.values()):
        def earliest(g):
            mark = todo[g][0]
            copy = min(range(1, tables[mark]['copies'] + 1), key=lambda c: copy_free.get((mark, c), case['begins']))
            at = max(group_free[g], copy_free.get((mark, copy), case['begins']), adult_free.get(case['adults'].get(mark), 0))
            for a, b in case['breaks']:
                if at < b and at + tables[mark]['run'] > a:
                    at = b
            return at, g, mark, copy
        at, g, mark, copy = min(earliest(g) for g in todo if todo[g])
        to = at + tables[mark]['run']
        adult = case['adults'].get(mark)
        stays.append({'group': g, 'table': mark, 'copy': copy, 'from': at, 'to': to, 'round': None, 'adult': adult})
        todo[g].pop(0)
        group_free[g] = to + case['walk']
        copy_free[(mark, copy)] = to + tables[mark]['reset']
        if adult:
            adult_free[adult] = to + tables[mark]['reset']
    return sorted(stays, key=lambda s: (s['from'], s['to']))


def latin(case, length):
    marks = [t['mark'] for t in case['tables']]
    stays, rounds, at = [], [], case['begins']
    for r in range(len(marks)):
        for a, b in case['breaks']:
            if at < b and at + length > a:
                at = b
        rounds.append([at, at + length])
        for n, g in enumerate(case['groups']):
            mark = marks[(n + r) % len(marks)]
            stays.append({'group': g['label'], 'table': mark, 'copy': 1, 'from': at, 'to': at + length,
                          'round': r + 1, 'adult': None})
        at += length + case['walk']
    return stays, rounds


def groups(labels, **late):
    return [{'label': g, 'arrives': late.get(g, 0)} for g in labels]


def free_case(name, bell, order, **more):
    case = {'name': name, 'way': 'free', 'signal': None, 'begins': 300, 'bell': bell, 'walk': 0, 'breaks': [],
            'adults': {}, 'rounds': [], **more}
    case['stays'] = planned(case, order)
    return simulate(case)


def signal_case(name, bell, length, **more):
    case = {'name': name, 'way': 'signal', 'begins': 300, 'bell': bell, 'walk': 30, 'breaks': [], 'adults': {}, **more}
    case['stays'], case['rounds'] = latin(case, length)
    return simulate(case)


def cyclic(labels, marks):
    return {g: [marks[(n + k) % len(marks)] for k in range(len(marks))] for n, g in enumerate(labels)}


four = [table('1', 240, 36, 20, 5), table('2', 300, 45, 30, 5), table('3', 260, 30, 30, 8), table('4', 320, 60, 20, 5)]
assumed = {'table': 0.25, 'group': 0.25, 'rest': 0.5}
apart = {'table': 0, 'group': 0, 'rest': 1}
six = [table('1', 240, 36, 20, 5, 2), table('2', 300, 45, 30, 5), table('3', 260, 30, 30, 8), table('4', 320, 60, 20, 5),
       table('5', 200, 20, 0, 0)]
orders = cyclic('ABCDEF', ['1', '2', '3', '4', '5'])
orders['F'] = ['1', '3', '5', '2', '4']

cases = [
    free_case('four groups, four tables, tables free up', 1680, cyclic('ABCD', '1234'),
              groups=groups('ABCD'), tables=four, split=assumed),
    free_case('six groups, five tables, two copies, a break, a late group, one adult at two tables', 4560, orders,
              groups=groups('ABCDEF', C=500), tables=six, split=apart, walk=30, breaks=[[1000, 1300]],
              adults={'2': 'one', '4': 'one'}),
    free_case('the same with times that hang together', 4560, orders,
              groups=groups('ABCDEF', C=500), tables=six, split={'table': 0.3, 'group': 0.4, 'rest': 0.3}, walk=30,
              breaks=[[1000, 1300]], adults={'2': 'one', '4': 'one'}),
    signal_case('signals as planned', 2000, 360, signal='planned', groups=groups('ABCD'), tables=four, split=assumed),
    signal_case('signals when the slowest is done, with a break', 2050, 330, signal='slowest', groups=groups('ABCD'),
                tables=four, split=assumed, breaks=[[1100, 1200]]),
    signal_case('one group too few, signals as planned', 2000, 345, signal='planned', groups=groups('ABC'),
                tables=four, split=apart),
]
json.dump({'numpy': np.__version__, 'cases': cases}, sys.stdout, separators=(',', ':'))
print()
