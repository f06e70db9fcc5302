import { isNotDefined, type NotDefined, notDefined } from '../description/not-defined.ts';
import type { Predicted } from '../setups/difference.ts';
import { COVERAGE_95, type Measured } from '../uncertainty/measured.ts';
import {
  LEAST_VALUES,
  medianInterval,
  medianOf,
  type RobustCentre,
  robustCentre,
} from '../uncertainty/robust.ts';
import {
  type ClassFigure,
  centreMeasured,
  classFigure,
  type Freedoms,
  probabilityBelow,
  scatterOf,
} from './class-figure.ts';
import { type FeltOrder, feltOrders } from './class-order.ts';
import { type PairFound, pairsFound } from './class-pairs.ts';
import { bySetup, type LeftOut, leftOutOf, type ReadAt } from './class-readings.ts';
import { type HandFound, handFound, withHand } from './class-scatter.ts';
import { advantageOf, pullBehind, workOf } from './class-work.ts';
import type { JudgedAt } from './judged-at.ts';
import type { Judgement } from './judgement.ts';

/** What the class found, from its own numbers: the matter for the discussion afterwards. */
export interface ClassSummary {
  /** How far readings scatter as a share of themselves, from all setups together; `null` where too few were read. */
  readonly hand: HandFound | null;
  readonly setups: readonly SetupFound[];
  readonly pairs: readonly PairFound[];
  readonly felt: readonly FeltOrder[];
  /** Readings that ask for more work out than in, beyond what reading can be off by. */
  readonly surprising: readonly Surprising[];
  readonly saved: WorkSaved;
}

/** One setup as the class read it. */
export interface SetupFound {
  readonly table: string;
  readonly setup: string;
  readonly centre: CentreFound | NotDefined;
  /** Readings with a number that went into the centre, and those that did not, with the reason. */
  readonly count: number;
  readonly leftOut: readonly LeftOut[];
  /** Rows without a number: blank, unreadable, or told as a bound. */
  readonly withoutNumber: number;
  /** Force at the hook: the figure on the scale and what it shows too little as it hangs. Newtons. */
  readonly pull: ClassFigure | NotDefined;
  /** Load over pull. */
  readonly advantage: ClassFigure | NotDefined;
  readonly work: WorkFound | NotDefined;
}

/** Middle and scatter of the readings, SI; scatter and u are not defined for fewer than three. */
export interface CentreFound {
  readonly median: number;
  /** Lowest and highest of the readings that count. */
  readonly from: number;
  readonly to: number;
  readonly scatter: Pick<RobustCentre, 'spread' | 'spreadU'> | NotDefined;
  /** Between which two readings the true middle lies, by their order alone, and how sure that is. */
  readonly middleBetween: { readonly from: number; readonly to: number; readonly coverage: number };
  readonly figure: ClassFigure | NotDefined;
}

/** Work over one travel of the pull, joules. */
export interface WorkFound {
  readonly travel: number;
  readonly pulled: ClassFigure;
  readonly helped: ClassFigure | null;
  readonly out: ClassFigure;
  /** Given and not taken by the load: rubbing, and what else was raised. */
  readonly rest: number;
  /** The same with what is not known of it. */
  readonly restFigure: ClassFigure;
  /** Work out over all that was given. */
  readonly efficiency: ClassFigure;
  /** How probable it is, by the class's numbers, that no less was given than came out. */
  readonly notSaved: number;
}

export interface Surprising {
  readonly group: string;
  readonly setup: string;
  readonly line: number | null;
  readonly written: string;
  /** Work out over work in by this reading, and its standard uncertainty; or in the group's own columns. */
  readonly efficiency: number;
  readonly u: number;
  /** Whether the reading went into the centre. */
  readonly counted: boolean;
}

/** "Did the machine save work?" over all setups of which the class's numbers say something. */
export interface WorkSaved {
  /** Setups where more went in than came out, surely (19 of 20). */
  readonly no: readonly string[];
  /** Setups where the numbers leave it open. */
  readonly open: readonly string[];
  /** Setups where the class's centre asks for more out than in, surely: look at the setup again. */
  readonly yes: readonly string[];
  /** The least probability that nothing was saved, with its setup; `null` where nothing can be said. */
  readonly least: { readonly setup: string; readonly notSaved: number } | null;
}

/** From here on something is sure. */
const SURE = 0.95;

/** A review -> what the class found. Readings count unless a mistake is more probable than a good reading. */
export function classSummary({ judged }: { readonly judged: readonly JudgedAt[] }): ClassSummary {
  const read = bySetup(judged);
  const own = read.map((each) => ({ at: each.at, robust: robustCentre(valuesOf(each.counted)) }));
  const hand = handFound(own);
  const found = read.map((each, n) => setupFound(each, own[n]?.robust ?? null, hand));
  const freedoms: Freedoms = new Map(found.flatMap(({ freedom }) => (freedom === null ? [] : [freedom])));
  const setups = found.map((each) => asFound(each, freedoms));
  return {
    hand,
    setups,
    pairs: pairsFound(
      found.map(({ read: { at, counted }, shown, pull }) => ({ at, counted, figure: pull ?? shown })),
      freedoms,
    ),
    felt: feltOrders(judged),
    surprising: read.flatMap(surprisingAt),
    saved: savedWork(setups),
  };
}

/** A setup's centre before anything is made of it, with the degrees of freedom that its scatter has. */
interface Centre {
  readonly read: ReadAt;
  readonly robust: RobustCentre | null;
  readonly shown: Measured | null;
  readonly pull: Measured | null;
  readonly freedom: readonly [string, number] | null;
}

