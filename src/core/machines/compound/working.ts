import type { WorkingLine } from '../../description/working.ts';
import type { Asked, Balance } from '../../statics/balance.ts';
import type { Ideal } from '../machine.ts';

/**
 * The lines of all stages, with the number of its stage behind every symbol, so that they stay
 * apart. The load of a stage bears the name of the pull on the stage before it; load and gravity of
 * the whole keep their plain names.
 */
export function stagesWorking(stages: readonly Balance[], asked: readonly Asked[]): readonly WorkingLine[] {
  let pulled = 'W';
  return stages.flatMap((stage, k) => {
    const lines = stage.working();
    const load = pulled;
    const own = asked[k];
    const named = (name: string, value?: number): string => {
      if (name === 'W' && value === own?.load) return load;
      if (name === 'g' && value === own?.gravity) return 'g';
      return `${name}_${k + 1}`;
    };
    pulled = named(lines.at(-1)?.symbol ?? 'F');
    return lines.map((line, n) => ({
      ...renamed(line, named),
      ...(n === 0 ? { heading: `compound.heading-${k + 1}` } : {}),
    }));
  });
}

/** The ideal lines of all stages and their product. */
export function idealWorking(ideals: readonly Ideal[], advantage: number): readonly WorkingLine[] {
  const lines = ideals.flatMap(({ working }, k) =>
    working.map((line) => renamed(line, (name) => `${name}_${k + 1}`)),
  );
  const factors = ideals.map((ideal, k): [string, number] => [
    `${ideal.working.at(-1)?.symbol ?? 'A'}_${k + 1}`,
    ideal.advantage,
  ]);
  return [
    ...lines,
    {
      what: 'compound.ideal-advantage',
      symbol: 'A',
      formula: factors.map(([name]) => name).join('*'),
      values: Object.fromEntries(factors),
      value: advantage,
      unit: '1',
      source: 'OpenStax Physics (high school), 9.3',
    },
  ];
}

function renamed(line: WorkingLine, named: (name: string, value?: number) => string): WorkingLine {
  const values = Object.entries(line.values);
  const names = new Map(values.map(([name, value]) => [name, named(name, value)]));
  return {
    ...line,
    symbol: named(line.symbol),
    formula: line.formula.replace(/[A-Za-z_]\w*/g, (name) => names.get(name) ?? name),
    values: Object.fromEntries(values.map(([name, value]) => [names.get(name) ?? name, value])),
  };
}
