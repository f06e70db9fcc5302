import type { KitPart } from '../../core/kit/kit.ts';
import { massOfPart } from '../../core/kit/mass-of-part.ts';
import { quantityText } from '../printing/quantity-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import type { Block, Cell } from './block.ts';
import { type Beside, besideTheParts, neededText } from './equipment.ts';
import { partText } from './kit-parts.ts';
import { kitSheet } from './kit-sheet.ts';
import type { PaperJob, SheetKind } from './paper-job.ts';
import { type Say, sayIn } from './say.ts';

/** What lies in which box and what it weighs, to be ticked when it goes out and when it comes in. */
export const packingList: SheetKind = {
  name: 'packing',
  of: 'kit',
  build: (job) => {
    const { kit } = job.prepared;
    const language = job.languages.key;
    const say = sayIn(language);
    if (kit === null) return [];
    const boxes = boxesOf(kit.parts);
    const beside = besideTheParts(job);
    return [
      kitSheet(job, language, {
        name: 'packing-list',
        title: say('sheet.packing'),
        blocks: [
          {
            block: 'title',
            text: say('sheet.packing'),
            about: say('sheet.packing.about'),
            facts: [
              [say('page.kit'), kit.name],
              [say('sheet.serial'), kit.serial],
              [say('sheet.packing.parts'), String(kit.parts.length)],
              [say('sheet.packing.whole'), totalText(language, kit.parts, beside.length > 0)],
            ],
          },
          ...boxes.flatMap((box) => kept(boxBlocks(language, box), box)),
          ...besideBlocks(language, beside),
          ...papers(job, say),
        ],
      }),
    ];
  },
};

interface Box {
  readonly name: string | null;
  readonly parts: readonly KitPart[];
}

/** Boxes in the order in which the kit names them; parts that no box is named for come last. */
function boxesOf(parts: readonly KitPart[]): readonly Box[] {
  const names = [...new Set(parts.map(({ box }) => box))].sort(
    (a, b) => Number(a === null) - Number(b === null),
  );
  return names.map((name) => ({ name, parts: parts.filter(({ box }) => box === name) }));
}

/** More than this go over a page anyway. */
const MOST_KEPT = 30;

/** A box is not torn over two pages where it fits one. */
const kept = (blocks: readonly Block[], { parts }: Box): readonly Block[] =>
  parts.length > MOST_KEPT ? blocks : [{ block: 'together', blocks }];

function boxBlocks(language: Language, { name, parts }: Box): readonly Block[] {
  const say = sayIn(language);
  const heading = name === null ? say('sheet.packing.no-box') : say('sheet.box', { box: name });
  const tick = (key: string): Cell => ({ tick: say(key) });
  const rows = parts.map((part): readonly Cell[] => [
    tick('sheet.packing.out'),
    tick('sheet.packing.in'),
    { text: part.mark, strong: true, ...(part.isSpare ? { note: say('sheet.spare') } : {}) },
    { text: partText(language, part), ...(part.note === null ? {} : { note: part.note }) },
    massText(language, part),
  ]);
  return [
    { block: 'heading', level: 2, text: heading },
    {
      block: 'table',
      head: ['out', 'in', 'mark', 'what', 'mass'].map((key) => say(`sheet.packing.${key}`)),
      rows: [
        ...rows,
        [
          '',
          '',
          '',
          { text: say('sheet.packing.total'), strong: true },
          { text: totalText(language, parts), strong: true },
        ],
      ],
      widths: [0, 0, 2, 5, 3],
      align: ['center', 'center', 'left', 'left', 'right'],
      size: 'small',
    },
  ];
}

function massText(language: Language, part: KitPart): string {
  const mass = massOfPart(part);
  if (mass === null) return sayIn(language)('sheet.packing.no-mass');
  return quantityText({ si: mass.value, dimension: 'mass' }, languagePack(language).decimal);
}

/** What is known to be in it; the least that it can weigh where something was not weighed. */
function totalText(language: Language, parts: readonly KitPart[], hasMore = false): string {
  const say = sayIn(language);
  const masses = parts.flatMap((part) => massOfPart(part)?.value ?? []);
  const unknown = parts.length - masses.length;
  const si = masses.reduce((sum, mass) => sum + mass, 0);
  const mass = quantityText({ si, dimension: 'mass' }, languagePack(language).decimal);
  if (masses.length === 0) return say('sheet.packing.none-weighed');
  return unknown === 0 && !hasMore ? mass : say('sheet.packing.at-least', { mass });
}

/** Nobody starts out without the stands and trays because no file names them. */
function besideBlocks(language: Language, beside: readonly Beside[]): readonly Block[] {
  const say = sayIn(language);
  if (beside.length === 0) return [];
  const rows = beside.map(({ what, count, tables }): readonly Cell[] => [
    { tick: say('sheet.packing.out') },
    { tick: say('sheet.packing.in') },
    { text: neededText(language, { what, count }), strong: true },
    say('sheet.packing.for-tables', { tables }),
    say('sheet.packing.no-mass'),
  ]);
  return [
    {
      block: 'together',
      blocks: [
        { block: 'heading', level: 2, text: say('sheet.packing.beside') },
        { block: 'text', text: say('sheet.packing.beside.about') },
        {
          block: 'table',
          head: ['out', 'in', 'what', 'where', 'mass'].map((key) => say(`sheet.packing.${key}`)),
          rows,
          widths: [0, 0, 4, 3, 3],
          align: ['center', 'center', 'left', 'left', 'right'],
          size: 'small',
        },
      ],
    },
  ];
}

/** The laminated paper belongs to the kit as well. */
function papers({ sheet: { tables }, prepared }: PaperJob, say: Say): readonly Block[] {
  const hasKey = prepared.tables.some(({ setups }) => setups.some(({ isExtra }) => isExtra));
  return [
    {
      block: 'together',
      blocks: [
        { block: 'heading', level: 2, text: say('sheet.packing.papers') },
        {
          block: 'ticks',
          items: [
            ...['cards', 'signs', 'tags'].map((key) =>
              say(`sheet.packing.${key}`, { tables: tables.map(({ mark }) => mark) }),
            ),
            ...(hasKey ? [say('sheet.more-key')] : []),
          ],
        },
      ],
    },
  ];
}
