import { describe, expect, test } from 'vitest';
import { circleFaults } from './circles.ts';
import { listedModuleFaults, moduleFaults } from './core-modules.ts';
import { type Fault, printFault } from './fault.ts';
import { defaultExportFaults, lengthFaults, nameFaults } from './file-shape.ts';
import { silenceFaults, testFaults } from './honest-tests.ts';
import { readHouseMap } from './house-map.ts';
import { pathsUnder, read } from './project-tree.ts';
import { purityFaults } from './purity.ts';
import { decisionFaults, linkFaults, packageFaults } from './records.ts';
import { referenceFaults, roomFaults } from './rooms.ts';
import { isTest, roomOf } from './source-file.ts';

const map = readHouseMap(read('ARCHITECTURE.md').text);
const sources = pathsUnder('src');
const checks = [...pathsUnder('test'), ...pathsUnder('bench')];
const code = [...sources, ...checks, ...pathsUnder('scripts')]
  .filter((path) => /\.(tsx?|mjs)$/.test(path))
  .map(read);
const folders = (under: string): readonly string[] => [
  ...new Set(
    sources.flatMap((path) => {
      const [folder, ...rest] = path.startsWith(`${under}/`) ? path.slice(under.length + 1).split('/') : [];
      return folder !== undefined && rest.length > 0 ? [folder] : [];
    }),
  ),
];

const expectNone = (faults: readonly Fault[]): void => expect(faults.map(printFault)).toEqual([]);

describe('the rooms', () => {
  test('the table of ARCHITECTURE.md names exactly the rooms that exist', () => {
    expect(map.rooms.map((room) => room.name).sort()).toEqual([...folders('src'), 'test'].sort());
  });

  test('each room imports only the rooms and packages of its row', () => {
    expectNone(code.flatMap((file) => roomFaults(file, map)));
  });

  test('the compiler is told the same directions', () => {
    expectNone(
      folders('src').flatMap((room) => referenceFaults(room, read(`src/${room}/tsconfig.json`).text, map)),
    );
  });

  test('the pure rooms have no clock, chance, disk, network, screen or locale', () => {
    const pure = map.rooms.filter((room) => room.isPure).map((room) => room.name);
    expect(pure).toEqual(['core', 'documents', 'store']);
    expectNone(
      code
        .filter((file) => pure.includes(roomOf(file.path) ?? '') && !isTest(file.path))
        .flatMap(purityFaults),
    );
  });
});

describe('the modules of core', () => {
  test('the list of ARCHITECTURE.md names exactly the modules that exist or are to come', () => {
    expectNone(listedModuleFaults(folders('src/core'), map));
  });

  test('each module imports only modules above it, and no machine knows another', () => {
    expectNone(code.flatMap((file) => moduleFaults(file, map)));
  });

  test('no files import each other in a ring', () => {
    expectNone(circleFaults(code));
  });
});

describe('the files', () => {
  test('no file of code is longer than 300 lines', () => {
    expectNone(code.flatMap(lengthFaults));
  });

  test('every file has a name that says what it holds', () => {
    const fixed = checks.filter((path) => path.startsWith('test/reference/'));
    expectNone([...sources, ...checks.filter((path) => !fixed.includes(path))].flatMap(nameFaults));
  });

  test('every export has a name', () => {
    expectNone(code.flatMap(defaultExportFaults));
  });

  test('every test runs, asserts and has a sentence for a title', () => {
    const makers = new Map(code.filter((file) => isTest(file.path)).map((file) => [file.path, file]));
    const tests = code.filter((file) => file.path.endsWith('.test.ts'));
    expectNone(tests.flatMap((file) => testFaults(file, (path) => makers.get(path))));
    const others = [...makers.values()].filter((file) => !tests.includes(file));
    expectNone(others.filter((file) => file.path !== 'test/not-run.ts').flatMap(silenceFaults));
  });
});

describe('the records', () => {
  test('every package has one exact version and a written reason', () => {
    const reasons = read('docs/decisions/0002-packages.md').text;
    expectNone(packageFaults(read('package.json').text, reasons));
  });

  test('every decision is numbered and listed', () => {
    const records = pathsUnder('docs/decisions').map((path) => path.replace('docs/decisions/', ''));
    const names = records.filter((name) => name !== 'README.md');
    expectNone(decisionFaults(names, read('docs/decisions/README.md').text));
  });

  test('every link between documents leads somewhere', () => {
    const paths = new Set(pathsUnder('.'));
    const documents = [...paths].filter((path) => path.endsWith('.md')).map(read);
    expectNone(documents.flatMap((file) => linkFaults(file, paths)));
  });
});
