import { existsSync, readFileSync } from 'node:fs';
import type { Diagnostic } from '../../src/core/diagnostics/diagnostic.ts';
import { readActivityFile } from '../../src/core/files/activity-file.ts';
import { readKitFile } from '../../src/core/files/kit-file.ts';
import { locate } from '../../src/core/files/locate.ts';
import { resolve } from '../../src/core/files/resolve.ts';
import type { SourceFile } from '../../src/core/files/source-text.ts';
import { readVisitFile } from '../../src/core/files/visit-file.ts';
import { diagnosticSentences } from '../../src/documents/sentences/en/diagnostics.ts';
import { fillIn } from '../../src/documents/sentences/sentence.ts';
import { renderDiagnostic } from '../../src/documents/text/diagnostic-text.ts';
import { knownWords } from './known.ts';

const folder = new URL('./spoilt/', import.meta.url);

export interface Findings {
  readonly diagnostics: readonly Diagnostic[];
  readonly text: string;
}

/** Everything that is said about one file; a visit is read with the kit and activity that it names. */
export function findingsOf(name: string): Findings {
  if (name.endsWith('.kit.yaml')) return said([readKitFile(file(name), knownWords)]);
  if (name.endsWith('.activity.yaml')) return said([readActivityFile(file(name), knownWords)]);
  const visit = readVisitFile(file(name));
  if (visit.visit === null || !exists(visit.visit.kit) || !exists(visit.visit.activity)) return said([visit]);
  const kit = readKitFile(file(visit.visit.kit), knownWords);
  const activity = readActivityFile(file(visit.visit.activity), knownWords);
  if (kit.kit === null || activity.activity === null) return said([kit, activity, visit]);
  const resolved = resolve(kit.kit, activity.activity, visit.visit, knownWords);
  return said([kit, activity, visit, { ...resolved, source: null }]);
}

function said(
  read: readonly { readonly source: SourceFile | null; readonly diagnostics: readonly Diagnostic[] }[],
): Findings {
  const sources = read.flatMap(({ source }) => (source === null ? [] : [source]));
  const diagnostics = read.flatMap((each) => each.diagnostics);
  const messages = diagnostics.map((diagnostic) => {
    const sentence = diagnosticSentences[diagnostic.code];
    if (sentence === undefined) throw new RangeError(`no message for "${diagnostic.code}"`);
    return renderDiagnostic(diagnostic, locate(sources, diagnostic.at), sentence, (template, facts) =>
      fillIn('en', template, facts),
    );
  });
  return { diagnostics, text: `${messages.join('\n\n')}\n` };
}

const file = (name: string) => ({ name, text: readFileSync(new URL(name, folder), 'utf8') });
const exists = (name: string) => name !== '' && existsSync(new URL(name, folder));
