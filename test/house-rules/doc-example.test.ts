import { posix } from 'node:path';
import { describe, expect, test } from 'vitest';
import * as brands from '../../src/core/quantities/brands.ts';
import { agrees, type DocExample, docExamplesOf, exampleFaults, runnable } from './doc-example.ts';
import { pathsUnder, read, root } from './project-tree.ts';

type Run = (
  known: object,
  load: (specifier: string) => Promise<object>,
  claim: (index: number, got: unknown, want: unknown) => void,
) => Promise<void>;

/** Runs an example against its module and the unit makers; gives back a line for each claim that isn't true. */
async function untruths(example: DocExample, own: object): Promise<readonly string[]> {
  const { body, claims } = runnable(example);
  const found: string[] = [];
  const known = { ...brands, ...own };
  const names = Object.keys(known).join(', ');
  const build = new Function(
    `return async (known, load, claim) => { const { ${names} } = known; {\n${body}\n} }`,
  );
  const run: Run = build();
  let made = 0;
  await run(
    known,
    (specifier) => import(posix.join(root, posix.dirname(example.path), specifier)),
    (index, got, want) => {
      made += 1;
      const claim = claims[index];
      if (claim !== undefined && !agrees(got, want, claim.written))
        found.push(`${claim.expression} is ${JSON.stringify(got)}, not ${claim.written}`);
    },
  );
  if (made !== claims.length) found.push(`${made} of ${claims.length} claims were reached`);
  return found;
}

const example = (code: string): DocExample => ({ path: 'src/core/planted.ts', line: 1, code });

describe('examples in doc comments', () => {
  const examples = pathsUnder('src')
    .filter((path) => path.endsWith('.ts') && !path.endsWith('.test.ts'))
    .flatMap((path) => docExamplesOf(read(path)));

  test('there are examples, and each shows a result', () => {
    expect(examples.length).toBeGreaterThan(0);
    expect(examples.flatMap(exampleFaults)).toEqual([]);
  });

  for (const each of examples)
    test(`the example at ${each.path}:${each.line} is true`, async () => {
      expect(await untruths(each, await import(posix.join(root, each.path)))).toEqual([]);
    });
});

describe('the reader of examples', () => {
  test('finds every example of a comment up to the next tag', () => {
    const text =
      '/**\n * Double.\n *\n * @example double(2) // => 4\n * @example\n * const x = 3;\n * double(x) // => 6\n * @see half\n */\n';
    const found = docExamplesOf({ path: 'src/core/double.ts', text });
    expect(found.map((each) => each.code)).toEqual(['double(2) // => 4', 'const x = 3;\ndouble(x) // => 6']);
    expect(found.map((each) => each.line)).toEqual([4, 5]);
  });

  test('catches a result that is not true', async () => {
    const own = { double: (x: number) => 2 * x };
    expect(await untruths(example('double(2) // => 5'), own)).toEqual(['double(2) is 4, not 5']);
    expect(await untruths(example('double(2) // => 4'), own)).toEqual([]);
  });

  test('strips types, keeps setup lines and checks the value of a constant', async () => {
    const own = { double: (x: number) => 2 * x };
    const code = 'const x: number = 1.5;\nconst y = double(x as number); // => 3\n({ y }) // => { y: 3 }';
    expect(await untruths(example(code), own)).toEqual([]);
    expect(await untruths(example(code.replace('=> 3\n', '=> 4\n')), own)).toEqual(['y is 3, not 4']);
  });

  test('catches an example without a result and a result after nothing', () => {
    expect(exampleFaults(example('double(2)'))).toHaveLength(1);
    expect(exampleFaults(example('if (true) {} // => 4'))).toHaveLength(1);
    expect(exampleFaults(example('double(2) // => 4'))).toEqual([]);
  });

  test('reads a decimal figure to its digits and every other number closely', () => {
    expect(agrees(2.3094, 2.309, '2.309')).toBe(true);
    expect(agrees(2.3096, 2.309, '2.309')).toBe(false);
    expect(agrees(3.01, 3, '3')).toBe(false);
    expect(agrees(0.1 + 0.2, 0.3)).toBe(true);
    expect(agrees({ a: [1, 2] }, { a: [1, 3] })).toBe(false);
    expect(agrees({ a: 1, b: 2 }, { a: 1 })).toBe(false);
    expect(agrees(Number.NaN, 1, '1')).toBe(false);
  });
});
