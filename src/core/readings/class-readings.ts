import type { Facts } from '../diagnostics/diagnostic.ts';
import type { Predicted } from '../setups/difference.ts';
import type { JudgedAt } from './judged-at.ts';
import type { Judgement } from './judgement.ts';

/** A reading with a number that does not go into the class's centre, with the reason. */
export interface LeftOut {
  readonly group: string;
  readonly line: number | null;
  readonly written: string;
  /** Code of the most probable mistake, or that the station was found changed. */
  readonly code: string;
  readonly facts?: Facts;
  readonly because: 'mistake' | 'station';
}

/** Readings of one setup: those that count, and those that don't. */
export interface ReadAt {
  readonly at: Predicted;
  readonly counted: readonly Judgement[];
  readonly leftOut: readonly Judgement[];
  readonly withoutNumber: number;
}

export function bySetup(judged: readonly JudgedAt[]): readonly ReadAt[] {
  const setups = [...new Map(judged.map(({ at }) => [at.setup.mark, at])).values()]
    .filter(({ prediction }) => prediction.watched !== 'ease')
    .sort((a, b) => (a.setup.table === b.setup.table ? 0 : a.setup.table < b.setup.table ? -1 : 1));
  return setups.map((at) => {
    const own = judged
      .filter((each) => each.at.setup.mark === at.setup.mark)
      .map(({ judgement }) => judgement);
    const numbers = own.filter(hasNumber);
    return {
      at,
      counted: numbers.filter((each) => !isLeftOut(each)),
      leftOut: numbers.filter(isLeftOut),
      withoutNumber: own.length - numbers.length,
    };
  });
}

const hasNumber = ({ value, meaning }: Judgement): boolean => value !== null && meaning.kind === 'number';

/** A changed station is not the setup on the card, however well it was read. */
const isLeftOut = ({ verdict, station }: Judgement): boolean => verdict === 'look again' || station !== null;

export function leftOutOf({ reading, station, causes }: Judgement): LeftOut {
  const cause = station ?? causes.find(({ kind }) => kind !== 'good');
  return {
    group: reading.group,
    line: reading.line,
    written: reading.written,
    code: cause?.code ?? 'unexplained',
    ...(cause?.facts === undefined ? {} : { facts: cause.facts }),
    because: station === null ? 'mistake' : 'station',
  };
}
