import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { advise } from '../../core/advise.ts';
import { isError } from '../../core/diagnostics/diagnostic.ts';
import { prepare } from '../../core/prepare.ts';
import { setupNamed } from '../../core/review.ts';
import type { Texts } from './prepare-wire.ts';
import { withOffer } from './use-offer.ts';

const file = (name: string) => ({
  name: name.slice(name.indexOf('/') + 1),
  text: readFileSync(`examples/${name}`, 'utf8'),
});
const demo: Texts = {
  kit: file('brackwater/boathouse.kit.yaml'),
  activity: file('brackwater/harbour-day.activity.yaml'),
  visit: file('brackwater/harbour-day.visit.yaml'),
};
const ferry: Texts = {
  kit: file('second-kit/ferry.kit.yaml'),
  activity: file('second-kit/ferry-day.activity.yaml'),
  visit: file('second-kit/ferry-day.visit.yaml'),
};

/** The activity as somebody writes it who has a comma in every number. */
const withCommas = ({ activity, ...others }: Texts): Texts => ({
  ...others,
  activity: { ...activity, text: `${activity.text.replace(/(\d)\.(\d)/g, '$1,$2')}\ndecimal: comma\n` },
});

test.each([
  ['the demo', demo],
  ['the demo with decimal commas', withCommas(demo)],
  ['the second kit', ferry],
])('what is set up with one key reads as the advice says: %s', (_what, texts) => {
  const prepared = prepare(texts);
  const offers = advise(prepared).flatMap(({ setups, pairs }) => [
    ...setups.flatMap(({ cures }) => cures),
    ...pairs.flatMap(({ alternatives }) => alternatives),
  ]);
  let used = 0;
  for (const offer of offers) {
    const made = withOffer(texts, prepared, offer);
    if (made === null) continue;
    used += 1;
    const after = prepare(made);
    expect(after.diagnostics.filter(isError)).toEqual([]);
    for (const { setup, prediction } of offer.setups)
      expect([setup.mark, setupNamed(after, setup.mark)?.prediction.outcome]).toEqual([
        setup.mark,
        prediction.outcome,
      ]);
  }
  expect(used).toBeGreaterThanOrEqual(offers.length / 2);
});
