/** Places in plain data where a number is none, or where a probability is no probability. */
export function faultsIn(data: unknown, at = ''): readonly string[] {
  if (typeof data === 'number') return faultOf(data, at);
  if (typeof data !== 'object' || data === null) return [];
  return Object.entries(data).flatMap(([key, value]) => faultsIn(value, `${at}/${key}`));
}

/** Every field that is a probability, or a share of what may happen, by its name. */
const PROBABILITY = new RegExp(
  [
    '/(probability|ofStation|notSaved|coverage|schoolbook)$',
    '(once|unlucky)/(order|ratio)$',
    'fates/[a-z ]+$',
    'budget/\\d+/share$',
  ].join('|'),
);

function faultOf(number: number, at: string): readonly string[] {
  if (!Number.isFinite(number)) return [`${at} is ${number}`];
  return PROBABILITY.test(at) && (number < -1e-9 || number > 1 + 1e-9)
    ? [`${at} is ${number}, no probability`]
    : [];
}
