import type { Language } from '../../documents/sentences/language.ts';
import { sentence } from '../../documents/sentences/sentence.ts';
import { causeToTry } from '../../documents/text/cause-text.ts';
import type { LoggedReading } from '../../store/visit-log.ts';
import type { ClockPart, GroupCard, GroupParts, OwnReading, WallPart } from '../../store/wire.ts';
import type { ToldAgain } from './told-again.ts';

/** All that a group's page is made from: no expectation, no range, and nobody else's readings are in it before the talk. */
export interface GroupView {
  readonly label: string;
  readonly language: Language;
  readonly title: string;
  readonly clock: ClockPart;
  readonly route: GroupParts['route'];
  readonly cards: Readonly<Record<string, GroupCard>>;
  readonly readings: readonly LoggedReading[];
  readonly told: ReadonlyMap<string, ToldAgain>;
  readonly writes: GroupParts['writes'];
  readonly wall: WallPart | null;
}

/** What a group's page shows. */
export const groupParts = (view: GroupView): GroupParts => ({
  clock: view.clock,
  group: { label: view.label, language: view.language, title: view.title },
  route: view.route,
  cards: view.cards,
  readings: view.readings.map((reading) => ownReading(view.language, reading, view.told.get(reading.id))),
  writes: view.writes,
  ...(view.wall === null ? {} : { wall: view.wall }),
});

const ownReading = (
  language: Language,
  { id, reading, before, isVoid }: LoggedReading,
  told: ToldAgain | undefined,
): OwnReading => ({
  id,
  setup: reading.setup,
  written: reading.written === '' ? (reading.turns ?? '') : reading.written,
  before,
  isVoid,
  again: told === undefined ? null : againText(language, told),
});

function againText(language: Language, told: ToldAgain): NonNullable<OwnReading['again']> {
  if (told.kind === 'unreadable') return { say: sentence(language, 'live.unreadable'), tryThis: null };
  const tryThis = told.tryThis === null ? null : causeToTry(language, { code: told.tryThis });
  return { say: sentence(language, 'live.again'), tryThis };
}
