import { titleIn } from '../../core/files/titles.ts';
import { graduationsOutward } from '../../core/instruments/graduations.ts';
import type { PreparedSetup, PreparedTable } from '../../core/prepare.ts';
import type { Judgement } from '../../core/readings/judgement.ts';
import { fragment } from '../../documents/pages/fragment.ts';
import type { ScaleSheet } from '../../documents/pages/sheet.ts';
import { setupSheet } from '../../documents/prepare.ts';
import type { Language } from '../../documents/sentences/language.ts';
import { sentence } from '../../documents/sentences/sentence.ts';
import { predictionStrip } from '../../documents/strip/prediction-strip.ts';
import { readingStrip, type Strip } from '../../documents/strip/reading-strip.ts';
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

const STRIP_LENGTH = 150;

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

/** A sheet is drawn anew whenever it is asked for; its scale stays what it is. */
const scales = new WeakMap<PreparedSetup['setup'], ScaleSheet | null>();
function scaleOf(at: PreparedSetup): ScaleSheet | null {
  const known = scales.get(at.setup);
  const scale = known === undefined ? setupSheet(at).scale : known;
  scales.set(at.setup, scale);
  return scale;
}

/** The strip with a dot for each reading that is a number; an order felt has none. */
function stripOf(at: PreparedSetup, own: readonly LoggedReading[], { language, judged }: TableView): string {
  const strip = predictionStrip(at.prediction, scaleOf(at));
  if (strip === null) return '';
  const dots = own.flatMap(({ id, reading }) => {
    const judgement = judged.byId.get(id)?.judgement;
    if (judgement === undefined || judgement.value === null) return [];
    const isQueried = judgement.verdict === 'look again';
    return [
      { label: reading.group, si: judgement.value, ...(isQueried ? { lookAgain: true as const } : {}) },
    ];
  });
  const name = `strip ${at.setup.mark}`;
  const drawn = readingStrip(withDots(strip, dots), {
    language,
    name,
    length: STRIP_LENGTH,
    hideGood: false,
  });
  return fragment(drawn, `live ${at.setup.mark}`);
}

/** A count or a length far off lengthens its strip, up to a size at which the good range can still be seen. */
function withDots(strip: Strip, dots: Strip['dots']): Strip {
  if (strip.ends) return { ...strip, dots };
  const most = Math.min(Math.max(strip.to, ...dots.map(({ si }) => si)), 3 * strip.to);
  return { ...strip, ...graduationsOutward(strip.graduations, strip.from, most), dots };
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
