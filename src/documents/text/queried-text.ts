import type { Judgement, LikelyCause } from '../../core/readings/judgement.ts';
import type { Language } from '../sentences/language.ts';
import { causeToSee, causeToTry } from './cause-text.ts';

/** Causes less probable than this are not worth a teacher's minute. */
const WORTH_SAYING = 0.1;
/** Less probable than this beside "nothing explains it", a cause would send a teacher the wrong way. */
const WORTH_LOOKING_FOR = 0.25;

/** What probably happened at a reading to look at again; nothing of any other. */
export const likelyCauses = ({ verdict, causes }: Judgement): readonly LikelyCause[] =>
  verdict === 'look again'
    ? causes.filter(({ kind, probability }) => kind !== 'good' && probability >= WORTH_SAYING)
    : [];

/** What is said of a queried reading: to the group one thing to do, to the teacher alone what to look for. */
export interface QueriedText {
  readonly toGroup: string;
  readonly toTeacher: string;
}

/**
 * The sentences for a queried reading; `null` where it isn't queried. The group is asked by the likeliest
 * cause. Where nothing on the list explains the number best, the teacher can still look for the next cause, unless that is
 * hardly probable either.
 */
export function queriedText(language: Language, judgement: Judgement): QueriedText | null {
  const likely = likelyCauses(judgement);
  const [first] = likely;
  if (first === undefined) return null;
  const next = likely.find(({ kind }) => kind !== 'unexplained');
  const seen = next !== undefined && next.probability >= WORTH_LOOKING_FOR ? next : first;
  return { toGroup: causeToTry(language, first), toTeacher: causeToSee(language, seen) };
}
