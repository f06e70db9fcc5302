import type { Wedge } from '../../src/core/machines/wedge/station.ts';
import { kilograms, metres, newtons, newtonsPerMetre, ratio } from '../../src/core/quantities/brands.ts';
import { exactly } from '../../src/core/uncertainty/measured.ts';

interface Said {
  readonly angle: number;
  readonly length?: number;
  readonly mass?: number;
  readonly friction?: number;
  readonly starting?: number;
  readonly base?: number;
  readonly stop?: number;
}

/** A single-slope wedge for a test: SI numbers, all known exactly; no friction unless said. */
export const liftingWedge = (said: Said): Wedge => wedge('lifting', Math.tan(said.angle), said);

/** A two-sided wedge between cords; `angle` is half the whole angle. */
export const splittingWedge = (
  said: Said & {
    readonly preTension: number;
    readonly stiffness?: number;
    readonly advance?: number;
    readonly pushed?: Wedge['pushed'];
    readonly mallet?: { readonly mass: number; readonly falls: number; readonly share: number };
  },
): Wedge => {
  const plain = wedge('splitting', 2 * Math.tan(said.angle), said);
  return {
    ...plain,
    pushed: said.pushed ?? 'level',
    inputs: {
      ...plain.inputs,
      preTension: exactly(newtons(said.preTension)),
      stiffness: exactly(newtonsPerMetre(said.stiffness ?? 0)),
      advance: exactly(metres(said.advance ?? 0)),
      ...(said.mallet === undefined
        ? {}
        : {
            malletMass: exactly(kilograms(said.mallet.mass)),
            malletFalls: exactly(metres(said.mallet.falls)),
            blowShare: exactly(ratio(said.mallet.share)),
          }),
    },
  };
};

function wedge(form: Wedge['form'], thicknessOverLength: number, said: Said): Wedge {
  const length = said.length ?? 0.1;
  const friction = exactly(ratio(said.friction ?? 0));
  const base = exactly(ratio(said.base ?? 0));
  const stop = exactly(ratio(said.stop ?? 0));
  return {
    machine: 'wedge',
    form,
    pushed: 'level',
    hasCords: form === 'splitting',
    hasMark: form === 'splitting',
    inputs: {
      length: exactly(metres(length)),
      thickness: exactly(metres(length * thicknessOverLength)),
      mass: exactly(kilograms(said.mass ?? 0)),
      faceFriction: friction,
      faceStarting: exactly(ratio(said.starting ?? said.friction ?? 0)),
      baseFriction: base,
      baseStarting: base,
      stopFriction: stop,
      stopStarting: stop,
      preTension: exactly(newtons(0)),
      stiffness: exactly(newtonsPerMetre(0)),
      advance: exactly(metres(0)),
    },
  };
}
