import { expect, test } from 'vitest';
import { demoPrepared, paperJob, rowsOf, wordsOf } from '../../../test/documents/demo-prepared.ts';
import { everyStation } from '../../../test/stations/every-machine.ts';
import { EQUIPMENT } from '../../core/description/equipment.ts';
import type { Compound } from '../../core/machines/compound/station.ts';
import { machineNamed } from '../../core/machines/list.ts';
import type { Machine, Station } from '../../core/machines/machine.ts';
import { preparedForCards } from '../../core/prepare-cards.ts';
import { languagePack } from '../sentences/language.ts';
import { hasSentence } from '../sentences/sentence.ts';
import { equipmentOf, neededText } from './equipment.ts';
import { packingList } from './packing-list.ts';
import { tableCards } from './table-card.ts';

/**
 * What every thing that a sentence names is: some part or piece of equipment of which one has to be on the
 * table, or, with nothing in the list, a piece of something else, of the pupil or of the room.
 */
const THINGS: Readonly<Record<string, readonly string[]>> = {
  // Parts of the kit.
  bar: ['bar'],
  board: ['board'],
  block: ['block'],
  cart: ['cart'],
  plank: ['rollers'],
  rollers: ['rollers'],
  wedge: ['wedge'],
  screw: ['screw'],
  mallet: ['mallet'],
  crank: ['windlass'],
  axle: ['windlass'],
  wheel: ['windlass'],
  'whole wheel': ['windlass'],
  cord: ['cords'],
  cords: ['cords'],
  pulley: ['guide pulley', 'pulley block'],
  'guide pulley': ['guide pulley'],
  'upper block': ['pulley block'],
  'lower block': ['pulley block'],
  sheave: ['pulley block'],
  'new sheave': ['pulley block'],
  load: ['weight'],
  scale: ['spring scale'],
  'spring scale': ['spring scale'],
  // Equipment.
  pin: ['pin stand', 'prop with pins'],
  prop: ['prop with pins', 'prop'],
  frame: ['frame'],
  'two blocks': ['two blocks'],
  blocks: ['two blocks'],
  stop: ['stop'],
  holder: ['wedge holder'],
  string: ['string'],
  "cart's string": ['string'],
  "block's string": ['string'],
  "plank's string": ['string'],
  line: ['line'],
  'axle line': ['line'],
  'wheel line': ['line'],
  tray: ['tray'],
  'sand box': ['tray'],
  ruler: ['ruler'],
  'pencil mark': ['pencil'],
  'safety glasses': ['glasses'],
  glasses: ['glasses'],
  // The arm of a screw.
  lever: ['screw'],
  // Pieces of a thing, of the pupil or of the room, and words that only count or point.
  ...Object.fromEntries(
    [
      ['axis', 'dead end', 'end', 'face', 'foot', 'free end', 'gap', 'handle', 'head', 'left end', 'low end'],
      ['thick end', 'thin edge', 'mark', 'pointer', 'side', "block's hook", "cart's hook", "plank's hook"],
      ["bar's left end", "wheel's line", "scale's place", 'surface', 'level', 'place', 'way', 'air'],
      ['adult', 'arm', 'feet', 'fingers', 'hand', 'others', 'mass', 'spring', 'elastic cord', 'thin wire'],
      ['parts', 'stages', 'time', 'turns', 'pull', 'highest value', 'the screw'],
      ['other way', 'other parts'],
    ]
      .flat()
      .map((each) => [each, []]),
  ),
};

const machineOf = (station: Station): Machine => {
  const machine = machineNamed(station.machine);
  if (machine === undefined) throw new Error(station.machine);
  return machine;
};

const stagesOf = (station: Station): readonly Station[] =>
  station.machine === 'compound' ? (station as Compound).stages : [station];

/** Kinds of part that the slots take, load and scale, and what the machine says that it needs besides. */
const thingsOn = (station: Station): ReadonlySet<string> =>
  new Set([
    'weight',
    'spring scale',
    ...stagesOf(station).flatMap((stage) =>
      Object.values(machineOf(stage).slots).flatMap(({ kinds }) => kinds),
    ),
    ...machineOf(station).equipment(station),
  ]);

function sentencesOf(station: Station): readonly string[] {
  const machine = machineOf(station);
  const cautions = machine.cautions(station).map(({ key }) => key);
  const keys = [
    ...[false, true].flatMap((isFelt) => [
      ...machine.steps(station, isFelt),
      ...machine.reset(station, isFelt),
    ]),
    ...(['raise', 'lower', 'held', 'start'] as const).flatMap((way) => machine.reading?.(station, way) ?? []),
    ...(machine.between?.(station, station) ?? []),
  ].map(({ key }) => key);
  const { sentences } = languagePack('en');
  // For adults this one counts up machines that have a gap; the card has its own form of it.
  const forAdults = cautions.filter((key) => key !== 'caution.fingers');
  return [...new Set([...keys, ...forAdults, ...cautions.map((key) => `${key}.pupil`)])].flatMap(
    (key) => sentences[key] ?? [],
  );
}

