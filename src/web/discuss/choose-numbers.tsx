import type { ComponentChildren } from 'preact';
import { FILE_KINDS, type FileKind } from '../engine/prepare-wire.ts';
import { demoTexts } from '../prepare/demo-texts.ts';
import type { DiscussSay } from '../words/discuss-words.ts';
import { demoReadings } from './demo-readings.ts';
import { readTableFile } from './read-table-file.ts';
import type { Chosen, Numbers } from './whose-numbers.ts';

export interface ChooseNumbersProps {
  readonly say: DiscussSay;
  readonly chosen: Chosen;
  readonly choose: (chosen: Chosen) => void;
  /** Asks the server for the class as it is by now. */
  readonly again: () => void;
}

const MOST = { groups: 12, mistakes: 20, seed: 1e9 } as const;
const LEAST = { groups: 1, mistakes: 0, seed: 0 } as const;
type Asked = keyof typeof MOST;

/** Whose numbers the talk is about, and the files of the visit that they belong to. */
export function ChooseNumbers({ say, chosen, choose, again }: ChooseNumbersProps) {
  const { texts, numbers, names } = chosen;
  const take = (next: Numbers): void => choose({ ...chosen, numbers: next });
  const asked = numbers.kind === 'rehearsal' ? numbers.asked : {};
  return (
    <section class="choose" aria-labelledby="choose-heading">
      <h2 id="choose-heading">{say('discuss.whose')}</h2>
      <p data-numbers={numbers.kind}>
        <b>{numberName(say, numbers)}</b>
      </p>
      {numbers.kind === 'visit' ? (
        <button type="button" onClick={again}>
          {say('discuss.again')}
        </button>
      ) : (
        <details open>
          <summary>{say('discuss.visit-files')}</summary>
          {FILE_KINDS.map((kind) => (
            <OpenFile
              key={kind}
              name={texts[kind].name}
              accept=".yaml,.yml,text/plain"
              take={async (file) =>
                choose({
                  ...chosen,
                  texts: { ...texts, [kind]: { name: file.name, text: await file.text() } },
                })
              }
            >
              {say(fileKey(kind))}
            </OpenFile>
          ))}
        </details>
      )}
      <OpenFile
        name={numbers.kind === 'readings' ? numbers.file.name : say('discuss.no-file')}
        accept=".csv,.tsv,.txt,text/csv,text/plain"
        take={async (file) => take({ kind: 'readings', file: await readTableFile(file) })}
      >
        {say('discuss.readings')}
      </OpenFile>
      <form
        class="rehearsal"
        onSubmit={(event) => {
          event.preventDefault();
          take({ kind: 'rehearsal', asked: askedIn(new FormData(event.currentTarget)) });
        }}
      >
        {(['groups', 'mistakes', 'seed'] as const).map((name) => (
          <label key={name}>
            {say(`discuss.${name}`)}
            <input
              name={name}
              type="number"
              min={LEAST[name]}
              max={MOST[name]}
              step={1}
              inputMode="numeric"
              defaultValue={String(asked[name] ?? '')}
              placeholder={say('discuss.usual')}
            />
          </label>
        ))}
        <button type="submit">{say('discuss.rehearse')}</button>
      </form>
      <button
        type="button"
        class="plain"
        onClick={() =>
          choose({ ...chosen, texts: demoTexts, numbers: { kind: 'readings', file: demoReadings } })
        }
      >
        {say('discuss.demo')}
      </button>
      <label class="tick">
        <input
          type="checkbox"
          checked={names}
          onChange={(event) => choose({ ...chosen, names: event.currentTarget.checked })}
        />
        {say('discuss.names')}
      </label>
    </section>
  );
}

interface OpenFileProps {
  readonly name: string;
  readonly accept: string;
  readonly take: (file: File) => Promise<void>;
  readonly children: ComponentChildren;
}

const OpenFile = ({ name, accept, take, children }: OpenFileProps) => (
  <label class="open">
    {children}: <span class="num">{name}</span>
    <input
      type="file"
      accept={accept}
      onChange={(event) => {
        const file = event.currentTarget.files?.[0];
        if (file !== undefined) void take(file);
      }}
    />
  </label>
);

const fileKey = (kind: FileKind) => `discuss.${kind}` as const;

/** Numbers that were written; what was left empty is as usual. */
function askedIn(form: FormData): Partial<Record<Asked, number>> {
  return Object.fromEntries(
    (['groups', 'mistakes', 'seed'] as const).flatMap((name) => {
      const text = String(form.get(name) ?? '').trim();
      return text === '' ? [] : [[name, Number(text)]];
    }),
  );
}

const numberName = (say: DiscussSay, numbers: Numbers): string => {
  switch (numbers.kind) {
    case 'readings':
      return say('discuss.of-file', { file: numbers.file.name });
    case 'rehearsal':
      return say('discuss.of-rehearsal');
    case 'visit':
      return say('discuss.of-visit', { visit: numbers.visit });
  }
};
