import type { Filled } from '../../description/fields.ts';
import { countIn, isYesIn, measuredIn, positionIn, sourcedIn } from '../../description/filled.ts';
import type { Diagnostic, Place } from '../../diagnostics/diagnostic.ts';
import { angleFact, lengthFact } from '../../diagnostics/facts.ts';
import { kilograms, type Metres, metres, type Ratio, radians } from '../../quantities/brands.ts';
import { between, exactly, type Measured, measured, plus, times } from '../../uncertainty/measured.ts';
import { atBest } from '../../uncertainty/propagate.ts';
import type { Made, Preparation } from '../machine.ts';
import { arms } from './lever.ts';
import type { Lever } from './station.ts';

const PIN_DIAMETER = [metres(0.003), metres(0.008)] as const;
/** A bar that looks even has its mass centre in the middle, to about this share of its length. */
const CENTRE_SHARE = 0.005;

/** A lever from a bar and the three places on it; refuses places off the bar and arms of nothing. */
export function makeLever(preparation: Preparation): Made<Lever> {
  const bar = preparation.parts.bar;
  if (bar === undefined) return { station: null, diagnostics: [] };
  const length = measuredIn<Metres>(bar.fields, 'length') ?? exactly(metres(0));
  const positions = holePositions(bar.fields);
  const diagnostics: Diagnostic[] = [];
  const holes: { fulcrum?: number; load?: number; pull?: number } = {};

  const onTheBar = (at: Measured<Metres>, place: Place): Measured<Metres> | null => {
    if (at.value >= 0 && at.value <= length.value) return at;
    const facts = { at: lengthFact(at.value), length: lengthFact(length.value), part: bar.mark };
    diagnostics.push({ code: 'lever.off-the-bar', severity: 'error', at: place, facts });
    return null;
  };
  const centre = measuredIn<Metres>(bar.fields, 'mass centre');
  if (centre !== undefined) onTheBar(centre, preparation.partPlace('bar', 'mass centre'));

  const place = (what: 'fulcrum' | 'load' | 'pull'): Measured<Metres> | null => {
    const field = `${what} at`;
    const position = positionIn<Metres>(preparation.fields, field);
    if (position === undefined) return null;
    if (position.hole !== undefined) {
      const at = positions[position.hole - 1];
      if (at === undefined) {
        diagnostics.push({
          code: 'no-such-hole',
          severity: 'error',
          at: preparation.place(field),
          facts: {
            hole: position.hole,
            holes: positions.length,
            part: bar.mark,
          },
        });
        return null;
      }
      holes[what] = position.hole;
      return onTheBar(at, preparation.place(field));
    }
    return onTheBar(position.measured, preparation.place(field));
  };

  const fulcrum = place('fulcrum');
  const load = place('load');
  const pull = place('pull');
  if (fulcrum === null || load === null || pull === null) return { station: null, diagnostics };
  for (const [what, at] of [
    ['load', load],
    ['pull', pull],
  ] as const)
    if (at.value === fulcrum.value)
      diagnostics.push({
        code: `lever.${what}-on-the-fulcrum`,
        severity: 'error',
        at: preparation.place(`${what} at`),
        facts: { at: lengthFact(at.value) },
      });
  if (diagnostics.length > 0) return { station: null, diagnostics };

  const friction = sourcedIn(bar.fields, 'pin friction');
  const zero = exactly(radians(0));
  const station: Lever = {
    machine: 'lever',
    inputs: {
      fulcrum,
      load,
      pull,
      barLength: length,
      barMass: measuredIn(bar.fields, 'mass') ?? exactly(kilograms(0)),
      barCentre: centre ?? middleOf(bar.mark, length),
      pinRadius: times(
        measuredIn(bar.fields, 'pin diameter') ??
          between(`${bar.mark}/pin diameter`, ...PIN_DIAMETER, 'assumed', 'common practice, no source'),
        0.5,
      ),
      pinFriction: (friction?.moving ?? exactly(0)) as Measured<Ratio>,
      pinStarting: (friction?.starting ?? exactly(0)) as Measured<Ratio>,
      holesAbove: measuredIn(bar.fields, 'holes above the pin') ?? exactly(metres(0)),
      tilt: measuredIn(preparation.fields, 'tilt') ?? zero,
      lean: measuredIn(preparation.fields, 'pull leans') ?? zero,
    },
    pullKeepsSquare: isYesIn(preparation.fields, 'pull keeps square to the bar'),
    holePositions: positions,
    holes,
  };
  if (arms(station, atBest).c > 0) return { station, diagnostics };
  const lean = station.inputs.lean.value;
  return {
    station: null,
    diagnostics: [
      {
        code: 'lever.pull-lowers',
        severity: 'error',
        at: preparation.place('pull leans'),
        facts: { lean: angleFact(lean) },
      },
    ],
  };
}

/** Hole n stands at first + (n - 1) x spacing from the left end. */
function holePositions(bar: Filled): readonly Measured<Metres>[] {
  const first = measuredIn<Metres>(bar, 'first hole');
  const spacing = measuredIn<Metres>(bar, 'hole spacing');
  const count = countIn(bar, 'holes') ?? 0;
  if (first === undefined || spacing === undefined) return [];
  return Array.from({ length: count }, (_, n) => plus(first, times<Metres>(spacing, n)));
}

const middleOf = (mark: string, length: Measured<Metres>): Measured<Metres> =>
  plus(
    times<Metres>(length, 0.5),
    measured(metres(0), {
      id: `${mark}/mass centre`,
      u: (length.value * CENTRE_SHARE) / Math.sqrt(3),
      shape: 'even',
      origin: 'assumed',
      source: 'common practice, no source',
    }),
  );
