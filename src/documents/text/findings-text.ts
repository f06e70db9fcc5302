import type { Diagnostic, Facts } from '../../core/diagnostics/diagnostic.ts';
import { type Located, locate } from '../../core/files/locate.ts';
import type { SourceFile } from '../../core/files/source-text.ts';
import { diagnosticSentence } from '../sentences/diagnostic-sentence.ts';
import type { Language } from '../sentences/language.ts';
import { fillIn, hasSentence, sentence } from '../sentences/sentence.ts';
import {
  type DiagnosticSentence,
  type Fill,
  type FindingLabels,
  filledSentence,
  renderDiagnostic,
} from './diagnostic-text.ts';

/** All findings as a person reads them: in the order of the files, and in each from top to bottom. */
export function findingsText(
  language: Language,
  sources: readonly SourceFile[],
  diagnostics: readonly Diagnostic[],
): readonly string[] {
  return diagnostics
    .map((diagnostic) => ({ diagnostic, located: locate(sources, diagnostic.at) }))
    .sort((a, b) => inOrder(sources, a.located, b.located))
    .map(({ diagnostic, located }) =>
      renderDiagnostic(
        diagnostic,
        located,
        diagnosticSentence(language, diagnostic.code),
        labelsOf(language),
        fillerOf(language),
      ),
    );
}

/** A finding by itself, for the form in which it was made: no line of a file to point at. */
export const findingSaid = (language: Language, diagnostic: Diagnostic): DiagnosticSentence =>
  filledSentence(diagnostic, diagnosticSentence(language, diagnostic.code), fillerOf(language));

const fillerOf =
  (language: Language): Fill =>
  (template, facts) =>
    fillIn(language, template, withReason(language, facts));

/** How many findings of each gravity there are: "2 errors, 1 warning". */
export const findingCounts = (language: Language, diagnostics: readonly Diagnostic[]): string =>
  (['error', 'warning', 'note'] as const)
    .map((severity) => ({ severity, count: diagnostics.filter((each) => each.severity === severity).length }))
    .filter(({ count }) => count > 0)
    .map(({ severity, count }) =>
      sentence(language, `findings.${severity}.${count === 1 ? 'one' : 'several'}`, { count }),
    )
    .join(', ');

const labelsOf = (language: Language): FindingLabels => ({
  error: sentence(language, 'finding.error'),
  warning: sentence(language, 'finding.warning'),
  note: sentence(language, 'finding.note'),
  why: sentence(language, 'finding.why'),
  help: sentence(language, 'finding.help'),
});

function inOrder(sources: readonly SourceFile[], a: Located | null, b: Located | null): number {
  const fileOf = (each: Located | null): number => sources.findIndex(({ name }) => name === each?.file);
  return fileOf(a) - fileOf(b) || (a?.line ?? 0) - (b?.line ?? 0) || (a?.column ?? 0) - (b?.column ?? 0);
}

/** A reason travels as the key of its sentence. */
const withReason = (language: Language, facts: Facts): Facts =>
  typeof facts.because === 'string' && hasSentence(language, facts.because)
    ? { ...facts, reason: sentence(language, facts.because, facts) }
    : facts;
