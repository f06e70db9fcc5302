import { isNotDefined, type NotDefined, notDefined } from '../description/not-defined.ts';
import type { ClassFigure } from '../readings/class-figure.ts';
import type { ClassSummary, WorkFound, WorkSaved } from '../readings/class-summary.ts';

/** Did the machine save work? Work in against work out, by the class's readings. */
export interface SavedFound {
  readonly setups: readonly WorkAt[];
  readonly saved: WorkSaved;
  /** Whose account is drawn: a lighter pull, a longer way, and a loss that stands out best from what is not known. */
  readonly shown: string;
}

export interface WorkAt {
  readonly table: string;
  readonly setup: string;
  readonly work: WorkFound;
  /** Load over pull. */
  readonly advantage: ClassFigure | NotDefined;
  /** Force at the hook, newtons. */
  readonly pull: ClassFigure | NotDefined;
  /** `no`: more went in than came out, surely; `open`: the readings can't tell; `yes`: look at the setup again. */
  readonly saves: 'no' | 'open' | 'yes';
}

export function savedWork(summary: ClassSummary): SavedFound | NotDefined {
  const setups = workOfSetups(summary);
  const shown = [...setups].sort(
    (a, b) => Number(isLighter(b)) - Number(isLighter(a)) || standsOut(b) - standsOut(a),
  )[0];
  return shown === undefined
    ? notDefined('discuss.no-account')
    : { setups, saved: summary.saved, shown: shown.setup };
}

export const workOfSetups = ({ setups, saved }: ClassSummary): readonly WorkAt[] =>
  setups.flatMap(({ table, setup, work, advantage, pull }): readonly WorkAt[] =>
    isNotDefined(work)
      ? []
      : [
          {
            table,
            setup,
            work,
            advantage,
            pull,
            saves: saved.no.includes(setup) ? 'no' : saved.yes.includes(setup) ? 'yes' : 'open',
          },
        ],
  );

const isLighter = ({ advantage }: WorkAt): boolean => !isNotDefined(advantage) && advantage.from > 1;

/** How many of its standard uncertainties what is left over is. */
export const standsOut = ({ work: { restFigure } }: WorkAt): number =>
  restFigure.u === 0 ? restFigure.value : restFigure.value / restFigure.u;
