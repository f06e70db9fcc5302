import type { Diagnostic, Facts } from '../../core/diagnostics/diagnostic.ts';
import type { Located } from '../../core/files/locate.ts';

/** The words of one message in some language, with facts in braces. */
export interface DiagnosticSentence {
  /** What is wrong, as a headline. */
  readonly what: string;
  /** Stands behind the caret. */
  readonly here: string;
  readonly why: string;
  /** Something that can be done. */
  readonly help: string;
}

/** Puts facts into the braces of a template, as a language writes them. */
export type Fill = (template: string, facts: Facts) => string;

/**
 * A finding as a person reads it: what, where with the line and a caret, why, and what to do about
 * it. A finding without a place in a file leaves the line out.
 */
export function renderDiagnostic(
  diagnostic: Diagnostic,
  located: Located | null,
  sentence: DiagnosticSentence,
  fill: Fill,
): string {
  const say = (template: string): string => fill(chosen(template, diagnostic.facts), diagnostic.facts);
  const head = `${diagnostic.severity}[${diagnostic.code}]: ${say(sentence.what)}`;
  const here = say(sentence.here);
  const place =
    located === null
      ? [`  ${diagnostic.at.file}`, `  ${here}`]
      : [`  ${located.file}:${located.line}:${located.column}`, ...pointed(located, here)];
  return [head, ...place, `  = why: ${say(sentence.why)}`, `  = help: ${say(sentence.help)}`].join('\n');
}

/** The line as it was written, and the caret under what is meant. */
function pointed({ line, column, lineText, length }: Located, here: string): readonly string[] {
  const gutter = `${line} | `;
  const before = [...lineText].slice(0, column - 1).map((each) => (each === '\t' ? '\t' : ' '));
  const caret = `${' '.repeat(gutter.length - 2)}| ${before.join('')}${'^'.repeat(length)}`;
  return [`${gutter}${shown(lineText)}`, here === '' ? caret : `${caret} ${here}`];
}

/** Control characters would move the caret, or colour the terminal of whoever reads on. */
const shown = (text: string): string =>
  [...text].map((each) => (each !== '\t' && /\p{Cc}/u.test(each) ? '\ufffd' : each)).join('');

/**
 * A choice in brackets, `[write "{nearest}"|known here: {known}]`, takes the first part whose facts
 * are all there, and nothing where none is.
 *
 * @example chosen('a[ {b}| nothing]', {}) // => 'a nothing'
 * @example chosen('a[ {b}| nothing]', { b: 'c' }) // => 'a {b}'
 */
export const chosen = (template: string, facts: Facts): string =>
  template.replace(/\[([^[\]]*)\]/g, (_, choices: string) => {
    const parts = choices.split('|');
    return (
      parts.find((part) =>
        [...part.matchAll(/\{([^{}]+)\}/g)].every(([, name]) => Object.hasOwn(facts, name ?? '')),
      ) ?? ''
    );
  });
