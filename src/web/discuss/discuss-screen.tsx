import { useEffect, useRef, useState } from 'preact/hooks';
import type { DeviceStore } from '../device/device-store.ts';
import { saveFile } from '../device/save-file.ts';
import { discussSayIn } from '../words/discuss-words.ts';
import { ChooseNumbers } from './choose-numbers.tsx';
import { NotesView } from './notes-view.tsx';
import { type SharedTalk, useSharedTalk } from './shared-talk.ts';
import { afterKey, type TalkNow, withTalk } from './talk-now.ts';
import { TalkOnPaper } from './talk-on-paper.tsx';
import { type Tablets, useTablets } from './use-tablets.ts';
import { useTalkEngine } from './use-talk-engine.ts';
import { WallView } from './wall-view.tsx';
import { type Chosen, visitIn } from './whose-numbers.ts';

export interface DiscussScreenProps {
  readonly language: 'en' | 'es';
  readonly store: DeviceStore;
  readonly first: Chosen;
  readonly firstNow: TalkNow;
}

/** The talk at the end: notes for whoever leads it, and the wall in this window or in another. */
export function DiscussScreen({ language, store, first, firstNow }: DiscussScreenProps) {
  const [hash, setHash] = useState(location.hash);
  const shared = useSharedTalk(store, firstNow);
  useEffect(() => {
    const onHash = (): void => setHash(location.hash);
    addEventListener('hashchange', onHash);
    return () => removeEventListener('hashchange', onHash);
  }, []);
  const isWall = hash === '#wall';
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (!isOurs(event, isWall)) return;
      const next = afterKey(shared.now, event.key);
      if (next === null) return;
      event.preventDefault();
      shared.change(() => next);
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  });
  // Once the engine is at work in this window it stays: the network may be gone when the wall is left.
  const hasDesk = useRef(!isWall);
  hasDesk.current ||= !isWall;
  return (
    <>
      {hasDesk.current && (
        <div hidden={isWall}>
          <Desk language={language} store={store} first={first} shared={shared} hash={hash} />
        </div>
      )}
      {isWall && <WallView say={discussSayIn(language)} shared={shared} />}
    </>
  );
}

/** No key that a field, a table that scrolls, or (beside the wall) the page itself wants. */
function isOurs(
  { key, target, ctrlKey, metaKey, altKey, shiftKey }: KeyboardEvent,
  isWall: boolean,
): boolean {
  if (ctrlKey || metaKey || altKey || shiftKey) return false;
  if (target instanceof Element && target.closest('input, select, textarea, .wide') !== null) return false;
  return isWall || key === 'ArrowLeft' || key === 'ArrowRight';
}

type DeskProps = Omit<DiscussScreenProps, 'firstNow'> & {
  readonly shared: SharedTalk;
  readonly hash: string;
};

/** Where the talk is chosen and led from. */
function Desk({ language, store, first, shared, hash }: DeskProps) {
  const say = discussSayIn(language);
  const [chosen, setChosen] = useState(first);
  const [turn, setTurn] = useState(0);
  const [isPrinted, setPrinted] = useState(false);
  const [isKept, setKept] = useState(store.isKept());
  const choose = (next: Chosen): void => {
    setChosen(next);
    void store.keepNote('chosen', next).then(() => setKept(store.isKept()));
  };
  useEffect(() => {
    const visit = visitIn(hash);
    if (visit !== null) choose({ ...chosen, numbers: { kind: 'visit', visit } });
  }, [hash]);
  const engine = useTalkEngine(language, chosen, turn, (talk) => shared.change((now) => withTalk(now, talk)));
  const { talk } = shared.now;
  const { numbers } = chosen;
  const follows = numbers.kind === 'visit' && numbers.tablets === true ? numbers.visit : null;
  const tablets = useTablets(follows, shared.now, chosen.names);
  const sheets = engine.stands === 'settled' ? (talk?.sheets ?? null) : null;
  return (
    <>
      <header class="discuss-head">
        <h1>{say('discuss.page')}</h1>
        <p class="over">{talk?.about ?? say('discuss.question')}</p>
        <div class="acts">
          <a class="button" href="#wall" target="handspike-wall">
            {say('discuss.wall.window')}
          </a>
          <a href="#wall">{say('discuss.wall.here')}</a>
          <button
            type="button"
            disabled={sheets === null}
            onClick={() => sheets !== null && saveFile('talk-wall.html', sheets.wall, 'text/html')}
          >
            {say('discuss.save.wall')}
          </button>
          <button
            type="button"
            disabled={sheets === null}
            onClick={() => sheets !== null && saveFile('talk-notes.html', sheets.notes, 'text/html')}
          >
            {say('discuss.save.notes')}
          </button>
          <button type="button" disabled={sheets === null} onClick={() => setPrinted(true)}>
            {say('discuss.print')}
          </button>
          <a href="prepare.html">{say('discuss.to-prepare')}</a>
          <span class="hint" data-state={engine.stands}>
            {say(`discuss.${engine.stands}`)}
          </span>
          {!isKept && <b>! {say('discuss.not-kept')}</b>}
        </div>
        {numbers.kind === 'visit' && (
          <TabletsFollow
            say={say}
            isOn={follows !== null}
            stands={tablets}
            put={(isOn) => choose({ ...chosen, numbers: { ...numbers, tablets: isOn } })}
          />
        )}
        {engine.faults.length > 0 && (
          <div class="trouble" role="alert">
            {engine.faults.map((text) => (
              <pre key={text}>{text}</pre>
            ))}
          </div>
        )}
        {engine.refused > 0 && <p class="trouble">{say('discuss.refused', { rows: engine.refused })}</p>}
      </header>
      <main class="discuss-place">
        {talk === null || talk.questions.length === 0 ? (
          <section class="notes">
            <h2>{say('discuss.nothing')}</h2>
            {talk?.leftOut.map((text) => (
              <p key={text}>{text}</p>
            ))}
          </section>
        ) : (
          <NotesView say={say} talk={talk} shared={shared} />
        )}
        <ChooseNumbers
          say={say}
          chosen={chosen}
          choose={choose}
          again={() => setTurn((before) => before + 1)}
        />
      </main>
      {isPrinted && talk !== null && <TalkOnPaper talk={talk} done={() => setPrinted(false)} />}
    </>
  );
}

interface TabletsFollowProps {
  readonly say: ReturnType<typeof discussSayIn>;
  readonly isOn: boolean;
  readonly stands: Tablets;
  readonly put: (isOn: boolean) => void;
}

/** The groups' tablets show what the wall shows, in each group's language. */
const TabletsFollow = ({ say, isOn, stands, put }: TabletsFollowProps) => (
  <div class="acts" data-tablets={stands}>
    <label class="tick">
      <input type="checkbox" checked={isOn} onChange={({ currentTarget }) => put(currentTarget.checked)} />
      {say('discuss.tablets')}
    </label>
    <span role="status" class={stands === 'away' ? 'trouble' : 'hint'}>
      {isOn && stands !== 'off' ? say(`discuss.tablets.${stands}`) : ''}
    </span>
  </div>
);
