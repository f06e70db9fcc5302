import { useState } from 'preact/hooks';
import type { Edit, Whole } from '../../engine/prepare-wire.ts';
import type { MachineOffered, Questions } from '../../engine/question-wire.ts';
import type { PrepareWork } from '../prepare-work.ts';
import { sameTexts } from '../text-history.ts';
import { OneTable } from './one-table.tsx';
import type { AtQuestions } from './question-list.tsx';
import type { QuestionsAtHand } from './use-questions.ts';

export interface StepTablesProps extends AtQuestions {
  readonly work: PrepareWork;
  readonly questions: Questions;
  readonly whole: Whole | null;
  readonly start: QuestionsAtHand['start'];
  readonly pair: QuestionsAtHand['pair'];
}

/** Which machine stands on each table, and how it is set up. */
export function StepTables({ questions, whole, start, pair, ...at }: StepTablesProps) {
  const { say, work } = at;
  const [told, setTold] = useState('');
  const [inHand, setInHand] = useState('');
  const { tables, taken } = questions;
  const begin = async ({ name, title }: MachineOffered): Promise<void> => {
    const mark = freeNumber(taken);
    setTold(say('newkit.tables.searching'));
    const started = await start(name, mark, title);
    if (started === null) return setTold(say('newkit.not-read'));
    work.edit(started.edit);
    setInHand(mark);
    setTold(say(`newkit.tables.found.${started.found}`));
  };
  const findPair = async (mark: string): Promise<void> => {
    const texts = work.textsNow();
    setTold(say('newkit.pair.searching'));
    const found = await pair(texts, mark);
    // What was changed meanwhile is not written over.
    if (!sameTexts(texts, work.textsNow())) return findPair(mark);
    if (found === null) return setTold(say('newkit.pair.none'));
    work.put(found.texts);
    setTold(say('newkit.pair.found', { more: found.more, less: found.less, count: found.of100 }));
  };
  const write = (edit: Edit): void => {
    setTold('');
    work.edit(edit);
  };
  return (
    <>
      <p>{say('newkit.tables.say')}</p>
      <h3>{say('newkit.tables.machine')}</h3>
      <ul class="machines">
        {questions.machines.map((machine) => (
          <li key={machine.name}>
            <button
              type="button"
              disabled={machine.lacks.length > 0}
              aria-describedby={`newkit-${machine.name}`.replaceAll(' ', '-')}
              onClick={() => void begin(machine)}
            >
              {say('newkit.tables.add', { machine: machine.title })}
            </button>
            <small id={`newkit-${machine.name}`.replaceAll(' ', '-')}>
              {machine.does}{' '}
              {machine.lacks.length > 0 && (
                <b>× {say('newkit.tables.lacks', { kinds: machine.lacks.join(', ') })}</b>
              )}
            </small>
          </li>
        ))}
      </ul>
      <p role="status">{told}</p>
      {tables.length === 0 && <p class="hint">{say('newkit.tables.none')}</p>}
      {tables.map((table) => (
        <OneTable
          key={table.mark}
          table={table}
          rows={whole?.tables.find(({ mark }) => mark === table.mark) ?? null}
          isInHand={table.mark === inHand}
          findPair={() => void findPair(table.mark)}
          {...at}
          work={{ ...work, edit: write }}
        />
      ))}
    </>
  );
}

/** The first number that nothing bears yet. */
function freeNumber(taken: readonly string[]): string {
  for (let n = 1; ; n += 1) if (!taken.includes(String(n))) return String(n);
}
