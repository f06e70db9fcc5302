// The diagnosing side: it sees the three files and the readings file, and nothing else of a class.
import { csvOf } from './files.mjs';
import { knowerSays, rivalsOf } from './knower.mjs';

/** The generator's words for a slip, and the codes of the program that say the same. */
export const SAID = {
  'old zero': ['scale.zero-from-hook-down'],
  'zeroed again': ['scale.zero-set-in-place'],
  lowered: ['way.lowering-for-raising'],
  raised: ['way.raising-for-lowering'],
  'start read': ['way.start-for-moving'],
  'moving read': ['way.moving-for-start'],
  'speeding up': ['way.speeding-up'],
  'wrong mass': ['load.other-weight'],
  partner: ['setup.swapped'],
  'in grams': ['reading.in-grams'],
  'in newtons': ['reading.in-newtons'],
  'in ounces': ['reading.in-ounces'],
  'in kilograms': ['reading.in-kilograms'],
  'in pounds': ['reading.in-pounds'],
  'in centimetres': ['reading.in-centimetres'],
  'ten times': ['reading.ten-times'],
  'a tenth': ['reading.a-tenth'],
  'a hundred times': ['reading.a-hundred-times'],
  'marks of half': ['reading.marks-of-half'],
  'digits swapped': ['reading.digits-swapped'],
  'load hole right': ['lever.load-hole-right'],
  'load hole left': ['lever.load-hole-left'],
  'pull hole right': ['lever.pull-hole-right'],
  'pull hole left': ['lever.pull-hole-left'],
  'load from the other end': ['lever.load-counted-from-the-other-end'],
  'pull from the other end': ['lever.pull-counted-from-the-other-end'],
  'pin too high': ['incline.pin-too-high'],
  'pin too low': ['incline.pin-too-low'],
  'string not along': ['incline.string-not-along'],
  'string not level': ['drag.string-not-level'],
  'cart left empty': ['incline.left-empty', 'drag.left-empty'],
  'one part fewer': ['tackle.one-part-fewer'],
  'one part more': ['tackle.one-part-more'],
  'line winds on itself': ['windlass.line-winds-on-itself'],
  'short of the mark': ['wedge.not-to-the-mark'],
  'past the mark': ['wedge.past-the-mark'],
  'lines swapped': ['windlass.lines-swapped'],
  'turn more': ['screw.turn-more'],
  'turn less': ['screw.turn-less'],
  'half turns': ['screw.half-turns'],
  'not flush': ['screw.not-flush'],
  stray: ['unexplained'],
};

/** The words for a cause of the program; a code without words stands for itself. */
const WORDS = new Map(Object.entries(SAID).flatMap(([words, codes]) => codes.map((code) => [code, words])));
export const wordsFor = ({ code, facts }) => {
  const words = WORDS.get(code) ?? code;
  return typeof facts?.hung === 'string' ? `${words} ${facts.hung}` : words;
};

/** A prepared class and what the program makes of its readings, row by row. */
export function judgeClass(program, drawn, options) {
  const prepared = program.prepare(drawn.files);
  const setups = new Map(
    prepared.tables.flatMap((table) => table.setups.map((each) => [each.setup.mark, each])),
  );
  const missing = drawn.readings.find(({ setup }) => !setups.has(setup));
  if (missing !== undefined) {
    const why = prepared.diagnostics.filter(({ severity }) => severity === 'error').map(({ code }) => code);
    throw new Error(`setup ${missing.setup} was not prepared: ${why.join(', ')}`);
  }
  const file = { name: 'readings.csv', text: csvOf(drawn.readings) };
  const { judged, refused, tables = [], groups = [] } = program.review(prepared, file, options);
  if (judged.length !== drawn.readings.length) throw new Error(`${refused.length} rows were refused`);
  return {
    drawn,
    prepared,
    findings: tables.map((each) => ({ ...each, name: each.code === null ? null : wordsFor(each) })),
    habits: groups.map((each) => ({ group: each.group, name: wordsFor(each) })),
    judged: judged.map(({ judgement, at }, n) => ({
      ...seenAs(drawn.readings[n], judgement, at),
      knower: drawn.readings[n].slip === null ? [] : knowerSays(drawn, drawn.readings[n]),
      rivals: drawn.readings[n].slip === null ? [] : rivalsOf(drawn, drawn.readings[n]),
    })),
  };
}

function seenAs(reading, { verdict, causes, station = null }, { prediction }) {
  const { good = null } = prediction.outcome;
  const half = good === null ? null : (good.to - good.from) / 2;
  return {
    reading,
    verdict,
    causes: causes.map((cause) => ({ name: wordsFor(cause), probability: cause.probability })),
    half,
    siOf: reading.siOf,
    expected: prediction.outcome,
    /** What the program says of the station that this group found. */
    stationIs: station === null ? null : wordsFor(station),
    isOutside: verdict === 'look again' || verdict === 'a little off',
  };
}
