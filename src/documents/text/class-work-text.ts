import { isNotDefined } from '../../core/description/not-defined.ts';
import { decimalsFor, decimalText } from '../../core/quantities/print-quantity.ts';
import type {
  ClassSummary,
  SetupFound,
  Surprising,
  WorkFound,
  WorkSaved,
} from '../../core/readings/class-summary.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { glued, percent } from './class-figure-text.ts';

/** Joules of one account: to two digits of what is not known of the pull's work, and hundredths at least. */
export const joulesText =
  (language: Language, { pulled }: WorkFound) =>
  (value: number): string =>
    decimalText(value, Math.max(2, decimalsFor(pulled.u)), languagePack(language).decimal);

/** Where the work of one setup went, and whether in and out can be told apart. */
export function workText(
  language: Language,
  { setup, work }: SetupFound,
  saved: WorkSaved,
): readonly string[] {
  if (isNotDefined(work)) return [];
  const joules = joulesText(language, work);
  const balance = saved.no.includes(setup) ? 'lost' : saved.yes.includes(setup) ? 'won' : 'alike';
  return [
    `${sentence(language, work.helped === null ? 'summary.work.at' : 'summary.work.helped', {
      setup,
      travel: { si: work.travel, dimension: 'length' },
      pulled: joules(work.pulled.value),
      ...(work.helped === null ? {} : { helped: joules(work.helped.value) }),
      out: joules(work.out.value),
    })} ${sentence(language, `summary.work.${balance}`, { rest: joules(Math.abs(work.rest)) })}`,
  ];
}

/** Whether the machine saved work, by the class's numbers. */
export function savedText(language: Language, { saved, setups }: ClassSummary): readonly string[] {
  const say = (key: string, facts = {}) => sentence(language, `summary.saved.${key}`, facts);
  const { least } = saved;
  if (least === null) return [say('nothing')];
  const told = (which: Exclude<keyof WorkSaved, 'least'>): readonly string[] =>
    saved[which].length === 0 ? [] : [say(which, { setups: saved[which] })];
  const best = setups.reduce<{ setup: string; value: number } | null>(
    (before, { setup, advantage }) =>
      isNotDefined(advantage) || advantage.from <= 1 || advantage.value <= (before?.value ?? 0)
        ? before
        : { setup, value: advantage.value },
    null,
  );
  return [
    ...told('no'),
    ...told('open'),
    ...told('yes'),
    ...(least.notSaved > 0.995
      ? []
      : [say('least', { setup: least.setup, percent: percent(least.notSaved) })]),
    ...(best === null
      ? []
      : [
          say('force', {
            setup: best.setup,
            advantage: decimalText(best.value, 1, languagePack(language).decimal),
          }),
        ]),
  ];
}

/** Setup by setup and number by number; what a changed station leads to is told of the station. */
export function surprisingText(language: Language, { surprising, setups }: ClassSummary): readonly string[] {
  const ofStation = new Set(
    setups.flatMap(({ setup, leftOut }) =>
      leftOut.flatMap(({ because, line }) => (because === 'station' ? [`${setup} ${line}`] : [])),
    ),
  );
  const told = surprising.filter(({ setup, line }) => !ofStation.has(`${setup} ${line}`));
  const alike = new Map<string, Surprising[]>();
  for (const each of told) {
    const key = JSON.stringify([each.setup, each.written]);
    alike.set(key, [...(alike.get(key) ?? []), each]);
  }
  if (told.length === 0) return [];
  const count = surprising.length - told.length;
  return [
    ...[...alike.values()].flatMap((each) => {
      const [first] = each;
      return first === undefined
        ? []
        : [
            sentence(language, 'summary.surprising.one', {
              setup: first.setup,
              written: glued(first.written),
              percent: percent(first.efficiency),
              u: percent(1.96 * first.u),
              groups: each.map(({ group }) => group),
            }),
          ];
    }),
    ...(count === 0 ? [] : [sentence(language, 'summary.surprising.station', { count })]),
  ];
}
