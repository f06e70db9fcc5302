import type { Path } from './context.ts';
import { added, asScalar, endOf, isFlow, nodeAt, stepInto, withValue } from './edit-text.ts';
import type { Entry, ListNode, MapNode, Node } from './node.ts';
import type { SourceFile } from './source-text.ts';

/**
 * A file with one value written, also where nothing of what it stands in is there yet: a new part, a new
 * table behind the last one, a setup. Every other letter stays as it was. An empty value takes out what
 * stands at the path. `null` where the file doesn't let it be written.
 */
export function withGrown(file: SourceFile, path: Path, value: string): string | null {
  const { root, text } = file;
  if (root === null) return null;
  if (value.trim() === '' && nodeAt(root, path) !== null && path.length > 1) {
    const holder = nodeAt(root, path.slice(0, -1));
    // What holds nothing else says nothing, and goes with it.
    const isAlone =
      (holder?.kind === 'map' && holder.entries.length === 1) ||
      (holder?.kind === 'list' && holder.items.length === 1);
    if (isAlone) return withGrown(file, path.slice(0, -1), '');
    if (typeof path.at(-1) === 'number') return withoutItem(file, path);
  }
  const there = depthThere(root, path);
  const rest = path.slice(there);
  const holder = nodeAt(root, path.slice(0, there));
  if (value.trim() === '' && rest.length > 0) return text;
  if (rest.length <= 1 && holder?.kind !== 'empty' && typeof path.at(-1) === 'string')
    return withValue(file, path, value);
  if (holder?.kind === 'map' && isFlow(text, holder)) return inBraces(text, holder, rest, value);
  if (holder?.kind === 'map') {
    const first = holder.entries[0];
    return first === undefined
      ? null
      : added(text, holder, block(rest, value, columnOf(text, first.keyRange[0])));
  }
  if (holder?.kind === 'list') return appended(text, holder, rest, value);
  const entry = holder?.kind === 'empty' ? entryAt(root, path.slice(0, there)) : null;
  return entry === null ? null : begun(text, entry, rest, value);
}

/** Within braces everything stands on one line: `{ roles: { "1": { load: W300 } } }`. */
function inBraces(text: string, holder: MapNode, [first, ...rest]: Path, value: string): string | null {
  if (![first, ...rest].every((step) => typeof step === 'string')) return null;
  const written = rest.reduceRight<string>(
    (inner, step) => `{ ${asScalar(String(step))}: ${inner} }`,
    asScalar(value.trim()),
  );
  return added(text, holder, `${asScalar(String(first))}: ${written}`);
}

/** How many steps of a path lead to something that stands there. */
function depthThere(root: Node, path: Path): number {
  let node: Node | null = root;
  for (const [n, step] of path.entries()) {
    node = stepInto(node, step);
    if (node === null) return n;
  }
  return path.length;
}

function entryAt(root: Node, path: Path): Entry | null {
  const holder = nodeAt(root, path.slice(0, -1));
  const key = path.at(-1);
  return (holder?.kind === 'map' && holder.entries.find((each) => each.key === key)) || null;
}

/** Behind a key with nothing under it yet. */
function begun(text: string, { keyRange }: Entry, rest: Path, value: string): string {
  const column = columnOf(text, keyRange[0]) + 2;
  const at = text.indexOf(':', keyRange[1]) + 1;
  return text.slice(0, at) + lineEnd(text) + under(rest, value, column) + text.slice(at);
}

/** Behind the last item of a list that is written line by line. */
function appended(text: string, list: ListNode, rest: Path, value: string): string | null {
  const last = list.items.at(-1);
  const [n, ...inItem] = rest;
  if (last === undefined || n !== list.items.length) return null;
  const start = lineStart(text, list.items[0]?.range[0] ?? 0);
  const dash = /^( *)- /.exec(text.slice(start));
  if (dash === null) return null;
  const deepest = last.kind === 'map' ? last.entries.at(-1) : undefined;
  const end =
    deepest === undefined
      ? last.range[0] + text.slice(...last.range).trimEnd().length
      : endOf(text, deepest.node, deepest.keyRange);
  const line = text.slice(end).search(/\r?\n|$/);
  const item = under([0, ...inItem], value, dash[1]?.length ?? 0);
  return text.slice(0, end + line) + lineEnd(text) + item + text.slice(end + line);
}

/** `part: bar`, with all that has to stand above it: the first line begins where the text stands already. */
function block(path: Path, value: string, column: number): string {
  const [key, ...rest] = path;
  const name = asScalar(String(key));
  return rest.length === 0
    ? `${name}: ${asScalar(value.trim())}`
    : `${name}:\n${under(rest, value, column + 2)}`;
}

function under(path: Path, value: string, column: number): string {
  const [step, ...rest] = path;
  const indent = ' '.repeat(column);
  if (typeof step !== 'number') return indent + block(path, value, column);
  return `${indent}- ${rest.length === 0 ? asScalar(value.trim()) : block(rest, value, column + 2)}`;
}

/** Takes an item out of a list of several, with its lines. */
function withoutItem({ text, root }: SourceFile, path: Path): string | null {
  const list = nodeAt(root, path.slice(0, -1));
  const n = path.at(-1);
  if (list?.kind !== 'list' || typeof n !== 'number') return null;
  const [item, next, before] = [list.items[n], list.items[n + 1], list.items[n - 1]];
  if (item === undefined || !/^ *- /.test(text.slice(lineStart(text, item.range[0])))) return null;
  const from = lineStart(text, item.range[0]);
  if (next !== undefined) return text.slice(0, from) + text.slice(lineStart(text, next.range[0]));
  const tail = before === undefined ? null : /\s*$/.exec(text.slice(...item.range));
  const end = item.range[1] - (tail?.[0].length ?? 0);
  const line = text.indexOf('\n', end);
  return text.slice(0, from) + (line === -1 ? '' : text.slice(line + 1));
}

const lineEnd = (text: string): string => (/\r\n/.test(text) ? '\r\n' : '\n');
const lineStart = (text: string, at: number): number => text.lastIndexOf('\n', at - 1) + 1;
const columnOf = (text: string, at: number): number => at - lineStart(text, at);
