/** What ARCHITECTURE.md promises: the rooms, and the modules of core in order. */
export interface HouseMap {
  readonly rooms: readonly Room[];
  readonly modules: readonly CoreModule[];
}

export interface Room {
  readonly name: string;
  readonly mayImport: readonly string[];
  readonly packages: readonly string[];
  readonly isPure: boolean;
}

export interface CoreModule {
  readonly name: string;
  /** Listed for its place in the order; has no folder yet. */
  readonly isToCome: boolean;
}

const HEAD = ['room', 'may import', 'npm packages', 'promise'];

/** Reads both tables out of the text of ARCHITECTURE.md; throws where one is missing. */
export function readHouseMap(markdown: string): HouseMap {
  const lines = markdown.split('\n');
  const head = lines.findIndex((line) => cellsOf(line).join('|') === HEAD.join('|'));
  if (head < 0) throw new Error(`ARCHITECTURE.md has no table with the columns ${HEAD.join(', ')}`);
  const rooms: Room[] = [];
  for (const line of lines.slice(head + 2)) {
    const cells = cellsOf(line);
    if (cells.length !== HEAD.length) break;
    const [name = '', mayImport = '', packages = '', promise = ''] = cells;
    rooms.push({
      name: namesIn(name)[0] ?? '',
      mayImport: namesIn(mayImport),
      packages: namesIn(packages),
      isPure: promise.startsWith('pure'),
    });
  }
  const modules = lines.flatMap((line): CoreModule[] => {
    const found = /^\d+\. `([a-z-]+)` – (.*)$/.exec(line);
    return found === null ? [] : [{ name: found[1] ?? '', isToCome: line.endsWith('(to come)') }];
  });
  if (modules.length === 0) throw new Error('ARCHITECTURE.md has no numbered list of the modules of core');
  return { rooms, modules };
}

const cellsOf = (line: string): readonly string[] =>
  line.startsWith('|')
    ? line
        .split('|')
        .slice(1, -1)
        .map((cell) => cell.trim())
    : [];

const namesIn = (cell: string): readonly string[] =>
  [...cell.matchAll(/`([^`]+)`/g)].map((found) => found[1] ?? '');
