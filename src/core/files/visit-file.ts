import type { Fields, Filled } from '../description/fields.ts';
import { choiceIn, countIn, measuredIn, textIn } from '../description/filled.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { LocalGravity } from '../kit/local-gravity.ts';
import type { Seconds } from '../quantities/brands.ts';
import type { DecimalMark } from '../quantities/print-quantity.ts';
import type { Measured } from '../uncertainty/measured.ts';
import { checkDate } from './calendar-date.ts';
import { checkFields } from './check-fields.ts';
import { asMap, asText, type Context, mapAt, type Path } from './context.ts';
import type { DayWords } from './day-words.ts';
import { openFile } from './file-header.ts';
import { gravityField, readGravity, writtenGravity } from './gravity-fields.ts';
import {
  type GroupWords,
  groupCount,
  languageFields,
  type PaperLanguage,
  paperLanguages,
  readGroups,
} from './group-words.ts';
import { decimalField } from './kit-fields.ts';
import { entryOf, type MapNode } from './node.ts';
import { visitPeriodFields } from './period-fields.ts';
import { DAY_KEYS, readDay } from './read-day.ts';
import type { SourceFile, SourceText } from './source-text.ts';
import type { YamlTree } from './yaml-tree.ts';

/** One visit or loan: which kit does which activity, where, with whom, and what is missing today. */
export interface Visit extends GroupWords {
  readonly file: string;
  /** File names as written, beside the visit file. */
  readonly kit: string;
  readonly activity: string;
  readonly date: string | null;
  readonly decimal: DecimalMark;
  readonly gravity: LocalGravity | null;
  readonly groups: number | null;
  /** `null` where the visit doesn't say: then it is what the printing asks for. */
  readonly cardsIn: PaperLanguage | null;
  readonly keyIn: PaperLanguage | null;
  readonly pupils: number | null;
  readonly helpers: number | null;
  readonly period: Measured<Seconds> | null;
  readonly day: DayWords;
  /** Name of the file with the readings. */
  readonly readingsIn: string | null;
  /** Part marks by table and role. */
  readonly roles: Readonly<Record<string, Readonly<Record<string, string>>>>;
  /** Marks of parts that are not there today, each with its place for findings. */
  readonly missing: readonly MissingMark[];
  /** Trial readings taken on arrival, in the order written. */
  readonly arrival: readonly ArrivalEntry[];
}

export interface MissingMark {
  readonly mark: string;
  readonly path: Path;
}

/** One reading taken on arrival, as written. */
export interface ArrivalEntry {
  readonly setup: string;
  readonly written: string;
  readonly path: Path;
}

/** The head of a visit file. */
export const visitFields: Fields = {
  kit: { type: 'text', required: true, meaning: 'visit.field.kit', example: 'boathouse.kit.yaml' },
  activity: {
    type: 'text',
    required: true,
    meaning: 'visit.field.activity',
    example: 'harbour-day.activity.yaml',
  },
  date: { type: 'text', meaning: 'visit.field.date', example: '2026-05-12' },
  groups: { type: 'count', least: 1, most: 100, meaning: 'visit.field.groups', example: '6' },
  pupils: { type: 'count', least: 1, most: 1000, meaning: 'visit.field.pupils', example: '24' },
  helpers: { type: 'count', least: 0, most: 100, meaning: 'visit.field.helpers', example: '2' },
  period: {
    type: 'quantity',
    dimensions: ['time'],
    above: 0,
    meaning: 'visit.field.period',
    example: '50 min',
  },
  ...visitPeriodFields,
  ...languageFields,
  'readings in': { type: 'text', meaning: 'visit.field.readings-in', example: 'readings.csv' },
  ...decimalField,
  ...gravityField,
};

export interface ReadVisit {
  readonly source: SourceFile;
  readonly visit: Visit | null;
  readonly diagnostics: readonly Diagnostic[];
}

