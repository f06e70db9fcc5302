import type { Filled } from '../description/fields.ts';
import { choiceIn, isYesIn, measuredIn, textIn } from '../description/filled.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Kit, KitPart } from '../kit/kit.ts';
import type { Kilograms } from '../quantities/brands.ts';
import { checkFields } from './check-fields.ts';
import { asMap, asText, atKey, atValue, type Context, mapAt, nearestFact, textAt } from './context.ts';
import { openFile } from './file-header.ts';
import { readGravity, writtenGravity } from './gravity-fields.ts';
import { kitFields, partFields } from './kit-fields.ts';
import { readMeasurements, withMeasurements } from './measurements.ts';
import { entryOf, type MapNode } from './node.ts';
import type { SourceFile, SourceText } from './source-text.ts';
import { partKindNamed, type Vocabulary } from './vocabulary.ts';
import type { YamlTree } from './yaml-tree.ts';

export interface ReadKit {
  readonly source: SourceFile;
  /** `null` where the file can't be read as a kit at all; faulty parts are marked in it. */
  readonly kit: Kit | null;
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Reads a kit file: parts by mark, each with the fields of its kind, and the bench book. The latest
 * measurement of a field is what holds.
 */
export function readKitFile(file: SourceText, vocabulary: Vocabulary, tree?: YamlTree): ReadKit {
  const { source, root, context, diagnostics } = openFile(file, 'kit', tree);
  if (root === null) return { source, kit: null, diagnostics };
  const besides = ['handspike', 'place', 'parts', 'measured'];
  const owner = { path: [], idOf: (field: string) => `kit/${field}`, besides };
  const { filled } = checkFields(root, kitFields, owner, context);
  const parts = readParts(root, vocabulary, context);
  const measurements = readMeasurements(root, parts, vocabulary, context);
  const benchBook = textIn(filled, 'bench book');
  return {
    source,
    kit: {
      file: file.name,
      serial: textIn(filled, 'serial') ?? '',
      name: textIn(filled, 'name') ?? '',
      decimal: choiceIn(filled, 'decimal') === 'comma' ? 'comma' : 'point',
      gravity: readGravity(root, writtenGravity(filled), context),
      parts: withMeasurements(parts, measurements),
      measurements: measurements.map(({ value: _, ...measurement }) => measurement),
      ...(benchBook === undefined ? {} : { benchBook }),
    },
    diagnostics,
  };
}

function readParts(root: MapNode, vocabulary: Vocabulary, context: Context): readonly KitPart[] {
  const map = mapAt(root, 'parts', [], context);
  if (map === null) {
    if (entryOf(root, 'parts') === undefined) atKey(context, [], 'missing-key', { key: 'parts' });
    return [];
  }
  return map.entries.flatMap(({ key, node }) => {
    const part = asMap(node, ['parts', key], context);
    return part === null ? [] : [readPart(key, part, vocabulary, context)];
  });
}

function readPart(mark: string, map: MapNode, vocabulary: Vocabulary, context: Context): KitPart {
  const path = ['parts', mark];
  const nothing: KitPart = {
    mark,
    kind: '',
    fields: {},
    fits: null,
    isSpare: false,
    note: null,
    box: null,
    isFaulty: true,
  };
  if (entryOf(map, 'part') === undefined) {
    atKey(context, path, 'missing-key', { key: 'part', example: 'weight' });
    return nothing;
  }
  const name = textAt(map, 'part', path, context);
  if (name === null) return nothing;
  const kind = partKindNamed(vocabulary, name);
  if (kind === undefined) {
    const known = vocabulary.partKinds.map((each) => each.kind);
    atValue(context, [...path, 'part'], 'unknown-part-kind', {
      written: name,
      known,
      ...nearestFact(name, known),
    });
    return nothing;
  }
  const owner = { path, idOf: (field: string) => `${mark}/${field}`, besides: ['part', 'fits'] };
  const { filled, isSound } = checkFields(map, { ...partFields, ...kind.fields }, owner, context);
  const weighs = measuredIn<Kilograms>(filled, 'weighs');
  return {
    mark,
    kind: kind.kind,
    fields: without(filled, Object.keys(partFields)),
    fits: readFits(map, path, vocabulary, context),
    isSpare: isYesIn(filled, 'spare'),
    note: textIn(filled, 'note') ?? null,
    box: textIn(filled, 'box') ?? null,
    ...(weighs === undefined ? {} : { weighs }),
    isFaulty: !isSound,
  };
}

/** Machines that the part fits, as a list or as one text with commas between. */
function readFits(
  map: MapNode,
  path: readonly string[],
  vocabulary: Vocabulary,
  context: Context,
): readonly string[] | null {
  const node = entryOf(map, 'fits')?.node;
  if (node === undefined) return null;
  const known = vocabulary.machines.map((machine) => machine.name);
  const at = [...path, 'fits'];
  const words =
    node.kind === 'list'
      ? node.items.map((item, n) => ({ text: asText(item, [...at, n], context), path: [...at, n] }))
      : (asText(node, at, context)?.split(/,\s*/) ?? []).map((text) => ({ text, path: at }));
  for (const { text, path: where } of words)
    if (text !== null && !known.includes(text))
      atValue(context, where, 'unknown-machine', { written: text, known, ...nearestFact(text, known) });
  return words.flatMap(({ text }) => (text !== null && known.includes(text) ? [text] : []));
}

const without = (filled: Filled, keys: readonly string[]): Filled =>
  Object.fromEntries(Object.entries(filled).filter(([key]) => !keys.includes(key)));
