import { expect, test } from 'vitest';
import {
  asGroup,
  demoAtDesk,
  ofGroup,
  reading,
  shownAfter,
  storedEntries,
} from '../../../test/server/demo-desk.ts';
import { causesOf } from '../../core/readings/causes.ts';
import { figureOf } from '../../core/readings/figure.ts';
import { ownUnit } from '../../core/readings/judgement.ts';
import { pullUnits, travelUnits, turnUnits } from '../../core/readings/reading-units.ts';
import { setupsOf } from '../../core/review.ts';
import type { Happening, Seat } from '../../store/entry.ts';
import { groupCards } from './group-cards.ts';

const demo = demoAtDesk();
const setups = setupsOf(demo.prepared);
const units = { pull: pullUnits, travel: travelUnits, turns: turnUnits, ease: [] } as const;

/** A figure as anybody might print it: in every unit, with up to three decimals and either mark. */
const printed = (si: number, watched: keyof typeof units): readonly string[] =>
  units[watched].flatMap((unit) =>
    [0, 1, 2, 3]
      .map((decimals) => (si / unit.si).toFixed(decimals))
      .filter((text) => text.replace(/\D/g, '').replace(/^0+/, '').length > 1)
      .flatMap((text) => [text, text.replace('.', ',')]),
  );

/** The figures of a setup that nobody in a group may learn: what is expected, and the ends of what is good. */
const secrets = setups.map(({ setup, prediction }) => {
  const { outcome } = prediction;
  const figure = figureOf(outcome);
  const good = 'good' in outcome ? outcome.good : null;
  const all = [figure?.low, figure?.high, good?.from, good?.to].filter((each) => each !== undefined);
  return { mark: setup.mark, texts: new Set(all.flatMap((si) => printed(si, setup.watched))) };
});

const numbersIn = (text: string): readonly string[] => text.match(/\d+(?:[.,]\d+)?/g) ?? [];

/** What a group of the demo writes for each usual mistake at each setup. */
const mistaken = setups.flatMap(({ setup, prediction }) => {
  const own = ownUnit(setup);
  return causesOf(setup, own, prediction).flatMap(({ code, figure, unit }) =>
    figure === null || code === 'good'
      ? []
      : [
          {
            mark: setup.mark,
            code,
            written: String(Number((figure.high / (unit ?? own).si).toPrecision(3))),
          },
        ],
  );
});

test('whatever mistake a group makes at whatever setup, its page names no expected reading, no end of a range and nobody else’s reading', () => {
  expect(mistaken.length).toBeGreaterThan(60);
  // Another group reads everything as expected: those figures would give the key away as well.
  const others = setups.flatMap(({ setup, prediction }, n): (readonly [number, Seat, Happening])[] => {
    const figure = figureOf(prediction.outcome);
    const written = figure === null ? '1' : String(Number((figure.high / ownUnit(setup).si).toPrecision(3)));
    return [[n, ofGroup('B'), reading('B', setup.mark, written)]];
  });
  let asked = 0;
  // Group F reads Spanish: a sentence there may say a number that the English one does not.
  for (const [group, every] of [
    ['A', 1],
    ['F', 4],
  ] as const)
    for (const { mark, written } of mistaken.filter((_, n) => n % every === 0)) {
      const own = [1000, ofGroup(group), reading(group, mark, written)] as const;
      const parts = asGroup(shownAfter(demo, storedEntries([...others, own])), group);
      expect(parts.readings).toHaveLength(1);
      const [said] = parts.readings;
      if (said?.again != null) asked += 1;
      expect(numbersIn(`${said?.again?.say ?? ''} ${said?.again?.tryThis ?? ''}`).join('')).toMatch(/^0*$/);
      const { cards: _, clock: __, ...rest } = parts;
      const shown = JSON.stringify({ ...rest, readings: [{ ...said, written: '', id: '' }] });
      for (const secret of secrets)
        expect(numbersIn(shown).filter((each) => secret.texts.has(each) && /[.,]/.test(each))).toEqual([]);
      expect(shown).not.toContain('"verdict');
    }
  expect(asked).toBeGreaterThan(60);
}, 60_000);

test('a card is the same to the letter whatever its setups are expected to read', () => {
  const tables = demo.prepared.tables.map((table) => ({
    ...table,
    setups: table.setups.map((at) => {
      const { prediction } = at;
      const outcome = { kind: 'reading', expected: 4.321, u: 0.1, good: { from: 4.2, to: 4.4 } } as const;
      return { ...at, prediction: { ...prediction, outcome, pull: null, read: null, lower: null } };
    }),
  }));
  for (const language of ['en', 'es'] as const)
    expect(groupCards(language, { ...demo.prepared, tables })).toEqual(groupCards(language, demo.prepared));
});

test('no card says in words what its setups are expected to read', () => {
  for (const language of ['en', 'es'] as const)
    for (const card of Object.values(groupCards(language, demo.prepared)))
      for (const { mark, html } of card.setups) {
        // Where its scale ends stands on every card, and may be where a good range ends.
        const range = setups.find(({ setup }) => setup.mark === mark)?.setup.scale?.range ?? 0;
        const ends = new Set(printed(range, 'pull'));
        const secret = secrets.find((each) => each.mark === mark);
        const words = html.replace(/<svg[\s\S]*?<\/svg>/g, ' ').replace(/<[^>]*>/g, ' ');
        const withUnit = words.match(/\d+(?:[.,]\d+)?(?= (?:N|g|oz|lb)\b)/g) ?? [];
        expect(withUnit.filter((each) => secret?.texts.has(each) && !ends.has(each))).toEqual([]);
      }
});

test('cards keep to a strict page: no style, no script, no handler', () => {
  const cards = Object.values(groupCards('en', demo.prepared));
  expect(cards).toHaveLength(7);
  for (const { html, setups: own } of cards) {
    const all = [html, ...own.map((each) => each.html)].join('');
    expect(all).not.toMatch(/<style|<script|\sstyle=|\son[a-z]+=/);
  }
});
