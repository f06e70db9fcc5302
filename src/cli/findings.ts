import { type Diagnostic, type Facts, isError } from '../core/diagnostics/diagnostic.ts';
import { locate } from '../core/files/locate.ts';
import type { SourceFile } from '../core/files/source-text.ts';
import { diagnosticSentence } from '../documents/sentences/diagnostic-sentence.ts';
import { fillIn, hasSentence, sentence } from '../documents/sentences/sentence.ts';
import { renderDiagnostic } from '../documents/text/diagnostic-text.ts';
import type { Terminal } from './command.ts';

/** All findings of the files at once, errors first in the order of the files; then how many. */
export function tellFindings(
  terminal: Terminal,
  sources: readonly SourceFile[],
  diagnostics: readonly Diagnostic[],
): void {
  for (const diagnostic of diagnostics) {
    const text = renderDiagnostic(
      diagnostic,
      locate(sources, diagnostic.at),
      diagnosticSentence('en', diagnostic.code),
      (template, facts) => fillIn('en', template, withReason(facts)),
    );
    const [head = '', ...rest] = text.split('\n');
    terminal.tell([terminal.strong(head), ...rest, ''].join('\n'));
  }
  if (diagnostics.length > 0) terminal.tell(countOf(diagnostics));
}

/** A reason travels as the key of its sentence. */
const withReason = (facts: Facts): Facts =>
  typeof facts.because === 'string' && hasSentence('en', facts.because)
    ? { ...facts, reason: sentence('en', facts.because, facts) }
    : facts;

/** Something has to be put right before the key can be trusted. */
export const hasErrors = ({ diagnostics }: { readonly diagnostics: readonly Diagnostic[] }): boolean =>
  diagnostics.some(isError);

/** "2 errors, 1 warning". */
export function countOf(diagnostics: readonly Diagnostic[]): string {
  const errors = diagnostics.filter(isError).length;
  const warnings = diagnostics.filter((each) => each.severity === 'warning').length;
  const notes = diagnostics.length - errors - warnings;
  return [plural(errors, 'error'), plural(warnings, 'warning'), plural(notes, 'note')]
    .filter((each) => each !== '')
    .join(', ');
}

const plural = (count: number, word: string): string =>
  count === 0 ? '' : `${count} ${word}${count === 1 ? '' : 's'}`;
