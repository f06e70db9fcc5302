import { posix } from 'node:path';
import type { Fault } from './fault.ts';
import type { SourceFile } from './source-file.ts';

const EXACT = /^\d+\.\d+\.\d+(-[0-9a-z.-]+)?$/;

interface Manifest {
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
}

/** Every package has one exact version, and its reason stands in the record of dependencies. */
export function packageFaults(manifest: string, reasons: string): readonly Fault[] {
  const { dependencies = {}, devDependencies = {} }: Manifest = JSON.parse(manifest);
  return Object.entries({ ...dependencies, ...devDependencies }).flatMap(([name, version]): Fault[] => {
    const fault = (says: string): Fault => ({ path: 'package.json', line: 1, says });
    return [
      ...(EXACT.test(version) ? [] : [fault(`${name} is ${version}; a version is exact`)]),
      ...(reasons.includes(`\`${name}\``)
        ? []
        : [fault(`${name} has no reason in the record of dependencies`)]),
    ];
  });
}

/** Each decision has a number of its own, and the list in their folder names each of them once. */
export function decisionFaults(names: readonly string[], list: string): readonly Fault[] {
  const path = 'docs/decisions/README.md';
  const fault = (says: string): Fault => ({ path, line: 1, says });
  const linked = [...list.matchAll(/\]\(([^)]+\.md)\)/g)].map((found) => found[1] ?? '');
  return [
    ...names.flatMap((name) => {
      const number = /^\d{4}-[a-z0-9-]+\.md$/.test(name) ? name.slice(0, 5) : null;
      const isAlone = number !== null && names.filter((each) => each.startsWith(number)).length === 1;
      return isAlone ? [] : [fault(`${name} has no number of its own`)];
    }),
    ...names.flatMap((name) => {
      const times = linked.filter((each) => each === name).length;
      return times === 1 ? [] : [fault(`${name} is listed ${times} times`)];
    }),
    ...linked.filter((each) => !names.includes(each)).map((each) => fault(`${each} is listed and not there`)),
  ];
}

/** A relative link in a document leads to something in the project. */
export function linkFaults(file: SourceFile, paths: ReadonlySet<string>): readonly Fault[] {
  const lines = file.text.split('\n');
  return lines.flatMap((line, index) =>
    [...line.matchAll(/\]\(([^)#\s]+)(#[^)]*)?\)/g)].flatMap((found): Fault[] => {
      const link = found[1] ?? '';
      if (/^[a-z]+:/.test(link)) return [];
      const target = posix.join(posix.dirname(file.path), link).replace(/\/$/, '');
      const isThere = paths.has(target) || [...paths].some((path) => path.startsWith(`${target}/`));
      return isThere ? [] : [{ path: file.path, line: index + 1, says: `${link} leads nowhere` }];
    }),
  );
}
