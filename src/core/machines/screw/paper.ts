import type { Drawing, Point, Shape } from '../../description/drawing.ts';
import type { Caution, Step } from '../../description/step.ts';
import type { Facts } from '../../diagnostics/diagnostic.ts';
import { lengthFact } from '../../diagnostics/facts.ts';
import { type At, atBest } from '../../uncertainty/propagate.ts';
import { isSelfLocking } from './screw.ts';
import { isCounted, lead, type Screw } from './station.ts';

/** How the screw is set up and turned, one action a step; what was counted or measured is written last. */
export function steps(screw: Screw, isFelt = false): readonly Step[] {
  const step = (name: string, facts: Facts = {}): Step => ({ key: `screw.step.${name}`, facts });
  const { arm, travel, startGap } = screw.inputs;
  if (isCounted(screw)) {
    const gap = atBest(startGap);
    return [
      gap > 0 ? step('start-gap', { gap: lengthFact(gap) }) : step('start-flush'),
      step('mark'),
      step('count'),
      ...(screw.turns === null ? [] : [step('turn-count', { turns: screw.turns })]),
      ...(screw.turns !== null || travel === undefined
        ? []
        : [step('turn-until', { travel: lengthFact(atBest(travel)) })]),
    ];
  }
  const place = arm === undefined ? null : { arm: lengthFact(atBest(arm)) };
  const hand = isFelt ? '-hand' : '';
  return [
    step('turn-down'),
    step('load'),
    ...(place === null ? [] : [step(`hook${hand}`, place)]),
    step(`pull-square${hand}`),
    step('pull-on'),
  ];
}

/** Whoever counts begins at the start again; a load comes off before the face is there. */
export function between(from: Screw, to: Screw): readonly Step[] {
  if (!isCounted(to)) return [];
  return isCounted(from) ? [turnedBack(to)] : [{ key: 'screw.reset.load', facts: {} }];
}

function turnedBack({ inputs }: Screw): Step {
  const gap = atBest(inputs.startGap);
  return gap > 0
    ? { key: 'screw.reset.turn-back-gap', facts: { gap: lengthFact(gap) } }
    : { key: 'screw.reset.turn-back', facts: {} };
}

/** Counted: turned back, unmarked, the ruler away. Pulled: load and scale off, turned right down. */
export function reset(screw: Screw, isFelt = false): readonly Step[] {
  if (!isCounted(screw))
    return [
      { key: 'screw.reset.load', facts: {} },
      { key: isFelt ? 'screw.reset.load-away' : 'screw.reset.scale', facts: {} },
      { key: 'screw.reset.turn-down', facts: {} },
    ];
  return [turnedBack(screw), { key: 'screw.reset.mark', facts: {} }, { key: 'screw.reset.ruler', facts: {} }];
}

export const cautions = (): readonly Caution[] => [{ key: 'caution.fingers', facts: {}, source: 'fingers' }];

/** What the screw on the table has and the schoolbook's screw leaves out. */
export function differences(
  screw: Screw,
  at: At,
): readonly { readonly key: string; readonly facts: Facts }[] {
  const { threadFriction, collarFriction, collarDiameter, headMass, startGap } = screw.inputs;
  if (isCounted(screw))
    return at(startGap) === 0
      ? []
      : [{ key: 'screw.difference.start-gap', facts: { gap: lengthFact(at(startGap)) } }];
  return [
    ...(at(threadFriction) === 0
      ? []
      : [{ key: 'screw.difference.thread', facts: { friction: at(threadFriction) } }]),
    ...(at(collarFriction) * at(collarDiameter) === 0
      ? []
      : [{ key: 'screw.difference.collar', facts: { diameter: lengthFact(at(collarDiameter)) } }]),
    ...(at(headMass) === 0
      ? []
      : [
          {
            key: 'screw.difference.head',
            facts: { mass: { si: at(headMass), dimension: 'mass' } },
          } as const,
        ]),
    ...(isSelfLocking(screw, at) ? [{ key: 'screw.difference.stays', facts: {} }] : []),
  ];
}

/** Turns of thread drawn at most: enough to see the pitch. */
const DRAWN_TURNS = 24;

/** Side view of the thread with its load, and the lever seen along the axis, to one scale. */
export const drawing = (screw: Screw, at: At): Drawing => drawn(screw, at, false);

/** As it is left: pulled, it stands right down and without its load; counted, it touches its face again. */
export const start = (screw: Screw, at: At): readonly Drawing[] => [drawn(screw, at, !isCounted(screw))];

