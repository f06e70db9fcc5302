import { locate } from '../../core/files/locate.ts';
import type { Prepared } from '../../core/prepare.ts';
import type { Wish } from '../../core/rotation/wish.ts';
import type { PeriodWords } from './period-words.ts';

/** A wish in words, as part of a list: "group C does table 4 first". */
export function wishText({ say, at, period }: PeriodWords, wish: Wish): string {
  switch (wish.kind) {
    case 'bell':
      return say('wish.bell', { bell: at(period.rotation.bell) });
    case 'adults': {
      const count = period.rotation.adults.length;
      return say(count === 0 ? 'wish.adults.none' : count === 1 ? 'wish.adults.one' : 'wish.adults', {
        count,
      });
    }
    case 'skips':
      return say('wish.skips', { group: wish.group, table: wish.table });
    case 'closed': {
      const { table, from, to } = wish;
      if (to !== null) return say('wish.closed.during', { table, from: at(from), to: at(to) });
      return from <= 0 ? say('wish.closed', { table }) : say('wish.closed.from', { table, from: at(from) });
    }
    case 'copies':
      return say(wish.copies === 1 ? 'wish.copies.one' : 'wish.copies', {
        table: wish.table,
        copies: wish.copies,
      });
    case 'before':
      return wish.group === null
        ? say('wish.before.all', { first: wish.first, later: wish.then })
        : say('wish.before', { first: wish.first, later: wish.then, group: wish.group });
    case 'does':
    case 'first':
    case 'last':
      return wish.group === null
        ? say(`wish.${wish.kind}.all`, { table: wish.table })
        : say(`wish.${wish.kind}`, { table: wish.table, group: wish.group });
    case 'at':
      return say('wish.at', { group: wish.group, table: wish.table, time: at(wish.time) });
    case 'away': {
      const { group, from, to } = wish;
      if (to === null) return say('wish.away.from', { group, from: at(from) });
      return from <= 0
        ? say('wish.away.until', { group, to: at(to) })
        : say('wish.away', { group, from: at(from), to: at(to) });
    }
    case 'apart':
    case 'together':
      return say(`wish.${wish.kind}`, { groups: wish.groups });
  }
}

/** The same with the line of the visit file on which it stands; what the program itself wishes has none. */
export function wishWithPlace(words: PeriodWords, { visit, sources }: Wished, wish: Wish): string {
  const text = wishText(words, wish);
  if (wish.asked !== undefined) return words.say('rotation.clash.asked', { wish: text, option: wish.asked });
  if (wish.path === null || visit === null) return text;
  const place = locate(sources, { file: visit.file, path: wish.path, on: 'key' });
  return place === null
    ? text
    : words.say('rotation.clash.where', { wish: text, file: place.file, line: place.line });
}

/** The files that wishes stand in. */
export type Wished = Pick<Prepared, 'visit' | 'sources'>;
