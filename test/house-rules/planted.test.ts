import { describe, expect, test } from 'vitest';
import { circleFaults } from './circles.ts';
import { listedModuleFaults, moduleFaults } from './core-modules.ts';
import type { Fault } from './fault.ts';
import { defaultExportFaults, lengthFaults, nameFaults } from './file-shape.ts';
import { testFaults } from './honest-tests.ts';
import { readHouseMap } from './house-map.ts';
import { purityFaults } from './purity.ts';
import { decisionFaults, linkFaults, packageFaults } from './records.ts';
import { referenceFaults, roomFaults } from './rooms.ts';

const map = readHouseMap(`
| room | may import | npm packages | promise |
| --- | --- | --- | --- |
| \`core\` | – | \`yaml\` | pure: everything comes in |
| \`documents\` | \`core\` | – | pure: text out |
| \`cli\` | \`core\`, \`documents\` | – | owns the terminal |
| \`test\` | \`core\`, \`documents\`, \`cli\` | \`vitest\` | checks |

1. \`quantities\` – numbers
2. \`statics\` – balance
3. \`machines\` – a folder each
4. \`rotation\` – timetable (to come)
`);

const file = (path: string, text: string) => ({ path, text });
const told = (faults: readonly Fault[]): readonly string[] => faults.map((fault) => fault.says);

describe('a planted breach of the rooms is caught', () => {
  const faults = (path: string, text: string) => told(roomFaults(file(path, text), map));

  test.each([
    ['a value import', "import { a } from '../cli/main.ts';"],
    ['a type import', "import type { A } from '../cli/main.ts';"],
    ['a re-export', "export { a } from '../cli/main.ts';"],
    ['a loaded module', "export const a = () => import('../cli/main.ts');"],
    ['a type written as an import', "export type A = import('../cli/main.ts').A;"],
  ])('documents reach for cli through %s', (_how, text) => {
    expect(faults('src/documents/page.ts', text)).toEqual([
      'documents may not import the room cli (../cli/main.ts)',
    ]);
  });

  test('core may not import the room that paints it', () => {
    expect(faults('src/core/key.ts', "import { p } from '../documents/page.ts';")).toHaveLength(1);
    expect(faults('src/documents/page.ts', "import { k } from '../core/key.ts';")).toEqual([]);
  });

  test('a package is used only where its row names it', () => {
    expect(faults('src/core/key.ts', "import { parse } from 'yaml';")).toEqual([]);
    expect(faults('src/documents/page.ts', "import { parse } from 'yaml/util';")).toEqual([
      'documents may not use the npm package yaml',
    ]);
    expect(faults('src/core/key.ts', "import { x } from '@scope/thing/deep';")).toEqual([
      'core may not use the npm package @scope/thing',
    ]);
  });

  test('a pure room has no Node, its tests do', () => {
    const text = "import { readFileSync } from 'node:fs';";
    expect(faults('src/core/key.ts', text)).toEqual(['core is pure and may not import node:fs']);
    expect(faults('src/core/key.test.ts', text)).toEqual([]);
    expect(faults('src/cli/main.ts', text)).toEqual([]);
  });

  test('a test keeps the directions of its room and lends nothing to the code', () => {
    expect(faults('src/core/key.test.ts', "import { p } from '../documents/page.ts';")).toHaveLength(1);
    expect(faults('src/core/key.test.ts', "import { expect } from 'vitest';")).toEqual([]);
    expect(faults('src/core/key.ts', "import { expect } from 'vitest';")).toHaveLength(1);
    expect(faults('src/core/key.ts', "import { x } from './lock.test.ts';")).toHaveLength(1);
    expect(faults('src/core/key.ts', "import { x } from '../../test/not-run.ts';")).toHaveLength(1);
  });

  test('a room outside the table is no room', () => {
    expect(faults('src/attic/box.ts', '')).toEqual(['the room attic is not in the table of ARCHITECTURE.md']);
  });

  test('a reference that the table does not name is caught, and one that is missing', () => {
    const config = (...paths: string[]) => JSON.stringify({ references: paths.map((path) => ({ path })) });
    expect(referenceFaults('documents', config('../core'), map)).toEqual([]);
    expect(referenceFaults('documents', config('../core', '../cli'), map)).toHaveLength(1);
    expect(referenceFaults('cli', config('../core'), map)).toHaveLength(1);
  });
});

