import type { SetupSheet } from '../pages/sheet.ts';
import { predictionStrip } from '../strip/prediction-strip.ts';
import { readingStrip } from '../strip/reading-strip.ts';
import { goodRangeOf, outcomeText, rangeText } from '../text/prediction-text.ts';
import type { Block, Cell, SheetOfPaper } from './block.ts';
import { altOf, widthOf } from './drawing-figure.ts';
import { kitSheet } from './kit-sheet.ts';
import type { PaperJob } from './paper-job.ts';
import { paperSvg } from './paper-svg.ts';
import { sayIn } from './say.ts';

const STRIP_LENGTH = 62;

/**
 * The key for groups that wait, a sheet of its own that is laminated too. It holds at the kit's own place,
 * or for standard gravity: a school elsewhere moves it by less than a mark.
 */
export function moreToFindKey(job: PaperJob): readonly SheetOfPaper[] {
  const language = job.languages.key;
  const say = sayIn(language);
  const rows = job.sheet.tables.flatMap((table, n) =>
    table.setups
      .filter(({ mark }) =>
        job.prepared.tables[n]?.setups.some((each) => each.setup.mark === mark && each.isExtra),
      )
      .map((setup): readonly Cell[] => {
        const good = goodRangeOf(setup.prediction);
        return [
          { text: setup.mark, strong: true, note: say('page.table', { mark: table.mark }) },
          good === null
            ? outcomeText(language, setup.prediction)
            : { text: rangeText(language, setup.prediction, good), strong: true },
          strip(job, setup),
          say(
            setup.prediction.watched === 'pull'
              ? `way.${setup.prediction.way}`
              : `watched.${setup.prediction.watched}`,
          ),
        ];
      }),
  );
  if (rows.length === 0) return [];
  const blocks: readonly Block[] = [
    { block: 'title', text: say('sheet.more-key'), about: say('sheet.more-key.about'), facts: [] },
    {
      block: 'table',
      head: ['key.setup', 'key.good', 'key.strip', 'page.read'].map((key) => say(key)),
      rows,
      widths: [0, 2, 5, 2],
    },
    { block: 'text', text: say('key.note.range'), tone: 'small' },
  ];
  return [kitSheet(job, language, { name: 'more-to-find-key', title: say('sheet.more-key'), blocks })];
}

function strip(job: PaperJob, setup: SetupSheet): Cell {
  const language = job.languages.key;
  const shown = predictionStrip(setup.prediction, setup.scale);
  if (shown === null) return '';
  const svg = readingStrip(shown, {
    language,
    name: `more ${setup.mark}`,
    length: STRIP_LENGTH,
    hideGood: false,
  });
  return { svg: paperSvg(svg), alt: altOf(svg), width: widthOf(svg) };
}
