import { useEffect, useId, useRef, useState } from 'preact/hooks';
import type { WrittenReading } from '../../store/entry.ts';
import type { Say, WordKey } from '../words/words.ts';
import type { ListedReading } from './listed-reading.ts';
import { asksNumber, asksUnit, type CardSetup, withKey, writtenOnPad } from './written-on-pad.ts';

export interface PadProps {
  readonly say: Say;
  readonly group: string;
  readonly setup: CardSetup;
  /** The reading that is written anew. */
  readonly anew: ListedReading | null;
  /** Setups that are felt at this table: so many places its order has. */
  readonly places: number;
  readonly hasOne: boolean;
  readonly onWrite: (reading: WrittenReading) => void;
  readonly onLeave: () => void;
}

/** Units that stand on the scales of a class; another one is typed with the number. */
const UNITS = ['N', 'g', 'kg', 'cm', 'oz', 'lb'];

/** Big keys to write a reading with: by finger, or on a keyboard in the field above them. */
export function Pad({ say, group, setup, anew, places, hasOne, onWrite, onLeave }: PadProps) {
  const [number, setNumber] = useState('');
  const [unit, setUnit] = useState('');
  const [ease, setEase] = useState<number | null>(null);
  const [missing, setMissing] = useState<WordKey | null>(null);
  const field = useRef<HTMLInputElement>(null);
  const form = useRef<HTMLFormElement>(null);
  const id = useId();
  const { mark: name, asks } = setup;
  const isNumber = asksNumber(setup);
  useEffect(() => {
    if (anew !== null) field.current?.focus({ preventScroll: true });
  }, [anew]);

  const submit = (): void => {
    const reading = writtenOnPad(setup, group, { number, unit, ease });
    if ('missing' in reading) {
      setMissing(reading.missing);
      form.current?.querySelector<HTMLElement>(`[data-field=${reading.field}]`)?.focus();
      return;
    }
    setMissing(null);
    setNumber('');
    setEase(null);
    onWrite(reading);
  };
  const press = (key: string): void => {
    setNumber(withKey(number, key));
    setMissing(null);
  };
  const keys = ['7', '8', '9', '4', '5', '6', '1', '2', '3', say('pad.key'), '0'];
  const heading: WordKey = !isNumber ? 'pad.heading.ease' : asks.turns ? 'pad.heading.turns' : 'pad.heading';
  return (
    <form
      ref={form}
      class="pad"
      aria-labelledby={`${id}-h`}
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <h2 id={`${id}-h`}>{say(heading, { setup: name })}</h2>
      {anew !== null && (
        <p class="instead">
          {say('pad.instead', { written: anew.written })}
          <button type="button" class="plain" onClick={onLeave}>
            {say('pad.keep')}
          </button>
        </p>
      )}
      {isNumber && (
        <>
          <p class="shown">
            <input
              ref={field}
              data-field="number"
              aria-labelledby={`${id}-h`}
              aria-describedby={`${id}-unit ${id}-m`}
              aria-invalid={missing === 'pad.empty'}
              inputMode="none"
              autocomplete="off"
              enterkeyhint="done"
              maxLength={40}
              value={number}
              onInput={(event) => {
                setNumber(event.currentTarget.value);
                setMissing(null);
              }}
            />
            <span class="unit" id={`${id}-unit`}>
              {setup.unit ?? (asksUnit(setup, number) ? unit : '')}
            </span>
          </p>
          <div class="keys">
            {keys.map((key) => (
              <button
                key={key}
                type="button"
                aria-label={key === say('pad.key') ? say('pad.decimal') : undefined}
                onClick={() => press(key)}
              >
                {key}
              </button>
            ))}
            <button type="button" aria-label={say('pad.delete')} onClick={() => press('delete')}>
              ⌫
            </button>
          </div>
        </>
      )}
      {asksUnit(setup, number) && (
        <fieldset>
          <legend>{say('pad.unit')}</legend>
          <div class="choices">
            {UNITS.map((each) => (
              <label key={each}>
                <input
                  type="radio"
                  data-field="unit"
                  name={`${id}-u`}
                  checked={unit === each}
                  onChange={() => setUnit(each)}
                />
                <span>{each}</span>
              </label>
            ))}
          </div>
        </fieldset>
      )}
      {asks.ease && (
        <fieldset>
          <legend class={isNumber ? '' : 'unseen'}>{say('pad.ease')}</legend>
          {places > 1 && <p class="hint">{say('pad.ease.first-all')}</p>}
          <div class="choices ease">
            {Array.from({ length: places }, (_, n) => n + 1).map((each) => (
              <label key={each}>
                <input
                  type="radio"
                  data-field="ease"
                  name={`${id}-e`}
                  checked={ease === each}
                  onChange={() => setEase(each)}
                />
                <span>
                  <strong>{each}</strong>{' '}
                  {each === 1 ? say('pad.ease.first') : each === places && say('pad.ease.last')}
                </span>
              </label>
            ))}
          </div>
        </fieldset>
      )}
      <p class="trouble" role="alert" id={`${id}-m`}>
        {missing !== null && say(missing)}
      </p>
      <button type="submit" class="main">
        {say('pad.write')}
      </button>
      {hasOne && isNumber && anew === null && <p class="hint">{say('pad.repeat')}</p>}
    </form>
  );
}
