import { isNotDefined, type NotDefined } from '../../core/description/not-defined.ts';
import type { Prediction } from '../../core/setups/prediction.ts';
import type { WorkEntry } from '../../core/setups/work-account.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { columns } from './columns.ts';
import { notDefinedText } from './prediction-text.ts';
import { sixFigures } from './substitute.ts';

/** Advantage, velocity ratio, efficiency and the work account, or why one of them can't be said. */
export function workText(language: Language, prediction: Prediction): readonly string[] {
  const figure = (key: string, value: number | NotDefined): readonly string[] => [
    sentence(language, `work.${key}`),
    isNotDefined(value) ? notDefinedText(language, value) : sixFigures(value),
  ];
  const rows = [
    figure('ideal-advantage', prediction.idealAdvantage),
    figure('actual-advantage', prediction.actualAdvantage),
    figure('velocity-ratio', prediction.velocityRatio),
    figure('efficiency', prediction.efficiency),
  ];
  return [
    sentence(language, 'work.heading'),
    ...columns(rows, ['left', 'left']).map((line) => `  ${line}`),
    ...accountText(language, prediction),
  ];
}

/** What was given to the machine stands over what was taken from it. */
function accountText(language: Language, { account }: Prediction): readonly string[] {
  if (isNotDefined(account))
    return [`  ${sentence(language, 'work.account')}: ${notDefinedText(language, account)}`];
  const entry =
    (side: 'given' | 'taken') =>
    (each: WorkEntry): readonly string[] => [
      sentence(language, `work.${side}`),
      `${sixFigures(each.joules)} J`,
      sentence(language, causeKey(each, side)),
    ];
  const travel = { si: account.effortTravel, dimension: 'length' } as const;
  return [
    `  ${sentence(language, 'work.account-for', { travel })}`,
    ...columns(
      [...account.given.map(entry('given')), ...account.taken.map(entry('taken'))],
      ['left', 'right', 'left'],
    ).map((line) => `    ${line}`),
  ];
}

/** Hand, load and scale are named here, what else there is by its machine. */
function causeKey({ by, cause }: WorkEntry, side: 'given' | 'taken'): string {
  switch (by) {
    case 'hand':
    case 'load':
      return `work.by.${by}`;
    case 'falling scale':
      return side === 'given' ? 'work.by.falling-scale' : 'work.by.raised-scale';
    default:
      return cause;
  }
}
