import type { NotRunRecord, ValidationRecord } from './record.ts';

/** What a check may claim, in the order of its weight, with what the page says about it. */
const GROUPS: readonly (readonly [basis: string, title: string, says: string])[] = [
  ['published', 'Published', 'Inputs and answer stand in the source named.'],
  [
    'published inputs, recomputed answer',
    'Published inputs, recomputed answer',
    'The inputs stand in the source; its print gives no usable answer, or one that is wrong for its own inputs.',
  ],
  [
    'from files',
    'Through the files',
    "Cases of the two groups above once more, written as kit and activity files in the source's own units (`test/published/on-tables`): they add no source, only the way from text to figure.",
  ],
  ['common practice', 'Common practice', 'A rule of the trade without a source.'],
  [
    'own theory',
    'Own sheet',
    'Computed from our own theory sheets by another program: a check of the arithmetic, not of the theory. Not published.',
  ],
  ['memory', 'From memory', 'Remembered from a named book and not yet looked up.'],
];

/** docs/validation.md: every figure that was checked from outside, and every case that was not. */
export function validationPage(
  records: readonly ValidationRecord[],
  notRun: readonly NotRunRecord[],
): string {
  const checks = once(records, (each) => `${each.topic} ${each.id} ${each.quantity}`);
  const left = once(notRun, (each) => `${each.topic} ${each.id}`);
  const parts = left.filter((each) => isPartOf(each, checks));
  const whole = left.filter((each) => !parts.includes(each));
  const groups = GROUPS.map(([basis, title, says]) => ({
    title,
    says,
    checks: checks.filter((each) => each.basis === basis),
  })).filter((group) => group.checks.length > 0);
  const strange = checks.filter((each) => !GROUPS.some(([basis]) => basis === each.basis));
  if (strange.length > 0) throw new Error(`no group for the basis "${strange[0]?.basis}"`);
  return `${[
    '# Checked from outside',
    '',
    'Written by the tests (`UPDATE_VALIDATION=1 npm test`); a test fails when this page is out of date.',
    'Every row was compared within its tolerance on the laws of the program. Tolerances are those of the',
    'reference files and say how far the source rounds.',
    '',
    table(
      ['what it may claim', 'cases', 'figures'],
      [
        ...groups.map((group) => [group.title, caseCount(group.checks), group.checks.length]),
        ['*not run*', caseCount(whole), ''],
        ['*figures not run, of cases above*', '', parts.length],
      ],
    ),
    ...groups.flatMap((group) => ['', `## ${group.title}`, '', group.says, '', checkTable(group.checks)]),
    '',
    '## Not run',
    '',
    'A case, or one figure of it (`case.figure`), that no law here can express.',
    '',
    notRunTable(left),
  ].join('\n')}\n`;
}

const checkTable = (checks: readonly ValidationRecord[]): string =>
  table(
    ['source', 'case', 'quantity', 'expected', 'got', 'unit', 'tolerance'],
    checks.map((each) => [
      each.source,
      each.id,
      each.quantity,
      printed(each.expected),
      printed(each.got),
      each.unit,
      each.tolerance === null ? 'exact' : printed(each.tolerance),
    ]),
  );

/** Cases that share their reason share a row. */
function notRunTable(left: readonly NotRunRecord[]): string {
  const byReason = new Map<string, NotRunRecord[]>();
  for (const each of left) {
    const key = `${each.topic}\n${each.reason}`;
    byReason.set(key, [...(byReason.get(key) ?? []), each]);
  }
  return table(
    ['topic', 'cases', 'reason'],
    [...byReason.values()].map((same) => [
      same[0]?.topic ?? '',
      same.map((each) => each.id).join(', '),
      same[0]?.reason ?? '',
    ]),
  );
}

const caseCount = (entries: readonly { readonly topic: string; readonly id: string }[]): number =>
  new Set(entries.map((each) => `${each.topic} ${each.id}`)).size;

/** Whether a reason is about some figures of a case that was run: `scr-073.short_rule` of `scr-073`. */
const isPartOf = (left: NotRunRecord, checks: readonly ValidationRecord[]): boolean =>
  checks.some((each) => each.topic === left.topic && left.id.startsWith(`${each.id}.`));

/** Six significant figures: enough to see the tolerance, few enough to be the same on every machine. */
function printed(value: number | string | boolean): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'number' ? String(Number(value.toPrecision(6))) : value;
}

/** One entry a key, in the order of the keys; two tests may check the same figure. */
function once<T>(entries: readonly T[], keyOf: (entry: T) => string): readonly T[] {
  const byKey = new Map(entries.map((each) => [keyOf(each), each]));
  return [...byKey.entries()].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, each]) => each);
}

function table(head: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  const line = (cells: readonly (string | number)[]): string =>
    `| ${cells.map((cell) => String(cell).replaceAll('|', '\\|').replaceAll('\n', ' ')).join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}
