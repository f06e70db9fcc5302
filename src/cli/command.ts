/** One word of the command line. */
export interface Command {
  readonly name: string;
  /** How it is called, without the program's name. */
  readonly usage: string;
  readonly summary: string;
  /** More lines of help, an option a line. */
  readonly options: readonly string[];
  readonly run: (args: readonly string[], terminal: Terminal) => number | Promise<number>;
}

/** Where a command reads and writes; the only place that knows of the process. */
export interface Terminal {
  readonly folder: string;
  readonly print: (text: string) => void;
  readonly tell: (text: string) => void;
  /** How far long work is; written over itself on a terminal, left out elsewhere. */
  readonly progress: (text: string) => void;
  /** Bold, where the terminal shows it. */
  readonly strong: (text: string) => string;
}

/** What a command gives back to the shell. */
export const EXIT = {
  done: 0,
  /** Something in the files has to be put right first. */
  findings: 1,
  /** The command line itself can't be understood. */
  usage: 2,
  /** A file can't be read or written. */
  files: 3,
} as const;

/** The command line can't be understood: said with what can be written instead. */
export class UsageFault extends Error {}

/** A file can't be read or written. */
export class FileFault extends Error {}
