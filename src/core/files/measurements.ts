import type { FilledValue } from '../description/fields.ts';
import { textIn } from '../description/filled.ts';
import type { KitPart, Measurement } from '../kit/kit.ts';
import { checkDate } from './calendar-date.ts';
import { checkField } from './check-field.ts';
import { checkFields } from './check-fields.ts';
import { asMap, atValue, type Context, listAt, nearestFact } from './context.ts';
import { measurementFields } from './kit-fields.ts';
import { entryOf, type MapNode, type Node } from './node.ts';
import { partKindNamed, type Vocabulary } from './vocabulary.ts';

/** A line of the bench book with what was found, checked as the field that it is about. */
export interface CheckedMeasurement extends Measurement {
  readonly value: FilledValue | null;
}

/** The bench book of a kit file: every line is about a part that is there and a field that it has. */
export function readMeasurements(
  root: MapNode,
  parts: readonly KitPart[],
  vocabulary: Vocabulary,
  context: Context,
): readonly CheckedMeasurement[] {
  return listAt(root, 'measured', [], context).flatMap((node, n) => {
    const measurement = readMeasurement(node, n, parts, vocabulary, context);
    return measurement === null ? [] : [measurement];
  });
}

function readMeasurement(
  node: Node,
  n: number,
  parts: readonly KitPart[],
  vocabulary: Vocabulary,
  context: Context,
): CheckedMeasurement | null {
  const path = ['measured', n];
  const map = asMap(node, path, context);
  if (map === null) return null;
  const owner = { path, idOf: (field: string) => `measured ${n + 1}/${field}` };
  const { filled } = checkFields(map, measurementFields, owner, context);
  const text = (key: string) => textIn(filled, key);
  const [date, mark, what, found] = [text('date'), text('part'), text('what'), text('found')];
  if (date === undefined || mark === undefined || what === undefined || found === undefined) return null;
  if (!checkDate(date, [...path, 'date'], context)) return null;
  const part = parts.find((each) => each.mark === mark);
  if (part === undefined) {
    const known = parts.map((each) => each.mark);
    atValue(context, [...path, 'part'], 'unknown-part', {
      written: mark,
      known,
      ...nearestFact(mark, known),
    });
    return null;
  }
  const fields = partKindNamed(vocabulary, part.kind)?.fields ?? {};
  const field = Object.hasOwn(fields, what) ? fields[what] : undefined;
  if (field === undefined) {
    const known = Object.keys(fields);
    if (known.length > 0)
      atValue(context, [...path, 'what'], 'unknown-field', {
        written: what,
        part: part.kind,
        known,
        ...nearestFact(what, known),
      });
    return null;
  }
  const foundNode = entryOf(map, 'found')?.node ?? node;
  const spot = { path: [...path, 'found'], id: `${mark}/${what}` };
  const value = checkField(foundNode, what, field, spot, context);
  return { date, part: mark, what, found, by: text('by') ?? null, note: text('note') ?? null, value };
}

/** The parts with what was measured last put in; of one day the later line holds. */
export function withMeasurements(
  parts: readonly KitPart[],
  measurements: readonly CheckedMeasurement[],
): readonly KitPart[] {
  const inOrder = measurements
    .map((measurement, n) => ({ measurement, n }))
    .sort((a, b) => compare(a.measurement.date, b.measurement.date) || a.n - b.n)
    .map(({ measurement }) => measurement);
  return parts.map((part) => {
    const found = inOrder.filter((each) => each.part === part.mark && each.value !== null);
    if (found.length === 0) return part;
    const fields = { ...part.fields };
    for (const { what, value } of found) if (value !== null) fields[what] = value;
    return { ...part, fields };
  });
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
