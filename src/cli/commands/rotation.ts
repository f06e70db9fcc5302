import { askedPeriods, planPeriod, usualOptions } from '../../core/period.ts';
import { prepare } from '../../core/prepare.ts';
import {
  type CalendarOf,
  type NoCalendar,
  periodCalendar,
} from '../../documents/calendar/period-calendar.ts';
import { rotationCsv } from '../../documents/text/rotation-csv.ts';
import { rotationJson } from '../../documents/text/rotation-json.ts';
import { isArranged, rotationText } from '../../documents/text/rotation-text.ts';
import { type Arguments, readArguments } from '../arguments.ts';
import { type Command, EXIT, UsageFault } from '../command.ts';
import { preparationFiles } from '../files.ts';
import { hasErrors, tellErrors } from '../findings.ts';
import { LANGUAGE_OPTION, languageIn } from '../language.ts';
import { CHANGE_HELP, CHANGE_OPTIONS, oneOf, periodChangesIn, wholeIn } from '../period-changes-in.ts';

export const rotation: Command = {
  name: 'rotation',
  usage: 'rotation [VISIT | KIT ACTIVITY] [WHAT IF] [--csv | --ics | --json]',
  summary: 'who is at which table when, how sure that is, and what if',
  options: [
    ...CHANGE_HELP,
    '--gain          which table to double or to shorten would gain most',
    '--csv           a row a stay, a wait, or an adult at a table',
    '--ics           a calendar (RFC 5545); of one with --group, --table or --adult',
    '--group LABEL   the calendar of one group',
    '--table MARK    the calendar of one table',
    '--adult LABEL   the calendar of one adult',
    '--json          everything as JSON, times in seconds since the start',
    '--seed N        where several plans are as good, another number is another one (1)',
    LANGUAGE_OPTION,
  ],
  run: (args, terminal) => {
    const found = readArguments(args, {
      ...CHANGE_OPTIONS,
      gain: 'switch',
      csv: 'switch',
      ics: 'switch',
      json: 'switch',
      group: 'text',
      table: 'text',
      adult: 'text',
      seed: 'text',
      language: 'text',
    });
    const as = formIn(found);
    const language = languageIn(found, 'language');
    const prepared = prepare(preparationFiles(terminal.folder, found.files));
    tellErrors(terminal, prepared, language);
    const asFiled = askedPeriods(prepared, {});
    if (asFiled === null || prepared.tables.length === 0) return EXIT.findings;
    const known = {
      tables: prepared.tables.map(({ mark }) => mark),
      groups: [...new Set(asFiled.flatMap((each) => each.rotation.groups.map(({ label }) => label)))],
    };
    const changes = periodChangesIn(found, known);
    const { effort } = usualOptions;
    const seed = wholeIn(found, 'seed', 0, 1e9) ?? effort.seed;
    const period = planPeriod(prepared, changes, {
      effort: { ...effort, seed },
      withGains: found.isOn('gain'),
    });
    if (period === null) return EXIT.findings;
    switch (as) {
      case 'csv':
        terminal.print(rotationCsv(language, prepared, period).trimEnd());
        break;
      case 'json':
        terminal.print(rotationJson(prepared, period));
        break;
      case 'ics': {
        const adults = period.classes.flatMap((each) => each.rotation.adults.map(({ label }) => label));
        const calendar = periodCalendar(
          language,
          prepared,
          period,
          ofIn(found, { ...known, adults }),
          stamp(),
        );
        if (calendar.kind === 'none') throw new UsageFault(NO_CALENDAR[calendar.because]);
        terminal.print(calendar.text);
        break;
      }
      case 'text':
        terminal.print(rotationText(language, prepared, period));
        break;
    }
    return hasErrors(prepared) || !isArranged(period) ? EXIT.findings : EXIT.done;
  },
};

const FORMS = ['csv', 'ics', 'json'] as const;

function formIn(found: Arguments): (typeof FORMS)[number] | 'text' {
  const asked = FORMS.filter((form) => found.isOn(form));
  if (asked.length > 1)
    throw new UsageFault(`${asked.map((form) => `--${form}`).join(' and ')}: name one of them`);
  return asked[0] ?? 'text';
}

/** Whose calendar; a label that there isn't is refused with the nearest. */
function ofIn(
  found: Arguments,
  known: Readonly<Record<'groups' | 'tables' | 'adults', readonly string[]>>,
): CalendarOf {
  const one = (what: 'group' | 'table' | 'adult'): string | null => {
    const text = found.text(what);
    return text === null ? null : oneOf(what, what, text, known[`${what}s`]);
  };
  return { group: one('group'), table: one('table'), adult: one('adult') };
}

const NO_CALENDAR: Readonly<Record<NoCalendar, string>> = {
  'no-date': 'a calendar needs a day: write "date: 2026-05-12" into the visit file',
  'no-start': 'a calendar needs a clock: write "starts: 09:15" into the visit file',
  'no-timetable': 'there is no timetable to write into a calendar; without --ics it is said why',
};

/** Now, in UTC, as calendars have it. */
const stamp = (): string => `${new Date().toISOString().slice(0, 19).replace(/[-:]/g, '')}Z`;
