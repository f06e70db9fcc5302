import type { PrepareSay } from '../words/prepare-words.ts';
import { type Followed, useFollowed } from './followed.ts';

export interface StateWordProps {
  readonly say: PrepareSay;
  readonly isSettled: Followed<boolean>;
  readonly isStopped: boolean;
}

/**
 * Whether all tables are reckoned. Both words lie one upon the other: it changes with every key pressed, and then nothing
 * beside it is laid out anew.
 */
export function StateWord({ say, isSettled, isStopped }: StateWordProps) {
  const is = useFollowed(isSettled);
  if (isStopped) return <span class="hint">{say('prepare.stopped')}</span>;
  return (
    <span class="hint one-of-two" data-state={is ? 'settled' : 'working'}>
      <span>{say('prepare.settled')}.</span>
      <span>{say('prepare.working')}.</span>
    </span>
  );
}

/** What is said once all tables are reckoned, and what until then. */
export function OnceSettled({
  isSettled,
  then,
  until,
}: Pick<StateWordProps, 'isSettled'> & { readonly then: string; readonly until: string }) {
  return <>{useFollowed(isSettled) ? then : until}</>;
}
