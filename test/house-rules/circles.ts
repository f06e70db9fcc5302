import type { Fault } from './fault.ts';
import { importsOf, type SourceFile, targetOf } from './source-file.ts';

/** Files that import each other in a ring, types included; each ring is told once. */
export function circleFaults(files: readonly SourceFile[]): readonly Fault[] {
  const paths = new Set(files.map((file) => file.path));
  const next = new Map(
    files.map((file) => [
      file.path,
      importsOf(file).flatMap(({ specifier }) => {
        const target = targetOf(file.path, specifier);
        return target !== null && paths.has(target) ? [target] : [];
      }),
    ]),
  );
  const done = new Set<string>();
  const faults: Fault[] = [];
  const walk = (path: string, trail: readonly string[]): void => {
    const at = trail.indexOf(path);
    if (at >= 0) {
      const ring = [...trail.slice(at), path];
      faults.push({ path, line: 1, says: `imports itself in a ring: ${ring.join(' -> ')}` });
      return;
    }
    if (done.has(path)) return;
    for (const target of next.get(path) ?? []) walk(target, [...trail, path]);
    done.add(path);
  };
  for (const file of files) walk(file.path, []);
  return faults;
}