function drawn(screw: Screw, at: At, isDown: boolean): Drawing {
  const d = at(screw.inputs.diameter);
  const full = Math.min(DRAWN_TURNS, Math.max(6, Math.ceil((4 * d) / at(screw.inputs.pitch))));
  const turns = isDown ? Math.ceil(full / 4) : full;
  const height = turns * at(screw.inputs.pitch);
  const nut = (full * at(screw.inputs.pitch)) / 3;
  const axis = -5 * d;
  return {
    shapes: [
      { shape: 'ground', from: [axis - 2.5 * d, -nut], to: [axis + 2.5 * d, -nut] },
      { shape: 'body', role: 'nut', outline: box(axis - 1.25 * d, -nut, axis + 1.25 * d, 0) },
      { shape: 'body', role: 'screw', outline: threadOutline(screw, at, axis, turns) },
      ...(isCounted(screw) ? movedFace(screw, at, axis, height) : []),
      ...(isCounted(screw) || isDown ? [] : carriedLoad(axis, height, d)),
      ...(isCounted(screw) ? [] : [leadMeasure(screw, at, axis - 1.25 * d)]),
      ...leverView(screw, at),
    ],
  };
}

/** What one turn travels. Where turns or travel are counted it is what pupils are to find, so it isn't told. */
const leadMeasure = (screw: Screw, at: At, x: number): Shape => ({
  shape: 'measure',
  from: [x, 0],
  to: [x, lead(screw, at)],
  offset: -1,
  metres: lead(screw, at),
});

/** The load stands on the head of the screw. */
const carriedLoad = (axis: number, height: number, d: number): readonly Shape[] => [
  { shape: 'body', role: 'block', outline: box(axis - 1.5 * d, height, axis + 1.5 * d, height + 1.5 * d) },
  { shape: 'label', at: [axis, height + 0.75 * d], key: 'screw.label.load', facts: {} },
];

/** What the counted screw comes up against: its face, as far off as the gap at the start. */
function movedFace(screw: Screw, at: At, axis: number, height: number): readonly Shape[] {
  const d = at(screw.inputs.diameter);
  const gap = Math.max(0, at(screw.inputs.startGap));
  const low = height + gap;
  return [
    { shape: 'body', role: 'block', outline: box(axis - 1.5 * d, low, axis + 1.5 * d, low + d / 2) },
    { shape: 'label', at: [axis + 1.7 * d, low], key: 'screw.label.face', facts: {}, anchor: 'start' },
    ...(gap === 0
      ? []
      : [
          {
            shape: 'measure',
            from: [axis - 1.5 * d, height],
            to: [axis - 1.5 * d, low],
            offset: -1,
            metres: gap,
          } as const,
        ]),
  ];
}

/** Along the axis: the screw's circle, its lever, and the pull square to it. */
function leverView(screw: Screw, at: At): readonly Shape[] {
  const d = at(screw.inputs.diameter);
  const circle: Shape = { shape: 'wheel', centre: [0, 0], radius: d / 2, role: 'screw' };
  if (screw.inputs.arm === undefined) return [circle];
  const a = at(screw.inputs.arm);
  return [
    { shape: 'body', role: 'bar', outline: box(0, -d / 4, a, d / 4) },
    circle,
    {
      shape: 'label',
      at: [-0.5 * d, -1.2 * d - 0.05 * a],
      key: 'screw.label.from-above',
      facts: {},
      anchor: 'start',
    },
    { shape: 'label', at: [a / 2, 0.25 * d + 0.06 * a], key: 'screw.label.lever', facts: {} },
    ...(isCounted(screw)
      ? []
      : [{ shape: 'effort', from: [a, 0], direction: Math.PI / 2, newtons: 0, scale: 'level' } as const]),
    { shape: 'measure', from: [0, 0], to: [a, 0], offset: -1, metres: a },
  ];
}

/** Both flanks of every turn: out to the diameter, in to the root, half a pitch apart side to side. */
function threadOutline(screw: Screw, at: At, axis: number, turns: number): readonly Point[] {
  const P = at(screw.inputs.pitch);
  const crest = at(screw.inputs.diameter) / 2;
  const root = Math.max(crest / 2, at(screw.inputs.meanDiameter) - crest);
  const right: Point[] = [];
  const left: Point[] = [];
  for (let half = 0; half <= 2 * turns; half += 1) {
    const y = (half * P) / 2;
    right.push([axis + (half % 2 === 0 ? crest : root), y]);
    left.push([axis - (half % 2 === 0 ? root : crest), y]);
  }
  return [...right, ...left.reverse()];
}

const box = (left: number, low: number, right: number, high: number): readonly Point[] => [
  [left, low],
  [right, low],
  [right, high],
  [left, high],
];
