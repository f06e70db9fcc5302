import { type Diagnostic, isError } from '../core/diagnostics/diagnostic.ts';
import type { SourceFile } from '../core/files/source-text.ts';
import { findingsText } from '../documents/text/findings-text.ts';
import type { Terminal } from './command.ts';

/** All findings of the files at once, then how many. */
export function tellFindings(
  terminal: Terminal,
  sources: readonly SourceFile[],
  diagnostics: readonly Diagnostic[],
): void {
  for (const text of findingsText('en', sources, diagnostics)) {
    const [head = '', ...rest] = text.split('\n');
    terminal.tell([terminal.strong(head), ...rest, '', ''].join('\n'));
  }
  if (diagnostics.length > 0) terminal.tell(countOf(diagnostics));
}

/** Errors in full; of the rest only how many, and which command tells them. */
export function tellErrors(terminal: Terminal, prepared: Found): void {
  const { sources, diagnostics } = prepared;
  const errors = diagnostics.filter(isError);
  tellFindings(terminal, sources, errors);
  const rest = diagnostics.filter((each) => !isError(each));
  if (rest.length > 0) terminal.tell(`${countOf(rest)}: "handspike check" tells them`);
}

interface Found {
  readonly sources: readonly SourceFile[];
  readonly diagnostics: readonly Diagnostic[];
}

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