/** What stands after an article and the like, as far as the end of its sentence. */
const named = (words: string): readonly string[] =>
  [...words.matchAll(/\b(?:the|an?|its|both|that|your|each|other|two)\s+(?=([a-z][^.:,]*))/gi)].map(
    (match) => match[1] ?? '',
  );

const thingIn = (words: string): string | undefined =>
  Object.keys(THINGS)
    .filter((thing) => new RegExp(`^${thing}\\b`).test(words))
    .sort((a, b) => b.length - a.length)[0];

test('every thing that a step, a reset or a caution names is a part of a slot or stands in the equipment', () => {
  const unknown = new Set<string>();
  const lacking = new Set<string>();
  for (const station of everyStation) {
    const here = thingsOn(station);
    for (const words of sentencesOf(station))
      for (const rest of named(words)) {
        const thing = thingIn(rest);
        if (thing === undefined) unknown.add(`${rest} (${words})`);
        else if (THINGS[thing]?.length !== 0 && !THINGS[thing]?.some((each) => here.has(each)))
          lacking.add(`${station.machine}: ${thing} (${words})`);
      }
  }
  expect([...unknown]).toEqual([]);
  expect([...lacking]).toEqual([]);
});

test('every piece of equipment is named in both languages, and some station asks for it', () => {
  for (const language of ['en', 'es'] as const)
    expect(EQUIPMENT.filter((each) => !hasSentence(language, `sheet.equipment.${each}`))).toEqual([]);
  const asked = new Set(everyStation.flatMap((station) => machineOf(station).equipment(station)));
  expect(EQUIPMENT.filter((each) => !asked.has(each))).toEqual([]);
});

test('the card of a table and the packing list name all its equipment, and none of it has a mass', () => {
  const job = paperJob(preparedForCards(demoPrepared()));
  const rows = packingList.build(job).flatMap(rowsOf);
  const cards = tableCards.build(job);
  const needed = equipmentOf(job);
  expect(needed.map(({ table }) => table)).toEqual(job.prepared.tables.map(({ mark }) => mark));
  needed.forEach(({ others }, n) => {
    expect(others.length).toBeGreaterThan(0);
    const card = cards[n];
    const also = card === undefined ? '' : wordsOf(card).find((line) => line.startsWith('And: '));
    for (const { what } of others) {
      const name = neededText('en', { what, count: 1 });
      expect(also).toContain(name);
      const row = rows.find(([, , words]) => words?.replace(/ \(\d+\)$/, '') === name);
      expect(row?.[4], name).toBe('not weighed');
    }
  });
  const trays = needed.filter(({ others }) => others.some(({ what }) => what === 'tray'));
  expect(rows.find(([, , words]) => words === `tray (${trays.length})`)?.[3]).toBe(
    'Table 1, 2, 3, 4, 5, 6 and 7',
  );
});

test('the box total is the least that it can weigh, and the key for groups that wait is packed too', () => {
  const [list] = packingList.build(paperJob(preparedForCards(demoPrepared())));
  if (list === undefined) throw new Error('no list');
  expect(wordsOf(list).find((line) => line.startsWith('All boxes'))).toMatch(
    /^All boxes: at least [\d.]+ kg$/,
  );
  expect(wordsOf(list)).toContain('Key to "more to find"');
});

test('a ruler and a line that the kit lists are named by their marks, each on one table', () => {
  const job = paperJob(
    preparedForCards(
      demoPrepared((text, file) =>
        file === 'kit'
          ? text.replace(
              /^ {2}oar:$/m,
              '  stick: { part: ruler, graduation: 1 mm }\n  fall: { part: line, thickness: 2 mm, fits: tackle }\n  oar:',
            )
          : text,
      ),
    ),
  );
  const of = (table: string) => equipmentOf(job).find((each) => each.table === table);
  const served = equipmentOf(job).filter(({ parts }) => parts.some(({ mark }) => mark === 'stick'));
  expect(served).toHaveLength(1);
  expect(of('3')?.parts.map(({ mark }) => mark)).toEqual(['fall']);
  expect(of('3')?.others.map(({ what }) => what)).not.toContain('line');
  expect(of('7')?.others.map(({ what }) => what)).toContain('line');
});