function setupFound(read: ReadAt, own: RobustCentre | null, hand: HandFound | null): Centre {
  const { setup } = read.at;
  const robust = withHand({ at: read.at, robust: own }, hand);
  const shown = robust === null ? null : centreMeasured(setup.mark, robust, stepOf(read.at));
  return {
    read,
    robust,
    shown,
    pull: shown === null || setup.watched !== 'pull' ? null : pullBehind(setup, shown),
    freedom: robust === null ? null : [scatterOf(setup.mark), robust.freedom],
  };
}

const valuesOf = (counted: readonly Judgement[]): readonly number[] =>
  counted.flatMap(({ value }) => (value === null ? [] : [value]));

const stepOf = ({ prediction }: Predicted): number => prediction.graduations?.step ?? 0;

function asFound({ read, robust, shown, pull }: Centre, freedoms: Freedoms): SetupFound {
  const { at, counted, leftOut, withoutNumber } = read;
  const tooFew = notDefined('summary.too-few', { count: counted.length, least: LEAST_VALUES });
  const figureOf = (value: Measured | NotDefined | null): ClassFigure | NotDefined =>
    value === null ? tooFew : isNotDefined(value) ? value : classFigure(value, freedoms);
  return {
    table: at.setup.table,
    setup: at.setup.mark,
    centre: centreFound(valuesOf(counted), robust, figureOf(shown)),
    count: counted.length,
    leftOut: leftOut.map(leftOutOf),
    withoutNumber,
    pull: at.setup.watched === 'pull' ? figureOf(pull) : notDefined('summary.not-pulled'),
    advantage: figureOf(pull === null ? noPull(at, tooFew) : advantageOf(at, pull)),
    work: pull === null ? noPull(at, tooFew) : workFound(at, pull, freedoms),
  };
}

const noPull = (at: Predicted, tooFew: NotDefined): NotDefined =>
  at.setup.watched === 'pull' ? tooFew : notDefined('summary.not-pulled');

function centreFound(
  values: readonly number[],
  robust: RobustCentre | null,
  figure: ClassFigure | NotDefined,
): CentreFound | NotDefined {
  const median = medianOf(values);
  const middleBetween = medianInterval(values, SURE);
  if (median === null || middleBetween === null) return notDefined('summary.nothing-read');
  return {
    median,
    from: Math.min(...values),
    to: Math.max(...values),
    scatter:
      robust === null
        ? notDefined('summary.too-few', { count: values.length, least: LEAST_VALUES })
        : { spread: robust.spread, spreadU: robust.spreadU },
    middleBetween,
    figure,
  };
}

function workFound(at: Predicted, pull: Measured, freedoms: Freedoms): WorkFound | NotDefined {
  const work = workOf(at, pull);
  if (isNotDefined(work)) return work;
  const figure = (value: Measured): ClassFigure => classFigure(value, freedoms);
  const { pulled, helped, out, rest, efficiency } = {
    pulled: figure(work.pulled),
    helped: figure(work.helped),
    out: figure(work.out),
    rest: figure(work.rest),
    efficiency: figure(work.efficiency),
  };
  return {
    travel: work.travel,
    pulled,
    helped: helped.value === 0 ? null : helped,
    out,
    rest: pulled.value + helped.value - out.value,
    restFigure: rest,
    efficiency,
    notSaved: probabilityBelow(efficiency, 1),
  };
}

/**
 * Readings that by themselves ask for more out than in: their own hand, graduation and what is not known of
 * load, scale and lengths together don't reach from their figure to 1 (19 of 20, one-sided 39 of 40).
 */
function surprisingAt({ at, counted, leftOut }: ReadAt): readonly Surprising[] {
  return [...counted, ...leftOut].flatMap((judgement): readonly Surprising[] => {
    const { value, reading } = judgement;
    if (value === null || value <= 0 || at.setup.watched !== 'pull') return [];
    const pull = pullBehind(at.setup, readOnce(at, value));
    const work = pull === null ? null : workOf(at, pull);
    if (work === null || isNotDefined(work)) return [];
    const { value: efficiency, u } = classFigure(work.efficiency, new Map());
    return efficiency - COVERAGE_95 * u <= 1
      ? []
      : [
          {
            group: reading.group,
            setup: at.setup.mark,
            line: reading.line,
            written: reading.written,
            efficiency,
            u,
            counted: counted.includes(judgement),
          },
        ];
  });
}

/** One reading as one hand takes it: the scatter that the activity states, and its graduation. */
const readOnce = (at: Predicted, value: number): Measured =>
  centreMeasured(
    at.setup.mark,
    { centre: value, u: at.setup.reader.scatter * value, count: 1, spread: 0, spreadU: 0, freedom: 1 },
    stepOf(at),
  );

function savedWork(setups: readonly SetupFound[]): WorkSaved {
  const told = setups.flatMap(({ setup, work }) =>
    isNotDefined(work) ? [] : [{ setup, notSaved: work.notSaved }],
  );
  const marks = (which: (notSaved: number) => boolean): readonly string[] =>
    told.filter(({ notSaved }) => which(notSaved)).map(({ setup }) => setup);
  return {
    no: marks((notSaved) => notSaved >= SURE),
    open: marks((notSaved) => notSaved < SURE && notSaved > 1 - SURE),
    yes: marks((notSaved) => notSaved <= 1 - SURE),
    least: told.reduce<WorkSaved['least']>(
      (least, each) => (least === null || each.notSaved < least.notSaved ? each : least),
      null,
    ),
  };
}
