import { isNotDefined } from '../description/not-defined.ts';
import { workingLine as line, type WorkingLine } from '../description/working.ts';
import type { SpringScale } from '../instruments/spring-scale.ts';
import { turnOverShift } from '../instruments/spring-scale.ts';
import { forceOf } from '../parts/weight.ts';
import { COVERAGE_95, standardUncertainty } from '../uncertainty/measured.ts';
import { atBest } from '../uncertainty/propagate.ts';
import type { Reading } from './predict-scale.ts';
import { balanceFor, balanceOf, leastPull } from './pull.ts';
import { hangAngle, type Setup } from './setup.ts';
import { lagOf, senseOf, shiftOf, slopeOf } from './shown.ts';

/** Every line from the load to the good range, each with its numbers, unit and source. */
export function setupWorking(
  setup: Setup,
  reading: Reading,
  beforeTheRange: readonly WorkingLine[] = [],
): readonly WorkingLine[] {
  if (setup.watched === 'turns' || setup.watched === 'travel')
    return [...tallyLines(setup), ...beforeTheRange, ...rangeLines(setup, reading)];
  return [
    ...loadLines(setup),
    ...balanceLines(setup),
    ...(setup.scale === null ? [] : scaleLines(setup, setup.scale, reading)),
    ...beforeTheRange,
    ...rangeLines(setup, reading),
    ...textbookLines(setup),
  ];
}

function loadLines(setup: Setup): readonly WorkingLine[] {
  const g = atBest(setup.gravity);
  const W = forceOf(setup.load, atBest, g);
  if (setup.load.kind === 'weight')
    return W === 0 ? [] : [line('setup.load-weight', 'W', 'W', { W }, W, 'N', 'weight as written')];
  const m = atBest(setup.load.mass);
  return [
    ...setup.gravityWorking,
    line('setup.load-weight', 'W', 'm*g', { m, g }, W, 'N', 'weight = mass x local gravity'),
  ];
}

function balanceLines(setup: Setup): readonly WorkingLine[] {
  const lines: WorkingLine[] = [];
  if (setup.way === 'held') {
    const lower = balanceOf(setup, atBest, 'lower', 'starting');
    if (!isNotDefined(lower)) lines.push(...headed('setup.heading.lower-limit', lower.working()));
  }
  const balance = balanceFor(setup, atBest, setup.way);
  if (!isNotDefined(balance)) lines.push(...headed(`setup.heading.${setup.way}`, balance.working()));
  return lines;
}

function scaleLines(setup: Setup, scale: SpringScale, reading: Reading): readonly WorkingLine[] {
  const g = atBest(setup.gravity);
  const D = turnOverShift(scale, atBest, g);
  const s = shiftOf(setup, scale, atBest);
  const t = hangAngle(setup.hang, slopeOf(setup), atBest);
  const z = setup.zeroed === 'in place' ? t : hangAngle(setup.zeroed, slopeOf(setup), atBest);
  const lines: WorkingLine[] = [];
  const least = leastPull(setup, atBest);
  if (least > 0)
    lines.push(
      line(
        'scale.own-weight',
        'Mg',
        'M*g',
        { M: atBest(scale.inputs.mass), g },
        least,
        'N',
        'weight of the scale',
      ),
    );
  const { moving } = scale.inputs;
  if (moving !== null) {
    const values = { mh: atBest(moving.part), ms: atBest(moving.spring), g };
    lines.push(line('scale.turn-over', 'D', '(2*mh + ms)*g', values, D, 'N', OWN_SHIFT));
  }
  lines.push(line('scale.shift', 's', 'D/2*(cos(z) - cos(t))', { D, z, t }, s, 'N', OWN_SHIFT));
  if (reading.shown !== null) lines.push(...shownLines(setup, scale, reading, s));
  return headed('setup.heading.scale', lines);
}

