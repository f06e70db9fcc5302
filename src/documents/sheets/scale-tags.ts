import {
  ownShift,
  ownWeight,
  type SpringScale,
  springScaleOf,
  turnOverShift,
} from '../../core/instruments/spring-scale.ts';
import type { KitPart } from '../../core/kit/kit.ts';
import { type MetresPerSecondSquared, radians } from '../../core/quantities/brands.ts';
import { decimalText } from '../../core/quantities/print-quantity.ts';
import { STANDARD_GRAVITY } from '../../core/sources/gravity.ts';
import { atBest } from '../../core/uncertainty/propagate.ts';
import { trimmed } from '../printing/quantity-text.ts';
import { otherDecimals, unitLabel } from '../printing/reading-text.ts';
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
  const shown = weight - shift;
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
        weight: onScale(language, scale, weight),
        reading: shown < scale.stop ? say('sheet.tags.on-stop') : onScale(language, scale, shown),
        shift: onScale(language, scale, shift),
      }),
    },
    ...(isAssumed(scale) ? [{ block: 'text', tone: 'small', text: say('sheet.tags.assumed') } as const] : []),
    {
      block: 'table',
      size: 'small',
      head: [say('sheet.tags.hangs'), say('sheet.tags.too-little'), say('sheet.tags.marks')],
      rows: POSITIONS.map(([hang, angle]): readonly Cell[] => {
        const less = ownShift(shift, radians(angle), radians(0));
        return [
          say(`sheet.tags.hangs.${hang}`, { angle: { si: SLOPE, dimension: 'angle' } }),
          onScale(language, scale, less),
          marksText(language, less / scale.graduations.step),
        ];
      }),
      widths: [0, 1, 1],
      align: ['left', 'right', 'right'],
    },
    { block: 'text', tone: 'small', text: say('sheet.tags.in-place') },
    ...['weight', 'reading', 'shift'].map(
      (name): Block => ({ block: 'line', name: say(`sheet.tags.bench.${name}`) }),
    ),
  ];
}

/** A force in newtons, and beside it in the scale's own unit where that is another one. */
function onScale(language: Language, { graduations }: SpringScale, force: number): string {
  const { decimal } = languagePack(language);
  const newtons = `${decimalText(force, 2, decimal)} N`;
  if (graduations.unit === 'N') return newtons;
  const decimals = otherDecimals({ ...graduations, step: graduations.step / 10 }, graduations);
  return `${decimalText(force / graduations.unitSi, Math.max(0, decimals), decimal)} ${unitLabel(graduations.unit)} (${newtons})`;
}

/** So many of the scale's own marks, to a tenth of one. */
const marksText = (language: Language, marks: number): string =>
  trimmed(decimalText(marks, 1, languagePack(language).decimal));

/** Whether nobody has measured what turns: the figures then come from scales like it. */
function isAssumed({ inputs: { mass, moving, turnOver } }: SpringScale): boolean {
  const behind = turnOver === null ? [moving?.part, moving?.spring, mass] : [turnOver, mass];
  return behind.some((each) => each?.parts.some(({ unknown }) => unknown.origin === 'assumed') === true);
}
