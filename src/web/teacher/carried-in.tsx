import { useState } from 'preact/hooks';
import { readCarried } from '../../store/carried.ts';
import type { Entry } from '../../store/entry.ts';
import { MOST_IN_DELIVERY } from '../../store/outbox.ts';
import type { EntriesAnswer, TeacherGroup } from '../../store/wire.ts';
import { ask } from '../device/ask.ts';
import type { TeacherSay } from '../words/teacher-words.ts';

export interface CarriedInProps {
  readonly say: TeacherSay;
  readonly visit: string;
  readonly groups: readonly TeacherGroup[];
}

interface Outcome {
  readonly stored: number;
  readonly refused: number;
  readonly unread: readonly string[];
  readonly trouble: 'carried.away' | 'carried.other' | 'carried.nothing' | null;
}
const NONE: Outcome = { stored: 0, refused: 0, unread: [], trouble: null };

/** What a tablet without network shows, typed, pasted or scanned. What could not be stored stays in the field. */
export function CarriedIn({ say, visit, groups }: CarriedInProps) {
  const [text, setText] = useState('');
  const [outcome, setOutcome] = useState<Outcome | null>(null);
  const [isBusy, setBusy] = useState(false);
  const bring = async (): Promise<void> => {
    const device = (label: string) => groups.find((group) => group.label === label)?.device ?? null;
    const { entries, unread, isOfOther } = readCarried(text, { visit, device, now: Date.now() });
    if (isOfOther) return setOutcome({ ...NONE, trouble: 'carried.other' });
    if (entries.length + unread.length === 0) return setOutcome({ ...NONE, trouble: 'carried.nothing' });
    setBusy(true);
    const answer = await delivered(entries);
    setBusy(false);
    if (answer === null) return setOutcome({ ...NONE, trouble: 'carried.away' });
    setText(unread.join('\n'));
    setOutcome({ ...NONE, ...answer, unread });
  };
  return (
    <section class="carried-in" id="carried" aria-labelledby="carried-heading">
      <h2 id="carried-heading">{say('carried.heading')}</h2>
      <p class="hint" id="carried-hint">
        {say('carried.say')}
      </p>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void bring();
        }}
      >
        <label for="carried-field">{say('carried.field')}</label>
        <textarea
          id="carried-field"
          rows={4}
          value={text}
          spellcheck={false}
          autocomplete="off"
          aria-describedby="carried-hint"
          onInput={({ currentTarget }) => setText(currentTarget.value)}
        />
        <p class="acts">
          <button type="submit" disabled={isBusy}>
            {say('carried.do')}
          </button>
        </p>
      </form>
      <div role="status">
        {outcome?.trouble != null && <p class="trouble">{say(outcome.trouble)}</p>}
        {outcome !== null && outcome.stored > 0 && <p>✓ {say('carried.stored', { many: outcome.stored })}</p>}
        {outcome !== null && outcome.refused > 0 && (
          <p class="trouble">✕ {say('carried.refused', { many: outcome.refused })}</p>
        )}
        {outcome?.unread.map((line) => (
          <p class="trouble" key={line}>
            ✕ {say('carried.unread', { line })}
          </p>
        ))}
      </div>
    </section>
  );
}

/** `null`: nobody answered, and it has to be tried once more; what was stored by then counts once. */
async function delivered(entries: readonly Entry[]): Promise<Pick<Outcome, 'stored' | 'refused'> | null> {
  let [stored, refused] = [0, 0];
  for (let from = 0; from < entries.length; from += MOST_IN_DELIVERY) {
    const request = { sent: Date.now(), entries: entries.slice(from, from + MOST_IN_DELIVERY) };
    const answer = await ask<EntriesAnswer>('/api/entries?as=teacher', request);
    if (answer.kind !== 'answer') return null;
    stored += answer.body.stored.length;
    refused += answer.body.refused.length;
  }
  return { stored, refused };
}
