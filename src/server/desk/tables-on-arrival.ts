import { arrivalCheckOf } from '../../core/calibration/arrival-check.ts';
import { asPacked } from '../../core/calibration/rekey.ts';
import { isFollowed } from '../../core/calibration/rekey-table.ts';
import { lastTrials, trialWithUnit } from '../../core/files/trials-on-arrival.ts';
import type { Prepared, PreparedTable } from '../../core/prepare.ts';
import { arrivalReading } from '../../core/readings/arrival-reading.ts';
import type { Predicted } from '../../core/setups/difference.ts';
import type { Language } from '../../documents/sentences/language.ts';
import { sentence } from '../../documents/sentences/sentence.ts';
import { stepsOutsideText } from '../../documents/text/arrival-check-text.ts';
import { goodRangeOf, rangeText } from '../../documents/text/prediction-text.ts';
import type { VisitLog } from '../../store/visit-log.ts';
import type { ArrivalRow } from '../../store/wire.ts';

type Arrivals = VisitLog['arrival'];

/** A row a table: which reading to take, what is good, what was found and what to do then. */
export function arrivalRows(
  language: Language,
  prepared: Prepared,
  arrivals: Arrivals,
): readonly ArrivalRow[] {
  const taken = lastTrials(prepared.tables, arrivals);
  return prepared.tables
    .filter(({ setups }) => setups.length > 0)
    .map((table) => {
      const found = taken.find((each) => each.table === table);
      const at = found === undefined ? arrivalCheckOf(table.setups) : asPacked(found.at);
      const good = at === null ? null : goodRangeOf(at.prediction);
      if (at === null || good === null) return noCheck(language, table);
      const row = {
        table: table.mark,
        setup: at.setup.mark,
        range: rangeText(language, at.prediction, good),
      };
      if (found === undefined) return { ...row, written: null, isInside: null, doThis: null };
      return { ...row, ...foundOn(language, at, good, found.written) };
    });
}

const noCheck = (language: Language, { mark }: PreparedTable): ArrivalRow => ({
  table: mark,
  setup: '',
  range: '',
  written: null,
  isInside: null,
  doThis: sentence(language, 'arrival.command.none'),
});

function foundOn(
  language: Language,
  at: Predicted,
  good: { readonly from: number; readonly to: number },
  written: string,
): Pick<ArrivalRow, 'written' | 'isInside' | 'doThis'> {
  const reading = arrivalReading(at, trialWithUnit(at, written));
  if (reading === null) return { written, isInside: null, doThis: sentence(language, 'live.unreadable') };
  const slack = 1e-6 * (at.prediction.graduations?.step ?? 1);
  const isInside = reading >= good.from - slack && reading <= good.to + slack;
  const follows = isFollowed(at, reading) ? [sentence(language, 'live.arrival.follows')] : [];
  const steps = isInside ? [] : stepsOutsideText(language, at);
  const said = [...steps, ...follows].join(' ');
  return { written, isInside, doThis: said === '' ? null : said };
}
