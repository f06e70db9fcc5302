import { choiceIn, countIn, measuredIn } from '../../description/filled.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { guidePulley, type Sheave, sheaveFaults, sheaveOf } from '../../parts/sheave.ts';
import { type Kilograms, kilograms, newtons, type Radians, radians, ratio } from '../../quantities/brands.ts';
import { between, exactly, type Measured } from '../../uncertainty/measured.ts';
import type { Made, Part, Preparation } from '../machine.ts';
import { type Block, mostParts, type PullDirection, sheavesNeeded, type Tackle } from './station.ts';

/** A small block whose mass nobody stated; common practice, no source. */
const BLOCK_MASS = [kilograms(0.01), kilograms(0.06)] as const;
const SLOTS = ['fixed block', 'moving block', 'guide pulley', 'second guide pulley'] as const;
const NO_SHEAVE: Sheave = { share: exactly(ratio(0)), constant: exactly(newtons(0)) };

/** A tackle from its blocks, its parts of line and where the fall leaves; refuses what can't be rove. */
export function makeTackle(preparation: Preparation): Made<Tackle> {
  const parts = countIn(preparation.fields, 'parts of line');
  const fallLeaves = choiceIn(preparation.fields, 'fall leaves') as Block | undefined;
  if (parts === undefined || fallLeaves === undefined) return { station: null, diagnostics: [] };
  const { 'fixed block': fixed, 'moving block': moving } = preparation.parts;
  const guides = [preparation.parts['guide pulley'], preparation.parts['second guide pulley']].filter(
    (part) => part !== undefined,
  );
  const sheaves = { fixed: sheavesIn(fixed), moving: sheavesIn(moving) };
  const lean = measuredIn<Radians>(preparation.fields, 'parts lean') ?? exactly(radians(0));
  const pull = pullOf(preparation, fallLeaves, guides.length);
  const diagnostics = [
    ...SLOTS.flatMap((slot) => {
      const part = preparation.parts[slot];
      return part === undefined ? [] : sheaveFaults(part, (field) => preparation.partPlace(slot, field));
    }),
    ...reevingFaults(preparation, parts, fallLeaves, sheaves),
    ...(pull === null ? [pullFault(preparation, fallLeaves)] : []),
    ...(parts === 1 && lean.value !== 0 ? [leanFault(preparation, lean)] : []),
  ];
  if (pull === null || diagnostics.length > 0) return { station: null, diagnostics };

  const [fixedDrag, movingDrag] = [dragOf(fixed), dragOf(moving)];
  const [guide, second] = [dragOf(guides[0]), dragOf(guides[1])];
  return {
    diagnostics,
    station: {
      machine: 'tackle',
      inputs: {
        blockMass: massOf(moving),
        lean,
        fixedShare: fixedDrag.share,
        fixedConstant: fixedDrag.constant,
        movingShare: movingDrag.share,
        movingConstant: movingDrag.constant,
        guideShare: guide.share,
        guideConstant: guide.constant,
        secondGuideShare: second.share,
        secondGuideConstant: second.constant,
      },
      parts,
      fallLeaves,
      sheaves,
      blocks: {
        ...(fixed === undefined ? {} : { fixed: fixed.mark }),
        ...(moving === undefined ? {} : { moving: moving.mark }),
      },
      guides: guides.length as Tackle['guides'],
      pull,
    },
  };
}

/** What keeps these blocks from carrying so many parts of line. */
function reevingFaults(
  preparation: Preparation,
  parts: number,
  fallLeaves: Block,
  sheaves: Tackle['sheaves'],
): readonly Diagnostic[] {
  const error = (code: string, facts: Diagnostic['facts'], field = 'parts of line'): Diagnostic => ({
    code: `tackle.${code}`,
    severity: 'error',
    at: preparation.place(field),
    facts,
  });
  if (parts === 1 && fallLeaves === 'moving block') return [error('no-tackle', { parts })];
  const needed = sheavesNeeded(parts, fallLeaves);
  const { 'fixed block': fixed, 'moving block': moving } = preparation.parts;
  const most = mostParts(sheaves, fallLeaves);
  const lacks = (block: Block, part: Part | undefined, needs: number, has: number): readonly Diagnostic[] => {
    if (needs <= has) return [];
    return part === undefined
      ? [error('block-missing', { block, parts, needed: needs })]
      : [error('too-few-sheaves', { block, part: part.mark, parts, needed: needs, has, most })];
  };
  const idle =
    moving !== undefined && needed.moving === 0 ? [error('idle-block', { part: moving.mark, parts })] : [];
  return [
    ...lacks('fixed block', fixed, needed.fixed, sheaves.fixed),
    ...lacks('moving block', moving, needed.moving, sheaves.moving),
    ...idle,
  ];
}

/**
 * Where the hand pulls. A fall off the fixed block comes down or goes level; off the moving block it
 * goes up; a guide pulley turns it anywhere. `null` where the stated pull can't be.
 */
function pullOf(preparation: Preparation, fallLeaves: Block, guides: number): PullDirection | null {
  const stated = choiceIn(preparation.fields, 'pull') as PullDirection | undefined;
  if (guides > 0) return stated ?? (fallLeaves === 'fixed block' ? 'level' : 'down');
  if (fallLeaves === 'moving block') return stated === undefined || stated === 'up' ? 'up' : null;
  return stated === 'up' ? null : (stated ?? 'down');
}

const pullFault = (preparation: Preparation, fallLeaves: Block): Diagnostic => ({
  code: 'tackle.pull-direction',
  severity: 'error',
  at: preparation.place('pull'),
  facts: {
    pull: choiceIn(preparation.fields, 'pull') ?? '',
    block: fallLeaves,
    goes: fallLeaves === 'fixed block' ? 'down or level' : 'up',
  },
});

const leanFault = (preparation: Preparation, lean: Measured<Radians>): Diagnostic => ({
  code: 'tackle.lean-of-one-part',
  severity: 'error',
  at: preparation.place('parts lean'),
  facts: { lean: { si: lean.value, dimension: 'angle' } },
});

/** A guide pulley in the place of a block has one sheave. */
const sheavesIn = (part: Part | undefined): number => {
  if (part === undefined) return 0;
  return countIn(part.fields, 'sheaves') ?? (part.kind === guidePulley.kind ? 1 : 0);
};

const dragOf = (part: Part | undefined): Sheave => (part === undefined ? NO_SHEAVE : sheaveOf(part));

const massOf = (moving: Part | undefined): Measured<Kilograms> => {
  if (moving === undefined) return exactly(kilograms(0));
  return (
    measuredIn<Kilograms>(moving.fields, 'mass') ??
    between(`${moving.mark}/mass`, ...BLOCK_MASS, 'assumed', 'common practice, no source')
  );
};
