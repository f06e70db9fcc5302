import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { PeriodChanges } from './files/period-changes.ts';
import { askedPeriods, planPeriod, usualOptions } from './period.ts';
import { type Prepared, prepare } from './prepare.ts';
import { seconds } from './quantities/brands.ts';
import type { ClassPeriod } from './rotation/class-period.ts';
import { standardUncertainty } from './uncertainty/measured.ts';

const read = (folder: string, name: string) =>
  readFileSync(new URL(`../../examples/${folder}/${name}`, import.meta.url), 'utf8');

/** The boathouse with more lines in its visit, and other words in its files. */
function boathouse(lines = '', change: (text: string) => string = (text) => text): Prepared {
  const file = (name: string, more = '') => ({ name, text: change(read('brackwater', name) + more) });
  return prepare({
    kit: file('boathouse.kit.yaml'),
    activity: file('harbour-day.activity.yaml'),
    visit: file('harbour-day.visit.yaml', lines),
  });
}

const smallest = (): Prepared =>
  prepare({
    kit: { name: 'smallest.kit.yaml', text: read('smallest', 'smallest.kit.yaml') },
    activity: { name: 'smallest.activity.yaml', text: read('smallest', 'smallest.activity.yaml') },
    visit: null,
  });

function asked(prepared: Prepared, changes: PeriodChanges = {}) {
  expect(prepared.diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
  const [first] = askedPeriods(prepared, changes) ?? [];
  if (first === undefined) throw new Error('no class');
  return first;
}

const minutes = (n: number) => seconds(60 * n);

describe('what a period asks', () => {
  it('begins after the introduction, and the bell rings before the talk at the end', () => {
    const { rotation, lasts } = asked(boathouse());
    expect([rotation.begins, rotation.bell, lasts]).toEqual([minutes(5), minutes(50), minutes(60)]);
  });

  it('takes common practice where nobody says, and tells every such thing', () => {
    const { assumed, rotation, lasts } = asked(smallest());
    expect(assumed.map(({ key }) => key.replace('period.assumed.', ''))).toEqual([
      'period',
      'introduction',
      'talk-at-the-end',
      'walk',
      'takes',
      'reset',
      'groups',
      'signal',
    ]);
    expect(lasts).toBe(minutes(45));
    // Two readings: 2 min to settle, 2 min each.
    expect(rotation.tables.map(({ run }) => run.value)).toEqual([minutes(6)]);
    expect(asked(boathouse()).assumed).toEqual([]);
  });

  it('takes how far groups differ from the file where it says so, and assumes it where a time is bare', () => {
    const bare = boathouse('', (text) => text.replace('takes: 4 min ± 1 min', 'takes: 4 min'));
    const [lever] = asked(bare).rotation.tables;
    const [stated] = asked(boathouse()).rotation.tables;
    expect(standardUncertainty(stated?.run as never)).toBeCloseTo(60 / 1.96, 6);
    expect(standardUncertainty(lever?.run as never)).toBeCloseTo(0.15 * 240, 6);
  });

  it('counts clock times from the start of the period', () => {
    const { rotation } = asked(
      boathouse(
        [
          'closed:',
          '  - table: "3"',
          '    from: 09:40',
          '    until: 50 min',
          'breaks:',
          '  - at: 09:45',
          '    lasts: 5 min',
          'wishes:',
          '  - group: B',
          '    comes at: 09:25',
          '  - group: C',
          '    away from: 40 min',
          '',
        ].join('\n'),
      ),
    );
    expect(rotation.breaks).toEqual([{ from: minutes(30), to: minutes(35) }]);
    expect(rotation.groups.map(({ arrives }) => arrives)).toEqual([0, minutes(10), 0, 0, 0, 0]);
    expect(rotation.wishes.filter(({ kind }) => kind === 'closed' || kind === 'away')).toMatchObject([
      { kind: 'away', group: 'C', from: minutes(40), to: null },
      { kind: 'closed', table: '3', from: minutes(25), to: minutes(50) },
    ]);
  });

  it('names every wish with its place in the file, and an order of the activity without one', () => {
    const { rotation } = asked(boathouse('wishes:\n  - group: A, B\n    first: "2"\n  - must do: "5"\n'));
    const wishes = rotation.wishes.filter(({ kind }) => !['bell', 'adults'].includes(kind));
    expect(wishes).toMatchObject([
      { kind: 'before', first: '1', group: null, path: null },
      { kind: 'first', table: '2', group: 'A', path: ['wishes', 0, 'first'] },
      { kind: 'first', table: '2', group: 'B', path: ['wishes', 0, 'first'] },
      { kind: 'does', table: '5', group: null, path: ['wishes', 1, 'must do'] },
    ]);
    expect(new Set(rotation.wishes.map(({ id }) => id)).size).toBe(rotation.wishes.length);
  });

  it('takes three groups that want to be apart two by two', () => {
    const { rotation } = asked(boathouse('apart: A, B, C\n'));
    expect(rotation.wishes.flatMap((wish) => (wish.kind === 'apart' ? [wish.groups.join()] : []))).toEqual([
      'A,B',
      'A,C',
      'B,C',
    ]);
  });

  it('has tables stand as the activity lists them, or in the rows that the visit shows', () => {
    const besides = (prepared: Prepared) =>
      asked(prepared).rotation.tables.map(({ beside }) => beside.join());
    expect(besides(boathouse())).toEqual(['2', '1,3', '2,4', '3,5', '4,6', '5,7', '6']);
    expect(besides(boathouse('beside:\n  - 1, 2, 3\n  - 4, 5\n'))).toEqual([
      '2',
      '1,3',
      '2',
      '5',
      '4',
      '',
      '',
    ]);
  });

  it('closes a table that can not be built, and says which part is missing', () => {
    const prepared = boathouse('missing: shock cord\n');
    const [first] = askedPeriods(prepared, { closed: ['1'] }) ?? [];
    expect(first?.closed).toEqual([
      { table: '6', because: 'parts', parts: ['shock cord'], during: null },
      { table: '1', because: 'asked', parts: [], during: null },
    ]);
  });

  it('makes as many groups as come nearest to the size that is wanted', () => {
    const prepared = boathouse('group size: 4\n', (text) => text.replace('groups: 6\n', ''));
    expect(prepared.visit?.groups).toBe(6);
    expect(asked(prepared).rotation.groups.map(({ label, pupils }) => `${label}${pupils}`)).toEqual([
      'A5',
      'B5',
      'C4',
      'D4',
      'E4',
      'F4',
    ]);
  });

  it('lists adults by what they are called, or counts the helpers', () => {
    expect(asked(boathouse()).rotation.adults).toEqual([
      { label: '1', at: null },
      { label: '2', at: null },
    ]);
    const listed = asked(boathouse('adults:\n  - adult: teacher\n    at: 4, 6\n  - adult: parent\n'));
    expect(listed.rotation.adults).toEqual([
      { label: 'teacher', at: ['4', '6'] },
      { label: 'parent', at: null },
    ]);
    expect(listed.adultsAreCounted).toBe(false);
    expect(asked(boathouse(), { adults: 1 }).rotation.adults).toHaveLength(1);
  });

  it('follows every what-if before the file', () => {
    const { rotation, lasts } = asked(boathouse('copies:\n  "1": 2\n'), {
      lasts: minutes(40),
      way: 'free',
      groups: 7,
      copies: { '2': 2 },
      late: [{ group: 'G', by: minutes(10) }],
    });
    expect(lasts).toBe(minutes(40));
    expect(rotation.way).toBe('free');
    expect(rotation.tables.map(({ copies }) => copies)).toEqual([2, 2, 1, 1, 1, 1, 1]);
    expect(rotation.groups.at(-1)).toMatchObject({ label: 'G', arrives: minutes(10) });
  });
});

describe('a day of several classes', () => {
  const day = [
    'classes:',
    '  - class: 5b',
    '    starts: 10:20',
    '    period: 50 min',
    '    groups: 5',
    '  - class: 5a',
    '    starts: 09:15',
    'wishes:',
    '  - class: 5b',
    '    group: A',
    '    first: "2"',
    'breaks:',
    '  - at: 10:45',
    '    lasts: 5 min',
    '',
  ].join('\n');
  const classes = askedPeriods(boathouse(day), {}) ?? [];

  it('has a plan for each, in the order of the day, with what the class says itself before the visit', () => {
    expect(classes.map(({ label, lasts, rotation }) => [label, lasts, rotation.groups.length])).toEqual([
      ['5a', minutes(60), 6],
      ['5b', minutes(50), 5],
    ]);
  });

  it('gives a wish to its class, and a break to the class in whose period it falls', () => {
    expect(
      classes.map(({ rotation }) => rotation.wishes.filter(({ kind }) => kind === 'first').length),
    ).toEqual([0, 1]);
    expect(classes.map(({ rotation }) => rotation.breaks)).toEqual([
      [],
      [{ from: minutes(25), to: minutes(30) }],
    ]);
  });

  it('says how long there is between two of them, and how long the adults need to put all tables back', () => {
    const period = planPeriod(boathouse(day));
    // Resets of 30 s at three tables, 20 s at three and 10 s at one, for two adults: 160 s of work.
    expect(period?.between).toEqual([{ before: '5a', after: '5b', has: minutes(5), needs: 80 }]);
  });
});

describe('planPeriod', () => {
  const whole = (changes: PeriodChanges = {}): ClassPeriod => {
    const [first] = planPeriod(boathouse(), changes)?.classes ?? [];
    if (first === undefined) throw new Error('no class');
    return first;
  };

  it('sends every group of the boathouse to every table once, in time for the bell', () => {
    const { outcome, rotation, chance } = whole();
    if (outcome.kind !== 'timetable') throw new Error(outcome.kind);
    const visits = outcome.timetable.stays.map(({ group, table }) => `${group}${table}`);
    expect(new Set(visits).size).toBe(6 * 7);
    expect(visits).toHaveLength(6 * 7);
    expect(outcome.timetable.ends).toBeLessThanOrEqual(rotation.bell);
    expect(chance?.byTheBell).toBeGreaterThan(0.5);
    expect(chance?.byTheClock?.stays).toBe(6 * 7);
  });

  it('gives a group that waits for long a setup with more to find, or a task on paper, and no short wait', () => {
    const { waits } = whole({ lasts: minutes(60), closed: ['4', '6'] });
    const long = waits.filter(({ from, to }) => to - from >= 120);
    const kinds = new Set(long.map(({ task }) => task?.kind));
    expect(kinds).toContain('paper');
    expect(waits.filter(({ from, to, task }) => to - from < 60 && task !== null)).toEqual([]);
  });

  it('tells what would gain most only where somebody asks, and then only what gains', () => {
    expect(whole().gains).toEqual([]);
    const [first] = planPeriod(boathouse(), {}, { ...usualOptions, withGains: true })?.classes ?? [];
    expect(first?.gains.length).toBeGreaterThan(0);
    const now = first?.chance?.byTheBell ?? 1;
    for (const gain of first?.gains ?? []) expect(gain.byTheBell).toBeGreaterThan(now - 0.02);
  });

  it('gives the same period again for the same files', () => {
    expect(whole()).toEqual(whole());
  });

  it('tells no chance of signals where each group moves on as a table frees up', () => {
    const { chance, outcome } = whole({ way: 'free' });
    expect(chance?.byTheClock).toBeNull();
    expect(outcome.kind === 'timetable' && outcome.timetable.rounds).toBeNull();
  });

  it('has no chance to tell where wishes clash, and names them', () => {
    const prepared = boathouse('closed: "4"\nwishes:\n  - group: A\n    must do: "4"\n');
    const [first] = planPeriod(prepared)?.classes ?? [];
    expect(first?.chance).toBeNull();
    expect(first?.outcome.kind === 'clash' && first.outcome.wishes.map(({ kind }) => kind).sort()).toEqual([
      'closed',
      'does',
    ]);
  });

  it('plans nothing without an activity', () => {
    expect(planPeriod({ ...boathouse(), activity: null })).toBeNull();
  });
});
