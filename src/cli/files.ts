import { appendFileSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, dirname, isAbsolute, join, resolve } from 'node:path';
import type { SourceText } from '../core/files/source-text.ts';
import { writtenUnder } from '../core/files/written-under.ts';
import type { PreparationFiles } from '../core/prepare.ts';
import { FileFault, UsageFault } from './command.ts';
import { decodeText } from './decode-text.ts';

type Kind = 'kit' | 'activity' | 'visit';

/** A text file under the name that the user gave it. */
export function readText(folder: string, name: string): SourceText {
  try {
    return { name, text: readFileSync(resolve(folder, name), 'utf8') };
  } catch (fault) {
    throw new FileFault(`can't read ${name}: ${reason(fault)}`);
  }
}

/** A table in text, whichever way a spreadsheet saved it. */
export function readTable(folder: string, name: string): SourceText {
  try {
    return { name, text: decodeText(readFileSync(resolve(folder, name))) };
  } catch (fault) {
    throw new FileFault(`can't read ${name}: ${reason(fault)}`);
  }
}

/** Writes a new file; an existing one is left alone unless it is ours to write again. */
export function writeText(
  folder: string,
  name: string,
  text: string | Uint8Array,
  ifThere: 'replace' | 'refuse',
): void {
  const path = resolve(folder, name);
  try {
    makeFolder(dirname(path));
    writeFileSync(path, text, { flag: ifThere === 'refuse' ? 'wx' : 'w' });
  } catch (fault) {
    throw new FileFault(`can't write ${name}: ${reason(fault)}`);
  }
}

function makeFolder(path: string): void {
  try {
    mkdirSync(path, { recursive: true });
  } catch (fault) {
    if ((fault as NodeJS.ErrnoException).code !== 'EEXIST') throw fault;
    throw new Error(`${basename(path)} is a file and no folder`);
  }
}

/**
 * The three files from what stands on the command line: a visit file names the other two; a kit and an
 * activity do without a visit. With nothing named, the one visit file in this folder is taken.
 */
export function preparationFiles(folder: string, names: readonly string[]): PreparationFiles {
  const files = (names.length === 0 ? onlyVisit(folder) : names).map((name) => readText(folder, name));
  const byKind = new Map<Kind, SourceText>();
  for (const file of files) {
    const kind = kindOf(file);
    if (kind === null)
      throw new UsageFault(
        `${file.name} is no kit, activity or visit file: its first line must read, for instance, "handspike: kit 1"`,
      );
    if (byKind.has(kind))
      throw new UsageFault(`two ${kind} files: ${byKind.get(kind)?.name} and ${file.name}`);
    byKind.set(kind, file);
  }
  const visit = byKind.get('visit') ?? null;
  const kit = byKind.get('kit') ?? named(folder, visit, 'kit');
  const book = bookOf(kit);
  return {
    kit,
    activity: byKind.get('activity') ?? named(folder, visit, 'activity'),
    visit,
    ...(book === null ? {} : { bench: { name: book, text: textIfThere(folder, book) } }),
  };
}

/** The bench book that a kit names, beside the kit file; `null` where it names none. */
export function bookOf(kit: SourceText): string | null {
  const name = writtenUnder(kit, 'bench book');
  return name === undefined || name === '' ? null : beside(kit.name, name);
}

/** A book that nobody has begun is an empty one. */
function textIfThere(folder: string, name: string): string {
  return existsSync(resolve(folder, name)) ? readText(folder, name).text : '';
}

/** Puts a line behind a file that is only ever added to; begins it where it isn't there. */
export function appendText(folder: string, name: string, text: string): void {
  try {
    appendFileSync(resolve(folder, name), text);
  } catch (fault) {
    throw new FileFault(`can't write ${name}: ${reason(fault)}`);
  }
}

/** The file that a visit names, beside the visit file. */
function named(folder: string, visit: SourceText | null, kind: 'kit' | 'activity'): SourceText {
  if (visit === null)
    throw new UsageFault(`no ${kind} file: name a visit file, or a kit and an activity file together`);
  const name = writtenUnder(visit, kind);
  if (name === undefined || name === '')
    throw new UsageFault(`${visit.name} does not say which ${kind} it is with: add a line "${kind}: FILE"`);
  return readText(folder, beside(visit.name, name));
}

function onlyVisit(folder: string): readonly string[] {
  const visits = readdirSync(folder).filter((name) => /\.visit\.ya?ml$/.test(name));
  if (visits.length === 1) return visits;
  throw new UsageFault(
    visits.length === 0
      ? 'no file named, and no *.visit.yaml in this folder: name a visit file, or a kit and an activity file'
      : `no file named, and several visits in this folder: name one of ${visits.join(', ')}`,
  );
}

/** A file under the name that another one gives it: from that one's folder, unless it says where it is. */
export const beside = (file: string, name: string): string =>
  isAbsolute(name) ? name : join(dirname(file), name);

/** By its first key, so that a file may have any name. */
export function kindOf(file: SourceText): Kind | null {
  const kind = /^\uFEFF?["']?handspike["']?\s*:\s*["']?(kit|activity|visit)\b/m.exec(file.text)?.[1];
  return kind === undefined ? null : (kind as Kind);
}

export const fileName = (path: string): string => basename(path);

const reason = (fault: unknown): string => {
  const code = (fault as NodeJS.ErrnoException).code;
  switch (code) {
    case 'ENOENT':
      return 'there is no such file';
    case 'EISDIR':
      return 'it is a folder';
    case 'EEXIST':
      return 'it is there already, and is not written over';
    case 'ENOTDIR':
      return 'part of its path is a file and no folder';
    case 'EACCES':
      return 'it is not allowed here';
    default:
      return fault instanceof Error ? fault.message : String(fault);
  }
};
