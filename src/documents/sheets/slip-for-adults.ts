import { arrivalCheckOf } from '../../core/calibration/arrival-check.ts';
import type { PreparedSetup, PreparedTable } from '../../core/prepare.ts';
import { preferenceOf, type Substitution } from '../../core/substitute.ts';
import { diagnosticSentence } from '../sentences/diagnostic-sentence.ts';
import type { Language } from '../sentences/language.ts';
import { outcomeShort } from '../text/prediction-text.ts';
import type { Block, Cell } from './block.ts';
import { partByMark } from './kit-parts.ts';
import type { PaperJob } from './paper-job.ts';
import { type Say, sayIn } from './say.ts';
import { hasNewSteps } from './slip-for-group.ts';

/** The half of a slip that an adult keeps: which choice it is and why, what is left out, and the new key. */
export function adultHalf(
  job: PaperJob,
  table: PreparedTable,
  found: Substitution,
  choices: readonly Substitution[],
): readonly Block[] {
  const language = job.languages.key;
  const say = sayIn(language);
  const { missing, substitute, fit, without } = found;
  const lost = partByMark(job, missing, language);
  const left = without.length === 0 ? [] : [say('sheet.slips.leave-out', { setups: without })];
  const arrival = arrivalLines(table, found, say);
  if (substitute === null)
    return [
      { block: 'heading', level: 3, text: say('sheet.slips.nothing', { missing: lost }) },
      { block: 'list', items: [...left, say('sheet.slips.rest'), ...arrival] },
    ];
  const changed = found.setups.filter(({ setup }) => found.concerns.includes(setup.mark));
  return [
    {
      block: 'heading',
      level: 3,
      text: say('sheet.slips.take', { missing: lost, substitute: partByMark(job, substitute, language) }),
    },
    {
      block: 'list',
      items: [
        ...choiceLine(found, choices, say),
        `${say(`sheet.slips.fit.${fit ?? 'kind-only'}`)} ${say(
          hasNewSteps(table, changed, language)
            ? 'sheet.slips.fit.new-steps'
            : 'sheet.slips.group.as-on-card',
        )}`,
        ...poorReadings(table, changed, language, say),
        ...left,
        ...arrival,
      ],
    },
    newKey(table, changed, language, say),
  ];
}

/** Of two parts that can stand in: which goes first, and why. */
function choiceLine(found: Substitution, choices: readonly Substitution[], say: Say): readonly string[] {
  const [first, second] = choices;
  if (first === undefined || second === undefined) return [];
  const rank = found === first ? 'first' : 'second';
  const other = (found === first ? second : first).substitute ?? '';
  return [say(`sheet.slips.${rank}.${preferenceOf(first, second)}`, { other })];
}

/** Check and re-keying key were reckoned with the lost part: where they no longer hold, it is said. */
function arrivalLines(table: PreparedTable, found: Substitution, say: Say): readonly string[] {
  const arrival = arrivalCheckOf(table.setups);
  if (arrival === null) return [];
  const changed = found.substitute === null ? [] : found.concerns;
  const touched = table.setups
    .map(({ setup }) => setup.mark)
    .filter((mark) => changed.includes(mark) || found.without.includes(mark));
  if (touched.includes(arrival.setup.mark)) return [say('sheet.slips.skip-arrival')];
  return touched.length === 0 ? [] : [say('sheet.slips.no-rekey', { setups: touched })];
}

/** What the part that stands in shows less well than the one that is lost. */
function poorReadings(
  table: PreparedTable,
  changed: readonly PreparedSetup[],
  language: Language,
  say: Say,
): readonly string[] {
  return changed.flatMap(({ setup, prediction }) => {
    const before = table.setups.find((each) => each.setup.mark === setup.mark)?.prediction.diagnostics ?? [];
    const known = new Set(before.map(({ code }) => code));
    return prediction.diagnostics
      .filter(({ code }) => !known.has(code))
      .map(({ code }) =>
        say('sheet.slips.poor', { setup: setup.mark, what: diagnosticSentence(language, code).what }),
      );
  });
}

/** What is good now, beside what was good with the lost part. */
const newKey = (
  table: PreparedTable,
  changed: readonly PreparedSetup[],
  language: Language,
  say: Say,
): Block => ({
  block: 'table',
  head: ['setup', 'now', 'instead'].map((column) => say(`sheet.slips.${column}`)),
  rows: changed.map(({ setup, prediction }): readonly Cell[] => {
    const before = table.setups.find((each) => each.setup.mark === setup.mark);
    return [
      { text: setup.mark, strong: true },
      { text: outcomeShort(language, prediction), strong: true },
      before === undefined ? say('sheet.none') : outcomeShort(language, before.prediction),
    ];
  }),
  widths: [1, 2, 2],
  size: 'small',
});
