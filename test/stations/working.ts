import type { WorkingLine } from '../../src/core/description/working.ts';

const MATHS = 'sin cos tan asin acos atan sqrt exp ln abs min max hypot floor ceil pi'.split(' ');

/** A second reading of the printed formulas, apart from the program: plain arithmetic, six digits. */
export function recompute(line: WorkingLine, digits: number | null = null): number {
  const names = Object.keys(line.values);
  const values = Object.values(line.values).map((value) =>
    digits === null ? value : Number(value.toPrecision(digits)),
  );
  const maths = MATHS.map((name) =>
    name === 'pi' ? Math.PI : name === 'ln' ? Math.log : (Math as unknown as Record<string, unknown>)[name],
  );
  const body = `return (${line.formula.replaceAll('^', '**')});`;
  return new Function(...MATHS, ...names, body)(...maths, ...values) as number;
}