/** Reads a visit file. Whether its marks and roles exist is seen only together with kit and activity. */
export function readVisitFile(file: SourceText, tree?: YamlTree): ReadVisit {
  const { source, root, context, diagnostics } = openFile(file, 'visit', tree);
  if (root === null) return { source, visit: null, diagnostics };
  const owner = {
    path: [],
    idOf: (field: string) => `visit/${field}`,
    besides: [
      'handspike',
      'place',
      'roles',
      'missing',
      'arrival',
      'group labels',
      'group languages',
      ...DAY_KEYS,
    ],
  };
  const { filled } = checkFields(root, visitFields, owner, context);
  const date = textIn(filled, 'date');
  const pupils = countIn(filled, 'pupils') ?? null;
  const size = countIn(filled, 'group size') ?? null;
  const ofSize = pupils === null || size === null ? null : groupCount(pupils, size);
  const labelled = entryOf(root, 'group labels') !== undefined;
  const count = countIn(filled, 'groups') ?? (labelled ? null : ofSize);
  const groups = readGroups(root, count, context);
  return {
    source,
    visit: {
      file: file.name,
      kit: textIn(filled, 'kit') ?? '',
      activity: textIn(filled, 'activity') ?? '',
      date: date !== undefined && checkDate(date, ['date'], context) ? date : null,
      decimal: choiceIn(filled, 'decimal') === 'comma' ? 'comma' : 'point',
      gravity: readGravity(root, writtenGravity(filled), context),
      groups: count ?? (groups.groupLabels.length > 0 ? groups.groupLabels.length : null),
      ...groups,
      cardsIn: paperLanguageIn(filled, 'cards in'),
      keyIn: paperLanguageIn(filled, 'key in'),
      pupils,
      helpers: countIn(filled, 'helpers') ?? null,
      period: measuredIn(filled, 'period') ?? null,
      day: readDay(root, filled, context),
      readingsIn: textIn(filled, 'readings in') ?? null,
      roles: readRoles(root, context),
      missing: readMissing(root, context),
      arrival: readArrival(root, context),
    },
    diagnostics,
  };
}

const paperLanguageIn = (filled: Filled, key: string): PaperLanguage | null =>
  paperLanguages.find((each) => each === choiceIn(filled, key)) ?? null;

function readRoles(root: MapNode, context: Context): Visit['roles'] {
  const tables = mapAt(root, 'roles', [], context)?.entries ?? [];
  return Object.fromEntries(
    tables.flatMap(({ key: table, node }) => {
      const map = asMap(node, ['roles', table], context);
      if (map === null) return [];
      const marks = map.entries.flatMap(({ key: role, node: mark }) => {
        const text = asText(mark, ['roles', table, role], context);
        return text === null ? [] : [[role, text] as const];
      });
      return [[table, Object.fromEntries(marks)] as const];
    }),
  );
}

/** Missing parts, as a list or as one text with commas between: `amber, teal`. */
function readMissing(root: MapNode, context: Context): readonly MissingMark[] {
  const node = entryOf(root, 'missing')?.node;
  if (node === undefined) return [];
  if (node.kind !== 'list')
    return (asText(node, ['missing'], context)?.split(/,\s*/) ?? []).map((mark) => ({
      mark,
      path: ['missing'],
    }));
  return node.items.flatMap((item, n) => {
    const mark = asText(item, ['missing', n], context);
    return mark === null ? [] : [{ mark, path: ['missing', n] }];
  });
}

/** Setup marks with the reading found there; what a reading means is seen only beside its setup. */
function readArrival(root: MapNode, context: Context): readonly ArrivalEntry[] {
  const map = mapAt(root, 'arrival', [], context);
  return (map?.entries ?? []).flatMap(({ key: setup, node }) => {
    const path = ['arrival', setup];
    const written = asText(node, path, context);
    return written === null ? [] : [{ setup, written, path }];
  });
}
