import { rotationPicture } from '../../documents/drawing/rotation-picture.ts';
import { rotationChart } from '../../documents/drawing/rotation-rows.ts';
import { fragment } from '../../documents/pages/fragment.ts';
import { sentence } from '../../documents/sentences/sentence.ts';
import { sayingsOf } from '../../documents/text/period-said.ts';
import { type PeriodWords, routeText, staysOf } from '../../documents/text/period-words.ts';
import type { Saying } from '../../documents/text/saying.ts';
import type { TeacherParts } from '../../store/wire.ts';
import type { PlanNow } from './plan-now.ts';
import type { VisitAtDesk } from './visit-at-desk.ts';

/** Room for the chart on the page, millimetres, and the least height of its letters. */
const PICTURE = { width: 285, around: 30, line: 20, highest: 165, least: 2.9 } as const;

/** What of all that there is to say of a plan belongs on a screen during the class. */
const SAID: readonly Saying['about'][] = ['clash', 'under way', 'left out', 'closed'];

/** The rotation chart and what is to be said of it, first of all what changed when it was planned anew. */
export function planPart(words: PeriodWords, plan: PlanNow, { prepared }: VisitAtDesk): TeacherParts['plan'] {
  const chart = rotationChart(words, 'groups');
  const height = Math.min(PICTURE.highest, PICTURE.around + PICTURE.line * (chart?.rows.length ?? 0));
  const { width, least } = PICTURE;
  return {
    chart:
      chart === null || chart.rows.length === 0
        ? ''
        : fragment(rotationPicture(chart, words, { name: 'rotation', width, height, least }), 'plan'),
    remarks: [
      ...(plan.isStuck ? [sentence(words.language, 'live.plan.unknown')] : []),
      ...newRoutes(words, plan),
      ...sayingsOf(words, prepared)
        .filter(({ about }) => SAID.includes(about))
        .flatMap(({ heading, lines, foot }) => [
          ...(heading === null ? lines : [`${heading} ${lines.join(' ')}`]),
          ...(foot === null ? [] : [foot]),
        ]),
    ],
  };
}

/** A sentence for each group whose way ahead is another one than before. */
function newRoutes({ language, period }: PeriodWords, { before }: PlanNow): readonly string[] {
  if (before === null) return [];
  const done = new Set(
    (period.underWay?.done ?? []).map(({ group, table }) => JSON.stringify([group, table])),
  );
  const ahead = (of: typeof period, group: string): readonly string[] =>
    staysOf(of)
      .filter((stay) => stay.group === group && !done.has(JSON.stringify([group, stay.table])))
      .map(({ table }) => table);
  return period.rotation.groups.flatMap(({ label }) => {
    const [was, is] = [ahead(before, label), ahead(period, label)];
    if (was.join('\n') === is.join('\n')) return [];
    return is.length === 0
      ? [sentence(language, 'live.plan.no-route', { group: label })]
      : [sentence(language, 'live.plan.route', { group: label, route: routeText(is) })];
  });
}
