import { useState } from 'preact/hooks';
import type { HelperParts, TeacherTable } from '../../store/wire.ts';
import type { Device, DeviceState } from '../device/device.ts';
import { CardView } from '../group/card-view.tsx';
import type { ListedReading } from '../group/listed-reading.ts';
import { whereIn } from '../teacher/acts.ts';
import { ArrivalCheck } from '../teacher/arrival-check.tsx';
import { SetupReadings } from '../teacher/table-readings.tsx';
import { LastDone, useWhatWasDone } from '../teacher/what-was-done.tsx';
import type { TeacherSay } from '../words/teacher-words.ts';
import { WhoIsHere } from './who-is-here.tsx';

export interface AtTableProps {
  readonly device: Device<HelperParts>;
  readonly state: DeviceState<HelperParts>;
  readonly say: TeacherSay;
  readonly language: string;
  readonly onElsewhere: () => void;
}

/** One table, for the grown-up who stands at it: who is here, what they read and what to say, and the card. */
export function AtTable({ device, state, say, language, onElsewhere }: AtTableProps) {
  const done = useWhatWasDone(device);
  const [chosen, setChosen] = useState<string | null>(null);
  const { clock, table, coming = [], card, arrival = [] } = state.parts;
  const view = { say, language, act: done.act, where: whereIn(state.outbox) };
  const waiting = state.outbox.items.filter(
    ({ whereabouts }) => whereabouts === 'here' || whereabouts === 'sent',
  ).length;
  const setup = card?.setups.find(({ mark }) => mark === chosen) ?? card?.setups[0];
  const hasBegun = clock !== undefined && clock.begun !== null;
  const arrivalShown = arrival.length > 0 && <ArrivalCheck rows={arrival} {...view} />;
  return (
    <main class="class-place helper-place">
      <header class="class-head">
        <div class="who">
          <h1>
            {table === undefined
              ? say('helper.page')
              : say('tables.one', { table: table.mark, title: table.title })}
          </h1>
          <p class={state.isLive ? 'line live' : 'line away'}>
            <span aria-hidden="true">{state.isLive ? '●' : '○'}</span>{' '}
            {say(state.isLive ? 'line.live' : 'line.away')}
          </p>
        </div>
        {table?.isClosed === true && <p class="closed">✕ {say('tables.closed')}</p>}
        {clock !== undefined && (
          <WhoIsHere say={say} language={language} clock={clock} coming={coming} now={device.now} />
        )}
      </header>
      <div class="did">
        <LastDone say={say} last={done.last} takeBack={done.takeBack} />
        {waiting > 0 && <p>□ {say('teacher.on-device', { many: waiting })}</p>}
      </div>
      {!hasBegun && arrivalShown}
      {table !== undefined && (
        <section aria-labelledby="read-heading">
          <h2 id="read-heading">{say('helper.readings')}</h2>
          {table.findings.map((finding) => (
            <p key={finding} class="whole">
              ▦ {finding}
            </p>
          ))}
          <SetupReadings heading="h3" setups={table.setups} {...view} />
        </section>
      )}
      {card !== undefined && setup !== undefined && (
        <section aria-labelledby="card-heading">
          <h2 id="card-heading">{say('helper.card')}</h2>
          <CardView
            say={say}
            card={card}
            setup={setup}
            readings={table === undefined ? [] : listed(table)}
            onChoose={setChosen}
            onToPad={null}
          />
        </section>
      )}
      {hasBegun && arrivalShown}
      <p>
        <button type="button" class="plain" onClick={() => void device.leave().then(onElsewhere)}>
          {say('helper.elsewhere')}
        </button>
      </p>
    </main>
  );
}

/** As the card counts them. */
const listed = ({ setups }: TeacherTable): readonly ListedReading[] =>
  setups.flatMap(({ mark, readings }) =>
    readings.map(({ id, written, before, isVoid }) => ({
      id,
      setup: mark,
      written,
      before,
      isVoid,
      again: null,
      whereabouts: 'stored',
      refusal: null,
    })),
  );
