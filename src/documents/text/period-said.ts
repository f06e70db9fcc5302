import type { Shortage } from '../../core/rotation/arrangement.ts';
import type { ClassPeriod, ClosedTable } from '../../core/rotation/class-period.ts';
import type { LeftOut, Timetable } from '../../core/rotation/timetable.ts';
import { lengthText } from '../printing/time-text.ts';
import { factText } from '../sentences/sentence.ts';
import { clashSayings } from './clash-said.ts';
import { nothingToPlanSaid } from './nothing-to-plan-said.ts';
import { chanceLines, gainLines } from './period-chance-said.ts';
import { adultWords, type PeriodWords, postsOf, tableOf, timetableOf } from './period-words.ts';
import { listed, plain, type Saying } from './saying.ts';
import { waitsSaying } from './waits-said.ts';
import type { Wished } from './wish-text.ts';

/** Everything, in the order in which somebody wants to know it; what there is nothing to say of is left out. */
export function sayingsOf(words: PeriodWords, files: Wished): readonly Saying[] {
  const { period, say } = words;
  const timetable = timetableOf(period);
  const all: readonly Saying[] = [
    ...(nothingToPlanSaid(words) ?? clashSayings(words, files)),
    plain('under way', underWayLines(words)),
    plain('frame', frameLines(words, timetable)),
    plain('sure', chanceLines(words)),
    plain('proof', timetable === null ? [] : [proofText(words, timetable)]),
    ...(timetable === null ? [] : [leftOut(words, timetable.leftOut, shortageOf(period))]),
    listed(
      'closed',
      say('rotation.closed'),
      period.closed.map((each) => closedText(words, each)),
    ),
    waitsSaying(words),
    listed('stands', say('rotation.stands'), timetable === null ? [] : standLines(words)),
    listed('gains', say('rotation.gains'), gainLines(words)),
    listed(
      'past',
      say('rotation.past'),
      period.fromPast.map(({ table, takes, used, setAside }) =>
        say(setAside === 0 ? 'rotation.past.table' : 'rotation.past.aside', {
          table,
          time: lengthText(takes),
          used,
          aside: setAside,
        }),
      ),
    ),
    listed(
      'assumed',
      say('rotation.assumed'),
      period.assumed.map(({ key, facts }) => say(key, facts)),
    ),
  ];
  return all.filter(({ lines }) => lines.length > 0);
}

function frameLines({ say, at, period }: PeriodWords, timetable: Timetable | null): readonly string[] {
  const { rotation, lasts } = period;
  const open = rotation.tables.filter(
    ({ mark }) => !period.closed.some(({ table, during }) => table === mark && during === null),
  );
  const facts = {
    start: at(0),
    begins: at(rotation.begins),
    bell: at(rotation.bell),
    end: at(lasts),
  };
  const size = say('rotation.size', {
    groups: rotation.groups.length,
    tables: open.length,
    way: say(`rotation.way.${rotation.way}`),
  });
  if (timetable === null) return [size, say('rotation.frame', facts)];
  const spare = rotation.bell - timetable.ends;
  return [
    size,
    say('rotation.frame', facts),
    ...(timetable.rounds === null || timetable.rounds.length === 0
      ? []
      : [
          say('rotation.rounds', {
            rounds: timetable.rounds.length,
            times: timetable.rounds.map(({ to }) => at(to)),
          }),
        ]),
    spare <= 0
      ? say('rotation.ends', { ends: at(timetable.ends) })
      : say('rotation.ends.spare', { ends: at(timetable.ends), time: lengthText(spare) }),
  ];
}

function underWayLines({ say, at, period }: PeriodWords): readonly string[] {
  const { underWay } = period;
  if (underWay === null) return [];
  const { now, done, changes, notTold = [] } = underWay;
  return [
    say('rotation.under-way', { now: at(now) }),
    say('rotation.under-way.done', { done: done.length }),
    ...(notTold.length === 0 ? [] : [say('rotation.under-way.not-told', { groups: notTold })]),
    changes === 0 ? say('rotation.under-way.same') : say('rotation.under-way.changes', { changes }),
  ];
}

/** Whether anything could end sooner. */
function proofText({ say, at }: PeriodWords, { proof, ends, bound }: Timetable): string {
  return proof === 'none' && bound < ends
    ? say('rotation.proof.none', { time: lengthText(ends - bound), bound: at(bound) })
    : say('rotation.proof');
}

/** Table by table who does not come, and how much a group misses at most. */
function leftOut(
  { say, at, period }: PeriodWords,
  left: readonly LeftOut[],
  shortage: Shortage | null,
): Saying {
  const { rotation } = period;
  const lines = rotation.tables.flatMap(({ mark, mayDo }) => {
    const groups = left.filter(({ table }) => table === mark).map(({ group }) => group);
    const key = mayDo ? 'rotation.left-out.table.may' : 'rotation.left-out.table';
    return groups.length === 0 ? [] : [say(key, { table: mark, groups })];
  });
  const most = Math.max(
    0,
    ...rotation.groups.map(({ label }) => left.filter(({ group }) => group === label).length),
  );
  const facts = { begins: at(rotation.begins), bell: at(rotation.bell) };
  return listed(
    'left out',
    say('rotation.left-out', facts),
    lines,
    [
      ...(shortage === null || shortage.by === null
        ? []
        : [say('rotation.left-out.why', { by: lengthText(shortage.by) })]),
      most === 1 ? say('rotation.left-out.most.one') : say('rotation.left-out.most', { most }),
      ...(shortage === null
        ? []
        : [say(shortage.proof === 'search' ? 'rotation.left-out.proof' : 'rotation.left-out.no-proof')]),
    ].join(' '),
  );
}

const shortageOf = ({ outcome }: ClassPeriod): Shortage | null =>
  outcome.kind === 'timetable' ? outcome.shortage : null;

function closedText({ say, at }: PeriodWords, { table, because, parts, during }: ClosedTable): string {
  const facts = { table, parts };
  const closed =
    because === 'parts'
      ? say(parts.length === 0 ? 'rotation.closed.unbuilt' : 'rotation.closed.parts', facts)
      : say(`rotation.closed.${because}`, facts);
  if (during === null) return closed;
  return during.to === null
    ? say('rotation.closed.from', { closed, from: at(during.from) })
    : say('rotation.closed.during', { closed, from: at(during.from), to: at(during.to) });
}

function standLines(words: PeriodWords): readonly string[] {
  const { say, at, language, period } = words;
  const posts = postsOf(period);
  return period.rotation.adults.map(({ label }) => {
    const adult = adultWords(words, label);
    const places = posts
      .filter((post) => post.adult === label)
      .map(({ table, copy, from, to }) =>
        say('rotation.stands.at', {
          table: (tableOf(period, table)?.copies ?? 1) > 1 ? `${table} · ${copy}` : table,
          from: at(from),
          to: at(to),
        }),
      );
    return places.length === 0
      ? say('rotation.stands.free', { adult })
      : say('rotation.stands.adult', { adult, places: factText(language, places) });
  });
}
