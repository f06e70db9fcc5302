import type { Fault } from './fault.ts';
import type { HouseMap } from './house-map.ts';
import { importsOf, isTest, type SourceFile, targetOf } from './source-file.ts';

/** `statics` for `src/core/statics/...`; `null` for the story files and for everything outside core. */
export const moduleOf = (path: string): string | null => /^src\/core\/([^/]+)\//.exec(path)?.[1] ?? null;

const machineOf = (path: string): string | null => /^src\/core\/machines\/([^/]+)\//.exec(path)?.[1] ?? null;

/**
 * In core a module imports only modules above it in the list, never a story file, and no machine
 * folder knows another. A test may look at any module of core.
 */
export function moduleFaults(file: SourceFile, map: HouseMap): readonly Fault[] {
  const own = moduleOf(file.path);
  if (own === null || isTest(file.path)) return [];
  const place = (name: string) => map.modules.findIndex((each) => each.name === name);
  if (place(own) < 0)
    return [{ path: file.path, line: 1, says: `the module ${own} is not in the list of ARCHITECTURE.md` }];
  return importsOf(file).flatMap(({ specifier, line }): readonly Fault[] => {
    const fault = (says: string): readonly Fault[] => [{ path: file.path, line, says }];
    const target = targetOf(file.path, specifier);
    if (target === null || !target.startsWith('src/core/')) return [];
    const other = moduleOf(target);
    if (other === null) return fault(`${own} may not import the story file ${target}`);
    if (other !== own && place(other) > place(own))
      return fault(`${own} stands above ${other} and may not import it`);
    const machine = machineOf(file.path);
    const otherMachine = machineOf(target);
    if (machine !== null && otherMachine !== null && machine !== otherMachine)
      return fault(`the machine ${machine} may not know the machine ${otherMachine}`);
    return [];
  });
}

/** Every module with a folder is listed, and a listed one without a folder says "(to come)". */
export function listedModuleFaults(folders: readonly string[], map: HouseMap): readonly Fault[] {
  const fault = (says: string): Fault => ({ path: 'ARCHITECTURE.md', line: 1, says });
  const unlisted = folders.filter((folder) => map.modules.every((each) => each.name !== folder));
  const gone = map.modules.filter((each) => !each.isToCome && !folders.includes(each.name));
  const come = map.modules.filter((each) => each.isToCome && folders.includes(each.name));
  return [
    ...unlisted.map((folder) => fault(`the module ${folder} is not in the list`)),
    ...gone.map((each) => fault(`the module ${each.name} has no folder and does not say "(to come)"`)),
    ...come.map((each) => fault(`the module ${each.name} has come but still says "(to come)"`)),
  ];
}
