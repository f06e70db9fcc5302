import { planPeriod } from '../../core/period.ts';
import type { Prepared } from '../../core/prepare.ts';
import { preparedForCards } from '../../core/prepare-cards.ts';
import type { Period } from '../../core/rotation/class-period.ts';
import { sheetIn } from '../pages/sheet-in.ts';
import { sheetOf } from '../prepare.ts';
import type { Language } from '../sentences/language.ts';
import type { Paper, SheetOfPaper } from './block.ts';
import { readersOf } from './groups.ts';
import { sheetKinds } from './list.ts';
import type { PaperJob, SheetKind } from './paper-job.ts';

/** Which sheets, on what paper and in which languages. */
export interface Wishes {
  /** Names of kinds; all of them where it is `null`. */
  readonly only: readonly string[] | null;
  readonly paper: Paper;
  readonly cards: Language;
  readonly key: Language;
}

/** Everything, on A4, in the languages of the visit. */
export const usualWishes = ({ visit }: Prepared): Wishes => ({
  only: null,
  paper: 'a4',
  cards: visit?.cardsIn ?? 'en',
  key: visit?.keyIn ?? 'en',
});

/**
 * The sheets as blocks, before anything is set. What is laminated once is made from kit and activity
 * alone: nothing of a visit is within its reach.
 */
export function sheetsOf(prepared: Prepared, { only, paper, cards, key }: Wishes): readonly SheetOfPaper[] {
  const kinds = sheetKinds.filter(({ name }) => only === null || only.includes(name));
  const jobOf = (of: Prepared, period: Period | null): PaperJob => ({
    prepared: of,
    sheet: sheetIn(key, sheetOf(of)),
    paper,
    period,
    languages: { cards, key },
  });
  const isTimed = prepared.visit !== null && kinds.some((kind) => kind.isTimed === true);
  const jobs = {
    kit: jobOf(preparedForCards(prepared), null),
    visit: jobOf(prepared, isTimed ? planPeriod(prepared) : null),
  };
  return kinds.flatMap(({ name, of, build }) => [
    ...build(jobs[of]),
    ...(name === 'cards' ? cardsForOthers(jobs.kit, prepared, build) : []),
  ]);
}

/** Cards once more in each language that a group reads instead; what stands on a card knows nothing of it. */
function cardsForOthers(
  job: PaperJob,
  { visit }: Prepared,
  build: SheetKind['build'],
): readonly SheetOfPaper[] {
  const { cards, key } = job.languages;
  const others = readersOf(visit, cards).filter(({ language }) => language !== cards);
  return others.flatMap(({ language }) =>
    build({ ...job, languages: { cards: language, key } })
      .filter(({ name }) => name.startsWith('card-'))
      .map((sheet) => ({ ...sheet, name: `${sheet.name}-${language}` })),
  );
}
