import type { YAMLParseError } from 'yaml';
import type { FileCode } from './file-code.ts';
import type { Range } from './node.ts';

/** The parser's faults that have a message of their own here; all others are "can't be read". */
const CODES: Readonly<Partial<Record<YAMLParseError['code'], FileCode>>> = {
  DUPLICATE_KEY: 'syntax.key-twice',
  TAB_AS_INDENT: 'syntax.tab',
  BAD_INDENT: 'syntax.indent',
  MISSING_CHAR: 'syntax.not-closed',
  BLOCK_AS_IMPLICIT_KEY: 'syntax.second-colon',
  MULTILINE_IMPLICIT_KEY: 'syntax.line-without-key',
  BAD_SCALAR_START: 'syntax.special-sign',
  BAD_ALIAS: 'syntax.alias',
};

/** Our code and the place to point at, for a fault that the YAML parser found. */
export function syntaxCode(
  error: YAMLParseError,
  text: string,
  openedAt: number | null,
): { readonly code: FileCode; readonly range: Range } {
  const code = CODES[error.code] ?? 'syntax.unreadable';
  const [from, to] = error.pos;
  if (code === 'syntax.not-closed' && openedAt !== null) return { code, range: [openedAt, openedAt + 1] };
  if (code === 'syntax.key-twice') return { code, range: [from, wordEnd(text, from)] };
  if (code === 'syntax.line-without-key' || code === 'syntax.indent') {
    const start = code === 'syntax.indent' ? nextWord(text, from) : from;
    return { code, range: [start, lineEnd(text, start)] };
  }
  return { code, range: [from, Math.min(Math.max(to, from + 1), Math.max(text.length, from))] };
}

/** The parser points at the break before a badly indented line; the eye wants the line itself. */
function nextWord(text: string, from: number): number {
  const found = /\S/.exec(text.slice(from));
  return found === null ? from : from + found.index;
}

function lineEnd(text: string, from: number): number {
  const end = /[\r\n]/.exec(text.slice(from));
  return end === null ? text.length : Math.max(from + end.index, from + 1);
}

function wordEnd(text: string, from: number): number {
  const end = /[:\r\n]/.exec(text.slice(from));
  return end === null ? text.length : from + end.index;
}
