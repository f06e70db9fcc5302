import type { FilledWait } from '../../core/rotation/class-period.ts';
import { longWaitsOf, type PeriodWords, paperTask, staysOf } from './period-words.ts';
import { listed, type Saying } from './saying.ts';

/** Who waits, group by group, a line each. What several groups have to do is said once, under a number. */
export function waitsSaying(words: PeriodWords): Saying {
  const { say, period, at } = words;
  const waits = period.rotation.groups.flatMap(({ label }) => waitsTold(words, label));
  const tasks = waits.flatMap(({ task }) => (task === null ? [] : [taskText(words, task)]));
  const shared = [...new Set(tasks.filter((text, n) => tasks.indexOf(text) !== n))];
  const whatFor = (task: Task): string => {
    if (task === null) return say('rotation.waits.nothing');
    const text = taskText(words, task);
    const number = shared.indexOf(text) + 1;
    return number === 0 ? text : say('rotation.waits.task', { number });
  };
  return listed('waits', say('rotation.waits'), [
    ...shared.map((text, n) => say('rotation.waits.task-is', { number: n + 1, text })),
    ...period.rotation.groups.flatMap(({ label }) => {
      const own = waits
        .filter(({ group }) => group === label)
        .map(({ from, to, task }) =>
          say('rotation.waits.span', { from: at(from), to: at(to), what: whatFor(task) }),
        );
      return own.length === 0 ? [] : [say('rotation.waits.group', { group: label, waits: own.join('; ') })];
    }),
  ]);
}

/** With nothing to do in it, a shorter wait isn't worth a line, seconds: common practice, no source. */
const WORTH_A_LINE = 180;

/** The waits of a group; of two between which it is at no table and has the same to do, one. */
function waitsTold({ period }: PeriodWords, label: string): readonly FilledWait[] {
  const starts = staysOf(period).flatMap(({ group, from }) => (group === label ? [from] : []));
  const told: FilledWait[] = [];
  const own = longWaitsOf(period).filter(({ group }) => group === label);
  for (const wait of own.toSorted((a, b) => a.from - b.from)) {
    const last = told.at(-1);
    const goesOn =
      last !== undefined &&
      isSameTask(last.task, wait.task) &&
      !starts.some((from) => from >= last.from && from < wait.to);
    if (last !== undefined && goesOn) told[told.length - 1] = { ...last, to: wait.to };
    else told.push(wait);
  }
  return told.filter(({ task, from, to }) => task !== null || to - from >= WORTH_A_LINE);
}

type Task = FilledWait['task'];

function isSameTask(one: Task, other: Task): boolean {
  if (one === null || other === null) return one === other;
  if (one.kind === 'setup')
    return other.kind === 'setup' && one.table === other.table && one.setup === other.setup;
  return other.kind === 'paper' && one.text === other.text;
}

const taskText = ({ say, language }: PeriodWords, task: NonNullable<Task>): string =>
  task.kind === 'setup'
    ? say('rotation.waits.setup', { table: task.table, setup: task.setup })
    : say('rotation.waits.paper', { text: paperTask(language, task).replace(/\.$/, '') });
