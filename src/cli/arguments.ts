import { parseArgs } from 'node:util';
import { nearestName } from '../core/diagnostics/nearest-name.ts';
import { UsageFault } from './command.ts';

/** Options by name: `true` is a switch, `'text'` takes a value. */
export type Options = Readonly<Record<string, 'switch' | 'text'>>;
export interface Arguments {
  readonly files: readonly string[];
  readonly isOn: (option: string) => boolean;
  readonly text: (option: string) => string | null;
}

/** What stands on a command's line; an unknown option is refused with the nearest known one. */
export function readArguments(args: readonly string[], options: Options): Arguments {
  const known = Object.keys(options);
  for (const arg of args) {
    const name = /^--([^=]+)/.exec(arg)?.[1];
    if (arg === '--') break;
    if (name === undefined || known.includes(name)) continue;
    const nearest = nearestName(name, known);
    throw new UsageFault(
      `there is no option --${name}${nearest === undefined ? '' : `; did you mean --${nearest}?`}`,
    );
  }
  try {
    const { values, positionals } = parseArgs({
      args: joined(args, options),
      allowPositionals: true,
      options: Object.fromEntries(
        Object.entries(options).map(([name, kind]) => [
          name,
          { type: kind === 'switch' ? ('boolean' as const) : ('string' as const) },
        ]),
      ),
    });
    return {
      files: positionals,
      isOn: (option) => values[option] === true,
      text: (option) => {
        const value = values[option];
        return typeof value === 'string' ? value : null;
      },
    };
  } catch (fault) {
    throw new UsageFault(inOurWords(fault));
  }
}

/** Node says more than its first sentence, about marks that nobody asked for. */
function inOurWords(fault: unknown): string {
  const says = fault instanceof Error ? fault.message : String(fault);
  const option = /^Unknown option '([^']+)'/.exec(says)?.[1];
  if (option !== undefined) return `there is no option ${option}`;
  const lacking = /^Option '(--[\w-]+)(?: <value>)?' argument (?:missing|is ambiguous)/.exec(says)?.[1];
  if (lacking !== undefined) return `${lacking} wants a value after it`;
  const plain = /^Option '(--[\w-]+)' does not take an argument/.exec(says)?.[1];
  return plain === undefined ? says : `${plain} takes no value`;
}

/** A value may begin with a minus sign: `--reading -1` is one option with its value. */
function joined(args: readonly string[], options: Options): string[] {
  const result: string[] = [];
  for (const arg of args) {
    const before = result.at(-1);
    const takes = before?.startsWith('--') && options[before.slice(2)] === 'text';
    if (takes && /^-\d/.test(arg)) result[result.length - 1] = `${before}=${arg}`;
    else result.push(arg);
  }
  return result;
}
