import fc from 'fast-check';
import { machineNamed } from '../../src/core/machines/list.ts';
import type { Station } from '../../src/core/machines/machine.ts';
import type { Prepared, PreparedSetup } from '../../src/core/prepare.ts';
import { kilograms, newtons } from '../../src/core/quantities/brands.ts';
import { rankEase } from '../../src/core/setups/ease.ts';
import { type Change, mapSetup } from '../../src/core/setups/map-setup.ts';
import { predict } from '../../src/core/setups/predict.ts';
import type { Setup } from '../../src/core/setups/setup.ts';
import { exactly, type Measured, measured, plus } from '../../src/core/uncertainty/measured.ts';
import { everyStation } from '../stations/every-machine.ts';
import { type SaidOfScale, scaleOf, setupOf } from '../stations/setup.ts';

/** A table as no careful person would set it up, in plain numbers. */
export interface AnyTable {
  readonly station: Station;
  /** What rubs: as it is, nothing at all, or so much that hardly anything moves. */
  readonly rubbing: number;
  /** Every value's doubt as a share of it; 0: nothing is unknown. */
  readonly doubt: number;
  readonly tubeFriction: number;
  readonly scatter: number;
  readonly scale: SaidOfScale | null;
  readonly setups: readonly AnySetup[];
}

interface AnySetup {
  readonly grams: number;
  readonly way: Setup['way'];
  readonly watched: Setup['watched'];
  readonly hang: 'hook down' | 'upside down' | 'level';
  readonly zeroed: 'hook down' | 'in place';
  readonly handCarries: boolean;
}

const anyScale: fc.Arbitrary<SaidOfScale> = fc.oneof(
  fc.constant({}),
  fc.constantFrom<SaidOfScale>(
    { range: 2.5, graduation: 0.05 },
    { range: 5, graduation: 5 },
    { range: 1, graduation: 0.002, grams: 0 },
    { range: 10, graduation: 0.2, stop: 8 },
    { range: 500, graduation: 10, unit: 'gf', overload: 6, movingGrams: 30 },
    { range: 32, graduation: 1, unit: 'ozf', accuracy: 0.2, tubeFriction: 0.1 },
    { range: 0.1, graduation: 0.1, grams: 900, gramsOff: 400 },
    { range: 2000, graduation: 1, accuracy: 1e-9 },
  ),
);

const anySetup: fc.Arbitrary<AnySetup> = fc.record({
  grams: fc.constantFrom(0, 1, 50, 200, 200, 300, 1000, 50_000),
  way: fc.constantFrom('raise', 'lower', 'held', 'start'),
  watched: fc.constantFrom('pull', 'pull', 'pull', 'pull', 'turns', 'travel', 'ease'),
  hang: fc.constantFrom('hook down', 'hook down', 'upside down', 'level'),
  zeroed: fc.constantFrom('hook down', 'hook down', 'in place'),
  handCarries: fc.boolean(),
});

export const anyTable: fc.Arbitrary<AnyTable> = fc.record({
  station: fc.constantFrom(...everyStation),
  rubbing: fc.constantFrom(Number.NaN, Number.NaN, 0, 0.3, 3),
  doubt: fc.constantFrom(0, 1e-9, 0.02, 0.02, 0.4),
  tubeFriction: fc.constantFrom(0, 0.03, 1),
  scatter: fc.constantFrom(0, 0.03, 0.03, 0.5),
  scale: fc.oneof({ weight: 7, arbitrary: anyScale }, { weight: 1, arbitrary: fc.constant(null) }),
  setups: fc.array(anySetup, { minLength: 1, maxLength: 3 }),
});

const RUBS =
  /(friction|starting|faces|facesStarting|rollingArm|rollingShare|armBelow|armAbove|(fixed|moving|guide)Share|constant)$/i;

/** A station with everything in it that rubs set alike; as it is where nothing is said. */
function rubbing(data: unknown, value: number): unknown {
  if (Number.isNaN(value) || typeof data !== 'object' || data === null) return data;
  if (Array.isArray(data)) return data.map((each) => rubbing(each, value));
  return Object.fromEntries(
    Object.entries(data).map(([key, each]) =>
      RUBS.test(key) && typeof each === 'object' && each !== null && 'parts' in each
        ? [key, exactly(value * (/arm/i.test(key) ? 0.01 : 1))]
        : [key, rubbing(each, value)],
    ),
  );
}

/** Every value with a doubt of its own, the same for all setups of a table. */
function doubtful(share: number): Change {
  let n = 0;
  return <Q extends number>(value: Measured<Q>): Measured<Q> => {
    n += 1;
    const u = Math.abs(value.value) * share;
    return u === 0
      ? value
      : plus(value, measured(0 as Q, { id: `value ${n}`, u, shape: 'normal', origin: 'stated' }));
  };
}

const MARKS = {
  turns: { step: 0.25, unit: 'turns', unitSi: 1 },
  travel: { step: 0.001, unit: 'mm', unitSi: 0.001 },
};

function setupAt(table: AnyTable, said: AnySetup, n: number): Setup {
  const station = rubbing(table.station, table.rubbing) as Station;
  const machine = machineNamed(station.machine);
  if (machine === undefined) throw new Error(`no machine ${station.machine}`);
  const { watched } = said;
  const setup = setupOf(machine, station, {
    table: 'table',
    mark: `T${n + 1}`,
    load: { kind: 'mass', mass: exactly(kilograms(said.grams / 1000)) },
    watched,
    way: said.way,
    scale:
      table.scale === null || watched !== 'pull'
        ? null
        : scaleOf({ tubeFriction: table.tubeFriction, ...table.scale }),
    hang: said.hang,
    zeroed: said.zeroed,
    tapped: false,
    handCarries: said.handCarries,
    marks: watched === 'turns' || watched === 'travel' ? MARKS[watched] : null,
    reader: { scatter: table.scatter, handLimit: newtons(10) },
    partner: n === 0 ? 'T2' : 'T1',
  });
  return mapSetup(setup, doubtful(table.doubt));
}

/** The table, prepared as if it had come from files. */
export function preparedTable(table: AnyTable): Prepared {
  const bare = table.setups.map((said, n) => setupAt(table, said, n));
  const setups = bare.map(
    (setup): Setup => ({
      ...setup,
      around: {
        hung: 'w',
        weights: [{ mark: 'heavy', load: { kind: 'mass', mass: exactly(kilograms(0.5)) } }],
        partners: bare.filter(
          ({ mark, watched, partner }) =>
            mark !== setup.mark &&
            watched === setup.watched &&
            (mark === setup.partner || partner === setup.mark),
        ),
      },
    }),
  );
  const predictions = rankEase(setups.map(predict));
  const prepared = setups.flatMap((setup, n): readonly PreparedSetup[] => {
    const prediction = predictions[n];
    return prediction === undefined
      ? []
      : [{ setup, prediction, load: null, shows: null, parts: [], isExtra: false }];
  });
  return {
    kit: null,
    activity: null,
    visit: null,
    gravity: null,
    bench: null,
    sources: [],
    diagnostics: [],
    tables: [
      {
        mark: 'table',
        title: 'table',
        titles: {},
        machine: table.station.machine,
        setups: prepared,
        notPrepared: [],
      },
    ],
  };
}
