import { existsSync, readFileSync } from 'node:fs';
import type { Diagnostic } from '../../src/core/diagnostics/diagnostic.ts';
import { readActivityFile } from '../../src/core/files/activity-file.ts';
import { readKitFile } from '../../src/core/files/kit-file.ts';
import type { SourceFile } from '../../src/core/files/source-text.ts';
import { readVisitFile } from '../../src/core/files/visit-file.ts';
import { type PreparationFiles, prepare } from '../../src/core/prepare.ts';
import { vocabulary } from '../../src/core/words.ts';
import { findingsText } from '../../src/documents/text/findings-text.ts';

const folder = new URL('./spoilt/', import.meta.url);

export interface Findings {
  readonly diagnostics: readonly Diagnostic[];
  readonly text: string;
}

/** Everything that is said about one file; a visit is prepared with the kit and activity that it names. */
export function findingsOf(name: string): Findings {
  if (name.endsWith('.kit.yaml')) return said([readKitFile(file(name), vocabulary)]);
  if (name.endsWith('.activity.yaml')) return said([readActivityFile(file(name), vocabulary)]);
  const { visit, diagnostics, source } = readVisitFile(file(name));
  if (visit === null || !exists(visit.kit) || !exists(visit.activity)) return said([{ diagnostics, source }]);
  const kit = file(visit.kit);
  const book = readKitFile(kit, vocabulary).kit?.benchBook;
  const bench = book === undefined ? null : file(book);
  return messagesOf({ kit, activity: file(visit.activity), visit: file(name), bench });
}

/** Everything that is said about three files that belong together. */
export function messagesOf(files: PreparationFiles): Findings {
  const prepared = prepare(files);
  return saidOf(prepared.sources, prepared.diagnostics);
}

const said = (
  read: readonly { readonly source: SourceFile; readonly diagnostics: readonly Diagnostic[] }[],
): Findings =>
  saidOf(
    read.map(({ source }) => source),
    read.flatMap(({ diagnostics }) => diagnostics),
  );

const saidOf = (sources: readonly SourceFile[], diagnostics: readonly Diagnostic[]): Findings => ({
  diagnostics,
  text: `${findingsText('en', sources, diagnostics).join('\n\n')}\n`,
});

const file = (name: string) => ({ name, text: readFileSync(new URL(name, folder), 'utf8') });
const exists = (name: string) => name !== '' && existsSync(new URL(name, folder));
