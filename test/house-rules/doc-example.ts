import ts from 'typescript';
import type { Fault } from './fault.ts';
import type { SourceFile } from './source-file.ts';

/** An `@example` of a doc comment, as code that can be run. */
export interface DocExample {
  readonly path: string;
  readonly line: number;
  readonly code: string;
}

/** One claim of an example: the expression and, as written, what it is. */
export interface Claim {
  readonly expression: string;
  readonly written: string;
}

/** Everything between an `@example` and the next tag, without the stars of the comment. */
export function docExamplesOf(file: SourceFile): readonly DocExample[] {
  return [...file.text.matchAll(/\/\*\*[\s\S]*?\*\//g)].flatMap((comment) => {
    const before = file.text.slice(0, comment.index).split('\n').length;
    const lines = comment[0]
      .replace(/^\/\*\*/, '')
      .replace(/\*\/$/, '')
      .split('\n')
      .map((line) => line.replace(/^\s*\* ?/, ''));
    const examples: DocExample[] = [];
    for (let index = 0; index < lines.length; index += 1) {
      const opened = /^\s*@example\b(.*)$/.exec(lines[index] ?? '');
      if (opened === null) continue;
      const rest = lines.slice(index + 1);
      const end = rest.findIndex((line) => /^\s*@[a-z]+/i.test(line));
      const body = [opened[1] ?? '', ...(end < 0 ? rest : rest.slice(0, end))];
      const code = body.filter((line) => !/^\s*```/.test(line)).join('\n');
      examples.push({ path: file.path, line: before + index, code: code.trim() });
    }
    return examples;
  });
}

/** An example that claims nothing, or a result on a line where nothing is worked out. */
export function exampleFaults(example: DocExample): readonly Fault[] {
  const marks = example.code.split('// =>').length - 1;
  const claims = runnable(example).claims.length;
  const fault = (says: string): readonly Fault[] => [{ path: example.path, line: example.line, says }];
  if (marks === 0) return fault('the example shows no result: end it with // => and what it gives');
  return marks === claims ? [] : fault(`${marks} results are shown, ${claims} of them after an expression`);
}

/**
 * The example as the body of an async function of `known` (what it may use), `load` (for
 * imports it writes itself) and `claim(number, got, want)`.
 */
export function runnable(example: DocExample): { readonly body: string; readonly claims: readonly Claim[] } {
  const tree = ts.createSourceFile('example.ts', example.code, ts.ScriptTarget.ES2023, true);
  const claims: Claim[] = [];
  const claim = (expression: string, written: string): string => {
    claims.push({ expression, written });
    return `claim(${claims.length - 1}, (${expression}), (${written}));`;
  };
  const lines = tree.statements.map((statement) => {
    const source = statement.getText(tree);
    const written = /^[ \t]*\/\/ =>[ \t]*(.+)$/m.exec(restOfLine(example.code, statement.end))?.[1]?.trim();
    if (ts.isImportDeclaration(statement)) return loading(statement);
    if (written === undefined) return source;
    if (ts.isExpressionStatement(statement)) return claim(statement.expression.getText(tree), written);
    const name = ts.isVariableStatement(statement)
      ? statement.declarationList.declarations[0]?.name
      : undefined;
    return name === undefined ? source : `${source}\n${claim(name.getText(tree), written)}`;
  });
  const plain = ts.transpileModule(lines.join('\n'), {
    compilerOptions: { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.ESNext },
  });
  return { body: plain.outputText, claims };
}

function restOfLine(code: string, from: number): string {
  const end = code.indexOf('\n', from);
  return code.slice(from, end < 0 ? code.length : end);
}

function loading(statement: ts.ImportDeclaration): string {
  const named = statement.importClause?.namedBindings;
  if (named === undefined || !ts.isNamedImports(named) || statement.importClause?.isTypeOnly) return '';
  const names = named.elements.map((each) =>
    each.propertyName === undefined ? each.name.text : `${each.propertyName.text}: ${each.name.text}`,
  );
  return `const { ${names.join(', ')} } = await load(${statement.moduleSpecifier.getText()});`;
}

/**
 * Whether a result is what the example says. A decimal figure holds to the digits written; every
 * other number to 1e-9 of itself, so that an example need not spell out binary fractions.
 */
export function agrees(got: unknown, want: unknown, written = ''): boolean {
  if (typeof got === 'number' && typeof want === 'number') {
    const decimals = /^-?\d+\.(\d+)$/.exec(written)?.[1]?.length;
    if (decimals !== undefined) return Math.abs(got - want) <= 0.5 * 10 ** -decimals * (1 + 1e-9);
    return got === want || Math.abs(got - want) <= 1e-9 * Math.abs(want);
  }
  if (typeof got !== 'object' || typeof want !== 'object' || got === null || want === null)
    return got === want;
  if (Array.isArray(got) !== Array.isArray(want)) return false;
  const [left, right] = [new Map(Object.entries(got)), new Map(Object.entries(want))];
  return (
    left.size === right.size &&
    [...right].every(([key, value]) => left.has(key) && agrees(left.get(key), value))
  );
}
