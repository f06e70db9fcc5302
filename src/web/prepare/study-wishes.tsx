import { useState } from 'preact/hooks';
import type { Whole } from '../engine/prepare-wire.ts';
import type { StudyOf } from '../engine/study-wire.ts';
import { prepareEn } from '../words/prepare-en.ts';
import type { PrepareKey, PrepareSay } from '../words/prepare-words.ts';

export interface StudyWishesProps {
  readonly say: PrepareSay;
  readonly of: StudyOf;
  readonly tables: Whole['tables'];
  readonly ask: (of: StudyOf) => void;
}

/** What may be said besides: which table, how large a class, which sheets. */
export function StudyWishes({ say, of, tables, ask }: StudyWishesProps) {
  switch (of.kind) {
    case 'advice':
      return (
        <label class="wish">
          {say('prepare.study.table')}
          <select
            value={of.table ?? ''}
            onChange={({ currentTarget: { value } }) =>
              ask({ kind: 'advice', table: value === '' ? null : value })
            }
          >
            {tables.map(({ mark, title }) => (
              <option key={mark} value={mark}>
                {mark}. {title}
              </option>
            ))}
            <option value="">{say('prepare.study.all')}</option>
          </select>
        </label>
      );
    case 'rehearsal':
      return <RehearsalWishes say={say} ask={ask} />;
    case 'sheets':
      return (
        <label class="wish">
          {say('prepare.study.which')}
          <select
            value={of.name}
            onChange={({ currentTarget: { value } }) => ask({ kind: 'sheets', name: value })}
          >
            {SHEETS.map((key) => (
              <option key={key} value={key.slice(SHEET.length)}>
                {say(key)}
              </option>
            ))}
          </select>
        </label>
      );
    default:
      return null;
  }
}

const SHEET = 'prepare.sheet.';
const SHEETS = (Object.keys(prepareEn) as PrepareKey[]).filter((key) => key.startsWith(SHEET));

const MOST = { groups: 12, mistakes: 20, seed: 1_000_000 } as const;
type Wish = keyof typeof MOST;
const NAMES: Readonly<Record<Wish, PrepareKey>> = {
  groups: 'prepare.study.groups',
  mistakes: 'prepare.study.mistakes',
  seed: 'prepare.study.class',
};

/** A class that never was: how large, with how many mistakes, and which of them all. */
function RehearsalWishes({ say, ask }: Pick<StudyWishesProps, 'say' | 'ask'>) {
  const [wishes, setWishes] = useState<Readonly<Record<Wish, string>>>({
    groups: '',
    mistakes: '4',
    seed: '1',
  });
  const askFor = (next: typeof wishes): void => {
    setWishes(next);
    const numbers = Object.entries(next).flatMap(([name, text]) => {
      const number = Number(text);
      const isSound = text !== '' && Number.isInteger(number) && number >= (name === 'groups' ? 1 : 0);
      return isSound && number <= MOST[name as Wish] ? [[name, number] as const] : [];
    });
    ask({ kind: 'rehearsal', asked: Object.fromEntries(numbers) });
  };
  return (
    <div class="acts">
      {(Object.keys(NAMES) as Wish[]).map((name) => (
        <label key={name} class="wish">
          {say(NAMES[name])}
          <input
            type="number"
            min={name === 'groups' ? 1 : 0}
            max={MOST[name]}
            data-wish={name}
            value={wishes[name]}
            onChange={({ currentTarget: { value } }) => askFor({ ...wishes, [name]: value })}
          />
        </label>
      ))}
      <button type="button" onClick={() => askFor({ ...wishes, seed: String(Number(wishes.seed) + 1) })}>
        {say('prepare.study.another')}
      </button>
    </div>
  );
}
