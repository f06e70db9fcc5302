import { isNotDefined } from '../../core/description/not-defined.ts';
import { titleIn } from '../../core/files/titles.ts';
import type { PreparedSetup, PreparedTable } from '../../core/prepare.ts';
import { paintDrawing } from '../../documents/drawing/paint-drawing.ts';
import { fragment } from '../../documents/pages/fragment.ts';
import { scaleEnds } from '../../documents/pages/reading-lines.ts';
import type { SetupSheet } from '../../documents/pages/sheet.ts';
import { setupSheet } from '../../documents/prepare.ts';
import { sentence } from '../../documents/sentences/sentence.ts';
import { unitWords } from '../../documents/sentences/unit-words.ts';
import { predictionStrip } from '../../documents/strip/prediction-strip.ts';
import { readingStrip } from '../../documents/strip/reading-strip.ts';
import { machineName } from '../../documents/text/explain-text.ts';
import { reasonText } from '../../documents/text/key-reason.ts';
import { asSentence, wayText } from '../../documents/text/key-table.ts';
import {
  bothUnits,
  expectedText,
  goodRangeOf,
  marksOf,
  narrowingText,
  outcomeShort,
  outcomeText,
  textbookInBoth,
  textbookText,
} from '../../documents/text/prediction-text.ts';
import type { DrawingView, SetupView, TableRows } from './prepare-wire.ts';

type Language = 'en' | 'es';

const ROOM = { width: 170, height: 95 };
/** As short as graduations can be told apart: its numbers are read on a phone. */
const STRIP = 90;

/** The rows of a table in the list: each setup with its good range. */
export const tableRows = (language: Language, table: PreparedTable): TableRows => ({
  mark: table.mark,
  title: titleIn(language, table),
  machine: machineName(language, table.machine),
  rows: table.setups.map(({ setup, prediction }) => ({
    mark: setup.mark,
    good: outcomeShort(language, prediction),
  })),
  notPrepared: table.notPrepared,
});

/** A setup with all that follows from it; the same sentences and figures that the key prints. */
export function setupView(language: Language, table: PreparedTable, prepared: PreparedSetup): SetupView {
  const sheet = setupSheet(prepared);
  const { prediction } = sheet;
  const good = goodRangeOf(prediction);
  const both = good === null ? null : bothUnits(language, prediction, good);
  const expected = expectedText(language, prediction);
  const strip = predictionStrip(prediction, sheet.scale);
  return {
    table: table.mark,
    setup: sheet.mark,
    way: wayText(language, prediction),
    good: outcomeShort(language, prediction),
    expected: expected === null ? null : `${expected} ${unitWords(language, marksOf(prediction).unit)}`,
    newtons: both?.newtons ?? null,
    grams: both?.grams ?? null,
    schoolbook: schoolbookText(language, sheet),
    why: reasonText(language, sheet),
    narrows: narrowingText(language, prediction),
    strip:
      strip === null
        ? null
        : fragment(
            readingStrip(strip, { language, name: 'strip', length: STRIP, hideGood: false }),
            `setup ${sheet.mark}`,
          ),
  };
}

/** Its figure alone, or the reason why it has none. */
function schoolbookText(language: Language, { prediction: { textbook, graduations } }: SetupSheet): string {
  if (isNotDefined(textbook)) return textbookText(language, textbook, graduations);
  const { newtons, grams } = textbookInBoth(language, textbook, graduations);
  return grams === null ? newtons : `${newtons} (${grams})`;
}

/** How it stands, drawn; where it is drawn at several moments, each by itself. */
export function setupDrawings(
  language: Language,
  table: PreparedTable,
  prepared: PreparedSetup,
): readonly DrawingView[] {
  const sheet = setupSheet(prepared);
  const heading = sentence(language, 'page.setup', { mark: sheet.mark });
  return sheet.figures.map(({ title, drawing }) => {
    const named =
      title === null ? machineName(language, table.machine) : sentence(language, title.key, title.facts);
    const svg = paintDrawing(drawing, {
      language,
      what: `${heading}: ${named}`,
      ...ROOM,
      load: sheet.load,
      reads: asSentence(outcomeText(language, prepared.prediction)),
      scaleEnds: sheet.scale === null ? null : scaleEnds(language, sheet.scale),
    });
    return { title: title === null ? null : named, svg: fragment(svg, `setup ${sheet.mark}`) };
  });
}
