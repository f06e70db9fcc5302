import ts from 'typescript';
import type { Fault } from './fault.ts';
import { importsOf, lineOf, parse, type SourceFile, targetOf, visit } from './source-file.ts';

const RUNNERS = new Set(['test', 'it', 'describe', 'suite']);
const SILENCED = new Set(['xit', 'xtest', 'xdescribe', 'fit', 'fdescribe']);
const SILENCERS = new Set(['skip', 'only', 'todo', 'skipIf', 'runIf', 'fails']);

type Finder = (path: string) => SourceFile | undefined;

/**
 * A test runs, asserts, and has a sentence for a title. Tests may be made by a module of `test/` that
 * the file calls; `find` hands that over.
 */
export function testFaults(file: SourceFile, find: Finder = () => undefined): readonly Fault[] {
  const makers = importsOf(file).flatMap(({ specifier }) => {
    const maker = find(targetOf(file.path, specifier) ?? '');
    return maker === undefined ? [] : [inspect(maker)];
  });
  const own = inspect(file);
  const fault = (says: string): readonly Fault[] => [{ path: file.path, line: 1, says }];
  return [
    ...silenceFaults(file),
    ...own.faults,
    ...(own.tests + sum(makers.map((each) => each.tests)) > 0 ? [] : fault('holds no test')),
    ...(own.asserts || makers.some((each) => each.asserts) ? [] : fault('asserts nothing')),
  ];
}

/** Whatever leaves a test out, alone or turned round, in any file; only test/not-run.ts may. */
export function silenceFaults(file: SourceFile): readonly Fault[] {
  const tree = parse(file);
  const faults: Fault[] = [];
  visit(tree, (node) => {
    const name = silencer(node);
    if (name !== null)
      faults.push({
        path: file.path,
        line: lineOf(tree, node),
        says: `${name} leaves a test out or turns it round`,
      });
  });
  return faults;
}

function silencer(node: ts.Node): string | null {
  if (ts.isPropertyAccessExpression(node) && SILENCERS.has(node.name.text) && silences(node))
    return `.${node.name.text}`;
  if (ts.isCallExpression(node) && ts.isIdentifier(node.expression) && SILENCED.has(node.expression.text))
    return node.expression.text;
  return null;
}

function inspect(file: SourceFile): {
  readonly faults: readonly Fault[];
  readonly tests: number;
  readonly asserts: boolean;
} {
  const tree = parse(file);
  const faults: Fault[] = [];
  const note = (node: ts.Node, says: string): void => {
    faults.push({ path: file.path, line: lineOf(tree, node), says });
  };
  let tests = 0;
  visit(tree, (node) => {
    if (!ts.isCallExpression(node)) return;
    const runner = runnerOf(node.expression);
    if (runner === null || runner === 'describe' || runner === 'suite') return;
    const [title, ...rest] = node.arguments;
    const body = rest.find((each) => ts.isArrowFunction(each) || ts.isFunctionExpression(each));
    if (body === undefined) return;
    tests += 1;
    if (ts.isBlock(body.body) && body.body.statements.length === 0) note(node, 'the test is empty');
    if (title !== undefined && ts.isStringLiteralLike(title) && !isSentence(title.text))
      note(title, `"${title.text}" is no sentence`);
  });
  return { faults, tests, asserts: /\bexpect\s*[(.]/.test(withoutComments(tree)) };
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);

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
