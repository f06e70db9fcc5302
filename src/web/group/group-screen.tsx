import { useEffect, useState } from 'preact/hooks';
import type { GroupParts } from '../../store/wire.ts';
import type { Device } from '../device/device.ts';
import { useDeviceState } from '../device/use-device-state.ts';
import { Door } from '../door/door.tsx';
import { sayIn } from '../words/words.ts';
import { AtTables } from './at-tables.tsx';
import { CarryOver, notStored } from './carry-over.tsx';
import { listedReadings } from './listed-reading.ts';
import { ReadingList } from './reading-list.tsx';
import { WallOnTablet } from './wall-on-tablet.tsx';

export interface GroupScreenProps {
  readonly device: Device<GroupParts>;
  readonly language: string;
  readonly code: string;
}

/** Which of its few faces the group's page shows. */
export function GroupScreen({ device, language: first, code }: GroupScreenProps) {
  const state = useDeviceState(device);
  const language = state.parts.group?.language ?? first;
  const say = sayIn(language);
  const label = state.pass?.seat.kind === 'group' ? state.pass.seat.group : '';
  useEffect(() => {
    document.documentElement.lang = language;
    document.title = label === '' ? say('title') : say('group.label', { group: label });
  }, [language, label]);
  const isWaiting = state.outbox.items.some(
    ({ whereabouts }) => whereabouts === 'here' || whereabouts === 'sent',
  );
  useEffect(() => {
    if (state.isKept || !isWaiting) return;
    const ask = (event: BeforeUnloadEvent): void => event.preventDefault();
    addEventListener('beforeunload', ask);
    return () => removeEventListener('beforeunload', ask);
  }, [state.isKept, isWaiting]);

  /** The question at which this group went back to its table; at the next one it follows again. */
  const [left, setLeft] = useState<string | null>(null);
  const { wall } = state.parts;
  const notKept = state.isKept ? null : <p class="banner">{say('kept.not')}</p>;
  switch (state.standing) {
    case 'looking':
      return <main class="door">{say('looking')}</main>;
    case 'outside':
      return (
        <>
          {notKept}
          <Door language={language} code={code} isForGroups join={device.join} onIn={() => undefined} />
        </>
      );
    case 'over': {
      const readings = listedReadings(state.parts.readings ?? [], state.outbox, state.fresh);
      const unsent = readings.some(({ whereabouts }) => whereabouts !== 'stored');
      return (
        <main class="door">
          <h1>{say('over.heading')}</h1>
          <p>{say(unsent ? 'over.unsent' : 'over.say')}</p>
          <CarryOver say={say} entries={notStored(state.outbox)} isAtOnce />
          {readings.length > 0 && <ReadingList say={say} readings={readings} acts={null} />}
        </main>
      );
    }
    case 'inside':
      if (wall !== undefined && left !== wall.ask)
        return (
          <>
            {notKept}
            <WallOnTablet say={say} label={label} wall={wall} leave={() => setLeft(wall.ask)} />
          </>
        );
      return (
        <>
          {notKept}
          {wall !== undefined && (
            <div class="banner">
              <p>{say('wall.away')}</p>
              <button type="button" onClick={() => setLeft(null)}>
                {say('wall.back')}
              </button>
            </div>
          )}
          <AtTables device={device} state={state} say={say} language={language} label={label} />
        </>
      );
  }
}