describe('a planted breach of the order in core is caught', () => {
  const faults = (path: string, text: string) => told(moduleFaults(file(path, text), map));

  test('a module may not import one below it', () => {
    expect(faults('src/core/statics/a.ts', "import { m } from '../machines/machine.ts';")).toEqual([
      'statics stands above machines and may not import it',
    ]);
    expect(faults('src/core/machines/machine.ts', "import { b } from '../statics/a.ts';")).toEqual([]);
    expect(faults('src/core/statics/a.test.ts', "import { m } from '../machines/machine.ts';")).toEqual([]);
  });

  test('a module may not import a story file', () => {
    expect(faults('src/core/statics/a.ts', "import { p } from '../prepare.ts';")).toHaveLength(1);
    expect(faults('src/core/prepare.ts', "import { b } from './statics/a.ts';")).toEqual([]);
  });

  test('a machine may know the contract and no other machine', () => {
    expect(faults('src/core/machines/lever/a.ts', "import type { M } from '../machine.ts';")).toEqual([]);
    expect(faults('src/core/machines/lever/a.ts', "import { w } from '../wedge/wedge.ts';")).toEqual([
      'the machine lever may not know the machine wedge',
    ]);
    expect(faults('src/core/machines/compound/a.ts', "import { w } from '../wedge/wedge.ts';")).toHaveLength(
      1,
    );
  });

  test('an unlisted module, a lost one and one that came unannounced are told', () => {
    expect(listedModuleFaults(['quantities', 'statics', 'machines'], map)).toEqual([]);
    expect(listedModuleFaults(['quantities', 'statics', 'machines', 'attic'], map)).toHaveLength(1);
    expect(listedModuleFaults(['quantities', 'statics'], map)).toHaveLength(1);
    expect(listedModuleFaults(['quantities', 'statics', 'machines', 'rotation'], map)).toHaveLength(1);
  });

  test('a ring of files is told once, with its way round', () => {
    const ring = [
      file('src/core/a.ts', "import { b } from './b.ts';"),
      file('src/core/b.ts', "import type { C } from './c.ts';"),
      file('src/core/c.ts', "import { a } from './a.ts';"),
    ];
    expect(told(circleFaults(ring))).toEqual([
      'imports itself in a ring: src/core/a.ts -> src/core/b.ts -> src/core/c.ts -> src/core/a.ts',
    ]);
    expect(circleFaults(ring.slice(0, 2))).toEqual([]);
  });
});

describe('a planted impurity is caught', () => {
  const faults = (text: string) => told(purityFaults(file('src/core/a.ts', text)));

  test.each([
    ['Date', 'export const now = Date.now();'],
    ['Date', 'export const now = new Date(0);'],
    ['Math.random', 'export const chance = Math.random();'],
    ['Math.random', 'const { random } = Math; export const chance = random();'],
    ['Math.random', "export const chance = Math['random']();"],
    ['Intl', "export const f = new Intl.NumberFormat('en');"],
    ['process', 'export const home = process.env.HOME;'],
    ['fetch', "export const page = fetch('there');"],
    ['toLocaleString', 'export const text = (1).toLocaleString();'],
    ['localeCompare', "export const order = 'a'.localeCompare('b');"],
    ['globalThis', 'export const all = { ...globalThis };'],
    ['console', "console.log('here');"],
  ])('%s', (word, text) => {
    expect(faults(text)).toEqual([`a pure room may not use ${word}`]);
  });

  test('words in comments and texts, keys and names of our own are no impurity', () => {
    const text = [
      '// Date.now() would be a clock',
      "export const says = 'new Date() and fetch';",
      'export const way = { process: 1 }.process;',
      'export const near = (fetch: number) => Math.sqrt(fetch);',
    ].join('\n');
    expect(faults(text)).toEqual([]);
  });
});

describe('a planted fault in the shape of a file is caught', () => {
  test('300 lines are the most, except for sentences', () => {
    const long = '// line\n'.repeat(301);
    expect(told(lengthFaults(file('src/core/a.ts', long)))).toEqual(['has 301 lines; 300 is the most']);
    expect(lengthFaults(file('src/core/a.ts', '// line\n'.repeat(300)))).toEqual([]);
    expect(lengthFaults(file('src/core/machines/lever/sentences.en.ts', long))).toEqual([]);
    expect(lengthFaults(file('src/documents/sentences/en/scale.ts', long))).toEqual([]);
  });

  test.each([
    'src/core/utils/round.ts',
    'src/core/helpers.ts',
    'src/core/statics/types.ts',
    'src/cli/common/a.ts',
    'src/cli/shared.ts',
    'src/cli/misc.test.ts',
    'src/core/WorkAccount.ts',
    'src/core/work_account.ts',
    'src/core/balance.js',
    'src/documents/pages/sheet.css',
    'src/core/balance.d.ts',
  ])('the name %s is refused', (path) => {
    expect(nameFaults(path)).toHaveLength(1);
  });

  test('plain names are accepted', () => {
    const paths = ['src/core/work-account.ts', 'src/core/a/sentences.en.ts', 'src/cli/tsconfig.json'];
    const pages = ['src/web/group.html', 'src/web/group/pad.tsx', 'src/web/look/look.css'];
    const data = ['test/diagnostics/slips-of-the-pen.kit.golden.txt', 'test/witness/js-quantities.d.ts'];
    expect([...paths, ...pages, ...data].flatMap(nameFaults)).toEqual([]);
  });

  test('a default export is refused in each of its spellings', () => {
    const faults = (text: string) => defaultExportFaults(file('src/core/a.ts', text));
    expect(faults('export default 1;')).toHaveLength(1);
    expect(faults('export default function a() {}')).toHaveLength(1);
    expect(faults('const a = 1; export { a as default };')).toHaveLength(1);
    expect(faults('export function f(n: number) { switch (n) { default: return 1; } }')).toEqual([]);
  });
});

