import { decimalText } from '../../core/quantities/print-quantity.ts';
import type { FeltOrder } from '../../core/readings/class-order.ts';
import { intervalRows } from '../drawing/interval-rows.ts';
import { languagePack } from '../sentences/language.ts';
import { feltText } from '../text/class-pairs-text.ts';
import { lines, PICTURE_WIDTH, type TalkContent, type TalkPart, type TalkWords } from './talk-page.ts';

/** Which felt easier: the mean places as the class felt them; an order and no number. */
export function easePage(orders: readonly FeltOrder[], words: TalkWords): TalkContent {
  const { say, language } = words;
  const told = [...orders.map((order) => feltText(language, order)), say('talk.ease.rule')];
  return {
    shown: [],
    answer: [...orders.map((order) => picture(order, words)), ...lines(told)],
    model: told,
  };
}

function picture({ table, setups }: FeltOrder, { say, language }: TalkWords): TalkPart {
  const caption = say('talk.ease.picture', { table });
  const place = (value: number): string => decimalText(value, 1, languagePack(language).decimal);
  const svg = intervalRows({
    axis: { from: 1, to: setups.length, step: 1, text: String },
    line: null,
    rows: setups.map(({ setup, meanPlace }) => ({
      label: setup,
      value: meanPlace,
      from: meanPlace,
      to: meanPlace,
      diamond: null,
      word: '',
    })),
    legend: { dot: say('talk.ease.dot'), diamond: null },
    name: `talk ease ${table}`,
    title: caption,
    description: setups
      .map(({ setup, meanPlace }) => say('talk.ease.described', { setup, place: place(meanPlace) }))
      .join(' '),
    width: PICTURE_WIDTH,
  });
  return { part: 'figure', caption, svg };
}
