import type { Block, Cell } from '../block.ts';
import type { PaperJob } from '../paper-job.ts';
import type { Say } from '../say.ts';
import { needsAdult } from './hazard-sheet.ts';
import { timetablePlan } from './timetable-plan.ts';

/** A period where the visit says none, minutes: assumed, and said so on the sheet. */
const ASSUMED_PERIOD = 45;
/** Below this nobody builds, reads and writes, minutes a table: common practice, no source. */
const LEAST_ROUND = 6;
/** Shares of the period, common practice, no source. */
const SHARES = { start: 0.1, pack: 0.1, talk: 0.2 } as const;
const SIX = 6;

/** A period in whole minutes: start, rounds of one length, packing, talk. */
export interface PeriodPlan {
  readonly period: number;
  readonly isAssumed: boolean;
  readonly start: number;
  readonly rounds: number;
  readonly minutes: number;
  readonly pack: number;
  readonly talk: number;
}

/**
 * As many rounds as tables where the period allows, else as many as have time enough; what is left over
 * goes to the talk.
 *
 * @example planOf(50, 7).rounds // => 5
 * @example planOf(50, 7).minutes // => 6
 */
export function planOf(stated: number | null, tables: number): PeriodPlan {
  const period = Math.max(1, Math.floor(stated ?? ASSUMED_PERIOD));
  const part = (share: number): number => Math.round(period * share);
  const [start, pack] = [part(SHARES.start), part(SHARES.pack)];
  const left = period - start - pack - part(SHARES.talk);
  const rounds = Math.max(1, Math.min(tables, Math.floor(left / LEAST_ROUND)));
  const minutes = Math.max(1, Math.floor(left / rounds));
  return {
    period,
    isAssumed: stated === null,
    start,
    rounds,
    minutes,
    pack,
    talk: Math.max(0, period - start - rounds * minutes - pack),
  };
}

/** How large the groups are, and where adults have to be. */
const peopleLines = (job: PaperJob, say: Say): readonly string[] => [
  ...sizes(job.prepared.visit?.pupils ?? null, job.prepared.visit?.groups ?? null, say),
  ...placesOfAdults(job, say),
];

/** The period as its timetable has it; without one, a plain plan: all groups move together, at a signal. */
export function periodPlan(job: PaperJob, say: Say): readonly Block[] {
  const { visit } = job.prepared;
  if (job.period !== null)
    return [...timetablePlan(job, say), { block: 'list', items: peopleLines(job, say) }];
  const tables = job.sheet.tables.filter(({ setups }) => setups.length > 0).map(({ mark }) => mark);
  if (tables.length === 0) return [];
  const stated = visit?.period ?? null;
  const plan = planOf(stated === null ? null : stated.value / 60, tables.length);
  return [
    { block: 'heading', level: 2, text: say('guide.plan') },
    {
      block: 'text',
      text: say(plan.isAssumed ? 'guide.plan.assumed' : 'guide.plan.about', {
        period: plan.period,
        tables: tables.length,
        minutes: plan.minutes,
        least: LEAST_ROUND,
      }),
    },
    {
      block: 'table',
      head: ['minute', 'what', 'who'].map((column) => say(`guide.plan.${column}`)),
      rows: rowsOf(plan, tables, groupsOf(job), say),
      widths: [1.6, 2.4, 7],
      size: 'small',
    },
    {
      block: 'list',
      items: [
        ...(plan.rounds < tables.length
          ? [say('guide.plan.not-all', { rounds: plan.rounds, tables: tables.length })]
          : []),
        ...peopleLines(job, say),
      ],
    },
  ];
}

/** Where an adult has to stay, what the others do, and whether there are enough of them. */
function placesOfAdults({ sheet, period, prepared: { visit } }: PaperJob, say: Say): readonly string[] {
  const planned = period?.classes.flatMap((each) => each.rotation.tables) ?? [];
  // Where the timetable has somebody at a table, it has said so already.
  const tables = sheet.tables
    .filter((table) => table.setups.length > 0 && needsAdult(table))
    .filter(({ mark }) => !planned.some((table) => table.mark === mark && table.needsAdult));
  const adults = visit?.helpers == null ? null : visit.helpers + 1;
  if (tables.length === 0) return [];
  const walk = say('guide.plan.walk', { carried: say('sheet.carried') });
  const stay = say('guide.plan.stay', { tables: tables.map(({ mark }) => mark) });
  return adults === null || adults >= tables.length
    ? [`${stay} ${walk}`]
    : [stay, say('guide.plan.too-few', { count: tables.length, adults })];
}

/** Labels of the groups; empty where the visit doesn't say how many there are. */
const groupsOf = (job: PaperJob): readonly string[] => job.prepared.visit?.groupLabels ?? [];

function rowsOf(
  plan: PeriodPlan,
  tables: readonly string[],
  groups: readonly string[],
  say: Say,
): readonly (readonly Cell[])[] {
  let now = 0;
  const row = (what: string, minutes: number, does: string): readonly Cell[] => {
    const from = now;
    now += minutes;
    return [
      say('guide.plan.from-to', { from, to: now }),
      { text: say(`guide.plan.${what}`), strong: true },
      does,
    ];
  };
  const rounds = plan.rounds * plan.minutes;
  return [
    [
      say('guide.plan.before'),
      { text: say('sheet.arrival'), strong: true },
      say('guide.plan.arrival.does', { sheet: say('sheet.rekey') }),
    ],
    row('start', plan.start, say('guide.plan.start.does')),
    row(
      'rounds',
      rounds,
      [
        say('guide.plan.rounds.does', { rounds: plan.rounds, minutes: plan.minutes }),
        firstPlaces(tables, groups, say),
      ]
        .filter((each) => each !== '')
        .join(' '),
    ),
    row('pack', plan.pack, say('guide.plan.pack.does', { sheet: say('sheet.packing') })),
    row('talk', plan.talk, say('guide.plan.talk.does', { heading: say('guide.talk') })),
  ];
}

/** Where each group begins; more groups than tables share, the first ones first. */
function firstPlaces(tables: readonly string[], groups: readonly string[], say: Say): string {
  const next =
    tables.length < 2 ? '' : say('guide.plan.next', { last: tables.at(-1) ?? '', first: tables[0] ?? '' });
  if (groups.length === 0) return next;
  const places = groups.map((group, n) =>
    say('guide.plan.place', { group, table: tables[n % tables.length] ?? '' }),
  );
  const shared = groups.length > tables.length ? say('guide.plan.shared') : '';
  return [say('guide.plan.begin', { places }), next, shared].filter((each) => each !== '').join(' ');
}

/** How large the groups are, and what a fifth child does, or a group of three without a fourth. */
function sizes(pupils: number | null, groups: number | null, say: Say): readonly string[] {
  const roles = (least: number, most: number): readonly string[] => [
    ...(least <= 3 ? [say('guide.plan.three')] : []),
    ...(most >= 5 ? [say('guide.plan.five')] : []),
    ...(most >= SIX ? [say('guide.plan.six')] : []),
  ];
  if (pupils === null || groups === null || pupils < groups) return roles(3, 5);
  const least = Math.floor(pupils / groups);
  const larger = pupils % groups;
  const facts = { pupils, groups, size: least, larger, more: least + 1, others: groups - larger };
  return [
    say(`guide.plan.sizes${larger === 0 ? '-even' : ''}`, facts),
    ...roles(least, least + (larger > 0 ? 1 : 0)),
  ];
}
