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

/** The words around a message: how grave it is, and what stands before why and help. */
export type FindingLabels = Readonly<Record<Diagnostic['severity'] | 'why' | 'help', string>>;

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
  labels: FindingLabels,
  fill: Fill,
): string {
  const { what, here, why, help } = filledSentence(diagnostic, sentence, fill);
  const head = `${labels[diagnostic.severity]}[${diagnostic.code}]: ${what}`;
  const place =
    located === null
      ? [`  ${diagnostic.at.file}`, `  ${here}`]
      : [`  ${located.file}:${located.line}:${located.column}`, ...pointed(located, here)];
  return [head, ...place, `  = ${labels.why}: ${why}`, `  = ${labels.help}: ${help}`].join('\n');
}

/** The words of one finding with its facts in their places. */
export function filledSentence(
  diagnostic: Diagnostic,
  { what, here, why, help }: DiagnosticSentence,
  fill: Fill,
): DiagnosticSentence {
  const facts = shortened(diagnostic.facts);
  const say = (template: string): string => fill(chosen(template, facts), facts);
  return { what: say(what), here: say(here), why: say(why), help: say(help) };
}

/** Longest stretch of a line that is shown, and how much of it stands before the caret at most. */
const WIDTH = 96;
const BEFORE = 48;
/** Longest text that is quoted in a sentence. */
const QUOTED = 60;

/** The line as it was written, and the caret under what is meant; of an endless line a stretch. */
function pointed({ line, column, lineText, length }: Located, here: string): readonly string[] {
  const letters = [...lineText];
  const cut = letters.length > WIDTH ? Math.max(0, column - 1 - BEFORE) : 0;
  const stretch = letters.slice(cut, cut + WIDTH);
  const start = cut > 0 ? '…' : '';
  const end = cut + stretch.length < letters.length ? '…' : '';
  const gutter = `${line} | `;
  const before = stretch.slice(0, column - 1 - cut).map((each) => (each === '\t' ? '\t' : ' '));
  const meant = '^'.repeat(Math.max(1, Math.min(length, stretch.length - before.length)));
  const caret = `${' '.repeat(gutter.length - 2)}| ${start === '' ? '' : ' '}${before.join('')}${meant}`;
  const shownLine = `${gutter}${start}${stretch.map(shown).join('')}${end}`;
  return [shownLine.trimEnd(), here === '' ? caret : `${caret} ${here}`];
}

const shortened = (facts: Facts): Facts =>
  Object.fromEntries(
    Object.entries(facts).map(([name, fact]) =>
      typeof fact === 'string' && fact.length > QUOTED ? [name, `${fact.slice(0, QUOTED)}…`] : [name, fact],
    ),
  );

/** Control characters would move the caret, or colour the terminal of whoever reads on. */
const shown = (letter: string): string => (letter !== '\t' && /\p{Cc}/u.test(letter) ? '\ufffd' : letter);

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
        [...part.matchAll(/\{([^{}@]+)(?:@[^{}]+)?\}/g)].every(([, name]) =>
          Object.hasOwn(facts, name ?? ''),
        ),
      ) ?? ''
    );
  });
