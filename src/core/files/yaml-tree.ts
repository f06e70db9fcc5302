import {
  type Document,
  isAlias,
  isMap,
  isPair,
  isScalar,
  isSeq,
  type ParsedNode,
  parseAllDocuments,
  type YAMLMap,
} from 'yaml';
import type { Diagnostic, Facts, Place } from '../diagnostics/diagnostic.ts';
import { type FileCode, fileFinding } from './file-code.ts';
import { tooDeepAt } from './nesting.ts';
import type { Entry, MapNode, Node, Range } from './node.ts';
import type { SourceFile, SourceText } from './source-text.ts';
import { syntaxCode } from './syntax-code.ts';

/** A file read as a tree; `root` is set only where the check of its fields makes sense. */
export interface YamlTree {
  readonly source: SourceFile;
  readonly root: MapNode | null;
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Reads a file's YAML (1.2) with the place of everything in it, and tells every fault of the syntax
 * at once. All values stay text. Refused, because they say something else than they seem to when a
 * file is read aloud: anchors, aliases, tags, merge keys, keys that are no text, the same key twice,
 * a second document, and flow style in a file with decimal commas. A file with such faults is not
 * checked any further: what stands in it is not what it seems to say.
 */
export function readYaml(file: SourceText): YamlTree {
  const diagnostics: Diagnostic[] = [];
  const report: Report = (code, range, facts = {}) =>
    diagnostics.push(fileFinding(code, wholeFile(file.name, range), facts));
  const nothing = { source: { ...file, root: null }, root: null, diagnostics };

  const deep = tooDeepAt(file.text);
  if (deep !== null) {
    report('syntax.too-deep', [deep, deep + 1]);
    return nothing;
  }
  const document = parsed(file.text, report);
  if (document === null) return nothing;
  const isBroken = document.errors.some((error) => error.code !== 'DUPLICATE_KEY');
  if (document.contents === null || isBroken) {
    if (!isBroken) report('syntax.empty-file', [0, 0]);
    return nothing;
  }
  const root = treeOf(document.contents, file.text, report);
  if (root.kind !== 'map') {
    report('syntax.no-keys', [root.range[0], lineEnd(file.text, root.range[0])]);
    return nothing;
  }
  refuseFlow(root, document.contents as YAMLMap.Parsed, report);
  if (diagnostics.some((each) => each.code !== 'syntax.key-twice')) return nothing;
  return { source: { ...file, root }, root, diagnostics };
}

type Report = (code: FileCode, range: Range, facts?: Facts) => void;

/** A fault of the syntax has no path in the data: its place is a span of the whole text. */
const wholeFile = (file: string, span: Range): Place => ({ file, path: [], on: 'value', span });

/** Parses with all values as text; a parser that gives up is a finding like any other. */
function parsed(text: string, report: Report): Document.Parsed | null {
  let documents: readonly Document.Parsed[];
  try {
    documents = parseAllDocuments(text, {
      schema: 'failsafe',
      merge: false,
      prettyErrors: false,
      logLevel: 'silent',
    }) as readonly Document.Parsed[];
  } catch {
    report('syntax.too-deep', [0, Math.min(1, text.length)]);
    return null;
  }
  const [document, second] = documents;
  if (document === undefined) {
    report('syntax.empty-file', [0, 0]);
    return null;
  }
  if (second !== undefined) {
    const from = second.range[0];
    report('syntax.second-document', [from, lineEnd(text, from)]);
  }
  // One slip makes the parser stumble again in the same line, and a tab in the next one too; once it
  // is out of step it finds everything unreadable. The first stumble says it.
  const lines = new Set<number>();
  let isOutOfStep = false;
  for (const error of documents.flatMap((each) => each.errors)) {
    const { code, range } = syntaxCode(error, text, openedAt(document.contents, error.pos[0]));
    const start = text.lastIndexOf('\n', range[0] - 1);
    const isNew = !lines.has(start) && !(isOutOfStep && code === 'syntax.unreadable');
    if (isNew) report(code, range);
    lines.add(start);
    if (code === 'syntax.tab') lines.add(text.indexOf('\n', range[0]));
    isOutOfStep ||= code === 'syntax.unreadable';
  }
  return document;
}

function treeOf(node: ParsedNode, text: string, report: Report): Node {
  const range: Range = [node.range[0], node.range[1]];
  if (isAlias(node)) {
    report('syntax.alias', range, { written: text.slice(...range) });
    return { kind: 'empty', range };
  }
  if (node.anchor !== undefined)
    report('syntax.anchor', before(text, `&${node.anchor}`, range), { name: node.anchor });
  const tag = /![^\s,[\]{}]*(?=\s+(?:&\S+\s+)?$)/.exec(
    text.slice(Math.max(0, range[0] - 200), range[0]),
  )?.[0];
  if (node.tag !== undefined && tag !== undefined) report('syntax.tag', before(text, tag, range), { tag });
  if (isMap(node)) return { kind: 'map', range, entries: entriesOf(node as YAMLMap.Parsed, text, report) };
  if (isSeq(node))
    return {
      kind: 'list',
      range,
      items: node.items.map((item) => treeOf(item as ParsedNode, text, report)),
    };
  if (!isScalar(node) || (range[0] === range[1] && node.source === '')) return { kind: 'empty', range };
  const value = String(node.value ?? '');
  const quote = node.type === 'QUOTE_DOUBLE' || node.type === 'QUOTE_SINGLE' ? 1 : 0;
  const from = range[0] + quote;
  const isAsWritten = text.slice(from, from + value.length) === value;
  return { kind: 'text', range, text: value, textFrom: isAsWritten ? from : null };
}

function entriesOf(map: YAMLMap.Parsed, text: string, report: Report): readonly Entry[] {
  const entries: Entry[] = [];
  for (const pair of map.items) {
    const key = pair.key as ParsedNode | null;
    const keyRange: Range = key === null ? [map.range[0], map.range[0]] : [key.range[0], key.range[1]];
    const keyNode = key === null ? null : treeOf(key, text, report);
    if (keyNode?.kind !== 'text') {
      if (!isAlias(key)) report('syntax.key-is-no-text', keyRange);
      continue;
    }
    if (keyNode.text === '<<') {
      report('syntax.merge-key', keyRange);
      continue;
    }
    const value = pair.value as ParsedNode | null;
    const node: Node =
      value === null ? { kind: 'empty', range: [keyRange[1], keyRange[1]] } : treeOf(value, text, report);
    if (!entries.some((entry) => entry.key === keyNode.text))
      entries.push({ key: keyNode.text, keyRange, node });
  }
  return entries;
}

/** `{load: 1,5 N}` is a load of 1 and a key "5 N": in a file with decimal commas flow style lies. */
function refuseFlow(root: MapNode, map: YAMLMap.Parsed, report: Report): void {
  const decimal = root.entries.find((entry) => entry.key === 'decimal')?.node;
  if (decimal?.kind !== 'text' || decimal.text !== 'comma') return;
  const walk = (node: unknown): void => {
    if (!isMap(node) && !isSeq(node)) return;
    if (node.flow === true && node.range) {
      report('syntax.flow-with-commas', [node.range[0], node.range[1]]);
      return;
    }
    for (const item of node.items) walk(isMap(node) ? (item as { value: unknown }).value : item);
  };
  walk(map);
}

/** Where the quotation mark or bracket stands that is still open at the end of what was read. */
function openedAt(node: unknown, end: number): number | null {
  if (isScalar(node)) {
    const isQuoted = node.type === 'QUOTE_DOUBLE' || node.type === 'QUOTE_SINGLE';
    return isQuoted && node.range?.[1] === end ? node.range[0] : null;
  }
  if (!isMap(node) && !isSeq(node)) return null;
  for (const item of node.items) {
    const inside = isPair(item)
      ? (openedAt(item.key, end) ?? openedAt(item.value, end))
      : openedAt(item, end);
    if (inside !== null) return inside;
  }
  return node.flow === true && node.range && node.range[1] >= end ? node.range[0] : null;
}

/** The place of a sign that stands before a value. */
function before(text: string, sign: string, value: Range): Range {
  const from = text.lastIndexOf(sign, value[0]);
  return from === -1 ? value : [from, from + sign.length];
}

function lineEnd(text: string, from: number): number {
  const end = text.indexOf('\n', from);
  return end === -1 ? text.length : end;
}
