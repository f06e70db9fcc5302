import ts from 'typescript';
import type { Fault } from './fault.ts';
import { lineOf, parse, type SourceFile, visit } from './source-file.ts';

const RUNNERS = new Set(['test', 'it', 'describe', 'suite']);
const SILENCED = new Set(['xit', 'xtest', 'xdescribe', 'fit', 'fdescribe']);
const SILENCERS = new Set(['skip', 'only', 'todo', 'skipIf', 'runIf', 'fails']);

/** A test runs, asserts, and has a sentence for a title. Only test/not-run.ts may leave one out. */
export function testFaults(file: SourceFile): readonly Fault[] {
  const tree = parse(file);
  const faults: Fault[] = [];
  const note = (node: ts.Node, says: string): void => {
    faults.push({ path: file.path, line: lineOf(tree, node), says });
  };
  let tests = 0;
  visit(tree, (node) => {
    if (ts.isPropertyAccessExpression(node) && SILENCERS.has(node.name.text) && silences(node))
      note(node, `.${node.name.text} leaves a test out or turns it round`);
    if (!ts.isCallExpression(node)) return;
    if (ts.isIdentifier(node.expression) && SILENCED.has(node.expression.text))
      note(node, `${node.expression.text} leaves a test out or alone`);
    const runner = runnerOf(node.expression);
    if (runner === null || runner === 'describe' || runner === 'suite') return;
    const [title, body] = node.arguments;
    if (body === undefined || !(ts.isArrowFunction(body) || ts.isFunctionExpression(body))) return;
    tests += 1;
    if (ts.isBlock(body.body) && body.body.statements.length === 0) note(node, 'the test is empty');
    if (title !== undefined && ts.isStringLiteralLike(title) && !isSentence(title.text))
      note(title, `"${title.text}" is no sentence`);
  });
  if (tests === 0) faults.push({ path: file.path, line: 1, says: 'holds no test' });
  if (!/\bexpect\s*[(.]/.test(withoutComments(tree)))
    faults.push({ path: file.path, line: 1, says: 'asserts nothing' });
  return faults;
}

/** Three words at least; a title that is filled from a table of cases is judged with its cases, by eye. */
const isSentence = (title: string): boolean => /[%$]/.test(title) || title.trim().split(/\s+/).length >= 3;

/** `test`, for `test(...)` and for `test.each(...)(...)`. */
function runnerOf(expression: ts.Expression): string | null {
  if (ts.isIdentifier(expression)) return RUNNERS.has(expression.text) ? expression.text : null;
  if (ts.isCallExpression(expression) || ts.isPropertyAccessExpression(expression))
    return runnerOf(expression.expression);
  if (ts.isTaggedTemplateExpression(expression)) return runnerOf(expression.tag);
  return null;
}

/** `test.skip`, `describe.each(...).only`, or a call of `.skip()` on whatever a test was handed. */
const silences = (node: ts.PropertyAccessExpression): boolean =>
  runnerOf(node.expression) !== null || (node.name.text === 'skip' && ts.isCallExpression(node.parent));

const withoutComments = (tree: ts.SourceFile): string =>
  ts.createPrinter({ removeComments: true }).printFile(tree);
