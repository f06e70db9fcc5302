import type { GroupHabit } from '../../core/readings/group-habit.ts';
import type { Behind, TableFinding } from '../../core/readings/table-finding.ts';
import type { Tie } from '../../core/readings/telling-test.ts';
import type { JudgedReading } from '../../core/review.ts';
import type { Prediction } from '../../core/setups/prediction.ts';
import { readingText } from '../printing/reading-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { factText, sentence } from '../sentences/sentence.ts';
import { unitWords } from '../sentences/unit-words.ts';
import { causeName, causeNamed, causeToTry, type SaidCause } from './cause-text.ts';
import { marksOf } from './prediction-text.ts';

type Setups = readonly JudgedReading['at'][];

/** What a whole table says, a sentence each: what is found, what may be behind it, and the test that tells. */
export function tableFindingText(
  language: Language,
  finding: TableFinding,
  setups: Setups,
): readonly string[] {
  const { code, facts, test } = finding;
  const shown = (setup: string, si: number): string => figureText(language, setups, setup, si);
  return [
    sentence(language, isAlone(finding) ? 'finding.off the list.alone' : `finding.${finding.kind}`, {
      table: finding.table,
      groups: finding.groups,
      of: finding.of,
      cause: code === null ? '' : ofTable(language, { code, ...(facts === undefined ? {} : { facts }) }),
    }),
    ...finding.figures.map(({ setup, found, expected }) =>
      sentence(language, 'finding.figure', {
        setup,
        found: shown(setup, found),
        expected: shown(setup, expected),
      }),
    ),
    ...finding.behind.map((each) => behindText(language, each)),
    ...(test === null
      ? []
      : [
          `${sentence(language, `finding.test.${test.kind}`, { setup: test.setup })} ${sentence(
            language,
            'finding.test.shows',
            { ifStation: shown(test.setup, test.ifStation), ifCard: shown(test.setup, test.ifCard) },
          )}`,
        ]),
  ];
}

/** Nobody else has read there yet: there is nothing that readings could agree with. */
const isAlone = ({ kind, groups }: TableFinding): boolean => kind === 'off the list' && groups === 1;

/** Which weight hangs there; of setups that stand at each other's sign the figures tell which. */
const ofTable = (language: Language, cause: SaidCause): string =>
  cause.facts?.hung === undefined ? causeName(language, cause) : causeNamed(language, cause);

function behindText(language: Language, { what, from, probability }: Behind): string {
  const percent = probability < 0.01 ? '< 1' : Math.round(probability * 100);
  return from === null
    ? sentence(language, `finding.behind.${what}`, { percent })
    : sentence(language, `finding.behind.${what}.from`, { percent, group: from });
}

/** What a group's readings have in common, and what to ask it to do. */
export const habitText = (language: Language, habit: GroupHabit): string =>
  `${sentence(language, 'finding.habit', {
    group: habit.group,
    setups: factText(
      language,
      habit.readings.map(({ setup }) => setup),
    ),
    cause: causeNamed(language, habit),
  })} ${causeToTry(language, habit)}`;

/** The one test that tells apart what a reading can't; empty where there is none. */
export function tieText(language: Language, { test }: Tie, setups: Setups): string {
  if (test === null) return '';
  const { kind, setup, way, load } = test;
  const doing = sentence(language, `test.${kind}`, {
    setup,
    how: way === null ? '' : sentence(language, `way.${way}`),
    load: load ?? '',
  });
  const shows = test.shows.flatMap(({ figure, ...cause }) =>
    figure === null
      ? []
      : [
          sentence(language, 'test.shows', {
            figure: figureText(language, setups, setup, figure),
            cause: causeNamed(language, cause),
          }),
        ],
  );
  const says = shows.length === 0 ? doing : `${doing}: ${shows.join(', ')}`;
  return sentence(language, 'test.tells', { test: says });
}

/** A figure as a setup's own instrument shows it. */
function figureText(language: Language, setups: Setups, mark: string, si: number): string {
  const prediction: Prediction | undefined = setups.find(({ setup }) => setup.mark === mark)?.prediction;
  if (prediction === undefined) return '';
  const marks = marksOf(prediction);
  return `${readingText(marks, si, marks.step, languagePack(language).decimal)} ${unitWords(language, marks.unit)}`;
}
