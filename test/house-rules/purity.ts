import ts from 'typescript';
import type { Fault } from './fault.ts';
import { lineOf, parse, type SourceFile, visit } from './source-file.ts';

/** Words through which a clock, chance, a disk, a network, a screen or a locale gets in. */
const IMPURE = new Set([
  'Date',
  'Intl',
  'process',
  'fetch',
  'console',
  'performance',
  'crypto',
  'require',
  'globalThis',
  'Buffer',
  'setTimeout',
  'setInterval',
  'setImmediate',
  'queueMicrotask',
  'eval',
]);

/** What a file of a pure room may not reach for. Words in comments and texts don't count. */
export function purityFaults(file: SourceFile): readonly Fault[] {
  const tree = parse(file);
  const own = namesDeclaredIn(tree);
  const faults: Fault[] = [];
  const note = (node: ts.Node, word: string): void => {
    faults.push({ path: file.path, line: lineOf(tree, node), says: `a pure room may not use ${word}` });
  };
  visit(tree, (node) => {
    if (!ts.isIdentifier(node)) return;
    const { text } = node;
    if (isMember(node)) {
      if (/^toLocale|^localeCompare$/.test(text)) note(node, text);
      return;
    }
    if (IMPURE.has(text) && !own.has(text)) note(node, text);
    if (text === 'Math' && !reachesForKnown(node)) note(node, 'Math.random');
  });
  return faults;
}

/** `a.word`, or `word` as the key of an object or a type: a name of ours, no reach outside. */
function isMember(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.name === node;
  if (ts.isQualifiedName(parent)) return parent.right === node;
  if (ts.isBindingElement(parent)) return parent.propertyName === node;
  return (
    (ts.isPropertyAssignment(parent) ||
      ts.isPropertySignature(parent) ||
      ts.isPropertyDeclaration(parent) ||
      ts.isMethodSignature(parent) ||
      ts.isMethodDeclaration(parent)) &&
    parent.name === node
  );
}

/** `Math.sqrt` is fine; `Math.random`, `Math[name]` and `{ random } = Math` are not. */
const reachesForKnown = (math: ts.Identifier): boolean =>
  ts.isPropertyAccessExpression(math.parent) && math.parent.name.text !== 'random';

function namesDeclaredIn(tree: ts.SourceFile): ReadonlySet<string> {
  const names = new Set<string>();
  visit(tree, (node) => {
    const declares =
      ts.isVariableDeclaration(node) ||
      ts.isParameter(node) ||
      ts.isFunctionDeclaration(node) ||
      ts.isBindingElement(node) ||
      ts.isImportSpecifier(node);
    if (declares && node.name !== undefined && ts.isIdentifier(node.name)) names.add(node.name.text);
  });
  return names;
}
