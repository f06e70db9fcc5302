import { askedPeriods, planPeriod, usualOptions } from '../../core/period.ts';
import { planOn } from '../../core/plan-on.ts';
import { prepare } from '../../core/prepare.ts';
import { type Seconds, seconds } from '../../core/quantities/brands.ts';
import { planTeaching } from '../../core/teach.ts';
import {
  type CalendarOf,
  type NoCalendar,
  periodCalendar,
} from '../../documents/calendar/period-calendar.ts';
import { rotationCsv } from '../../documents/text/rotation-csv.ts';
import { rotationJson } from '../../documents/text/rotation-json.ts';
import { isArranged, rotationText } from '../../documents/text/rotation-text.ts';
import { isTaught, teachJson, teachText } from '../../documents/text/teach-text.ts';
import { type Arguments, readArguments } from '../arguments.ts';
import { type Command, EXIT, UsageFault } from '../command.ts';
import { preparationFiles } from '../files.ts';
import { hasErrors, tellErrors } from '../findings.ts';
import { LANGUAGE_OPTION, languageIn } from '../language.ts';
import { PAST_HELP, PAST_OPTIONS, pastIn } from '../past-in.ts';
import {
  CHANGE_HELP,
  CHANGE_OPTIONS,
  oneOf,
  periodChangesIn,
  refuseTooLate,
  wholeIn,
} from '../period-changes-in.ts';
import { fromTheStart, SO_FAR_HELP, SO_FAR_OPTIONS, soFarIn } from '../so-far-in.ts';

export const rotation: Command = {
  name: 'rotation',
  usage: 'rotation [VISIT | KIT ACTIVITY] [WHAT IF] [--now TIME] [--csv | --ics | --json]',
  summary: 'who is at which table when, how sure that is, and what if',
  options: [
    ...CHANGE_HELP,
    ...SO_FAR_HELP,
    ...PAST_HELP,
    '--periods TIMES what to teach in periods of so many minutes, as 40 or 40,40',
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
      ...SO_FAR_OPTIONS,
      ...PAST_OPTIONS,
      gain: 'switch',
      periods: 'text',
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
    const whatIfs = periodChangesIn(found, known);
    const classes = asFiled.flatMap(({ label }) => (label === null ? [] : [label]));
    const decimalMark = prepared.visit?.decimal ?? 'point';
    const earlier = pastIn(found, { ...known, classes, decimal: decimalMark }, terminal, language);
    const changes = {
      ...fromTheStart(found, whatIfs),
      ...(earlier === null ? {} : { past: earlier.past }),
    };
    const asAsked = askedPeriods(prepared, changes) ?? [];
    const bell = Math.max(0, ...asAsked.map((each) => each.rotation.bell));
    refuseTooLate(changes.late, { since: 0, bell, groups: known.groups.length });
    const { effort } = usualOptions;
    const seed = wholeIn(found, 'seed', 0, 1e9) ?? effort.seed;
    const periods = periodsIn(found);
    if (periods !== null) {
      if (as !== 'text' && as !== 'json')
        throw new UsageFault(`--periods is told as text or with --json, not with --${as}`);
      const teaching = planTeaching(prepared, changes, periods, seed) ?? [];
      terminal.print(as === 'json' ? teachJson(teaching) : teachText(language, prepared, teaching));
      return hasErrors(prepared) || !isTaught(teaching) ? EXIT.findings : EXIT.done;
    }
    const options = { effort: { ...effort, seed }, withGains: found.isOn('gain') };
    const planned = planPeriod(prepared, changes, options);
    if (planned === null) return EXIT.findings;
    const read = soFarIn(found, whatIfs, planned.classes, decimalMark, terminal, language);
    if (read === null) return EXIT.findings;
    const { soFar } = read;
    const period = soFar === null ? planned : planOn(prepared, planned, soFar, options);
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
    return hasErrors(prepared) || !read.isWhole || earlier?.isWhole === false || !isArranged(period)
      ? EXIT.findings
      : EXIT.done;
  },
};

/** The most that a search through every choice of tables bears. */
const MOST_PERIODS = 3;

function periodsIn(found: Arguments): readonly Seconds[] | null {
  const text = found.text('periods');
  if (text === null) return null;
  const minutes = text.split(',').map((piece) => piece.trim());
  const isSound = minutes.length <= MOST_PERIODS && minutes.every((each) => /^[1-9]\d{0,2}$/.test(each));
  if (!isSound)
    throw new UsageFault(
      `--periods is the minutes of up to ${MOST_PERIODS} periods, as 40 or 40,40, not "${text}"`,
    );
  if (found.text('minutes') !== null)
    throw new UsageFault('--periods says how long each period is: leave out --minutes');
  return minutes.map((each) => seconds(60 * Number(each)));
}

const FORMS = ['csv', 'ics', 'json'] as const;

function formIn(found: Arguments): (typeof FORMS)[number] | 'text' {
  const asked = FORMS.filter((form) => found.isOn(form));
  if (asked.length > 1)
    throw new UsageFault(`${asked.map((form) => `--${form}`).join(' and ')}: name one of them`);
  for (const whose of ['group', 'table', 'adult'])
    if (found.text(whose) !== null && !found.isOn('ics'))
      throw new UsageFault(`--${whose} says whose calendar: it goes with --ics`);
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
