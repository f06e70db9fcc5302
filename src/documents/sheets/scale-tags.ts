import type { Graduations } from '../../core/instruments/graduations.ts';
import {
  ownShift,
  ownWeight,
  type SpringScale,
  springScaleOf,
  turnOverShift,
} from '../../core/instruments/spring-scale.ts';
import type { KitPart } from '../../core/kit/kit.ts';
import { type MetresPerSecondSquared, newtons, radians } from '../../core/quantities/brands.ts';
import { decimalText } from '../../core/quantities/print-quantity.ts';
import { STANDARD_GRAVITY } from '../../core/sources/gravity.ts';
import { atBest } from '../../core/uncertainty/propagate.ts';
import { trimmed } from '../printing/quantity-text.ts';
import { newtonMarks, unitLabel } from '../printing/reading-text.ts';
import { shiftDecimals } from '../printing/shift-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import type { Block, Cell } from './block.ts';
import { partText } from './kit-parts.ts';
import { kitSheet } from './kit-sheet.ts';
import type { SheetKind } from './paper-job.ts';
import { sayIn } from './say.ts';

/** Two tags across either paper, millimetres. */
const TAG = { width: 90, height: 112 };

/**
 * A tag to tie to each spring scale: how its own shift is found with nothing but the scale itself, what was
 * found on the bench, and what that does in every position.
 */
export const scaleTags: SheetKind = {
  name: 'tags',
  of: 'kit',
  build: (job) => {
    const { kit, gravity } = job.prepared;
    const language = job.languages.key;
    const say = sayIn(language);
    const scales = kit?.parts.filter(({ kind, isFaulty }) => kind === 'spring scale' && !isFaulty) ?? [];
    if (scales.length === 0) return [];
    const g = gravity?.gravity.value ?? STANDARD_GRAVITY;
    return [
      kitSheet(job, language, {
        name: 'scale-tags',
        title: say('sheet.tags'),
        blocks: [
          { block: 'title', text: say('sheet.tags'), facts: [] },
          { block: 'tags', ...TAG, tags: scales.map((part) => tag(language, part, g)) },
        ],
      }),
    ];
  },
};

/** A slope to read a row of the table for: 30 degrees above the level. */
const SLOPE = Math.PI / 6;
/** Positions with the angle of the hook from hanging straight down. */
const POSITIONS = [
  ['hook down', 0],
  ['slope', Math.PI / 2 - SLOPE],
  ['level', Math.PI / 2],
  ['upside down', Math.PI],
] as const;

function tag(language: Language, part: KitPart, g: MetresPerSecondSquared): readonly Block[] {
  const say = sayIn(language);
  const scale = springScaleOf(part);
  const shift = turnOverShift(scale, atBest, g);
  const weight = ownWeight(scale, atBest, g);
  const units = unitsOf(scale);
  const said = (fine: number, figure: (printed: Printed) => number): string =>
    onScale(units.map((unit) => forceText(language, unit, fine, figure(printedIn(unit, weight, shift)))));
  return [
    { block: 'text', text: part.mark, tone: 'headline' },
    { block: 'text', text: partText(language, part) },
    { block: 'text', text: say('sheet.tags.test'), tone: 'strong' },
    { block: 'steps', items: ['zero', 'weigh', 'turn'].map((step) => say(`sheet.tags.${step}`)) },
    { block: 'text', text: say('sheet.tags.difference') },
    {
      block: 'text',
      tone: 'strong',
      text: say('sheet.tags.found', {
        weight: said(0, (printed) => printed.weight),
        reading:
          weight - shift < scale.stop
            ? say('sheet.tags.on-stop')
            : said(0, (printed) => printed.weight - printed.shift),
        shift: said(0, (printed) => printed.shift),
      }),
    },
    ...(isAssumed(scale) ? [{ block: 'text', tone: 'small', text: say('sheet.tags.assumed') } as const] : []),
    {
      block: 'table',
      size: 'small',
      head: [say('sheet.tags.hangs'), say('sheet.tags.too-little'), say('sheet.tags.marks')],
      rows: POSITIONS.map(([hang, angle]): readonly Cell[] => {
        // Half and quarter of a printed figure end at most two places further on.
        const less = (whole: number): number => ownShift(newtons(whole), radians(angle), radians(0));
        return [
          say(`sheet.tags.hangs.${hang}`, { angle: { si: SLOPE, dimension: 'angle' } }),
          said(2, (printed) => less(printed.shift)),
          marksText(language, less(shift) / scale.graduations.step),
        ];
      }),
      widths: [4, 3, 2],
      align: ['left', 'right', 'right'],
    },
    { block: 'text', tone: 'small', text: say('sheet.tags.in-place') },
    ...['weight', 'reading', 'shift'].map(
      (name): Block => ({ block: 'line', name: say(`sheet.tags.bench.${name}`) }),
    ),
  ];
}

/** A unit that forces are printed in, with the decimals of what is weighed. */
interface ForceUnit {
  readonly symbol: string;
  readonly si: number;
  readonly decimals: number;
}

/** The scale's own unit, to a fifth of a mark or finer; newtons beside it where it has other ones. */
function unitsOf({ graduations }: SpringScale): readonly ForceUnit[] {
  const inUnit = (marks: Graduations): ForceUnit => ({
    symbol: marks.unit,
    si: marks.unitSi,
    decimals: shiftDecimals(graduations, marks),
  });
  return graduations.unit === 'N' ? [inUnit(graduations)] : [inUnit(graduations), inUnit(newtonMarks)];
}

/** Weight and shift as they are printed, in that unit: all else on a tag is reckoned from these. */
interface Printed {
  readonly weight: number;
  readonly shift: number;
}

function printedIn({ si, decimals }: ForceUnit, weight: number, shift: number): Printed {
  const printed = (force: number): number => Number(decimalText(force / si, decimals));
  return { weight: printed(weight), shift: printed(shift) };
}

/** With so many places more as are not noughts. */
function forceText(
  language: Language,
  { symbol, decimals }: ForceUnit,
  fine: number,
  figure: number,
): string {
  const text = decimalText(figure, decimals + fine, languagePack(language).decimal);
  const noughts = /0*$/.exec(text)?.[0].length ?? 0;
  const kept = text.slice(0, text.length - Math.min(fine, noughts)).replace(/[.,]$/, '');
  return `${kept}\u00a0${unitLabel(symbol)}`;
}

/** What the scale says first, newtons in brackets. */
const onScale = ([own = '', ...others]: readonly string[]): string =>
  [own, ...others.map((text) => `(${text})`)].join(' ');

/** So many of the scale's own marks, to a tenth of one. */
const marksText = (language: Language, marks: number): string =>
  trimmed(decimalText(marks, 1, languagePack(language).decimal));

/** Whether nobody has measured what turns: the figures then come from scales like it. */
function isAssumed({ inputs: { mass, moving, turnOver } }: SpringScale): boolean {
  const behind = turnOver === null ? [moving?.part, moving?.spring, mass] : [turnOver, mass];
  return behind.some((each) => each?.parts.some(({ unknown }) => unknown.origin === 'assumed') === true);
}
