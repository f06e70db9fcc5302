import type { Drawing } from '../../core/description/drawing.ts';
import type { KitPart } from '../../core/kit/kit.ts';
import type { Machine, Station } from '../../core/machines/machine.ts';
import type { PreparedTable } from '../../core/prepare.ts';
import { atBest } from '../../core/uncertainty/propagate.ts';
import type { FigureSheet, SetupSheet, TableSheet } from '../pages/sheet.ts';
import { tableIn } from '../pages/sheet-in.ts';
import { isFelt } from '../prepare.ts';
import type { Language } from '../sentences/language.ts';
import { machineName } from '../text/explain-text.ts';
import type { Block, SheetOfPaper } from './block.ts';
import { type Changes, cardActions, changesFrom, type Done, undoneFirst } from './card-actions.ts';
import { care } from './card-care.ts';
import { atRest, type Drawn, drawingFigure, reductionIn } from './drawing-figure.ts';
import { fileWords } from './file-words.ts';
import { fittedColumns } from './fitted-columns.ts';
import { partsOfSetup } from './kit-parts.ts';
import { kitSheet, paperWidth } from './kit-sheet.ts';
import { moreToFindKey } from './more-to-find-key.ts';
import { onThisTable } from './on-this-table.ts';
import type { PaperJob, SheetKind } from './paper-job.ts';
import { type Say, sayIn } from './say.ts';

/**
 * A card for each table that a stranger can follow: what it is, drawings to scale, what is done, what to
 * take care of, how it is put back. It never says what will be read; the setups for groups that wait have
 * their key on a sheet of its own.
 */
export const tableCards: SheetKind = {
  name: 'cards',
  of: 'kit',
  build: (job) => [...cardsOf(job).map(({ card }) => card), ...moreToFindKey(job)],
};

/** The card of each table that has a setup. */
export function cardsOf(
  job: PaperJob,
): readonly { readonly table: TableSheet; readonly card: SheetOfPaper }[] {
  const words = fileWords(job.sheet.tables.map(({ mark }) => mark));
  return job.sheet.tables.flatMap((table, n) => {
    const prepared = job.prepared.tables[n];
    return prepared === undefined || table.setups.length === 0
      ? []
      : [{ table, card: tableCard(job, table, prepared, `card-${words[n]}`) }];
  });
}

/** Everything of one card that its pieces need. */
interface Card {
  readonly language: Language;
  readonly say: Say;
  readonly table: TableSheet;
  /** Parts by setup. */
  readonly parts: ReadonlyMap<string, readonly KitPart[]>;
  /** Room for a drawing, in millimetres. */
  readonly width: number;
  readonly height: number;
  /** The scale of each picture of a setup, by its place: setups that are compared bear one scale. */
  readonly reductions: readonly number[];
}

/** Shares of drawing and words, and the gap between them in millimetres. */
const SHARES = [61, 39] as const;
const GAP = 5;
/** Height of a drawing by how many setups share the two sides. */
const HEIGHTS = [84, 84, 76, 70, 62] as const;
const LEAST_HEIGHT = 48;
/** A sketch shows how things go together at any size, so the words beside it have more room. */
const SKETCH_SHARE = 0.7;

