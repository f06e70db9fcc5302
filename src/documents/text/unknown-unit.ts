import type { Fields } from '../../core/description/fields.ts';
import { machines } from '../../core/machines/list.ts';
import type { Dimension } from '../../core/quantities/dimension.ts';
import type { BudgetRow } from '../../core/setups/prediction.ts';
import { rollingKind } from '../../core/sources/rolling.ts';
import { vocabulary } from '../../core/words.ts';
import type { SetupSheet } from '../pages/sheet.ts';

const SI: Readonly<Record<Dimension, string>> = {
  length: 'm',
  mass: 'kg',
  force: 'N',
  angle: 'rad',
  time: 's',
  ratio: '1',
  stiffness: 'N/m',
  acceleration: 'm/s²',
};

/** Unit of what is read: newtons, turns or metres. */
const OF_THE_READING = { pull: 'N', turns: 'turns', travel: 'm', ease: '1' } as const;

/**
 * The SI unit of an unknown, for a row of the budget that anybody can reckon again. It follows from the
 * field that the unknown is named for.
 */
export function unknownUnit(row: BudgetRow, { prediction, load }: SetupSheet): string {
  const id = row.unknown;
  // Where between sticking one way and the other: a share of the tube's friction.
  if (id === 'reading/tube friction') return SI.ratio;
  if (id.startsWith('reading/')) return OF_THE_READING[prediction.watched];
  if (id.startsWith('kind:')) return SI[kindDimension(id)];
  const field = id
    .slice(id.indexOf('/') + 1)
    .replace(/^stage \d+ /, '')
    .replace(/ at the start$/, '');
  const known = DIMENSIONS.get(field) ?? DIMENSIONS.get(field.replace(/ \d+$/, ''));
  // A load is written as a mass or as a weight; a moving part that nobody weighed is a share of the scale.
  if (field === 'of') return load !== null && load.mass === null ? SI.force : SI.mass;
  if (field === 'moving part' && row.origin === 'assumed') return SI.ratio;
  return known === undefined ? '1' : SI[known];
}

function kindDimension(id: string): Dimension {
  const [, name = ''] = /^kind:rolling\/(.+)$/.exec(id) ?? [];
  if (name !== '') return rollingKind(name)?.arm === undefined ? 'ratio' : 'length';
  return id.endsWith('/constant') ? 'force' : 'ratio';
}

/** Fields by name, the first dimension that a field may have; what is no field stands at the end. */
const DIMENSIONS: ReadonlyMap<string, Dimension> = new Map([
  ...[
    ...vocabulary.partKinds.map((kind) => kind.fields),
    ...machines.map((machine) => machine.fields),
    vocabulary.setupFields,
  ].flatMap(dimensionsOf),
  ['wheel line', 'length'],
  ['axle line', 'length'],
  ['gravity', 'acceleration'],
  ['latitude', 'angle'],
  ['height', 'length'],
]);

function dimensionsOf(fields: Fields): readonly (readonly [string, Dimension])[] {
  return Object.entries(fields).flatMap(([name, field]) => {
    if (field.type === 'position') return [[name, 'length'] as const];
    if (!('dimensions' in field)) return [];
    const [first] = field.dimensions;
    return first === undefined ? [] : [[name, first] as const];
  });
}
