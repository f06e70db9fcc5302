import type { MachinesFound } from '../../core/discussion/machines-at-tables.ts';
import { factText } from '../sentences/sentence.ts';
import type { TalkContent, TalkWords } from './talk-page.ts';

/** Which machine is which: names on one side, sentences on the other, never beside their own. */
export function machinesPage({ machines }: MachinesFound, { say, language }: TalkWords): TalkContent {
  const name = ({ machine, tables }: MachinesFound['machines'][number]): string =>
    say('talk.machines.at', { machine: say(`${machine}.school`), tables: factText(language, tables) });
  const sentenceAt = (place: number): string =>
    machines.flatMap((each) => (each.place === place ? [say(`${each.machine}.does`)] : []))[0] ?? '';
  return {
    shown: [
      {
        part: 'table',
        head: [say('talk.machines.machine'), say('talk.machines.letter'), say('talk.machines.does')],
        rows: machines.map((each, n) => [name(each), letterOf(n), sentenceAt(n)]),
      },
    ],
    answer: [
      {
        part: 'table',
        head: [
          say('talk.machines.machine'),
          say('talk.machines.letter'),
          say('talk.machines.trades'),
          say('talk.machines.lives'),
        ],
        rows: machines.map((each) => [
          say(`${each.machine}.school`),
          letterOf(each.place),
          say(`${each.machine}.trades`),
          say(`${each.machine}.lives`),
        ]),
      },
    ],
    model: [
      say('talk.machines.answer', {
        pairs: machines.map(({ machine, place }) =>
          say('talk.machines.line', { machine: say(`${machine}.school`), letter: letterOf(place) }),
        ),
      }),
    ],
  };
}

const letterOf = (place: number): string => String.fromCharCode(97 + place);
