import { factText } from '../sentences/sentence.ts';
import type { PeriodWords } from '../text/period-words.ts';
import type { ChartPart, ChartRow, RotationChart } from './rotation-rows.ts';

/** The whole chart in words, for whoever hears the page: every block with its times. */
export function describeRotation(chart: RotationChart, words: PeriodWords): string {
  const { say, at, language } = words;
  return [
    say(`rotation.desc.${chart.lines}`, { from: at(0), to: at(chart.lasts) }),
    ...chart.rows.map((row) => rowText(chart, row, words)),
    ...(chart.signals.length === 0
      ? []
      : [say('rotation.desc.signal', { times: factText(language, chart.signals.map(at)) })]),
    ...chart.breaks.map(({ from, to }) => say('rotation.desc.break', { from: at(from), to: at(to) })),
    say('rotation.desc.bell', { time: at(chart.bell) }),
  ].join(' ');
}

function rowText({ lines }: RotationChart, { name, parts }: ChartRow, words: PeriodWords): string {
  return parts.length === 0
    ? words.say('rotation.desc.nothing', { row: name })
    : words.say('rotation.desc.row', {
        row: name,
        parts: parts.map((part) => partText(lines, part, words)).join('; '),
      });
}

function partText(lines: RotationChart['lines'], part: ChartPart, { say, at }: PeriodWords): string {
  const { kind, what, hasAdult, from, to } = part;
  const facts = { what, from: at(from), to: at(to) };
  if (kind === 'closed') return say('rotation.desc.closed', facts);
  if (kind === 'wait') return say('rotation.desc.wait', facts);
  if (lines === 'tables')
    return say(kind === 'done' ? 'rotation.desc.done.group' : 'rotation.desc.group', facts);
  if (kind === 'done') return say('rotation.desc.done', facts);
  return say(hasAdult ? 'rotation.desc.table.adult' : 'rotation.desc.table', facts);
}
