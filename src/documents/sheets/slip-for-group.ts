import type { PreparedSetup, PreparedTable } from '../../core/prepare.ts';
import type { Substitution } from '../../core/substitute.ts';
import { rangeWords } from '../pages/reading-lines.ts';
import { setupSheet } from '../prepare.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import type { Block, Strip } from './block.ts';
import { readersOf } from './groups.ts';
import { partByMark } from './kit-parts.ts';
import type { PaperJob } from './paper-job.ts';
import { type Say, sayIn } from './say.ts';

/** The half of a slip that lies beside the card, once in each language that a group of the visit reads. */
const stripsOf = (
  job: PaperJob,
  blocks: (say: Say, language: Language) => readonly Block[],
): readonly Strip[] =>
  readersOf(job.prepared.visit, job.languages.cards).map(({ language }) => ({
    language: languagePack(language).tag,
    blocks: blocks(sayIn(language), language),
  }));

/** What the group does otherwise than the card says. It says nothing of what will be read. */
export const groupStrips = (job: PaperJob, table: PreparedTable, found: Substitution): readonly Strip[] =>
  stripsOf(job, (say, language) => {
    const { substitute, without } = found;
    const missing = partByMark(job, found.missing, language);
    const changed = found.setups.filter(({ setup }) => found.concerns.includes(setup.mark));
    const items =
      substitute === null
        ? [say('sheet.slips.rest')]
        : [...newSteps(table, changed, language, say), ...scaleEnd(changed, substitute, language)];
    return [
      head(table, say),
      {
        block: 'text',
        tone: 'strong',
        text:
          substitute === null
            ? say('sheet.slips.group.without', { missing })
            : say('sheet.slips.group.take', {
                missing,
                substitute: partByMark(job, substitute, language),
              }),
      },
      {
        block: 'list',
        items: [
          ...(without.length === 0 ? [] : [say('sheet.slips.leave-out', { setups: without })]),
          ...items,
        ],
      },
    ];
  });

/** What lies on a table that is closed: groups are told where to go by the adult, lest all go to one. */
export const closedStrips = (job: PaperJob, table: PreparedTable): readonly Strip[] =>
  stripsOf(job, (say) => [
    head(table, say),
    { block: 'text', tone: 'strong', text: say('sheet.slips.group.closed') },
    { block: 'text', text: say('sheet.slips.group.ask') },
  ]);

const head = ({ mark }: PreparedTable, say: Say): Block => ({
  block: 'text',
  tone: 'small',
  text: say('sheet.slips.group', { mark }),
});

/** Steps that read otherwise with the part that stands in, setup by setup. */
function newSteps(
  table: PreparedTable,
  changed: readonly PreparedSetup[],
  language: Language,
  say: Say,
): readonly string[] {
  const told = toldSteps(table, changed, language, say);
  return [...told, say(told.length === 0 ? 'sheet.slips.group.as-on-card' : 'sheet.slips.rest')];
}

/** Whether the card alone no longer tells how to build it. */
export const hasNewSteps = (
  table: PreparedTable,
  changed: readonly PreparedSetup[],
  language: Language,
): boolean => toldSteps(table, changed, language, sayIn(language)).length > 0;

function toldSteps(
  table: PreparedTable,
  changed: readonly PreparedSetup[],
  language: Language,
  say: Say,
): readonly string[] {
  return changed.flatMap((prepared) => {
    const before = table.setups.find(({ setup }) => setup.mark === prepared.setup.mark);
    const old = before === undefined ? [] : stepsOf(before, language);
    const steps = stepsOf(prepared, language).filter((step) => !old.includes(step));
    return steps.length === 0
      ? []
      : [say('sheet.slips.steps', { setup: prepared.setup.mark, steps: steps.join(' ') })];
  });
}

const stepsOf = (prepared: PreparedSetup, language: Language): readonly string[] =>
  setupSheet(prepared).steps.map(({ key, facts }) => sayIn(language)(key, facts));

/** Another scale ends elsewhere: said before anybody pulls past its last mark. */
function scaleEnd(
  changed: readonly PreparedSetup[],
  substitute: string,
  language: Language,
): readonly string[] {
  const scale = changed
    .map((prepared) => setupSheet(prepared).scale)
    .find((each) => each !== null && each.label === substitute);
  return scale === null || scale === undefined
    ? []
    : [sayIn(language)('page.scale-ends', { range: rangeWords(language, scale) })];
}
