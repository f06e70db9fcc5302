import type { FilledValue } from '../../core/description/fields.ts';
import type { ActivityTable } from '../../core/files/activity.ts';
import { titleIn } from '../../core/files/titles.ts';
import type { Kit, KitPart } from '../../core/kit/kit.ts';
import { rolesForCards } from '../../core/prepare-cards.ts';
import { quantityText } from '../printing/quantity-text.ts';
import { unitLabel } from '../printing/reading-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { machineName } from '../text/explain-text.ts';
import type { PaperJob } from './paper-job.ts';
import { sayIn } from './say.ts';

/** By which of its fields somebody tells a part from its neighbours in the box. */
const TELLING: Readonly<Record<string, readonly string[]>> = {
  weight: ['of'],
  'spring scale': ['range', 'graduation'],
  ruler: ['graduation'],
  'turn counter': [],
  bar: ['length', 'holes'],
  board: ['length'],
  cart: ['wheel diameter'],
  block: [],
  rollers: ['diameter'],
  'guide pulley': [],
  line: ['thickness'],
  screw: ['thread', 'diameter', 'pitch'],
  'pulley block': ['sheaves'],
  wedge: ['length', 'thickness'],
  cords: ['most opening'],
  mallet: [],
  windlass: ['wheel diameter', 'axle diameter'],
};

/** Kinds of part that the sheets have a name for. */
export const toldKinds: readonly string[] = Object.keys(TELLING);
/** Fields that the sheets print as sizes. */
export const toldFields: readonly string[] = [...new Set(Object.values(TELLING).flat())];

/**
 * The name of a kind of part, as a pupil says it.
 *
 * @example kindName('en', 'pulley block') // => 'pulley block'
 */
export const kindName = (language: Language, kind: string): string => sayIn(language)(`sheet.kind.${kind}`);

/** The sizes by which a part is told from others: `60 cm long`, `11 holes`. */
export function sizesOf(language: Language, part: KitPart): readonly string[] {
  const say = sayIn(language);
  return (TELLING[part.kind] ?? []).flatMap((field) => {
    const value = part.fields[field];
    const text = value === undefined ? null : sizeText(language, value);
    return text === null ? [] : [say(`sheet.size.${field}`, { value: text })];
  });
}

/** As written, in the unit that it was written in; how well it is known is no help in finding it. */
function sizeText(language: Language, value: FilledValue): string | null {
  const { decimal } = languagePack(language);
  switch (value.type) {
    case 'quantity': {
      const { measured, dimension, unit } = value;
      const written = unit === undefined ? {} : { unit: unit.symbol };
      const text = quantityText({ si: measured.value, dimension, ...written }, decimal);
      return unit === undefined ? text : text.replace(unit.symbol, unitLabel(unit.symbol));
    }
    case 'count':
      return String(value.count);
    case 'choice':
      return value.choice;
    case 'text':
      return value.text;
    default:
      return null;
  }
}

/** Kind and sizes in one line. */
export const partText = (language: Language, part: KitPart): string =>
  [kindName(language, part.kind), ...sizesOf(language, part)].join(', ');

/**
 * The tables that a part is kept for, as their cards call them; where the activity has no such table, the
 * machines, and that they are no tables here unless it may stand in at one. A part that the kit keeps for
 * nothing fits any.
 */
export function fitsText(
  language: Language,
  part: KitPart,
  tables: readonly ActivityTable[],
  mayStandIn = false,
): string {
  const say = sayIn(language);
  const { fits } = part;
  if (fits === null) return say('sheet.fits.any');
  const own = tables.filter(({ machine }) => fits.includes(machine));
  const asStage = tables.filter(({ setups }) =>
    setups.some(({ stages }) => stages.some(({ machine }) => fits.includes(machine))),
  );
  const fitting = own.length > 0 ? own : asStage;
  if (fitting.length > 0)
    return fitting
      .map((table) => say('sheet.fits.table', { mark: table.mark, title: titleIn(language, table) }))
      .join('; ');
  const machines = fits.map((name) => machineName(language, name));
  return say(tables.length === 0 || mayStandIn ? 'sheet.fits' : 'sheet.fits.no-table', { machines });
}

/** Where a part plays which role in this activity. */
export interface Playing {
  readonly table: string;
  readonly role: string;
}

/** What each part plays, by mark. */
export function playingOf({
  prepared: { kit, activity },
}: PaperJob): ReadonlyMap<string, readonly Playing[]> {
  const found = new Map<string, Playing[]>();
  if (kit === null || activity === null) return found;
  for (const [table, roles] of Object.entries(rolesForCards(kit, activity)))
    for (const [role, mark] of Object.entries(roles))
      found.set(mark, [...(found.get(mark) ?? []), { table, role }]);
  return found;
}

/** The parts that one setup of a table is made of, by slot; a stage's slots come after the table's own. */
export function partsOfSetup(
  { prepared: { kit, activity } }: PaperJob,
  table: string,
  setup: string,
): readonly KitPart[] {
  if (kit === null || activity === null) return [];
  const words = activity.tables
    .find((each) => each.mark === table)
    ?.setups.find((each) => each.mark === setup);
  if (words === undefined) return [];
  const cast = rolesForCards(kit, activity)[table] ?? {};
  const roles = [words, ...words.stages].flatMap((each) => Object.values(each.roles));
  return [...new Set(roles)].flatMap((role) => partNamed(kit, cast[role]));
}

const partNamed = (kit: Kit, mark: string | undefined): readonly KitPart[] =>
  kit.parts.filter((part) => part.mark === mark);

/** A part's mark with what kind of thing it is: `amber (spring scale)`. */
export function partByMark({ prepared }: PaperJob, mark: string, language: Language): string {
  const part = prepared.kit?.parts.find((each) => each.mark === mark);
  return part === undefined
    ? mark
    : sayIn(language)('sheet.slips.part', { mark, kind: kindName(language, part.kind) });
}
