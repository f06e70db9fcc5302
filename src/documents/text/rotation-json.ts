import type { Prepared } from '../../core/prepare.ts';
import type { ClassPeriod, Period } from '../../core/rotation/class-period.ts';
import type { Wish } from '../../core/rotation/wish.ts';
import { clockText, clockTold } from '../printing/time-text.ts';
import { periodWords, postsOf, staysOf, tableOf, timetableOf, waitsOf } from './period-words.ts';
import { plainJson } from './plain-json.ts';
import { wishWithPlace } from './wish-text.ts';

/**
 * The period as JSON. Times are seconds from the start of the class's period; where the visit says when it
 * starts, each has its time of day beside it.
 */
export const rotationJson = (prepared: Prepared, period: Period): string =>
  plainJson({
    handspike: 'rotation 1',
    activity: prepared.activity?.title ?? null,
    kit: prepared.kit?.serial ?? null,
    classes: period.classes.map((each) => classJson(prepared, each)),
    between: period.between,
  });

function classJson(prepared: Prepared, period: ClassPeriod) {
  const { rotation, outcome, clock } = period;
  const words = periodWords('en', prepared, period);
  const span = spanIn(period);
  const timetable = timetableOf(period);
  const said = (wish: Wish) => ({ ...wish, says: wishWithPlace(words, prepared, wish) });
  return {
    class: period.label,
    date: clock.date,
    starts: clock.starts === null ? null : clockText(clock.starts),
    lasts: period.lasts,
    introduction: period.introduction,
    talkAtTheEnd: period.talkAtTheEnd,
    begins: rotation.begins,
    bell: rotation.bell,
    walk: rotation.walk,
    way: rotation.way,
    groups: rotation.groups,
    tables: rotation.tables.map(({ run, reset, ...table }) => ({
      ...table,
      title: words.titles.get(table.mark) ?? null,
      takes: run.value,
      reset: reset.value,
    })),
    adults: rotation.adults,
    breaks: rotation.breaks,
    closed: period.closed,
    assumed: period.assumed.map(({ key, facts }) => ({ key, facts, says: words.say(key, facts) })),
    fromPast: period.fromPast,
    outcome: outcome.kind,
    why: outcome.kind === 'unknown' ? outcome.why : null,
    clash: outcome.kind === 'clash' ? outcome.wishes.map(said) : [],
    alsoClashing: outcome.kind === 'clash' ? outcome.alsoClashing.map((wishes) => wishes.map(said)) : [],
    clashProof: outcome.kind === 'clash' ? outcome.proof : null,
    stays: staysOf(period).map((stay) => ({
      ...stay,
      ...span(stay),
      readyAt: stay.to + (tableOf(period, stay.table)?.reset.value ?? 0),
    })),
    rounds: timetable?.rounds?.map((round) => ({ ...round, ...span(round) })) ?? null,
    waits: waitsOf(period).map((wait) => ({ ...wait, ...span(wait) })),
    stands: postsOf(period).map((post) => ({ ...post, ...span(post) })),
    leftOut: timetable?.leftOut ?? [],
    ends: timetable?.ends ?? null,
    bound: timetable?.bound ?? null,
    proof: timetable?.proof ?? null,
    chance: period.chance,
    gains: period.gains,
    underWay:
      period.underWay === null
        ? null
        : {
            now: period.underWay.now,
            changes: period.underWay.changes,
            notTold: period.underWay.notTold ?? [],
          },
  };
}

/** Times of day beside seconds, where the visit says when the period starts. */
const spanIn =
  (period: ClassPeriod) =>
  ({ from, to }: { readonly from: number; readonly to: number }) => {
    const { starts } = clockTold(period);
    return starts === null ? {} : { fromClock: clockText(starts + from), toClock: clockText(starts + to) };
  };
