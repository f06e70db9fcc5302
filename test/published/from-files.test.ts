import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { isNotDefined, type NotDefined } from '../../src/core/description/not-defined.ts';
import type { Prediction } from '../../src/core/setups/prediction.ts';
import { caseOnTable } from './case-on-table.ts';
import { record } from './record.ts';
import { casesOf, inputsOf, type PublishedCase, siOf } from './topic.ts';

/** The figures of a case, in SI, from the predictions of its setups. */
type Figures = (
  of: (setup?: string) => Prediction,
  given: ReturnType<typeof inputsOf>,
) => Readonly<Record<string, number | boolean>>;

const defined = (value: number | NotDefined): number => {
  if (isNotDefined(value)) throw new Error(value.because);
  return value;
};

function pull({ pull: found }: Prediction): number {
  if (found === null) throw new Error('no pull');
  return found.value;
}

function hand({ account }: Prediction): { readonly travel: number; readonly work: number } {
  if (isNotDefined(account)) throw new Error(account.because);
  return {
    travel: account.effortTravel,
    work: account.given.find(({ by }) => by === 'hand')?.joules ?? 0,
  };
}

function textbook({ textbook: found }: Prediction): number {
  if (isNotDefined(found)) throw new Error(found.because);
  return found.value;
}

function counted({ outcome }: Prediction): number {
  if (outcome.kind !== 'reading') throw new Error(`no reading but ${outcome.kind}`);
  return outcome.expected;
}

const justPull =
  (figure: string): Figures =>
  (of) => ({ [figure]: pull(of()) });

/** How each file answers; the file itself says how the case was put on a table. */
const tables: Readonly<Record<string, Readonly<Record<string, Figures>>>> = {
  levers: {
    'lev-001': (of) => ({ hand_force: pull(of()), advantage: defined(of().actualAdvantage) }),
    'lev-003': justPull('effort'),
    // The pull is measured 1 m from the pin: its moment is that of the other child.
    'lev-011': (of, given) => ({ r2: pull(of()) / (given('m2') * given('g')) }),
    'lev-022': justPull('w2'),
    'lev-027': (of) => ({ muscle_lb: pull(of()), muscle_N: pull(of()) }),
    'lev-028': justPull('muscle'),
  },
  'incline-friction-rolling': {
    'inc-001': (of) => ({ effort: pull(of()), advantage: defined(of().idealAdvantage) }),
    'inc-009': (of) => ({
      ideal_effort: textbook(of()),
      statement_exact_is_true: pull(of()) <= textbook(of()),
    }),
    'inc-012': (of) => ({ keep: pull(of('keep')), start: pull(of('start')) }),
    'inc-025': justPull('pull'),
    'inc-028': (of) => ({ force: pull(of()), work: hand(of()).work }),
    'inc-059': justPull('force'),
    'inc-063': justPull('force'),
  },
  'pulleys-tackle-capstan': {
    'pul-004': (of) => ({ effort: pull(of()), rope_pulled: hand(of()).travel }),
    'pul-046': (of) => ({ lead_load: pull(of()), static: textbook(of()) }),
    'pul-051': (of) => ({
      bronze: defined(of('bronze').actualAdvantage),
      antifriction: defined(of('rolling').actualAdvantage),
    }),
  },
  'wheel-axle-gears-compound': {
    'whe-003': justPull('effort'),
    'whe-011': (of) => ({ VR: defined(of().velocityRatio) }),
    'whe-051': (of) => ({ total: defined(of().idealAdvantage) }),
  },
  screws: {
    'scr-001': (of) => ({ turns: counted(of()) }),
    'scr-013': (of) => ({ raise_: pull(of('raise')) }),
    // Turned backwards by hand: the pull that keeps it from running down is below nothing.
    'scr-017': (of) => ({ raise_: pull(of('raise')), lower: -pull(of('lower')) }),
  },
  'wedge-impact': {
    'wed-001': justPull('push'),
    'wed-002': justPull('push'),
    'wed-004': justPull('push'),
  },
};

const cases = Object.entries(tables).flatMap(([topic, figures]) =>
  casesOf(topic)
    .filter(({ id }) => figures[id] !== undefined)
    .map((published) => ({ topic, published, answer: figures[published.id] as Figures })),
);

describe('published cases written as kit and activity files', () => {
  it('are all from a published source, and each has its file', () => {
    const bases = new Set(cases.map(({ published }) => published.basis));
    expect([...bases].sort()).toEqual(['published', 'published inputs, recomputed answer']);
    const files = readdirSync(new URL('./on-tables/', import.meta.url)).map((name) =>
      name.replace('.yaml', ''),
    );
    expect(cases.map(({ published }) => published.id).sort()).toEqual(files.sort());
    expect(Object.values(tables).flatMap(Object.keys).sort()).toEqual(files.sort());
  });

  for (const { topic, published, answer } of cases)
    it(`${published.id} from its files: ${published.gist}`, () => {
      const table = caseOnTable(published);
      expect(table.errors).toEqual([]);
      expect(table.unsaid, 'inputs of the source that the files leave out').toEqual([]);
      const of = (mark = 'A') => table.setup(mark).prediction;
      for (const [quantity, got] of Object.entries(answer(of, inputsOf(published))))
        compare(topic, published, quantity, got);
    });
});

function compare(topic: string, published: PublishedCase, quantity: string, got: number | boolean): void {
  const figure = published.expected[quantity];
  if (figure === undefined) throw new Error(`${published.id} has no figure ${quantity}`);
  const { title, section } = published.source;
  const wanted =
    published.source_answer_disagrees && figure.recomputed !== undefined ? figure.recomputed : figure.value;
  const inUnit = typeof got === 'number' ? got / siOf(figure.unit) : got;
  record({
    topic,
    id: `${published.id} (from files)`,
    basis: 'from files',
    source: section === undefined ? title : `${title}, ${section}`,
    quantity,
    expected: wanted,
    got: inUnit,
    unit: figure.unit,
    tolerance: figure.tol_abs ?? null,
  });
  if (typeof wanted === 'boolean') expect(inUnit, quantity).toBe(wanted);
  else expect(Math.abs((inUnit as number) - wanted), quantity).toBeLessThanOrEqual(figure.tol_abs ?? 0);
}