function tableCard(job: PaperJob, shown: TableSheet, prepared: PreparedTable, name: string): SheetOfPaper {
  const language = job.languages.cards;
  const table = tableIn(language, shown);
  const say = sayIn(language);
  const room: Omit<Card, 'reductions'> = {
    language,
    say,
    table,
    parts: new Map(table.setups.map(({ mark }) => [mark, partsOfSetup(job, table.mark, mark)])),
    width: ((paperWidth(job.paper) - GAP) * SHARES[0]) / 100,
    height: HEIGHTS[table.setups.length - 1] ?? LEAST_HEIGHT,
  };
  const card: Card = { ...room, reductions: reductionsOf(room) };
  const isExtra = (setup: SetupSheet): boolean =>
    prepared.setups.find((each) => each.setup.mark === setup.mark)?.isExtra === true;
  return kitSheet(job, language, {
    name,
    title: `${say('page.table', { mark: table.mark })}: ${table.title}`,
    size: 'large',
    mostSides: 2,
    blocks: [
      {
        block: 'title',
        mark: [say('sheet.table'), table.mark],
        text: table.title,
        about: say('sheet.card.about', {
          machine: machineName(language, table.machine),
          about: say(`${table.machine}.about`),
        }),
        facts: [],
      },
      {
        block: 'columns',
        shares: [1, 1],
        columns: [
          onThisTable(job, language, table.mark, [...card.parts.values()].flat()),
          care(language, table),
        ],
      },
      ...fittedColumns(
        [...setupBlocks(card, prepared, isExtra), ...startBlocks(card, prepared)],
        paperWidth(job.paper) - GAP,
      ),
    ],
  });
}

/** The setups in their order; those for groups that wait come last, under their own heading. */
function setupBlocks(
  card: Card,
  prepared: PreparedTable,
  isExtra: (setup: SetupSheet) => boolean,
): readonly Block[] {
  const { say, table, language } = card;
  const usual = table.setups.filter((setup) => !isExtra(setup));
  const extra = table.setups.filter(isExtra);
  const told: Done[] = [];
  let before: Done | undefined;
  return [...usual, ...extra].map((setup): Block => {
    const ownParts = ownPartsOf(card, setup);
    const actions = cardActions(language, { setup, ownParts });
    const now: Done = { mark: setup.mark, actions, taken: ownParts.length };
    const changes = changesFrom(told, now, before);
    if (changes === null) told.push(now);
    const first =
      before === undefined ? [doneAlready(say)] : undoneFirst(language, prepared, { before, now });
    before = now;
    const isFirstExtra = setup === extra[0];
    return {
      block: 'together',
      blocks: [
        ...(isFirstExtra ? moreHead(say) : []),
        {
          block: 'heading',
          level: isFirstExtra || isExtra(setup) ? 3 : 2,
          text: say('page.setup', { mark: setup.mark }),
        },
        ...besides(figures(card, setup, changes), [...first, ...doing(card, setup, actions, changes)]),
      ],
    };
  });
}

/** Words beside a picture; words alone where the picture stands on the card already. */
const besides = (pictures: readonly Block[], words: readonly Block[]): readonly Block[] =>
  pictures.length === 0 ? words : [{ block: 'columns', shares: SHARES, columns: [pictures, words] }];

/** A table stands as it was left, so some of the first steps are done before anybody begins. */
const doneAlready = (say: Say): Block => ({ block: 'text', text: say('sheet.card.done-already') });

const moreHead = (say: Say): readonly Block[] => [
  { block: 'heading', level: 2, text: say('sheet.card.more') },
  { block: 'text', text: say('sheet.card.more.about') },
];

/** Parts of this setup that not every setup of the table uses. */
function ownPartsOf({ parts }: Card, { mark }: SetupSheet): readonly KitPart[] {
  const all = [...parts.values()];
  return (parts.get(mark) ?? []).filter((part) => !all.every((each) => each.includes(part)));
}

/** Numbered steps; or only those that differ from a setup that stands on the card already. */
function doing(
  { say, table }: Card,
  setup: SetupSheet,
  actions: readonly string[],
  changes: Changes | null,
): readonly Block[] {
  const compare: readonly Block[] = !table.setups.some(({ mark }) => mark === setup.partner)
    ? []
    : [{ block: 'text', text: say('page.compare', { partner: setup.partner ?? '' }), tone: 'strong' }];
  if (changes === null) return [{ block: 'steps', items: actions }, ...compare];
  const { like, reminds } = changes;
  if (changes.changes.length === 0)
    return [{ block: 'text', text: say('sheet.card.again', { like }) }, ...compare];
  return [
    { block: 'text', text: say(reminds ? 'sheet.card.like-with' : 'sheet.card.like', { like }) },
    {
      block: 'steps',
      items: changes.changes.map(({ text }) => text),
      numbers: changes.changes.map(({ number }) => number),
    },
    ...compare,
  ];
}

