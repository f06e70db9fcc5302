import type { DrawingView, SetupView } from '../engine/prepare-wire.ts';
import type { PrepareSay } from '../words/prepare-words.ts';
import { Picture } from './picture.tsx';

/** A setup as it stood when it was laid aside, to be compared with another one, or with itself of another kit. */
export interface Beside {
  readonly view: SetupView;
  readonly drawings: readonly DrawingView[];
  readonly kit: string;
}

export interface KeptBesideProps {
  readonly say: PrepareSay;
  readonly beside: Beside;
  readonly takeAway: () => void;
}

export function KeptBeside({ say, beside: { view, drawings, kit }, takeAway }: KeptBesideProps) {
  return (
    <section class="beside" aria-labelledby="kept-beside">
      <h2 id="kept-beside">{say('prepare.beside.heading', { setup: view.setup, kit })}</h2>
      <dl class="key">
        <div>
          <dt>{say('prepare.good')}</dt>
          <dd data-figure="good-beside">{view.good}</dd>
        </div>
        {view.expected !== null && (
          <div>
            <dt>{say('prepare.expected')}</dt>
            <dd>{view.expected}</dd>
          </div>
        )}
        <div>
          <dt>{say('prepare.schoolbook')}</dt>
          <dd>{view.schoolbook}</dd>
        </div>
      </dl>
      {view.strip !== null && <Picture svg={apart(view.strip)} />}
      {drawings.map(({ title, svg }) => (
        <Picture key={title} svg={apart(svg)} />
      ))}
      <div class="acts">
        <button type="button" onClick={takeAway}>
          {say('prepare.beside.away')}
        </button>
      </div>
    </section>
  );
}

/** The same picture may stand on the page a second time: its names are others. */
const apart = (svg: string): string =>
  svg
    .replace(/ id="/g, ' id="beside-')
    .replace(
      / aria-labelledby="([^"]*)"/g,
      (_, ids: string) => ` aria-labelledby="${ids.replace(/\S+/g, 'beside-$&')}"`,
    )
    .replace(/url\(#/g, 'url(#beside-');
