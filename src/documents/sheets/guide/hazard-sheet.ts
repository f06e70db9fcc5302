import { cautionRow } from '../../../core/sources/cautions.ts';
import type { TableSheet } from '../../pages/sheet.ts';
import { quantityText } from '../../printing/quantity-text.ts';
import { cautionsOf } from '../../sentences/caution-words.ts';
import { languagePack } from '../../sentences/language.ts';
import type { Cell, SheetOfPaper } from '../block.ts';
import type { PaperJob } from '../paper-job.ts';
import { type Say, sayIn } from '../say.ts';
import { visitFacts, visitSheet } from '../visit-sheet.ts';

const COLUMNS = ['eyes', 'cords', 'raised', 'noise', 'latex', 'fingers', 'adult'] as const;
/** Mass that a weight stands for on the table of raised loads, at the standard acceleration of free fall. */
const STANDARD_GRAVITY = 9.80665;

/** What can hurt at each table, the whole cautions, and a line to sign: local rules come first. */
export function hazardSheet(job: PaperJob): SheetOfPaper {
  const language = job.languages.key;
  const say = sayIn(language);
  const { tables } = job.sheet;
  return visitSheet(job, language, {
    name: 'hazard-sheet',
    title: say('guide.hazard'),
    blocks: [
      {
        block: 'title',
        text: say('guide.hazard'),
        about: say('guide.hazard.about'),
        facts: visitFacts(job, language),
      },
      { block: 'text', text: say('guide.hazard.local'), tone: 'strong' },
      {
        block: 'table',
        head: [say('guide.hazard.table'), ...COLUMNS.map((column) => say(`guide.hazard.${column}`))],
        rows: tables.map((table) => row(job, table, say)),
        widths: [3.2, 1.5, 1.6, 1.5, 1.1, 1.5, 1.4, 1.5],
        align: ['left', ...COLUMNS.map(() => 'center' as const)],
        size: 'small',
      },
      { block: 'heading', level: 2, text: say('page.cautions') },
      { block: 'list', items: cautions(tables, say) },
      { block: 'text', text: say('page.cautions.source', { source: sources(tables) }), tone: 'small' },
      {
        block: 'together',
        blocks: [
          { block: 'heading', level: 2, text: say('guide.hazard.before') },
          {
            block: 'ticks',
            items: ticks(tables).map((tick) => say(`guide.hazard.tick-${tick}`)),
          },
          { block: 'line', name: say('guide.hazard.own-rules') },
          { block: 'space', millimetres: 6 },
          { block: 'line', name: say('guide.hazard.signed') },
          { block: 'space', millimetres: 4 },
          { block: 'line', name: say('guide.hazard.signed-on') },
        ],
      },
    ],
  });
}

/** What is looked at before the groups come, as far as the tables have it. */
function ticks(tables: readonly TableSheet[]): readonly string[] {
  const keys = new Set(tables.flatMap((table) => cautionsOf(table).map(({ key }) => key)));
  return [
    ...(tables.some(isTaut) ? ['room'] : []),
    ...(keys.has('caution.elastic-cords') ? ['allergy'] : []),
    ...(tables.some(needsAdult) ? ['adults'] : []),
    'first-aid',
    ...(keys.has('caution.falling-loads') ? ['loads'] : []),
    'changes',
  ];
}

/** Cords, a mallet, a wedge or a heavy load: an adult stays. */
export function needsAdult(table: TableSheet): boolean {
  const keys = cautionsOf(table).map(({ key }) => key);
  return (
    table.machine === 'wedge' ||
    ['elastic-cords', 'hammers-and-mallets', 'heavy-load-moves'].some((topic) =>
      keys.includes(`caution.${topic}`),
    )
  );
}

function row(job: PaperJob, table: TableSheet, say: Say): readonly Cell[] {
  const keys = cautionsOf(table).map(({ key }) => key);
  const has = (...topics: readonly string[]): boolean =>
    keys.some((key) => topics.some((topic) => key === `caution.${topic}`));
  const isElastic = has('elastic-cords');
  const isStruck = has('hammers-and-mallets');
  const yes = say('guide.hazard.yes');
  const no = say('sheet.none');
  return [
    { text: say('key.text.table', { mark: table.mark, title: table.title }), strong: true },
    has('eye-protection') || isElastic || isStruck ? yes : no,
    isElastic ? yes : isTaut(table) ? say('guide.hazard.lines') : no,
    has('falling-loads') ? heaviest(job, table, yes) : no,
    isStruck ? yes : no,
    isElastic ? say('guide.hazard.ask') : no,
    has('fingers') ? yes : no,
    needsAdult(table) ? yes : no,
  ];
}

/** A line runs somewhere in the picture. */
const isTaut = (table: TableSheet): boolean =>
  table.setups.some(({ figures }) =>
    figures.some(({ drawing }) => drawing.shapes.some(({ shape }) => shape === 'line' || shape === 'link')),
  );

/** The heaviest load that can fall, as a mass. */
function heaviest(job: PaperJob, table: TableSheet, yes: string): string {
  const { decimal } = languagePack(job.languages.key);
  const masses = table.setups.flatMap(({ load }) =>
    load === null ? [] : [load.mass ?? (load.weight ?? 0) / STANDARD_GRAVITY],
  );
  const most = Math.max(0, ...masses);
  return most === 0 ? yes : quantityText({ si: most, dimension: 'mass' }, decimal);
}

/** Every caution of the day once, for adults. */
const cautions = (tables: readonly TableSheet[], say: Say): readonly string[] => [
  ...new Set(tables.flatMap((table) => cautionsOf(table).map(({ key, facts }) => say(key, facts)))),
];

const sources = (tables: readonly TableSheet[]): string =>
  [
    ...new Set(
      tables.flatMap((table) =>
        cautionsOf(table).map(({ key, source }) => cautionRow(key)?.source ?? source),
      ),
    ),
  ].join('; ');
