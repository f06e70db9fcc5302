import { type Diagnostic, isError } from '../core/diagnostics/diagnostic.ts';
import type { SourceFile } from '../core/files/source-text.ts';
import type { Language } from '../documents/sentences/language.ts';
import { sentence } from '../documents/sentences/sentence.ts';
import { findingCounts, findingsText } from '../documents/text/findings-text.ts';
import type { Terminal } from './command.ts';

/** All findings of the files at once, then how many. */
export function tellFindings(
  terminal: Terminal,
  sources: readonly SourceFile[],
  diagnostics: readonly Diagnostic[],
  language: Language,
): void {
  for (const text of findingsText(language, sources, diagnostics)) {
    const [head = '', ...rest] = text.split('\n');
    terminal.tell([terminal.strong(head), ...rest, '', ''].join('\n'));
  }
  if (diagnostics.length > 0) terminal.tell(findingCounts(language, diagnostics));
}

/** Errors in full; of the rest only how many, and which command tells them. */
export function tellErrors(terminal: Terminal, prepared: Found, language: Language): void {
  const { sources, diagnostics } = prepared;
  const errors = diagnostics.filter(isError);
  tellFindings(terminal, sources, errors, language);
  const rest = diagnostics.filter((each) => !isError(each));
  if (rest.length > 0)
    terminal.tell(sentence(language, 'findings.told-by-check', { count: findingCounts(language, rest) }));
}

interface Found {
  readonly sources: readonly SourceFile[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Something has to be put right before the key can be trusted. */
export const hasErrors = ({ diagnostics }: { readonly diagnostics: readonly Diagnostic[] }): boolean =>
  diagnostics.some(isError);
