import { useEffect, useRef } from 'preact/hooks';
import type { TableRows } from '../../engine/prepare-wire.ts';
import type { SetupQuestions, SlotQuestion, TableQuestions } from '../../engine/question-wire.ts';
import { type AtQuestions, Found, foundAt, foundBeside, QuestionList } from './question-list.tsx';
import { TakeOut } from './take-out.tsx';

export interface OneTableProps extends AtQuestions {
  readonly table: TableQuestions;
  readonly rows: TableRows | null;
  readonly isInHand: boolean;
  readonly findPair: () => void;
}

/** A table with its setups: of each what stands in it, how it is set up, and the good range that follows. */
export function OneTable({ table, rows, isInHand, findPair, ...at }: OneTableProps) {
  const { say, findings, work } = at;
  const place = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    if (place.current !== null) place.current.open = isInHand;
    if (isInHand) place.current?.querySelector('summary')?.focus();
  }, [isInHand]);
  const { mark, path, another } = table;
  const name = say('newkit.tables.one', { mark, machine: table.title });
  const found = foundAt(findings, 'activity', path);
  const wrong = found.filter(({ severity }) => severity === 'error').length;
  const shown = [...table.questions, ...table.setups];
  return (
    <details ref={place} class="of-kit" data-table={mark}>
      <summary>
        <b>{name}</b>{' '}
        {wrong > 0 ? (
          <span class="needed">◇ {say('newkit.open', { count: wrong })}</span>
        ) : (
          found.length > 0 && <span>! {say('newkit.look', { count: found.length })}</span>
        )}
      </summary>
      <Found findings={foundBeside(findings, 'activity', path, shown)} />
      {table.setups.map((setup) => (
        <OneSetup
          key={setup.mark}
          setup={setup}
          good={rows?.rows.find((row) => row.mark === setup.mark)?.good ?? null}
          isOnly={table.setups.length === 1}
          {...at}
        />
      ))}
      {table.setups.length === 1 && (
        <p>
          <button type="button" onClick={findPair}>
            {say('newkit.pair', { mark })}
          </button>{' '}
          <small>{say('newkit.pair.say')}</small>
        </p>
      )}
      <p>
        <button type="button" onClick={() => work.edit(another)}>
          {say('newkit.setup.another', { mark })}
        </button>{' '}
        <small>{say('newkit.setup.another.say')}</small>
      </p>
      <h4>{say('newkit.tables.about')}</h4>
      <QuestionList questions={table.questions} {...at} />
      <TakeOut say={say} what={name} place={{ file: 'activity', path }} edit={work.edit} />
    </details>
  );
}

interface OneSetupProps extends AtQuestions {
  readonly setup: SetupQuestions;
  readonly good: string | null;
  readonly isOnly: boolean;
}

function OneSetup({ setup, good, isOnly, ...at }: OneSetupProps) {
  const { say, findings, work } = at;
  const { mark, path } = setup;
  const shown = [...setup.questions, ...setup.slots];
  return (
    <section class="one-setup" data-setup={mark}>
      <h4>
        {say('newkit.setup', { mark })}:{' '}
        <span class="good">
          {good === null ? say('newkit.setup.not-yet') : say('newkit.setup.good', { good })}
        </span>
      </h4>
      <Found findings={foundBeside(findings, 'activity', path, shown)} />
      <fieldset>
        <legend>{say('newkit.setup.slots')}</legend>
        {setup.slots
          .filter(({ isNeeded, offers }) => isNeeded || offers.length > 1)
          .map((slot) => (
            <OneSlot key={slot.slot} setup={mark} slot={slot} {...at} />
          ))}
      </fieldset>
      <fieldset>
        <legend>{say('newkit.setup.how')}</legend>
        <QuestionList questions={setup.questions} first={['read', 'scale hangs']} {...at} />
      </fieldset>
      {!isOnly && (
        <TakeOut
          say={say}
          what={say('newkit.setup', { mark })}
          place={{ file: 'activity', path }}
          edit={work.edit}
        />
      )}
    </section>
  );
}

function OneSlot({
  setup,
  slot,
  say,
  findings,
  work,
}: AtQuestions & { readonly setup: string; readonly slot: SlotQuestion }) {
  const id = `${setup} ${slot.slot}`.replaceAll(/[^\w-]/g, '-');
  const name = slot.words.charAt(0).toUpperCase() + slot.words.slice(1);
  return (
    <div class="question">
      <label for={id}>
        {name}
        {slot.isNeeded && slot.mark === '' && <b class="needed"> ◇ {say('newkit.needed')}</b>}
      </label>
      <select
        id={id}
        data-slot={slot.slot}
        value={slot.mark}
        onChange={(event) => {
          const chosen = slot.offers.find(({ mark }) => mark === event.currentTarget.value);
          if (chosen !== undefined) work.edit(chosen.edit);
        }}
      >
        {slot.isNeeded && slot.mark === '' && <option value="">{say('newkit.setup.slot.open')}</option>}
        {slot.offers.map(({ mark, words }) => (
          <option key={mark} value={mark}>
            {mark === '' ? say('newkit.setup.slot.none') : `${mark} (${words})`}
          </option>
        ))}
      </select>
      <Found findings={foundAt(findings, 'activity', slot.path)} />
    </div>
  );
}
