import { prepare } from '../../core/prepare.ts';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT } from '../command.ts';
import { preparationFiles } from '../files.ts';
import { countOf, hasErrors, tellFindings } from '../findings.ts';

export const check: Command = {
  name: 'check',
  usage: 'check [VISIT | KIT ACTIVITY]',
  summary: 'read the files and say everything that is wrong or useless in them',
  options: [],
  run: (args, terminal) => {
    const { files } = readArguments(args, {});
    const prepared = prepare(preparationFiles(terminal.folder, files));
    tellFindings(terminal, prepared.sources, prepared.diagnostics);
    const setups = prepared.tables.reduce((sum, table) => sum + table.setups.length, 0);
    const found = prepared.diagnostics.length === 0 ? 'nothing to put right' : countOf(prepared.diagnostics);
    terminal.print(`${counted(prepared.tables.length, 'table')}, ${counted(setups, 'setup')}: ${found}`);
    return hasErrors(prepared) ? EXIT.findings : EXIT.done;
  },
};

const counted = (count: number, word: string): string => `${count} ${word}${count === 1 ? '' : 's'}`;
