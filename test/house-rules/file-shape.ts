import ts from 'typescript';
import type { Fault } from './fault.ts';
import { lineOf, parse, type SourceFile, visit } from './source-file.ts';

const MOST_LINES = 300;
/** A helper is a grown-up at a table: her page bears the name of her seat. */
const SEAT = /^src\/web\/helper(\/|\.html$)/;
const FORBIDDEN = /(^|\/)(utils?|helpers?|common|shared|misc)(\/|\.|$)|(^|\/)types\.ts$/;
const KEBAB = /^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9]+(-[a-z0-9]+)*)+$/;
const CONFIGURATION = /^[a-z]+\.config\.ts$/;

/** One concept, one file: it ends before it has to be scrolled for. Files of sentences are lists. */
export function lengthFaults(file: SourceFile): readonly Fault[] {
  if (/sentences(\.en\.ts$|\/)/.test(file.path)) return [];
  const lines = file.text.replace(/\n$/, '').split('\n').length;
  return lines <= MOST_LINES
    ? []
    : [{ path: file.path, line: MOST_LINES + 1, says: `has ${lines} lines; ${MOST_LINES} is the most` }];
}

/** A file is named for the noun it defines, in kebab-case; a drawer for odds and ends has no name here. */
export function nameFaults(path: string): readonly Fault[] {
  const fault = (says: string): readonly Fault[] => [{ path, line: 1, says }];
  if (FORBIDDEN.test(path) && !SEAT.test(path))
    return fault('a name that says nothing about what it holds; circles begin there');
  const name = path.slice(path.lastIndexOf('/') + 1);
  if (path.startsWith('src/') && !/^tsconfig\.json$|(?<!\.d)\.ts$/.test(name) && !isOfPage(path))
    return fault('src holds TypeScript; what is built belongs in build/');
  return KEBAB.test(name) || CONFIGURATION.test(path) ? [] : fault('file names are kebab-case');
}

/** The browser's room also holds what only a page is made of. */
const isOfPage = (path: string): boolean =>
  path.startsWith('src/web/') && /\.(tsx|html|css|svg|webmanifest)$/.test(path);

/** A thing has one name wherever it is imported: no default exports outside configuration and descriptions of packages. */
export function defaultExportFaults(file: SourceFile): readonly Fault[] {
  if (CONFIGURATION.test(file.path) || file.path.endsWith('.d.ts')) return [];
  const tree = parse(file);
  const faults: Fault[] = [];
  visit(tree, (node) => {
    const isDefault =
      ts.isExportAssignment(node) ||
      (node.kind === ts.SyntaxKind.DefaultKeyword && node.parent.kind !== ts.SyntaxKind.DefaultClause) ||
      (ts.isExportSpecifier(node) && node.name.text === 'default');
    if (isDefault) faults.push({ path: file.path, line: lineOf(tree, node), says: 'exports are named' });
  });
  return faults;
}
