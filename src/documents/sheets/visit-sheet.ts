import type { Prepared, PreparedTable } from '../../core/prepare.ts';
import { quantityText } from '../printing/quantity-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import type { Block, SheetOfPaper } from './block.ts';
import type { PaperJob } from './paper-job.ts';
import { type Say, sayIn } from './say.ts';

/** Where and when: the names and values that belong in the head of a sheet of one visit. */
export function visitFacts(job: PaperJob, language: Language): readonly (readonly [string, string])[] {
  const say = sayIn(language);
  const { sheet } = job;
  return [
    [say('page.activity'), sheet.activity],
    [say('page.kit'), sheet.kit],
    ...(sheet.visit === null ? [] : [[say('sheet.date'), sheet.visit] as const]),
  ];
}

/** Place and gravity as they went into the figures; what was not written is said to be assumed. */
export function gravityFacts(job: PaperJob, language: Language): readonly (readonly [string, string])[] {
  const say = sayIn(language);
  const { gravity } = job.prepared;
  if (gravity === null) return [];
  const { decimal } = languagePack(language);
  const value = quantityText({ si: gravity.gravity.value, dimension: 'acceleration' }, decimal);
  const place = placeText(job.prepared, language);
  return [
    ...(place === null ? [] : [[say('sheet.place'), place] as const]),
    [say('sheet.gravity'), gravity.from === 'standard' ? say('sheet.gravity.assumed', { value }) : value],
  ];
}

function placeText({ visit, kit }: Prepared, language: Language): string | null {
  const local = visit?.gravity ?? kit?.gravity ?? null;
  if (local === null || local.kind !== 'place') return null;
  const latitude = { si: local.latitude.value, dimension: 'angle' } as const;
  return local.height === null
    ? sentence(language, 'sheet.place.latitude', { latitude })
    : sentence(language, 'sheet.place.height', {
        latitude,
        height: { si: local.height.value, dimension: 'length' },
      });
}

/** At the foot of a sheet of one visit: kit with its serial, activity and date. */
export const visitFoot = ({ sheet }: PaperJob): string =>
  [sheet.kit, sheet.activity, ...(sheet.visit === null ? [] : [sheet.visit])].join(' · ');

/** A sheet of one visit in the usual type; what differs is said by the builder. */
export const visitSheet = (
  job: PaperJob,
  language: Language,
  own: Pick<SheetOfPaper, 'name' | 'title' | 'blocks'> &
    Partial<Pick<SheetOfPaper, 'isLandscape' | 'size' | 'mostSides'>>,
): SheetOfPaper => ({
  language: languagePack(language).tag,
  paper: job.paper,
  size: 'usual',
  foot: visitFoot(job),
  ...own,
});

/** What an adult carries, in the language of the key: a head with its name and the visit, then its own blocks. */
export function sheetForAdults(
  job: PaperJob,
  own: {
    readonly name: string;
    /** Sentence keys of its title and of the line about it. */
    readonly title: string;
    readonly about: string;
    readonly facts?: readonly (readonly [string, string])[];
    readonly mostSides?: number;
    readonly blocks: (say: Say, language: Language) => readonly Block[];
  },
): SheetOfPaper {
  const language = job.languages.key;
  const say = sayIn(language);
  const title = say(own.title);
  const facts = [...visitFacts(job, language), ...(own.facts ?? [])];
  return visitSheet(job, language, {
    name: own.name,
    title,
    ...(own.mostSides === undefined ? {} : { mostSides: own.mostSides }),
    blocks: [{ block: 'title', text: title, about: say(own.about), facts }, ...own.blocks(say, language)],
  });
}

/** Setups that could not be prepared today: said wherever the others are listed. */
export const notPreparedBlocks = (say: Say, marks: readonly string[]): readonly Block[] =>
  marks.length === 0
    ? []
    : [{ block: 'text', text: say('sheet.not-prepared', { setups: marks }), tone: 'strong' }];

/** Marks of the setups that are for groups that wait. */
export const extraMarks = (table: PreparedTable | undefined): ReadonlySet<string> =>
  new Set((table?.setups ?? []).filter(({ isExtra }) => isExtra).map(({ setup }) => setup.mark));
