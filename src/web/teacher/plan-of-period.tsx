import type { TeacherParts } from '../../store/wire.ts';
import type { TeacherSay } from '../words/teacher-words.ts';
import { Drawing } from './table-readings.tsx';

export interface PlanOfPeriodProps {
  readonly say: TeacherSay;
  readonly plan: TeacherParts['plan'];
}

/** The chart as it stands now, and what changed in it. */
export const PlanOfPeriod = ({ say, plan }: PlanOfPeriodProps) => (
  <section class="plan" id="plan" aria-labelledby="plan-heading">
    <h2 id="plan-heading">{say('plan.heading')}</h2>
    {plan.chart === '' ? (
      <p class="hint">{say('plan.none')}</p>
    ) : (
      // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reached by keyboard
      <section class="chart" aria-label={say('plan.chart')} tabIndex={0}>
        <Drawing svg={plan.chart} />
      </section>
    )}
    {plan.remarks.map((remark) => (
      <p key={remark}>{remark}</p>
    ))}
  </section>
);
