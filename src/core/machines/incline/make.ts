import type { Filled } from '../../description/fields.ts';
import { countIn, measuredIn, positionIn, sourcedIn } from '../../description/filled.ts';
import type { Part } from '../../description/part.ts';
import type { Diagnostic, Facts } from '../../diagnostics/diagnostic.ts';
import { angleFact, lengthFact } from '../../diagnostics/facts.ts';
import { rideOf } from '../../parts/carriage.ts';
import { stringPullOf } from '../../parts/guided-pull.ts';
import { type Metres, metres, type Radians } from '../../quantities/brands.ts';
import { exactly, type Measured, plus, times } from '../../uncertainty/measured.ts';
import type { Made, Preparation } from '../machine.ts';
import type { InclinedPlane, Steepness } from './station.ts';

/** An inclined plane from board, carriage and string; refuses a level board and one propped too high. */
export function makeIncline(preparation: Preparation): Made<InclinedPlane> {
  const { board } = preparation.parts;
  const guide = preparation.parts['guide pulley'];
  const rider = preparation.parts['rides on'];
  if (board === undefined || rider === undefined) return { station: null, diagnostics: [] };
  const boardLength = measuredIn<Metres>(board.fields, 'length') ?? exactly(metres(0));
  const pinHeights = pinHeightsOf(board.fields);
  const steep = steepnessOf(preparation, board, boardLength, pinHeights);
  const carried = rideOf(
    rider,
    sourcedIn(preparation.fields, 'faces'),
    (field) => preparation.partPlace('rides on', field),
    preparation.place('faces'),
  );
  const strung = stringPullOf(preparation.fields, guide, preparation.place, (field) =>
    preparation.partPlace('guide pulley', field),
  );
  const diagnostics = [...steep.diagnostics, ...carried.diagnostics, ...strung.diagnostics];
  if (steep.steepness === null || carried.ride === null || strung.pull === null)
    return { station: null, diagnostics };
  const { steepness } = steep;
  const { ride } = carried;
  const { pull } = strung;
  return {
    diagnostics,
    station: {
      ...steepness,
      ...ride,
      ...pull,
      machine: 'inclined plane',
      inputs: { ...steepness.inputs, ...ride.inputs, ...pull.inputs, boardLength },
      pinHeights,
      pin: steep.pin,
      propped: preparation.fields['propped at'] !== undefined,
      // Each union keeps its own tag beside its own inputs, which a spread of three cannot show.
    } as InclinedPlane,
  };
}

interface Steep {
  readonly steepness: Steepness | null;
  readonly pin: number | null;
  readonly diagnostics: readonly Diagnostic[];
}

/** The slope from exactly one of: a pin of the prop, a rise over a length, the measured angle. */
function steepnessOf(
  preparation: Preparation,
  board: Part,
  boardLength: Measured<Metres>,
  pinHeights: readonly Measured<Metres>[],
): Steep {
  const { fields, place } = preparation;
  const refused = (code: string, field: string | null, facts: Facts = {}): Steep => ({
    steepness: null,
    pin: null,
    diagnostics: [{ code, severity: 'error', at: place(field), facts }],
  });
  const unused: readonly Diagnostic[] =
    fields['slope length'] === undefined || fields.rise !== undefined
      ? []
      : [{ code: 'incline.length-unused', severity: 'warning', at: place('slope length'), facts: {} }];
  const ways = ['propped at', 'rise', 'angle'].filter((field) => fields[field] !== undefined);
  const [way, second] = ways;
  if (way === undefined) return refused('incline.no-slope', null);
  if (second !== undefined) return refused('incline.two-slopes', second, { first: way, second });

  if (way === 'angle') {
    const angle = measuredIn<Radians>(fields, 'angle') ?? exactly(0 as Radians);
    if (angle.value <= 0) return refused('incline.level', 'angle', { angle: angleFact(angle.value) });
    if (angle.value >= Math.PI / 2)
      return refused('incline.upright', 'angle', { angle: angleFact(angle.value) });
    return { steepness: { steep: 'measured', inputs: { angle } }, pin: null, diagnostics: unused };
  }

  const position = way === 'rise' ? undefined : positionIn<Metres>(fields, 'propped at');
  const pin = position?.hole ?? null;
  const rise =
    pin === null ? (position?.measured ?? measuredIn<Metres>(fields, 'rise')) : pinHeights[pin - 1];
  if (rise === undefined)
    return refused('no-such-hole', way, { hole: pin ?? 0, holes: pinHeights.length, part: board.mark });
  const slopeLength =
    way === 'rise'
      ? (measuredIn<Metres>(fields, 'slope length') ?? boardLength)
      : (measuredIn<Metres>(board.fields, 'prop at') ?? boardLength);
  if (slopeLength.value > boardLength.value)
    return refused('incline.beyond-the-board', way === 'rise' ? 'slope length' : null, {
      at: lengthFact(slopeLength.value),
      length: lengthFact(boardLength.value),
      part: board.mark,
    });
  if (rise.value <= 0) return refused('incline.level', way, { angle: angleFact(0) });
  if (rise.value >= slopeLength.value)
    return refused('incline.too-high', way, {
      rise: lengthFact(rise.value),
      length: lengthFact(slopeLength.value),
      part: board.mark,
    });
  return {
    steepness: { steep: 'rise over length', inputs: { rise, slopeLength } },
    pin,
    diagnostics: unused,
  };
}

/** Measured heights, or pin n at first + (n - 1) x spacing above the board's foot. */
function pinHeightsOf(board: Filled): readonly Measured<Metres>[] {
  const heights = board['pin heights'];
  if (heights?.type === 'quantities') return heights.measured as readonly Measured<Metres>[];
  const first = measuredIn<Metres>(board, 'first pin');
  const spacing = measuredIn<Metres>(board, 'pin spacing');
  if (first === undefined || spacing === undefined) return [];
  return Array.from({ length: countIn(board, 'pins') ?? 0 }, (_, n) =>
    plus(first, times<Metres>(spacing, n)),
  );
}
