import { readFileSync } from 'node:fs';
import { posix } from 'node:path';
import ts from 'typescript';

/** A file of the project as the rules see it: its path from the root, with slashes, and its text. */
export interface SourceFile {
  readonly path: string;
  readonly text: string;
}

export interface Import {
  readonly specifier: string;
  readonly line: number;
}

export const isTest = (path: string): boolean =>
  path.endsWith('.test.ts') || path.startsWith('test/') || path.startsWith('bench/');

/** `core` for `src/core/...`, `test` for whatever only checks, `null` for scripts and configuration. */
export function roomOf(path: string): string | null {
  const room = /^src\/([^/]+)\//.exec(path)?.[1];
  if (room !== undefined) return room;
  return isTest(path) ? 'test' : null;
}

export function sourceFile(path: string, root: string): SourceFile {
  return { path, text: readFileSync(posix.join(root, path), 'utf8') };
}

export const parse = (file: SourceFile): ts.SourceFile =>
  ts.createSourceFile(file.path, file.text, ts.ScriptTarget.ES2023, true, kindOf(file.path));

const kindOf = (path: string): ts.ScriptKind =>
  path.endsWith('.tsx') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;

/** Everything a file imports, re-exports or loads, types included. */
export function importsOf(file: SourceFile): readonly Import[] {
  const tree = parse(file);
  const found: Import[] = [];
  const note = (node: ts.Node | undefined): void => {
    if (node !== undefined && ts.isStringLiteralLike(node))
      found.push({ specifier: node.text, line: lineOf(tree, node) });
  };
  visit(tree, (node) => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) note(node.moduleSpecifier);
    else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) note(node.argument.literal);
    else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
      note(node.arguments[0]);
  });
  return found;
}

/** Path from the root that a relative import leads to; `null` for a package or a module of Node. */
export const targetOf = (from: string, specifier: string): string | null =>
  specifier.startsWith('.') ? posix.join(posix.dirname(from), specifier) : null;

/** `@scope/name` or `name`, without the path inside the package. */
export const packageOf = (specifier: string): string =>
  specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');

export function visit(node: ts.Node, see: (node: ts.Node) => void): void {
  see(node);
  ts.forEachChild(node, (child) => visit(child, see));
}

export const lineOf = (tree: ts.SourceFile, node: ts.Node): number =>
  tree.getLineAndCharacterOfPosition(node.getStart(tree)).line + 1;
