import { escapeText } from '../markup.ts';
import { clockTold, momentText } from '../printing/time-text.ts';
import { type PeriodWords, routeOf, routeText, staysOf, timetableOf } from '../text/period-words.ts';

/** Each group's way through the tables as a table of the page: which, from when, and in which order. */
export function routesTable({ say, period }: PeriodWords): string {
  if (timetableOf(period) === null) return '';
  const { groups, tables } = period.rotation;
  const stays = staysOf(period);
  const head = [
    say('rotation.page.group'),
    ...tables.map(({ mark }) => say('page.table', { mark })),
    say('rotation.page.route'),
  ];
  const rows = groups.map(({ label }) => {
    const cells = tables.map(({ mark }) => {
      const own = stays.filter(({ group, table }) => group === label && table === mark);
      return own.map(({ from }) => momentText(clockTold(period), from)).join(', ') || '–';
    });
    return [...cells, routeText(routeOf(period, label))]
      .map((cell) => `<td>${escapeText(cell)}</td>`)
      .join('')
      .replace(/^/, `<tr><th scope="row">${escapeText(label)}</th>`)
      .concat('</tr>');
  });
  const headCells = head.map((cell) => `<th scope="col">${escapeText(cell)}</th>`).join('');
  return `<div class="wide" tabindex="0" role="group" aria-label="${escapeText(say('rotation.page.routes'))}"><table class="routes"><caption>${escapeText(say('rotation.page.routes'))}</caption><thead><tr>${headCells}</tr></thead><tbody>${rows.join('')}</tbody></table></div>`;
}
