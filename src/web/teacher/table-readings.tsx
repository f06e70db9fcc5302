import type { TeacherTable } from '../../store/wire.ts';
import type { TeacherView } from './acts.ts';
import { ReadingRow } from './reading-row.tsx';

export interface TableReadingsProps extends TeacherView {
  readonly table: TeacherTable;
}

/** A table: what it has to say as a whole, and each setup's strip with what was read there. */
export function TableReadings({ table, ...view }: TableReadingsProps) {
  const { say, act } = view;
  const { mark, title, isClosed, findings, setups } = table;
  const facts = { table: mark };
  const close = {
    what: { kind: 'closed', table: mark },
    said: { key: 'did.closed', facts },
  } as const;
  const open = {
    what: { kind: 'opened', table: mark },
    said: { key: 'did.opened', facts },
  } as const;
  const [does, undoes] = isClosed ? [open, close] : [close, open];
  return (
    <section class="table" id={`table-${mark}`} aria-labelledby={`table-${mark}-heading`}>
      <header>
        <h3 id={`table-${mark}-heading`}>{say('tables.one', { table: mark, title })}</h3>
        {isClosed && <p class="closed">✕ {say('tables.closed')}</p>}
        <button
          type="button"
          class="plain"
          aria-describedby={`table-${mark}-heading`}
          onClick={() => act(does.what, does.said, undoes)}
        >
          {say(isClosed ? 'tables.open' : 'tables.close')}
        </button>
      </header>
      {findings.length > 0 && (
        <div class="whole">
          <p>
            <b>▦ {say('tables.whole')}</b>
          </p>
          {findings.map((finding) => (
            <p key={finding}>{finding}</p>
          ))}
        </div>
      )}
      <SetupReadings heading="h4" setups={setups} {...view} />
    </section>
  );
}

export interface SetupReadingsProps extends TeacherView {
  readonly setups: TeacherTable['setups'];
  /** The level that its headings have where it stands. */
  readonly heading: 'h3' | 'h4';
}

/** Each setup's strip with what was read there. */
export function SetupReadings({ setups, heading: Heading, ...view }: SetupReadingsProps) {
  const { say } = view;
  return (
    <div class="setups-of-table">
      {setups.map((setup) => (
        <article key={setup.mark} id={`setup-${setup.mark}`} aria-labelledby={`setup-${setup.mark}-heading`}>
          <Heading id={`setup-${setup.mark}-heading`}>{setup.mark}</Heading>
          <p class="hint">
            {setup.range === '' ? setup.summary : say('tables.range', { range: setup.range })}
          </p>
          {setup.strip !== '' && <Drawing svg={setup.strip} />}
          {setup.readings.length === 0 ? (
            <p class="hint">○ {say('tables.none')}</p>
          ) : (
            <ol reversed>
              {[...setup.readings].reverse().map((reading) => (
                <ReadingRow key={reading.id} reading={reading} setup={setup.mark} {...view} />
              ))}
            </ol>
          )}
        </article>
      ))}
    </div>
  );
}

// Our own server drew it, and escapes every text of a file in it.
export const Drawing = ({ svg }: { readonly svg: string }) => (
  <div class="drawing" dangerouslySetInnerHTML={{ __html: svg }} />
);
