import { useState } from 'preact/hooks';
import type { ArrivalRow } from '../../store/wire.ts';
import { recalled, type TeacherView } from './acts.ts';

export interface ArrivalCheckProps extends TeacherView {
  readonly rows: readonly ArrivalRow[];
}

/** One reading at each table before the class comes: inside, or what to do. */
export function ArrivalCheck({ rows, ...view }: ArrivalCheckProps) {
  const { say } = view;
  return (
    <section class="arrival" id="arrival" aria-labelledby="arrival-heading">
      <h2 id="arrival-heading">{say('arrival.heading')}</h2>
      <p class="hint">{say('arrival.say')}</p>
      <ul>
        {rows.map((row) => (
          <Row key={row.table} row={row} {...view} />
        ))}
      </ul>
    </section>
  );
}

function Row({ row, say, act }: TeacherView & { readonly row: ArrivalRow }) {
  const [typed, setTyped] = useState('');
  const { table, setup, range, written, isInside, doThis } = row;
  const state =
    written === null
      ? `○ ${say('arrival.open')}`
      : isInside === null
        ? `? ${say('arrival.unknown', { written })}`
        : isInside
          ? `✓ ${say('arrival.inside', { written })}`
          : `▲ ${say('arrival.outside', { written })}`;
  const write = (): void => {
    const said = typed.trim();
    if (said === '') return;
    setTyped('');
    act(
      { kind: 'arrival', setup, written: said },
      { key: 'did.arrival', facts: { setup, written: said } },
      recalled('did.arrival.not', { setup }),
    );
  };
  return (
    <li>
      <p>
        <b>{say(setup === '' ? 'arrival.none' : 'arrival.take', { table, setup })}</b>
        {setup !== '' && `, ${say('arrival.good', { range })}`}
      </p>
      {setup !== '' && (
        <form
          class="acts"
          onSubmit={(event) => {
            event.preventDefault();
            write();
          }}
        >
          <input
            aria-label={say('arrival.field', { setup })}
            value={typed}
            maxLength={60}
            autocomplete="off"
            inputMode="decimal"
            onInput={({ currentTarget }) => setTyped(currentTarget.value)}
          />
          <button type="submit">{say('arrival.write')}</button>
          <b>{state}</b>
        </form>
      )}
      {doThis !== null && <p>{doThis}</p>}
    </li>
  );
}