/** The figure itself, from the force at the hook: for a band both ends. */
function shownLines(setup: Setup, scale: SpringScale, reading: Reading, s: number): readonly WorkingLine[] {
  const f = atBest(scale.inputs.tubeFriction);
  const isRunaway = reading.outcome.kind === 'moves under the scale';
  const l = atBest(lagOf(setup, isRunaway ? 'resting' : senseOf(setup)));
  const least = leastPull(setup, atBest);
  const figure = (end: 'lower' | 'upper', symbols: { F: string; Y: string }): readonly WorkingLine[] => {
    const way =
      end === 'lower' ? balanceOf(setup, atBest, 'lower', 'starting') : balanceFor(setup, atBest, setup.way);
    if (isNotDefined(way)) return [];
    const E = way.effort;
    const isCut = isRunaway || end === 'lower' || setup.way === 'lower';
    const F = isCut ? Math.max(E, least) : E;
    const force = isCut
      ? line('setup.force-at-hook', symbols.F, 'max(E, Mg)', { E, Mg: least }, F, 'N', CUT)
      : line('setup.force-at-hook', symbols.F, 'E', { E }, F, 'N', 'balance of the machine');
    const what = end === 'lower' ? 'scale.shows-lower' : 'scale.shows';
    return [
      force,
      line(what, symbols.Y, `${symbols.F} - s - l*f`, { [symbols.F]: F, s, l, f }, F - s - l * f, 'N', TUBE),
    ];
  };
  return [
    ...(reading.lower === null ? [] : figure('lower', { F: 'Fl', Y: 'Yl' })),
    ...figure('upper', { F: 'F', Y: 'Y' }),
  ];
}

function rangeLines(setup: Setup, reading: Reading): readonly WorkingLine[] {
  const marks = setup.marks ?? setup.scale?.graduations;
  const { outcome, read } = reading;
  if (marks === undefined || read === null || !('good' in outcome)) return [];
  const rows = reading.budget.filter((row) => row.contribution > 0);
  const values = Object.fromEntries(rows.map((row, n) => [`u${n + 1}`, row.contribution]));
  const u = standardUncertainty(read);
  const unit = setup.watched === 'turns' ? 'turns' : setup.watched === 'travel' ? 'm' : 'N';
  const k = COVERAGE_95;
  const d = marks.step;
  const lower = reading.lower ?? read;
  const least = setup.watched === 'pull' ? (setup.scale?.stop ?? 0) : 0;
  const most = setup.watched === 'pull' ? setup.scale?.range : undefined;
  const ends = most === undefined ? { z: least } : { z: least, e: most };
  const onTheMarks = (formula: string): string =>
    most === undefined ? `max(${formula}, z)` : `min(max(${formula}, z), e)`;
  const lines: WorkingLine[] = [
    line(
      'setup.combined',
      'u',
      Object.keys(values).length === 0
        ? '0'
        : `sqrt(${Object.keys(values)
            .map((name) => `${name}^2`)
            .join(' + ')})`,
      values,
      u,
      unit,
      'JCGM 100:2008, 5.1.2',
    ),
    line(
      'setup.from',
      'from',
      onTheMarks('floor((Y - k*u)/d)*d'),
      { Y: lower.value, k, u: standardUncertainty(lower), d, ...ends },
      outcome.good.from,
      unit,
      OUTWARD,
    ),
    line(
      'setup.to',
      'to',
      onTheMarks('ceil((Y + k*u)/d)*d'),
      { Y: read.value, k, u, d, ...ends },
      outcome.good.to,
      unit,
      OUTWARD,
    ),
  ];
  return headed('setup.heading.range', lines);
}

function textbookLines(setup: Setup): readonly WorkingLine[] {
  const ideal = setup.machine.idealAdvantage(setup.station, atBest);
  if (isNotDefined(ideal)) return [];
  const balance = balanceFor(setup, atBest, setup.way);
  const load = forceOf(setup.load, atBest, atBest(setup.gravity));
  const W = isNotDefined(balance) ? load : (balance.overcomes ?? load);
  const A = ideal.advantage;
  return headed('setup.heading.textbook', [
    ...ideal.working,
    line('setup.textbook', 'T', 'W/A', { W, A }, W / A, 'N', 'load over ideal advantage'),
  ]);
}

function tallyLines(setup: Setup): readonly WorkingLine[] {
  const tally = setup.machine.tally?.(setup.station, atBest);
  return tally === undefined || isNotDefined(tally) ? [] : headed('setup.heading.count', tally.working);
}

const OWN_SHIFT = 'balance of the moving part of the scale; derived, no published page';
const CUT = 'the scale pulls with at least its own weight, and a hand never pushes';
const TUBE = 'force at the hook less own shift and the lag of the tube';
const OUTWARD = '19 of 20 (normal), whole graduations outward';

const headed = (heading: string, lines: readonly WorkingLine[]): readonly WorkingLine[] =>
  lines.map((each, n) => (n === 0 ? { ...each, heading } : each));
