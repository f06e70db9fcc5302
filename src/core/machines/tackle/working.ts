import { workingLine as line, type WorkingLine } from '../../description/working.ts';
import { type Asked, signOf } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Tackle } from './station.ts';
import type { Passed, Tensions } from './tensions.ts';

const BALANCE = 'balance of forces on the moving block; OpenStax College Physics 2e, 9.5';
const DRAG = 'drag of a sheave: constant and share of the mean tension (own definition)';

/**
 * The lines that lead to the hauled tension: what each kind of sheave does to a tension (gain k and
 * step d, so that T' = k T + d), then the part at the dead end, then part by part to the hand.
 */
export function tackleWorking(tackle: Tackle, at: At, asked: Asked, found: Tensions): readonly WorkingLine[] {
  const { passed, block, lean } = found;
  const sheaves = passed.map((sheave) => ({ ...sheave, ...effectOf(sheave, signOf(asked.direction)) }));
  const inner = sheaves.slice(0, tackle.parts - 1);
  const steps = inner.some((sheave) => sheave.step !== 0);
  const names: Record<string, number> = {};
  for (const sheave of sheaves) {
    names[`k${sheave.letter}`] = sheave.gain;
    names[`d${sheave.letter}`] = sheave.step;
  }
  const only = (formula: string): Record<string, number> =>
    Object.fromEntries(Object.entries(names).filter(([name]) => formula.includes(name)));

  const gains = inner.reduceRight((behind, { letter }) => `1 + k${letter}*(${behind})`, '1');
  const rests: string[] = [];
  for (const { letter } of inner) {
    const before = rests.at(-1);
    rests.push(before === undefined ? `d${letter}` : `(${before})*k${letter} + d${letter}`);
  }
  const a = inner.reduceRight((behind, { gain }) => 1 + gain * behind, 1);
  let rest = 0;
  let b = 0;
  for (const { gain, step } of inner) {
    rest = rest * gain + step;
    b += rest;
  }
  const along = [...found.parts, ...found.fall];
  const symbol = (k: number): string =>
    k === along.length - 1 ? 'F' : k < tackle.parts ? `T${k + 1}` : `U${k + 1 - tackle.parts}`;
  const first = along[0] ?? 0;
  const restsFormula = rests.map((each) => `(${each})`).join(' + ');

  return [
    ...(block === 0
      ? []
      : [
          {
            what: 'tackle.block-weight',
            symbol: 'B',
            formula: 'mB*g',
            values: { mB: at(tackle.inputs.blockMass), g: asked.gravity },
            value: block,
            unit: 'N',
            source: 'weight = mass x local gravity',
          },
        ]),
    ...effectLines(sheaves, signOf(asked.direction)),
    ...(inner.length === 0
      ? []
      : [
          line(
            'tackle.gains',
            'a',
            gains,
            only(gains),
            a,
            '1',
            'sum of the tensions for 1 N at the dead end',
          ),
        ]),
    ...(steps
      ? [
          line(
            'tackle.rests',
            'b',
            restsFormula,
            only(restsFormula),
            b,
            'N',
            'sum of what the constant drags add',
          ),
        ]
      : []),
    line(
      'tackle.first-part',
      symbol(0),
      `${steps ? '(' : ''}(W${block === 0 ? '' : ' + B'})/cos(x)${steps ? ' - b)' : ''}${inner.length === 0 ? '' : '/a'}`,
      {
        W: asked.load,
        ...(block === 0 ? {} : { B: block }),
        x: lean,
        ...(steps ? { b } : {}),
        ...(inner.length === 0 ? {} : { a }),
      },
      first,
      'N',
      BALANCE,
    ),
    ...sheaves.map(({ letter, gain, step, where }, k) => {
      const before = symbol(k);
      return line(
        k === sheaves.length - 1 ? 'tackle.effort' : `tackle.over-${where}`,
        symbol(k + 1),
        `k${letter}*${before}${step === 0 ? '' : ` + d${letter}`}`,
        {
          [`k${letter}`]: gain,
          [before]: along[k] ?? 0,
          ...(step === 0 ? {} : { [`d${letter}`]: step }),
        },
        along[k + 1] ?? 0,
        'N',
        DRAG,
      );
    }),
  ];
}

/** What a sheave does to the tension of the part before it. */
const effectOf = ({ share, constant }: Passed, sense: 1 | -1) => ({
  gain: (1 + (sense * share) / 2) / (1 - (sense * share) / 2),
  step: (sense * constant) / (1 - (sense * share) / 2),
});

function effectLines(
  sheaves: readonly (Passed & { gain: number; step: number })[],
  sense: 1 | -1,
): readonly WorkingLine[] {
  const [plus, minus] = sense === 1 ? ['+', '-'] : ['-', '+'];
  return sheaves
    .filter((sheave, k) => sheaves.findIndex(({ letter }) => letter === sheave.letter) === k)
    .flatMap(({ letter, where, share, constant, gain, step }) => {
      const s = `s${letter}`;
      const c = `c${letter}`;
      return [
        line(
          `tackle.gain-${where}`,
          `k${letter}`,
          `(1 ${plus} ${s}/2)/(1 ${minus} ${s}/2)`,
          { [s]: share },
          gain,
          '1',
          DRAG,
        ),
        ...(step === 0
          ? []
          : [
              line(
                `tackle.step-${where}`,
                `d${letter}`,
                `${sense === 1 ? '' : '0 - '}${c}/(1 ${minus} ${s}/2)`,
                { [c]: constant, [s]: share },
                step,
                'N',
                DRAG,
              ),
            ]),
      ];
    });
}
