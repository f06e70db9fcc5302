import type { Telling } from '../../store/entry.ts';
import type { TeacherParts } from '../../store/wire.ts';
import type { DeviceState } from '../device/device.ts';
import { whereIn } from './acts.ts';
import { ArrivalCheck } from './arrival-check.tsx';
import { callsOf, tablesOf } from './call.ts';
import { CarriedIn } from './carried-in.tsx';
import { ClassClock } from './class-clock.tsx';
import { DoorAndTelling } from './door-and-telling.tsx';
import { GroupsNow } from './groups-now.tsx';
import { PlanOfPeriod } from './plan-of-period.tsx';
import { TableReadings } from './table-readings.tsx';
import type { InsideProps } from './teacher-screen.tsx';
import { Ways } from './ways.tsx';
import { LastDone, useWhatWasDone } from './what-was-done.tsx';
import { WhomToGoTo } from './whom-to-go-to.tsx';

/** The class as it is now. */
export function AtWork({ device, state, say, language }: InsideProps) {
  const done = useWhatWasDone(device);
  const { clock, visit, groups = [], plan, arrival = [], trouble = [] } = state.parts;
  const view = { say, language, act: done.act, where: whereIn(state.outbox) };
  const tables = tablesOf(state.parts);
  const { items } = state.outbox;
  const waiting = items.filter(({ whereabouts }) => whereabouts === 'here' || whereabouts === 'sent').length;
  const isRefused = items.at(-1)?.whereabouts === 'refused';
  const hasBegun = clock !== undefined && clock.begun !== null;
  const arrivalShown = <ArrivalCheck rows={arrival} {...view} />;
  const doorShown = visit !== undefined && (
    <DoorAndTelling
      visit={{ ...visit, telling: tellingNow(visit.telling, state) }}
      name={state.pass?.visit ?? ''}
      {...view}
    />
  );
  return (
    <>
      <header class="class-head">
        <div class="who">
          <h1>{visit?.title ?? say('teacher.page')}</h1>
          <p class={state.isLive ? 'line live' : 'line away'}>
            <span aria-hidden="true">{state.isLive ? '●' : '○'}</span>{' '}
            {say(state.isLive ? 'line.live' : 'line.away')}
          </p>
        </div>
        {clock !== undefined && (
          <ClassClock clock={clock} way={visit?.way ?? null} now={device.now} {...view} />
        )}
        <Ways say={say} hasBegun={hasBegun} visit={state.pass?.visit ?? ''} />
      </header>
      <main class="class-place">
        <div class="did">
          <LastDone say={say} last={done.last} takeBack={done.takeBack} />
          {waiting > 0 && !state.isLive && <p>□ {say('teacher.on-device', { many: waiting })}</p>}
          {isRefused && <p class="trouble">✕ {say('teacher.refused')}</p>}
        </div>
        {visit?.isOnWall === true && (
          <div class="banner quiet">
            <p>{say('teacher.on-wall')}</p>
            <button
              type="button"
              onClick={() => done.act({ kind: 'wall', shows: null }, { key: 'did.wall.not' })}
            >
              {say('teacher.on-wall.not')}
            </button>
          </div>
        )}
        {trouble.length > 0 && (
          <section class="banner" aria-labelledby="trouble-heading">
            <h2 id="trouble-heading">{say('trouble.heading')}</h2>
            {trouble.map((text) => (
              <p key={text}>{text}</p>
            ))}
          </section>
        )}
        <div class="two">
          {hasBegun ? <WhomToGoTo say={say} calls={callsOf(tables, groups)} /> : doorShown}
          <GroupsNow groups={groups} code={visit?.code ?? ''} {...view} />
        </div>
        {!hasBegun && arrivalShown}
        <section id="readings" aria-labelledby="readings-heading">
          <h2 id="readings-heading">{say('tables.heading')}</h2>
          {tables.map((table) => (
            <TableReadings key={table.mark} table={table} {...view} />
          ))}
        </section>
        {hasBegun && arrivalShown}
        {plan !== undefined && <PlanOfPeriod say={say} plan={plan} />}
        <CarriedIn say={say} visit={state.pass?.visit ?? ''} groups={groups} />
        {hasBegun && doorShown}
      </main>
    </>
  );
}

/** What was chosen on this device counts at once, before the server has said it again. */
function tellingNow(known: Telling, { outbox, fresh }: DeviceState<TeacherParts>): Telling {
  const chosen = outbox.items.flatMap(({ entry: { id, what }, whereabouts }) =>
    what.kind === 'telling' && whereabouts !== 'refused' && (whereabouts !== 'stored' || fresh.has(id))
      ? [what.much]
      : [],
  );
  return chosen.at(-1) ?? known;
}
