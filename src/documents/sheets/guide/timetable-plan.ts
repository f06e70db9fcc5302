import { sayingsOf } from '../../text/period-said.ts';
import { type PeriodWords, staysOf, timetableOf, waitsOf } from '../../text/period-words.ts';
import type { Saying } from '../../text/saying.ts';
import type { Block, Cell } from '../block.ts';
import { classesOfJob } from '../classes-of-job.ts';
import { paperWidth } from '../kit-sheet.ts';
import type { PaperJob } from '../paper-job.ts';
import { rotationFigure } from '../rotation-figure.ts';
import type { Say } from '../say.ts';
import { sayingBlocks } from '../saying-blocks.ts';

/** Of all that is said of a period what a teacher needs the night before; the rest stands on the notes beside the chart. */
const TOLD: readonly Saying['about'][] = ['clash', 'sure', 'left out', 'closed', 'stands'];
/** Less than this before the bell is no time to do anything in, seconds. */
const LEAST_SPARE = 30;
const LETTERS = 2.5;

/** The period as its timetable has it, class by class: the chart, and minute by minute what happens. */
export function timetablePlan(job: PaperJob, say: Say): readonly Block[] {
  const classes = classesOfJob(job, job.languages.key);
  return [
    { block: 'heading', level: 2, text: say('guide.plan') },
    ...classes.flatMap(({ words }): readonly Block[] => [
      ...(words.period.label === null
        ? []
        : [
            {
              block: 'heading' as const,
              level: 3 as const,
              text: say('rotation.class', { class: words.period.label }),
            },
          ]),
      ...planOfClass(job, words),
    ]),
  ];
}

function planOfClass(job: PaperJob, words: PeriodWords): readonly Block[] {
  const { say, period } = words;
  const chart = rotationFigure(words, 'groups', {
    width: paperWidth(job.paper),
    height: 30 + 11 * period.rotation.groups.length,
    least: LETTERS,
  });
  const rows = planRows(words);
  return [
    ...(chart === null ? [] : [{ block: 'text' as const, text: say('guide.plan.timetable') }, chart]),
    ...(rows.length === 0
      ? []
      : [
          {
            block: 'table' as const,
            head: ['time', 'what', 'who'].map((column) => say(`guide.plan.${column}`)),
            rows,
            widths: [2, 2.1, 7],
            size: 'small' as const,
          },
        ]),
    ...sayingsOf(words, job.prepared)
      .filter(({ about }) => TOLD.includes(about))
      .flatMap(sayingBlocks),
  ];
}

/** What happens from when to when. */
function planRows(words: PeriodWords): readonly (readonly Cell[])[] {
  const { say, at, period } = words;
  const timetable = timetableOf(period);
  if (timetable === null) return [];
  const { begins, bell, breaks } = period.rotation;
  const row = (from: number, to: number, what: string, does: string) =>
    [
      from,
      [
        say('sheet.rotation.from-to', { from: at(from), to: at(to) }),
        { text: what, strong: true },
        does,
      ] as readonly Cell[],
    ] as const;
  const rounds = timetable.rounds?.map(({ from, to }, n) =>
    row(
      from,
      to,
      say('guide.plan.round', { round: n + 1 }),
      [placesIn(words, from, to), say('guide.plan.signal', { time: at(to) })].join(' '),
    ),
  );
  const free = Math.max(timetable.ends, timetable.rounds?.at(-1)?.to ?? 0);
  const timed = [
    ...(begins > 0 ? [row(0, begins, say('guide.plan.start'), say('guide.plan.start.does'))] : []),
    ...(rounds ?? [row(begins, timetable.ends, say('guide.plan.free'), placesIn(words, begins, begins + 1))]),
    ...breaks.map(({ from, to }) => row(from, to, say('guide.plan.break'), say('guide.plan.break.does'))),
    ...(bell - free < LEAST_SPARE
      ? []
      : [
          row(
            free,
            bell,
            say('guide.plan.spare'),
            say('guide.plan.spare.does', { sheet: say('sheet.packing') }),
          ),
        ]),
    ...(period.lasts > bell
      ? [
          row(
            bell,
            period.lasts,
            say('guide.plan.talk'),
            say('guide.plan.talk.does', { heading: say('guide.talk') }),
          ),
        ]
      : []),
  ];
  return [
    [
      say('guide.plan.before'),
      { text: say('sheet.arrival'), strong: true },
      say('guide.plan.arrival.does', { sheet: say('sheet.rekey') }),
    ],
    ...[...timed].sort(([a], [b]) => a - b).map(([, cells]) => cells),
  ];
}

/** Where each group is in a stretch of time: "A 1, B 2, C waits". */
function placesIn({ say, period }: PeriodWords, from: number, to: number): string {
  const within = (each: { readonly from: number; readonly to: number }): boolean =>
    each.from < to && each.to > from;
  const stays = staysOf(period).filter(within);
  const waits = waitsOf(period).filter(within);
  const places = period.rotation.groups.flatMap(({ label }) => {
    const stay = stays.find(({ group }) => group === label);
    const waiting = waits.some(({ group }) => group === label);
    if (stay === undefined && !waiting) return [];
    return [say('guide.plan.place', { group: label, table: stay?.table ?? say('guide.plan.waiting') })];
  });
  return say('guide.plan.places', { places });
}
