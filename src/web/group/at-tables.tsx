import { useEffect, useRef, useState } from 'preact/hooks';
import type { Happening } from '../../store/entry.ts';
import type { GroupParts } from '../../store/wire.ts';
import type { Device, DeviceState } from '../device/device.ts';
import type { Say } from '../words/words.ts';
import { CardView } from './card-view.tsx';
import { bringDrawer, CarryOver, notStored } from './carry-over.tsx';
import { type ListedReading, listedReadings } from './listed-reading.ts';
import { Pad } from './pad.tsx';
import { PlaceHeader } from './place-header.tsx';
import { ReadingList } from './reading-list.tsx';
import { placeOf } from './whereabouts-of-group.ts';

export interface AtTablesProps {
  readonly device: Device<GroupParts>;
  readonly state: DeviceState<GroupParts>;
  readonly say: Say;
  readonly language: string;
  readonly label: string;
}

/** What was done last, in words, and what takes it back. */
interface LastAct {
  readonly words: string;
  readonly undo: Happening;
}

/** A group at work: where it is, its card, what it writes and has written. */
export function AtTables({ device, state, say, language, label }: AtTablesProps) {
  const { parts, outbox } = state;
  const unheard = outbox.items
    .filter(
      ({ whereabouts, entry }) =>
        whereabouts !== 'refused' && (whereabouts !== 'stored' || state.fresh.has(entry.id)),
    )
    .map(({ entry }) => entry);
  const place = placeOf(parts.route, unheard, label);
  const readings = listedReadings(parts.readings ?? [], outbox, state.fresh);
  const [looked, setLooked] = useState<string | null>(null);
  const [chosen, setChosen] = useState<string | null>(null);
  const [anew, setAnew] = useState<ListedReading | null>(null);
  const [last, setLast] = useState<LastAct | null>(null);
  const pad = useRef<HTMLDivElement>(null);
  const own = (place.here ?? place.next)?.table ?? null;
  const table = looked ?? own;
  useEffect(() => {
    setLooked(null);
    setChosen(null);
    setAnew(null);
  }, [own]);

  const card = table === null ? undefined : parts.cards?.[table];
  const setup = card?.setups.find(({ mark }) => mark === chosen) ?? card?.setups[0];
  const { pass } = state;
  /** The teacher takes the group elsewhere: this device waits to be told otherwise. */
  const isFreed = parts.writes?.freed != null && parts.writes.freed === pass?.device;
  const isHeld = parts.writes?.device != null && parts.writes.device !== pass?.device;
  const isElsewhere = (isHeld || isFreed) && !claims(outbox.items);
  useEffect(() => {
    // The first device of a group says that it is the one that writes.
    if (state.isLive && parts.writes?.device === null && !isFreed && !claims(outbox.items))
      void device.write({ kind: 'handed', group: label });
  }, [state.isLive, parts.writes?.device, isFreed]);

  useEffect(() => {
    if (state.isLive) bringDrawer();
  }, [state.isLive]);
  const write = async (what: Happening, words: string, undo: (id: string) => Happening): Promise<void> => {
    const [id = ''] = await device.write(what);
    setLast({ words, undo: undo(id) });
  };
  const toPad = (): void => {
    const field = pad.current?.querySelector<HTMLElement>('input');
    pad.current?.scrollIntoView({ block: 'start' });
    field?.focus({ preventScroll: true });
  };
  /** A setup is shown with its table, wherever the group is by now. */
  const show = (mark: string): void => {
    const found = Object.entries(parts.cards ?? {}).find(([, { setups }]) =>
      setups.some((each) => each.mark === mark),
    );
    if (found !== undefined && found[0] !== table) setLooked(found[0] === own ? null : found[0]);
    setChosen(mark);
  };
  const acts = {
    correct: (reading: ListedReading) => {
      show(reading.setup);
      setAnew(reading);
      setTimeout(toPad, 0);
    },
    again: (reading: ListedReading) => {
      show(reading.setup);
      setAnew(null);
      setTimeout(toPad, 0);
    },
    strike: ({ id, written }: ListedReading) =>
      void write({ kind: 'void', of: id }, say('said.void', { written }), () => ({
        kind: 'restore',
        of: id,
      })),
    restore: ({ id, written }: ListedReading) =>
      void write({ kind: 'restore', of: id }, say('said.restored', { written }), () => ({
        kind: 'void',
        of: id,
      })),
  };
  return (
    <>
      <PlaceHeader
        say={say}
        language={language}
        label={label}
        title={parts.group?.title ?? ''}
        clock={parts.clock}
        place={place}
        table={table}
        isLive={state.isLive}
        now={device.now}
        onLook={(mark) => setLooked(mark === own ? null : mark)}
      />
      <main class="work-place">
        {!state.isLive && <p class="banner quiet">{say('line.away.say')}</p>}
        {isElsewhere && (
          <div class="banner">
            <p>{isFreed ? say('held.freed') : `${say('held.another')} ${say('held.say')}`}</p>
            <button type="button" onClick={() => void device.write({ kind: 'handed', group: label })}>
              {say('held.take')}
            </button>
          </div>
        )}
        <section class="now" aria-labelledby="now">
          <h2 id="now">{headline(say, place, table, looked !== null, parts.clock?.begun ?? null)}</h2>
          {card !== undefined && <p class="table-title">{card.title}</p>}
          {looked !== null ? (
            <button type="button" onClick={() => setLooked(null)}>
              {say('now.back')}
            </button>
          ) : (
            place.here === null &&
            place.next !== null &&
            parts.clock?.begun != null &&
            !isElsewhere && (
              <button
                type="button"
                class="main"
                onClick={() =>
                  void device.write({ kind: 'arrived', group: label, table: place.next?.table ?? '' })
                }
              >
                {say('now.arrived')}
              </button>
            )
          )}
          {table === null && parts.route !== undefined && <p>{say('now.end.say')}</p>}
        </section>
        {parts.route?.waiting != null && place.here === null && (
          <section class="wait" aria-labelledby="wait">
            <h2 id="wait">{say('wait.heading')}</h2>
            <p>{parts.route.waiting}</p>
          </section>
        )}
        {card !== undefined && setup !== undefined && (
          <CardView
            say={say}
            card={card}
            setup={setup}
            readings={readings}
            onChoose={(mark) => {
              setChosen(mark);
              setAnew(null);
            }}
            onToPad={isElsewhere ? null : toPad}
          />
        )}
        <div class="side">
          {setup !== undefined && !isElsewhere && (
            <div ref={pad} class="pad-place">
              <Pad
                key={`${setup.mark} ${anew?.id ?? ''}`}
                say={say}
                group={label}
                setup={setup}
                anew={anew}
                places={card?.setups.filter(({ asks }) => asks.ease).length ?? 0}
                hasOne={readings.some((each) => each.setup === setup.mark && !each.isVoid)}
                onLeave={() => setAnew(null)}
                onWrite={(reading) => {
                  const { written } = reading;
                  const words = say('said.written', { setup: reading.setup, written });
                  if (anew === null) return void write(reading, words, (of) => ({ kind: 'void', of }));
                  const { id, written: before } = anew;
                  setAnew(null);
                  void write(
                    { kind: 'correction', of: id, written },
                    say('said.corrected', { written }),
                    () => ({
                      kind: 'correction',
                      of: id,
                      written: before,
                    }),
                  );
                }}
              />
            </div>
          )}
          <div class="said" role="status">
            {last !== null && <p>{last.words}</p>}
          </div>
          {last !== null && (
            <button
              type="button"
              class="undo"
              onClick={() => {
                void device.write(last.undo);
                setLast(null);
              }}
            >
              {say('said.undo')}
            </button>
          )}
          <CarryOver
            say={say}
            entries={notStored(outbox)}
            isAtOnce={!state.isLive || readings.some(({ whereabouts }) => whereabouts === 'refused')}
          />
          <ReadingList say={say} readings={readings} acts={isElsewhere ? null : acts} />
          {place.here !== null && looked === null && !isElsewhere && (
            <button
              type="button"
              class="leave-table"
              onClick={() =>
                void device.write({ kind: 'done', group: label, table: place.here?.table ?? '' })
              }
            >
              {say('now.done')}
            </button>
          )}
        </div>
      </main>
      <footer>
        <p>{say('where.explain')}</p>
        <button type="button" class="plain" onClick={() => void device.leave()}>
          {say('group.another', { group: label })}
        </button>
      </footer>
    </>
  );
}

type Items = DeviceState<GroupParts>['outbox']['items'];

/** Whether this device has just said that it writes, and the server has not told it back yet. */
const claims = (items: Items): boolean =>
  items.some(
    ({ entry, whereabouts }) =>
      entry.what.kind === 'handed' && (whereabouts === 'here' || whereabouts === 'sent'),
  );

function headline(
  say: Say,
  { here, next, stops }: ReturnType<typeof placeOf>,
  table: string | null,
  isLook: boolean,
  begun: number | null,
): string {
  if (stops.length === 0) return say('looking');
  if (table === null) return say('now.end');
  if (isLook) return say('now.look', { table });
  if (here !== null) return say('now.here', { table });
  const isFirst = begun === null || stops[0] === next;
  return say(isFirst ? 'now.first' : 'now.go', { table });
}
