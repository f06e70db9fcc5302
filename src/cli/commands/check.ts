import { prepare } from '../../core/prepare.ts';
import type { Language } from '../../documents/sentences/language.ts';
import { sentence } from '../../documents/sentences/sentence.ts';
import { findingCounts } from '../../documents/text/findings-text.ts';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT } from '../command.ts';
import { preparationFiles } from '../files.ts';
import { hasErrors, tellFindings } from '../findings.ts';
import { LANGUAGE_OPTION, languageIn } from '../language.ts';

export const check: Command = {
  name: 'check',
  usage: 'check [VISIT | KIT ACTIVITY] [--language en|es]',
  summary: 'read the files and say everything that is wrong or useless in them',
  options: [LANGUAGE_OPTION],
  run: (args, terminal) => {
    const found = readArguments(args, { language: 'text' });
    const language = languageIn(found, 'language');
    const prepared = prepare(preparationFiles(terminal.folder, found.files));
    tellFindings(terminal, prepared.sources, prepared.diagnostics, language);
    const setups = prepared.tables.reduce((sum, table) => sum + table.setups.length, 0);
    terminal.print(
      sentence(language, 'findings.summary', {
        tables: counted(language, 'tables', prepared.tables.length),
        setups: counted(language, 'setups', setups),
        found:
          prepared.diagnostics.length === 0
            ? sentence(language, 'findings.nothing')
            : findingCounts(language, prepared.diagnostics),
      }),
    );
    return hasErrors(prepared) ? EXIT.findings : EXIT.done;
  },
};

const counted = (language: Language, what: 'tables' | 'setups', count: number): string =>
  sentence(language, `findings.${what}.${count === 1 ? 'one' : 'several'}`, { count });
