import type { Place } from '../diagnostics/diagnostic.ts';
import { type Entry, entryOf, type Node, type Range } from './node.ts';
import type { SourceFile } from './source-text.ts';

/** A place as an editor shows it: line and column from 1, in characters. */
export interface Located {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  /** The whole line, to set the caret under. */
  readonly lineText: string;
  /** How many characters of that line are meant, at least 1. */
  readonly length: number;
}

/** Finds a place of the data in the files; a path that was never written ends at what holds it. */
export function locate(files: readonly SourceFile[], place: Place): Located | null {
  const file = files.find((each) => each.name === place.file);
  if (file === undefined) return null;
  return inLines(file, rangeOf(file, place));
}

function rangeOf(file: SourceFile, place: Place): Range {
  if (file.root === null || place.path.length === 0)
    return place.path.length === 0 && place.span !== undefined ? place.span : firstLine(file.text);
  let node: Node = file.root;
  let entry: Entry | null = null;
  let isWhole = true;
  for (const step of place.path) {
    const next: Entry | undefined =
      node.kind === 'map' && typeof step === 'string' ? entryOf(node, step) : undefined;
    const item: Node | undefined =
      node.kind === 'list' && typeof step === 'number' ? node.items[step] : undefined;
    if (next === undefined && item === undefined) {
      isWhole = false;
      break;
    }
    entry = next ?? null;
    node = next?.node ?? item ?? node;
  }
  if (entry !== null && (place.on === 'key' || !isWhole || node.kind === 'empty')) return entry.keyRange;
  if (node.kind === 'map') return node.entries[0]?.keyRange ?? node.range;
  if (node.kind !== 'text') return node.range;
  const isNarrowed = isWhole && place.span !== undefined && node.textFrom !== null;
  if (!isNarrowed || place.span === undefined || node.textFrom === null) return node.range;
  const [from, to] = place.span;
  return [node.textFrom + from, node.textFrom + Math.max(to, from + 1)];
}

const firstLine = (text: string): Range => [0, /[\r\n]/.exec(text)?.index ?? text.length];

function inLines(file: SourceFile, [from, to]: Range): Located {
  const { text } = file;
  const at = Math.min(Math.max(from, 0), text.length);
  const before = text.slice(0, at).split(/\r\n|\n|\r/);
  const start = at - (before.at(-1) ?? '').length;
  const rest = /[\r\n]/.exec(text.slice(start));
  const lineText = rest === null ? text.slice(start) : text.slice(start, start + rest.index);
  const meant = lineText.slice(at - start, Math.max(to, at) - start);
  return {
    file: file.name,
    line: before.length,
    column: characters(lineText.slice(0, at - start)) + 1,
    lineText,
    length: Math.max(1, characters(meant.trimEnd())),
  };
}

const characters = (text: string): number => [...text].length;
