import { useLayoutEffect, useState } from 'preact/hooks';
import type { Telling } from '../../store/entry.ts';
import type { TeacherParts } from '../../store/wire.ts';
import type { TeacherView } from './acts.ts';

export interface DoorAndTellingProps extends TeacherView {
  readonly visit: TeacherParts['visit'];
  /** Which visit, in the server's own name for it. */
  readonly name: string;
}

const TELLINGS: readonly Telling[] = ['nothing', 'again', 'try'];

/** How groups come in, and how much they are told. */
export function DoorAndTelling({ visit, name, say, act }: DoorAndTellingProps) {
  const { code, addresses, telling } = visit;
  // The mark stays where it was put until what was written has come round: it never jumps back and forth.
  const [put, setPut] = useState<Telling | null>(null);
  useLayoutEffect(() => setPut(null), [telling]);
  const tell = (much: Telling) =>
    ({
      what: { kind: 'telling', much },
      said: { key: 'did.telling', facts: { much: say(`telling.${much}`) } },
    }) as const;
  const isLocal = addresses.every((address) => /\/\/(127\.|localhost)/.test(address));
  return (
    <section class="door-card" id="door" aria-labelledby="door-heading">
      <h2 id="door-heading">{say('door.heading.teacher')}</h2>
      <div class="way-in">
        <dl>
          <dt>{say('door.teacher.code')}</dt>
          <dd class="code">{code}</dd>
          <dt>{say('door.teacher.address')}</dt>
          {addresses.map((address) => (
            <dd key={address}>{address}</dd>
          ))}
        </dl>
        <img
          src={`/api/teacher/visits/${encodeURIComponent(name)}/door.svg?for=group`}
          alt={say('door.teacher.picture')}
          width="180"
          height="180"
        />
      </div>
      {isLocal && <p class="hint">{say('door.teacher.local')}</p>}
      <fieldset>
        <legend>{say('telling.heading')}</legend>
        {TELLINGS.map((much) => (
          <label key={much}>
            <input
              type="radio"
              name="telling"
              checked={much === (put ?? telling)}
              onChange={() => {
                setPut(much);
                const { what, said } = tell(much);
                act(what, said, tell(telling));
              }}
            />{' '}
            {say(`telling.${much}`)}
          </label>
        ))}
      </fieldset>
    </section>
  );
}
