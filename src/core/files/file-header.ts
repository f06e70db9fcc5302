import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { atKey, atValue, type Context } from './context.ts';
import { entryOf, type MapNode } from './node.ts';
import type { SourceFile, SourceText } from './source-text.ts';
import { readYaml, type YamlTree } from './yaml-tree.ts';

export type FileKind = 'kit' | 'activity' | 'visit';

/** The version of each format that is written and read here. */
export const VERSION: Readonly<Record<FileKind, number>> = { kit: 1, activity: 1, visit: 1 };

export interface OpenedFile {
  readonly source: SourceFile;
  /** `null` where the file is not YAML, or a file of another kind: nothing more can be said about it. */
  readonly root: MapNode | null;
  readonly context: Context;
  readonly diagnostics: Diagnostic[];
}

/**
 * Opens one of the three files: its tree, its decimal mark, and its first line `handspike: kit 1`. Whoever
 * has the tree already gives it along.
 */
export function openFile(file: SourceText, kind: FileKind, tree: YamlTree = readYaml(file)): OpenedFile {
  const diagnostics = [...tree.diagnostics];
  const decimal = tree.root === null ? undefined : entryOf(tree.root, 'decimal')?.node;
  const context: Context = {
    file: file.name,
    decimal: decimal?.kind === 'text' && decimal.text === 'comma' ? 'comma' : 'point',
    report: (diagnostic) => diagnostics.push(diagnostic),
  };
  const isOurs = tree.root !== null && isOfKind(tree.root, kind, context);
  return { source: tree.source, root: isOurs ? tree.root : null, context, diagnostics };
}

function isOfKind(root: MapNode, kind: FileKind, context: Context): boolean {
  const wanted = `${kind} ${VERSION[kind]}`;
  const node = entryOf(root, 'handspike')?.node;
  if (node === undefined) {
    atKey(context, [], 'no-version', { wanted });
    return true;
  }
  if (root.entries[0]?.key !== 'handspike') atKey(context, ['handspike'], 'version-not-first', { wanted });
  const text = node.kind === 'text' ? node.text : '';
  const found = /^(kit|activity|visit) (\d{1,6})$/.exec(text);
  if (found === null) {
    atValue(context, ['handspike'], 'not-a-version', { written: text, wanted });
    return true;
  }
  if (found[1] !== kind) {
    atValue(context, ['handspike'], 'other-file', { is: found[1] ?? '', wanted: kind });
    return false;
  }
  if (Number(found[2]) === VERSION[kind]) return true;
  atValue(context, ['handspike'], 'other-version', { written: text, wanted });
  return false;
}
