import type { KitPart } from '../../core/kit/kit.ts';
import type { PreparedSetup, PreparedTable } from '../../core/prepare.ts';
import { type Substitution, substitutionsOf } from '../../core/substitute.ts';
import { rangeWords } from '../pages/reading-lines.ts';
import { setupSheet } from '../prepare.ts';
import { diagnosticSentence } from '../sentences/diagnostic-sentence.ts';
import type { Language } from '../sentences/language.ts';
import { outcomeShort } from '../text/prediction-text.ts';
import type { Block, Cell } from './block.ts';
import { kindName } from './kit-parts.ts';
import type { PaperJob, SheetKind } from './paper-job.ts';
import { type Say, sayIn } from './say.ts';
import { visitFacts, visitSheet } from './visit-sheet.ts';

/** So many parts that can stand in are told for one that is lost, the best first: nobody tries a third. */
const MOST_SUBSTITUTES = 2;
/** So many tables are named to send groups to. */
const MOST_TABLES = 2;

/**
 * What to do when a part is lost: for each, the part from the boxes that stands in with the steps that
 * change and the new key, or which setups are left out, or that the table closes and where its groups go.
 */
export const substitutionSlips: SheetKind = {
  name: 'slips',
  of: 'visit',
  build: (job) => {
    const language = job.languages.key;
    const say = sayIn(language);
    const found = substitutionsOf(job.prepared);
    return [
      visitSheet(job, language, {
        name: 'substitution-slips',
        title: say('sheet.slips'),
        blocks: [
          {
            block: 'title',
            text: say('sheet.slips'),
            about: say('sheet.slips.about'),
            facts: visitFacts(job, language),
          },
          ...job.prepared.tables.flatMap((table) =>
            tableSlips(
              job,
              table,
              found.filter((each) => each.table === table.mark),
              say,
            ),
          ),
        ],
      }),
    ];
  },
};

function tableSlips(
  job: PaperJob,
  table: PreparedTable,
  found: readonly Substitution[],
  say: Say,
): readonly Block[] {
  if (found.length === 0) return [];
  const closing = found.filter(({ closes }) => closes);
  const others = found.filter(({ closes }) => !closes);
  const lost = [...new Set(others.map(({ role }) => role))];
  const heading: Block = {
    block: 'heading',
    level: 2,
    text: say('key.text.table', { mark: table.mark, title: table.title }),
  };
  const slips = [
    ...lost.flatMap((role) =>
      others
        .filter((each) => each.role === role)
        .slice(0, MOST_SUBSTITUTES)
        .map((each) => slip(job, table, each, say)),
    ),
    ...(closing.length === 0 ? [] : [closingSlip(job, table, closing, say)]),
  ];
  const [first = [], ...rest] = slips;
  return [
    // The name of the table is not left alone at the foot of a page.
    { block: 'together', blocks: [heading, ...first] },
    ...rest.map((blocks): Block => ({ block: 'together', blocks })),
  ];
}

/** One lost part, and the part that stands in or what is left out without it. */
function slip(job: PaperJob, table: PreparedTable, found: Substitution, say: Say): readonly Block[] {
  const language = job.languages.key;
  const { missing, substitute, fit, without } = found;
  const lost = partText(job, missing, language);
  const left = without.length === 0 ? [] : [say('sheet.slips.leave-out', { setups: without })];
  if (substitute === null)
    return [
      { block: 'heading', level: 3, text: say('sheet.slips.nothing', { missing: lost }) },
      { block: 'list', items: [...left, say('sheet.slips.rest')] },
    ];
  const changed = found.setups.filter(({ setup }) => found.concerns.includes(setup.mark));
  return [
    {
      block: 'heading',
      level: 3,
      text: say('sheet.slips.take', { missing: lost, substitute: partText(job, substitute, language) }),
    },
    {
      block: 'list',
      items: [
        say(`sheet.slips.fit.${fit ?? 'kind-only'}`),
        ...newSteps(table, changed, language, say),
        ...scaleWarning(changed, substitute, language),
        ...poorReadings(table, changed, language, say),
        ...left,
      ],
    },
    newKey(table, changed, language, say),
  ];
}

/** Steps that read otherwise with the part that stands in, setup by setup. */
function newSteps(
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
function scaleWarning(
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

/** All parts without which the table closes, in one slip. */
function closingSlip(
  job: PaperJob,
  table: PreparedTable,
  closing: readonly Substitution[],
  say: Say,
): readonly Block[] {
  const parts = [...new Set(closing.map(({ missing }) => missing))].map((mark) =>
    partText(job, mark, job.languages.key),
  );
  const { tables, hasMore } = refugeOf(job, table);
  return [
    { block: 'heading', level: 3, text: say('sheet.slips.closing', { parts }) },
    {
      block: 'list',
      items: [
        say('sheet.slips.close', { table: table.mark }),
        tables.length === 0
          ? say('sheet.slips.send-nowhere')
          : say(hasMore ? 'sheet.slips.send-more' : 'sheet.slips.send', { tables }),
      ],
    },
  ];
}

/** Where groups of a closed table go: where there is more to find, else to the tables that follow. */
function refugeOf(
  { prepared }: PaperJob,
  closed: PreparedTable,
): { readonly tables: readonly string[]; readonly hasMore: boolean } {
  const at = prepared.tables.indexOf(closed);
  const open = [...prepared.tables.slice(at + 1), ...prepared.tables.slice(0, Math.max(0, at))].filter(
    ({ setups }) => setups.length > 0,
  );
  const more = open.filter(({ setups }) => setups.some(({ isExtra }) => isExtra));
  const chosen = (more.length > 0 ? more : open).slice(0, MOST_TABLES);
  return { tables: chosen.map(({ mark }) => mark), hasMore: more.length > 0 };
}

/** A part's mark with what kind of thing it is. */
function partText({ prepared }: PaperJob, mark: string, language: Language): string {
  const part: KitPart | undefined = prepared.kit?.parts.find((each) => each.mark === mark);
  return part === undefined
    ? mark
    : sayIn(language)('sheet.slips.part', { mark, kind: kindName(language, part.kind) });
}