/** The pictures of a setup; where only a change is told, those that stand on the card already are left out. */
function figures(card: Card, setup: SetupSheet, changes: Changes | null): readonly Block[] {
  const { language, table } = card;
  const before =
    changes === null ? [] : (table.setups.find(({ mark }) => mark === changes.like)?.figures ?? []);
  const all = drawnOf(card, setup).map((drawn, n) => ({ drawn, figure: setup.figures[n], n }));
  const others = all.filter(
    ({ figure }) => figure !== undefined && !before.some((each) => isSame(figure, each)),
  );
  return others.map(({ drawn, figure, n }): Block => {
    const leastReduction = card.reductions[n] ?? 0;
    const caption = figure?.title == null ? {} : { caption: captionOf(card, figure) };
    return { ...drawingFigure(language, { ...drawn, leastReduction }), ...caption };
  });
}

type Room = Omit<Card, 'reductions'>;

/** Every picture of a setup with its room; of several each is lower. */
function drawnOf(card: Room, setup: SetupSheet): readonly Drawn[] {
  const { width, height, say } = card;
  const { load, scale } = setup;
  return setup.figures.map((figure) => ({
    what: `${say('page.setup', { mark: setup.mark })}: ${captionOf(card, figure)}`,
    drawing: figure.drawing,
    load,
    scale,
    width: figure.drawing.isSketch === true ? SKETCH_SHARE * width : width,
    height,
  }));
}

const captionOf = ({ say, language, table }: Room, { title }: FigureSheet): string =>
  title === null ? machineName(language, table.machine) : say(title.key, title.facts);

/** The smallest scale that any setup of the table needs, for each place in the row of its pictures. */
function reductionsOf(room: Room): readonly number[] {
  const rows = room.table.setups.map((setup) =>
    drawnOf(room, setup).map((drawn) => reductionIn(room.language, drawn)),
  );
  const most = Math.max(0, ...rows.map((row) => row.length));
  return Array.from({ length: most }, (_, n) => Math.max(...rows.map((row) => row[n] ?? 0)));
}

/** Whether two pictures are alike, whatever the strength of the pull. */
function isSame(a: FigureSheet, b: FigureSheet): boolean {
  const plain = ({ title, drawing }: FigureSheet): string =>
    JSON.stringify([title, drawing], (key, value) => (key === 'newtons' ? 0 : value));
  return plain(a) === plain(b);
}

/** How the table looks before and after: without hand and load, with three ticks. */
function startBlocks(card: Card, prepared: PreparedTable): readonly Block[] {
  const { say, language, width, reductions } = card;
  const [first] = prepared.setups;
  if (first === undefined) return [];
  const { machine, station } = first.setup;
  const felt = isFelt(first.setup);
  const pictures = startDrawings(machine, station, felt).map((drawing, n) =>
    drawingFigure(language, {
      what: say('sheet.card.start.drawing'),
      drawing: atRest(drawing),
      load: null,
      scale: null,
      width,
      height: LEAST_HEIGHT,
      leastReduction: reductions[n] ?? 0,
    }),
  );
  const steps = machine.reset(station, felt).map(({ key, facts }) => say(key, facts));
  const ticks: readonly Block[] = [
    { block: 'text', text: say('sheet.card.start.about') },
    { block: 'ticks', items: steps },
  ];
  return [
    {
      block: 'together',
      blocks: [{ block: 'heading', level: 2, text: say('sheet.card.start') }, ...besides(pictures, ticks)],
    },
  ];
}

const startDrawings = (machine: Machine, station: Station, felt: boolean): readonly Drawing[] =>
  machine.start?.(station, atBest) ??
  machine.figures?.(station, atBest, felt).map(({ drawing }) => drawing) ?? [
    machine.drawing(station, atBest, felt),
  ];
