import type { Path } from './context.ts';
import { entryOf, type MapNode, type Node, type Range } from './node.ts';
import type { SourceFile } from './source-text.ts';

/**
 * A file with one value written anew and every other letter as it was: comments, order and spaces
 * stay. An empty value takes the line out. `null` where the path leads nowhere that can be written to,
 * or the file can't be read as it is.
 */
export function withValue(file: SourceFile, path: Path, value: string): string | null {
  const { root } = file;
  const key = path.at(-1);
  if (root === null || typeof key !== 'string') return null;
  const holder = nodeAt(root, path.slice(0, -1));
  if (holder?.kind !== 'map') return null;
  const entry = entryOf(holder, key);
  const written = value.trim();
  if (entry !== undefined)
    return written === ''
      ? without(file.text, holder, key)
      : spliced(file.text, valueRange(entry.keyRange, entry.node), asScalar(written), entry.node);
  return written === '' ? file.text : added(file.text, holder, `${asScalar(key)}: ${asScalar(written)}`);
}

/** What stands at a path as text; `null` where nothing, or no plain text, stands there. */
export function valueAt(root: Node | null, path: Path): string | null {
  const node = nodeAt(root, path);
  return node?.kind === 'text' ? node.text : null;
}

/** What stands at a path. */
export const nodeAt = (root: Node | null, path: Path): Node | null =>
  path.reduce<Node | null>(stepInto, root);

export function stepInto(node: Node | null, step: string | number): Node | null {
  if (node?.kind === 'map' && typeof step === 'string') return entryOf(node, step)?.node ?? null;
  if (node?.kind === 'list' && typeof step === 'number') return node.items[step] ?? null;
  return null;
}

/** Behind an empty key stands nothing yet: the value goes after its colon. */
function valueRange(keyRange: Range, node: Node): Range {
  return node.kind === 'empty' ? [keyRange[1], keyRange[1]] : node.range;
}

function spliced(text: string, [from, to]: Range, value: string, node: Node): string {
  if (node.kind === 'empty') {
    const colon = text.indexOf(':', from) + 1;
    return `${text.slice(0, colon)} ${value}${text.slice(colon)}`;
  }
  // A block of several lines ends with its line break, which isn't part of what is said.
  const whole = text.slice(from, to);
  const tail = /\s*$/.exec(whole)?.[0] ?? '';
  return `${text.slice(0, from)}${value}${tail}${text.slice(to)}`;
}

export const isFlow = (text: string, map: MapNode): boolean => text[map.range[0]] === '{';

export function added(text: string, map: MapNode, pair: string): string {
  const last = map.entries.at(-1);
  const end = last === undefined ? map.range[0] + 1 : endOf(text, last.node, last.keyRange);
  if (isFlow(text, map)) return `${text.slice(0, end)}${last ? ', ' : ' '}${pair}${text.slice(end)}`;
  const first = map.entries[0];
  if (first === undefined) return text;
  const lineEnd = /\r?\n|$/.exec(text.slice(end));
  const at = end + (lineEnd?.index ?? 0);
  const newline = /\r\n/.test(text) ? '\r\n' : '\n';
  const indent = first.keyRange[0] - (text.lastIndexOf('\n', first.keyRange[0] - 1) + 1);
  return `${text.slice(0, at)}${newline}${' '.repeat(indent)}${pair}${text.slice(at)}`;
}

/** Where a value ends on its own last line, without the breaks behind it. */
export function endOf(text: string, node: Node, keyRange: Range): number {
  if (node.kind === 'empty') return text.indexOf(':', keyRange[1]) + 1;
  const deepest = node.kind === 'map' && !isFlow(text, node) ? node.entries.at(-1) : undefined;
  if (deepest !== undefined) return endOf(text, deepest.node, deepest.keyRange);
  return node.range[0] + text.slice(...node.range).trimEnd().length;
}

/** Takes a pair out: in a flow with its comma, in a block with its line; the first key of a list item stays. */
function without(text: string, map: MapNode, key: string): string | null {
  const n = map.entries.findIndex((entry) => entry.key === key);
  const entry = map.entries[n];
  if (entry === undefined || map.entries.length === 1) return null;
  const end = endOf(text, entry.node, entry.keyRange);
  const next = map.entries[n + 1];
  const before = map.entries[n - 1];
  if (isFlow(text, map)) {
    if (next !== undefined) return text.slice(0, entry.keyRange[0]) + text.slice(next.keyRange[0]);
    const from = before === undefined ? entry.keyRange[0] : endOf(text, before.node, before.keyRange);
    return text.slice(0, from) + text.slice(end);
  }
  const start = text.lastIndexOf('\n', entry.keyRange[0] - 1) + 1;
  if (text.slice(start, entry.keyRange[0]).trim() !== '')
    return next === undefined ? null : text.slice(0, entry.keyRange[0]) + text.slice(next.keyRange[0]);
  const lineEnd = text.indexOf('\n', end);
  return text.slice(0, start) + (lineEnd === -1 ? '' : text.slice(lineEnd + 1));
}

/** Plain where YAML reads the same letters back, else in quotation marks. */
export function asScalar(value: string): string {
  const isPlain =
    !/^[\s!&*?|>@`"'%#,[\]{}-]|^[:]|:\s|:$|\s#|[\n\r,[\]{}]/.test(value) || /^-\d[^,[\]{}:#]*$/.test(value);
  return isPlain ? value : JSON.stringify(value);
}
