import type { Fault } from './fault.ts';
import type { HouseMap } from './house-map.ts';
import { importsOf, isTest, packageOf, roomOf, type SourceFile, targetOf } from './source-file.ts';

/** A room imports only rooms and packages that its row in ARCHITECTURE.md names. */
export function roomFaults(file: SourceFile, map: HouseMap): readonly Fault[] {
  const name = roomOf(file.path);
  if (name === null) return [];
  const room = map.rooms.find((each) => each.name === name);
  if (room === undefined)
    return [{ path: file.path, line: 1, says: `the room ${name} is not in the table of ARCHITECTURE.md` }];
  const test = map.rooms.find((each) => each.name === 'test');
  const packages = isTest(file.path) ? [...room.packages, ...(test?.packages ?? [])] : room.packages;
  const rooms = isTest(file.path) ? [...room.mayImport, 'test'] : room.mayImport;
  return importsOf(file).flatMap(({ specifier, line }): readonly Fault[] => {
    const fault = (says: string): readonly Fault[] => [{ path: file.path, line, says }];
    const target = targetOf(file.path, specifier);
    if (target === null) {
      if (specifier.startsWith('node:')) {
        const allowed = !room.isPure || isTest(file.path);
        return allowed ? [] : fault(`${name} is pure and may not import ${specifier}`);
      }
      const from = packageOf(specifier);
      return packages.includes(from) ? [] : fault(`${name} may not use the npm package ${from}`);
    }
    const other = roomOf(target);
    if (other === null)
      return isTest(file.path) ? [] : fault(`${name} may not import ${target}, which is no room`);
    if (other === name || rooms.includes(other)) {
      const testIntoRoom = isTest(target) && !isTest(file.path);
      return testIntoRoom ? fault(`${target} is a test and may not be imported here`) : [];
    }
    return fault(`${name} may not import the room ${other} (${specifier})`);
  });
}

/** The compiler is told the same directions: references in a room's tsconfig are those of its row. */
export function referenceFaults(room: string, tsconfig: string, map: HouseMap): readonly Fault[] {
  const path = `src/${room}/tsconfig.json`;
  const config: { references?: readonly { path: string }[] } = JSON.parse(tsconfig);
  const references = (config.references ?? []).map((each) => each.path.replace(/^\.\.\//, '')).sort();
  const allowed = [...(map.rooms.find((each) => each.name === room)?.mayImport ?? [])].sort();
  return references.join() === allowed.join()
    ? []
    : [
        {
          path,
          line: 1,
          says: `references ${references.join(', ') || 'none'}, but the table of ARCHITECTURE.md says ${allowed.join(', ') || 'none'}`,
        },
      ];
}