describe('a planted dishonest test is caught', () => {
  const honest = "test('a lever lifts its load', () => { expect(1).toBe(1); });\n";
  const faults = (text: string) => told(testFaults(file('src/core/a.test.ts', honest + text)));
  // Spelt in two parts, so that a search for silenced tests doesn't end here.
  const silenced = (runner: string, how: string) =>
    `${runner}.${how}('a lever lifts again', () => { expect(1).toBe(1); });`;

  test('an honest test passes', () => {
    expect(faults('')).toEqual([]);
  });

  test.each(['skip', 'only', 'todo', 'skipIf(true)', 'runIf(false)', 'fails', 'each([1]).only'])(
    'a test with .%s is refused',
    (how) => {
      expect(faults(silenced('test', how))).toHaveLength(1);
      expect(faults(silenced('describe', how))).toHaveLength(1);
    },
  );

  test('a test left out from within is refused', () => {
    expect(faults("test('a lever lifts again', (context) => { context.skip(); });")).toHaveLength(1);
  });

  test('a test that is crossed out is refused', () => {
    expect(faults(`x${'it'}('a lever lifts again', () => { expect(1).toBe(1); });`)).toHaveLength(1);
  });

  test('an empty test, a file without tests and one without a claim are refused', () => {
    expect(faults("test('a lever lifts again', () => {});")).toEqual(['the test is empty']);
    expect(told(testFaults(file('a.test.ts', '')))).toEqual(['holds no test', 'asserts nothing']);
    expect(
      told(testFaults(file('a.test.ts', "test('a lever lifts', () => { lift(); }); // expect(1)"))),
    ).toEqual(['asserts nothing']);
  });

  test('tests made by a module of test/ count, and one that makes none does not', () => {
    const caller = file(
      'test/published/screws.test.ts',
      "import { runAll } from './topic.ts';\nrunAll('screws');",
    );
    const maker = (text: string) => (path: string) =>
      path === 'test/published/topic.ts' ? file(path, text) : undefined;
    expect(testFaults(caller, maker(`export const runAll = () => { ${honest} };`))).toEqual([]);
    expect(testFaults(caller, maker('export const runAll = () => 1;'))).toHaveLength(2);
  });

  test('a title that is no sentence is refused', () => {
    expect(faults("test('lever', () => { expect(1).toBe(1); });")).toEqual(['"lever" is no sentence']);
  });
});

describe('a planted fault in the records is caught', () => {
  test('a version that is not exact, and a package without a reason', () => {
    const manifest = (version: string) => JSON.stringify({ devDependencies: { yaml: version } });
    expect(packageFaults(manifest('2.9.1'), 'reasons: `yaml` reads files')).toEqual([]);
    for (const version of ['^2.9.1', '~2.9.1', '2', '2.x', '*', 'latest', '>=2.9.1'])
      expect(packageFaults(manifest(version), '`yaml`'), version).toHaveLength(1);
    expect(packageFaults(manifest('2.9.1'), 'nothing')).toHaveLength(1);
  });

  test('a decision that is not listed, listed twice, lost or out of number', () => {
    const names = ['0001-rooms.md', '0002-packages.md'];
    const list = '[rooms](0001-rooms.md) [packages](0002-packages.md)';
    expect(decisionFaults(names, list)).toEqual([]);
    expect(decisionFaults(names, '[rooms](0001-rooms.md)')).toHaveLength(1);
    expect(decisionFaults(names, `${list} [again](0001-rooms.md)`)).toHaveLength(1);
    expect(decisionFaults(names, `${list} [gone](0003-gone.md)`)).toHaveLength(1);
    const twice = ['0001-rooms.md', '0001-walls.md'];
    expect(decisionFaults(twice, '[a](0001-rooms.md) [b](0001-walls.md)')).toHaveLength(2);
    expect(decisionFaults(['rooms.md'], '[a](rooms.md)')).toHaveLength(1);
  });

  test('a link that leads nowhere', () => {
    const paths = new Set(['docs/a.md', 'docs/decisions/0001-rooms.md', 'LICENSE']);
    const faults = (text: string) => told(linkFaults(file('docs/a.md', text), paths));
    expect(faults('[up](../LICENSE) [down](decisions/) [out](https://example.org) [here](#top)')).toEqual([]);
    expect(faults('[lost](decisions/0002-lost.md)')).toEqual(['decisions/0002-lost.md leads nowhere']);
  });

  test('a map without its table or its list is refused', () => {
    expect(() => readHouseMap('# Architecture')).toThrow('no table');
    expect(() => readHouseMap('| room | may import | npm packages | promise |\n| - | - | - | - |')).toThrow(
      'no numbered list',
    );
  });
});
