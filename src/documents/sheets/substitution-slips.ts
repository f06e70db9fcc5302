import type { PreparedTable } from '../../core/prepare.ts';
import { type Substitution, substitutionsOf } from '../../core/substitute.ts';
import type { Block } from './block.ts';
import { partByMark } from './kit-parts.ts';
import type { PaperJob, SheetKind } from './paper-job.ts';
import { type Say, sayIn } from './say.ts';
import { adultHalf } from './slip-for-adults.ts';
import { closedStrips, groupStrips } from './slip-for-group.ts';
import { tableHeading } from './table-heading.ts';
import { visitFacts, visitSheet } from './visit-sheet.ts';

/** So many parts that can stand in are told for one that is lost, the best first: nobody tries a third. */
const MOST_SUBSTITUTES = 2;
/** So many tables are named to send groups to. */
const MOST_TABLES = 2;

/**
 * What to do when a part is lost: for each, the part from the boxes that stands in, or which setups are
 * left out, or that the table closes and where its groups go. A slip is cut in two: the group's half tells
 * what is done otherwise, the adult's half has the new key.
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
    text: tableHeading(job.languages.key, table),
  };
  const slips = [
    ...lost.flatMap((role) => {
      const choices = others.filter((each) => each.role === role).slice(0, MOST_SUBSTITUTES);
      return choices.map(
        (each): Block => ({
          block: 'slip',
          strips: groupStrips(job, table, each),
          adult: [adultHead(table, say), ...adultHalf(job, table, each, choices)],
        }),
      );
    }),
    ...(closing.length === 0 ? [] : [closingSlip(job, table, closing, say)]),
  ];
  const [first, ...rest] = slips;
  // The name of the table is not left alone at the foot of a page.
  return first === undefined ? [] : [{ block: 'together', blocks: [heading, first] }, ...rest];
}

/** Once it is cut off, it still says whose it is. */
const adultHead = ({ mark }: PreparedTable, say: Say): Block => ({
  block: 'text',
  tone: 'small',
  text: say('sheet.slips.adult', { mark }),
});

/** All parts without which the table closes, in one slip. */
function closingSlip(job: PaperJob, table: PreparedTable, closing: readonly Substitution[], say: Say): Block {
  const parts = [...new Set(closing.map(({ missing }) => missing))].map((mark) =>
    partByMark(job, mark, job.languages.key),
  );
  const { tables, hasMore } = refugeOf(job, table);
  return {
    block: 'slip',
    strips: closedStrips(job, table),
    adult: [
      adultHead(table, say),
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
    ],
  };
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
