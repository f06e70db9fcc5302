import { sourcedIn } from '../../description/filled.ts';
import { rideOf } from '../../parts/carriage.ts';
import { stringPullOf } from '../../parts/guided-pull.ts';
import type { Made, Preparation } from '../machine.ts';
import type { Drag } from './station.ts';

/** A load to drag along the level, from what it rides on and its string. */
export function makeDrag(preparation: Preparation): Made<Drag> {
  const rider = preparation.parts['rides on'];
  if (rider === undefined) return { station: null, diagnostics: [] };
  const carried = rideOf(
    rider,
    sourcedIn(preparation.fields, 'faces'),
    (field) => preparation.partPlace('rides on', field),
    preparation.place('faces'),
  );
  const strung = stringPullOf(
    preparation.fields,
    preparation.parts['guide pulley'],
    preparation.place,
    (field) => preparation.partPlace('guide pulley', field),
  );
  const diagnostics = [...carried.diagnostics, ...strung.diagnostics];
  if (carried.ride === null || strung.pull === null) return { station: null, diagnostics };
  const { ride } = carried;
  const { pull } = strung;
  return {
    diagnostics,
    station: {
      ...ride,
      ...pull,
      machine: 'drag on the level',
      inputs: { ...ride.inputs, ...pull.inputs },
      // Each union keeps its own tag beside its own inputs, which a spread of two cannot show.
    } as Drag,
  };
}
