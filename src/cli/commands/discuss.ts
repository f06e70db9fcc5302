import { join } from 'node:path';
import { type Prepared, prepare } from '../../core/prepare.ts';
import { rehearse } from '../../core/rehearse.ts';
import { type Review, review } from '../../core/review.ts';
import { talkSheets, toldTalk } from '../../documents/discussion/talk-told.ts';
import { usualRehearsal } from '../../documents/sheets/rehearsal-sheet.ts';
import { discussionJson } from '../../documents/text/discussion-json.ts';
import { discussionText } from '../../documents/text/discussion-text.ts';
import { type Arguments, readArguments } from '../arguments.ts';
import { type Command, EXIT, type Terminal, UsageFault } from '../command.ts';
import { preparationFiles, writeText } from '../files.ts';
import { hasErrors, tellErrors } from '../findings.ts';
import { LANGUAGE_OPTION, languageIn } from '../language.ts';
import { isTable, readingsIn } from '../readings-in.ts';
import { REHEARSAL_HELP, rehearsalAsked } from '../rehearsal-asked.ts';

const OF_REHEARSAL = ['groups', 'mistakes', 'seed'] as const;

export const discuss: Command = {
  name: 'discuss',
  usage:
    'discuss [VISIT | KIT ACTIVITY] [READINGS.csv | --rehearsal] [--name-groups] [--json | --to FOLDER] [--language en|es]',
  summary: 'the talk at the end: one question a page, with the numbers of the class',
  options: [
    'READINGS.csv       what the class wrote, as for handspike review; without it, the file that the visit names',
    '--rehearsal        a class that never was, to try the talk with the night before',
    ...REHEARSAL_HELP,
    '--name-groups      say which group wrote a number that surprised; without it no group is named',
    '--json             as JSON, with the same figures as handspike review --json',
    '--to FOLDER        as two pages (HTML): for the wall, and notes for whoever leads the talk',
    LANGUAGE_OPTION,
  ],
  run: (args, terminal) => {
    const found = readArguments(args, {
      rehearsal: 'switch',
      groups: 'text',
      mistakes: 'text',
      seed: 'text',
      'name-groups': 'switch',
      json: 'switch',
      to: 'text',
      language: 'text',
    });
    const language = languageIn(found, 'language');
    const folder = found.text('to');
    if (found.isOn('json') && folder !== null)
      throw new UsageFault('--json and --to are two outlets: name one of them');
    const tables = found.files.filter(isTable);
    const isRehearsal = isRehearsalAsked(found, tables);
    const prepared = prepare(
      preparationFiles(
        terminal.folder,
        found.files.filter((name) => !isTable(name)),
      ),
    );
    tellErrors(terminal, prepared, language);
    if (prepared.tables.length === 0) return EXIT.findings;
    const read = isRehearsal
      ? rehearse(prepared, rehearsalAsked(found, usualRehearsal(prepared))).review
      : reviewed(terminal, prepared, tables[0] ?? null);
    const told = toldTalk(language, prepared, read, {
      of: isRehearsal ? 'rehearsal' : 'class',
      names: found.isOn('name-groups'),
    });
    if (folder !== null) {
      const { wall, notes } = talkSheets(language, told);
      for (const [name, text] of [
        ['talk-wall.html', wall],
        ['talk-notes.html', notes],
      ] as const) {
        const path = join(folder, name);
        writeText(terminal.folder, path, text, 'replace');
        terminal.print(path);
      }
    } else if (found.isOn('json')) terminal.print(discussionJson(told.discussion));
    else terminal.print(discussionText(language, told.talk, told.about));
    return hasErrors(prepared) || read.refused.length > 0 ? EXIT.findings : EXIT.done;
  },
};

/** A number of groups, mistakes or the seed asks for one as well. */
function isRehearsalAsked(found: Arguments, tables: readonly string[]): boolean {
  const isAsked = found.isOn('rehearsal') || OF_REHEARSAL.some((name) => found.text(name) !== null);
  if (isAsked && tables.length > 0)
    throw new UsageFault(
      `a class that never was has no readings file: leave out ${tables[0]}, or --rehearsal`,
    );
  return isAsked;
}

function reviewed(terminal: Terminal, prepared: Prepared, name: string | null): Review {
  const file = readingsIn(terminal, prepared, name);
  if (file === null)
    throw new UsageFault('no readings: name a CSV file, or take a class that never was with --rehearsal');
  const found = review(prepared, file);
  if (found.refused.length > 0)
    terminal.tell(
      `${file.name}: ${found.refused.length} ${found.refused.length === 1 ? 'row belongs' : 'rows belong'} to no setup and ${found.refused.length === 1 ? 'is' : 'are'} left out; handspike review says which`,
    );
  return found;
}
