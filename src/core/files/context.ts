import type { Diagnostic, Facts, Place, Severity } from '../diagnostics/diagnostic.ts';
import { nearestName } from '../quantities/nearest-name.ts';
import type { DecimalMark } from '../quantities/print-quantity.ts';
import { type FileCode, fileFinding } from './file-code.ts';
import { entryOf, keysOf, type MapNode, type Node } from './node.ts';

/** What a file's check carries along: which file, its decimal mark, and where findings go. */
export interface Context {
  readonly file: string;
  readonly decimal: DecimalMark;
  readonly report: (diagnostic: Diagnostic) => void;
}

export type Path = Place['path'];

/** Reports one finding at a value. */
export const atValue = (
  context: Context,
  path: Path,
  code: FileCode,
  facts: Facts = {},
  span?: readonly [number, number],
): void => finding(context, { path, on: 'value', ...(span ? { span } : {}) }, code, facts, 'error');

/** Reports one finding at a key. */
export const atKey = (
  context: Context,
  path: Path,
  code: FileCode,
  facts: Facts = {},
  severity: Severity = 'error',
): void => finding(context, { path, on: 'key' }, code, facts, severity);

function finding(
  context: Context,
  at: Omit<Place, 'file'>,
  code: FileCode,
  facts: Facts,
  severity: Severity,
): void {
  context.report(fileFinding(code, { file: context.file, ...at }, facts, severity));
}

/** The known name that was probably meant, as a fact; left out where none is near. */
export function nearestFact(word: string, known: readonly string[]): Facts {
  const nearest = nearestName(word, known);
  return nearest === undefined ? {} : { nearest };
}

/** Refuses every key that has no meaning here, with the nearest one that has. */
export function refuseUnknownKeys(
  map: MapNode,
  path: Path,
  known: readonly string[],
  context: Context,
): void {
  const free = known.filter((key) => entryOf(map, key) === undefined);
  for (const key of keysOf(map))
    if (!known.includes(key))
      atKey(context, [...path, key], 'unknown-key', { key, known: free, ...nearestFact(key, known) });
}

/** The map under a key; says so where something else stands there. `null` where there is none. */
export function mapAt(map: MapNode, key: string, path: Path, context: Context): MapNode | null {
  const node = entryOf(map, key)?.node;
  return node === undefined ? null : asMap(node, [...path, key], context);
}

export function asMap(node: Node, path: Path, context: Context): MapNode | null {
  if (node.kind === 'map') return node;
  if (node.kind === 'empty') atKey(context, path, 'nothing-written', { key: String(path.at(-1) ?? '') });
  else atValue(context, path, 'keys-wanted', { key: String(path.at(-1) ?? '') });
  return null;
}

/** The items of the list under a key; a missing key is an empty list. */
export function listAt(map: MapNode, key: string, path: Path, context: Context): readonly Node[] {
  const node = entryOf(map, key)?.node;
  if (node === undefined) return [];
  if (node.kind === 'list') return node.items;
  if (node.kind === 'empty') atKey(context, [...path, key], 'nothing-written', { key });
  else atValue(context, [...path, key], 'list-wanted', { key });
  return [];
}

/** The text under a key; says so where a list or keys stand there. `null` where there is none. */
export function textAt(map: MapNode, key: string, path: Path, context: Context): string | null {
  const node = entryOf(map, key)?.node;
  return node === undefined ? null : asText(node, [...path, key], context);
}

export function asText(node: Node, path: Path, context: Context): string | null {
  if (node.kind === 'text' && node.text.trim() !== '') return node.text.trim();
  const key = String(path.at(-1) ?? '');
  if (node.kind === 'empty' || node.kind === 'text') atKey(context, path, 'nothing-written', { key });
  else atValue(context, path, 'text-wanted', { key });
  return null;
}
