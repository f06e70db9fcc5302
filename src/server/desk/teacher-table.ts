import { titleIn } from '../../core/files/titles.ts';
import type { PreparedSetup, PreparedTable } from '../../core/prepare.ts';
import type { Judgement } from '../../core/readings/judgement.ts';
import { fragment } from '../../documents/pages/fragment.ts';
import type { Language } from '../../documents/sentences/language.ts';
import { sentence } from '../../documents/sentences/sentence.ts';
import { classStrip } from '../../documents/strip/class-strip.ts';
import { tableFindingText } from '../../documents/text/class-findings-text.ts';
import { goodRangeOf, outcomeText, rangeText } from '../../documents/text/prediction-text.ts';
import { queriedText } from '../../documents/text/queried-text.ts';
import { judgedRemarks, verdictText } from '../../documents/text/review-table.ts';
import type { LoggedReading } from '../../store/visit-log.ts';
import type { TeacherReading, TeacherTable } from '../../store/wire.ts';
import type { JudgedReadings } from './judged-readings.ts';
import type { ToldAgain } from './told-again.ts';

/** What a table of the teacher's page is made from. */
export interface TableView {
  readonly language: Language;
  readonly isClosed: boolean;
  readonly readings: readonly LoggedReading[];
  readonly judged: JudgedReadings;
  /** What the groups' own pages ask for once more. */
  readonly told: ReadonlyMap<string, ToldAgain>;
}

/** Millimetres of paper: as short as graduations can be told apart, so that numbers are large where a strip is narrow. */
const STRIP_LENGTH = 90;

/** A table as the teacher sees it: what it has to say as a whole, then each setup with its strip and readings. */
export function teacherTable(table: PreparedTable, view: TableView): TeacherTable {
  const { language, judged } = view;
  return {
    mark: table.mark,
    title: titleIn(language, table),
    isClosed: view.isClosed,
    findings: judged.findings
      .filter((finding) => finding.table === table.mark)
      .flatMap((finding) => tableFindingText(language, finding, table.setups)),
    setups: table.setups.map((at) => teacherSetup(at, table, view)),
  };
}

function teacherSetup(
  at: PreparedSetup,
  table: PreparedTable,
  view: TableView,
): TeacherTable['setups'][number] {
  const { language } = view;
  const { mark } = at.setup;
  const own = view.readings.filter(({ reading }) => reading.setup === mark);
  const good = goodRangeOf(at.prediction);
  return {
    mark,
    summary: outcomeText(language, at.prediction),
    strip: stripOf(at, own, view),
    range: good === null ? '' : rangeText(language, at.prediction, good),
    readings: own.map((reading) => teacherReading(reading, table, view)),
  };
}

/** The strip with a dot for each reading that is a number, under its group's label. */
function stripOf(at: PreparedSetup, own: readonly LoggedReading[], { language, judged }: TableView): string {
  const readings = own.flatMap(({ id, reading }) => {
    const judgement = judged.byId.get(id)?.judgement;
    return judgement === undefined ? [] : [{ judgement, label: reading.group }];
  });
  const name = `strip ${at.setup.mark}`;
  const drawn = classStrip(at, readings, { language, name, length: STRIP_LENGTH, hideGood: false });
  return drawn === null ? '' : fragment(drawn, `live ${at.setup.mark}`);
}

const VERDICTS: Readonly<Record<Judgement['verdict'], TeacherReading['verdict']>> = {
  good: 'good',
  'a little off': 'little-off',
  'look again': 'look-again',
  'no reading': 'unread',
  unreadable: 'unread',
  'not judged': 'unread',
};

function teacherReading(logged: LoggedReading, table: PreparedTable, view: TableView): TeacherReading {
  const { language, judged, told } = view;
  const { id, reading, before, when, isVoid } = logged;
  const found = judged.byId.get(id);
  const written = {
    id,
    group: reading.group,
    written: reading.written === '' ? (reading.turns ?? '') : reading.written,
    before,
    when,
    isVoid,
    isAskedAgain: told.has(id),
  };
  if (found === undefined)
    return {
      ...written,
      verdict: 'unread',
      verdictText: sentence(language, 'verdict.not judged'),
      cause: null,
      say: null,
      remarks: [],
    };
  const said = queriedText(language, found.judgement);
  return {
    ...written,
    verdict: VERDICTS[found.judgement.verdict],
    verdictText: verdictText(language, found.judgement, found.at),
    cause: said?.toTeacher ?? null,
    say: said?.toGroup ?? null,
    remarks: judgedRemarks(language, found, table.setups),
  };
}
