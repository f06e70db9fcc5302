import { choiceIn, countIn, measuredIn, sourcedIn } from '../../description/filled.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { lengthFact } from '../../diagnostics/facts.ts';
import { thicknessOf } from '../../parts/line.ts';
import { kilograms, type Metres, metres, type Ratio, radians } from '../../quantities/brands.ts';
import { between, exactly, type Measured, times } from '../../uncertainty/measured.ts';
import type { Made, Part, Preparation } from '../machine.ts';
import type { PullDirection, Windlass } from './station.ts';

/** A pin that a school's wheel turns on; common practice, no source. */
const BEARING_DIAMETER = [metres(0.003), metres(0.008)] as const;

/** A windlass from its part and the lines on it; refuses a wheel or crank that the part hasn't got. */
export function makeWindlass(preparation: Preparation): Made<Windlass> {
  const part = preparation.parts.windlass;
  if (part === undefined) return { station: null, diagnostics: [] };
  const wheel = measuredIn<Metres>(part.fields, 'wheel diameter');
  const crank = measuredIn<Metres>(part.fields, 'crank length');
  const axle = measuredIn<Metres>(part.fields, 'axle diameter');
  const stated = choiceIn(preparation.fields, 'turned by') as Windlass['turnedBy'] | undefined;
  const turnedBy = stated ?? (wheel === undefined ? 'crank' : 'wheel');
  const radius = turnedBy === 'wheel' ? half(wheel) : crank;
  const bearing = measuredIn<Metres>(part.fields, 'bearing diameter');
  const diagnostics = [
    ...(radius === undefined ? [lacks(preparation, part, turnedBy, stated !== undefined)] : []),
    ...(stated === undefined && wheel !== undefined && crank !== undefined
      ? [twoWays(preparation, part)]
      : []),
    ...(axle !== undefined && bearing !== undefined && bearing.value > axle.value
      ? [widePin(preparation, part, bearing.value, axle.value)]
      : []),
  ];
  if (radius === undefined || axle === undefined || diagnostics.length > 0)
    return { station: null, diagnostics };

  const friction = sourcedIn(part.fields, 'bearing friction');
  return {
    diagnostics,
    station: {
      machine: 'windlass',
      inputs: {
        wheelRadius: radius,
        axleRadius: times<Metres>(axle, 0.5),
        wheelLine:
          turnedBy === 'crank'
            ? exactly(metres(0))
            : thicknessOf(preparation.parts['wheel line'], `${part.mark}/wheel line`),
        axleLine: thicknessOf(preparation.parts['axle line'], `${part.mark}/axle line`),
        drumMass: measuredIn(part.fields, 'mass') ?? exactly(kilograms(0)),
        bearingRadius: times(bearing ?? assumedBearing(part, axle), 0.5),
        bearingFriction: (friction?.moving ?? exactly(0)) as Measured<Ratio>,
        bearingStarting: (friction?.starting ?? exactly(0)) as Measured<Ratio>,
        lean: measuredIn(preparation.fields, 'pull leans') ?? exactly(radians(0)),
      },
      turnedBy,
      pull: (choiceIn(preparation.fields, 'pull') as PullDirection | undefined) ?? 'down',
      layers: countIn(preparation.fields, 'layers wound') ?? 0,
      lines: marksOf(preparation),
    },
  };
}

/** How the lines are told apart on the table. */
function marksOf({ parts }: Preparation): NonNullable<Windlass['lines']> {
  const { 'axle line': axle, 'wheel line': wheel } = parts;
  return {
    ...(axle === undefined ? {} : { axle: axle.mark }),
    ...(wheel === undefined ? {} : { wheel: wheel.mark }),
  };
}

const half = (diameter: Measured<Metres> | undefined): Measured<Metres> | undefined =>
  diameter === undefined ? undefined : times<Metres>(diameter, 0.5);

/** Never wider than the axle that turns on it. */
function assumedBearing(part: Part, axle: Measured<Metres>): Measured<Metres> {
  const [low, high] = BEARING_DIAMETER.map((each) => metres(Math.min(each, axle.value))) as [Metres, Metres];
  return between(`${part.mark}/bearing diameter`, low, high, 'assumed', 'common practice, no source');
}

const lacks = (
  preparation: Preparation,
  part: Part,
  turnedBy: Windlass['turnedBy'],
  isStated: boolean,
): Diagnostic =>
  isStated
    ? {
        code: `windlass.no-${turnedBy}`,
        severity: 'error',
        at: preparation.place('turned by'),
        facts: { part: part.mark },
      }
    : {
        code: 'windlass.nothing-to-turn-it',
        severity: 'error',
        at: preparation.partPlace('windlass', null),
        facts: { part: part.mark },
      };

const twoWays = (preparation: Preparation, part: Part): Diagnostic => ({
  code: 'windlass.wheel-or-crank',
  severity: 'error',
  at: preparation.place(null),
  facts: { part: part.mark },
});

const widePin = (preparation: Preparation, part: Part, bearing: number, axle: number): Diagnostic => ({
  code: 'windlass.wide-bearing',
  severity: 'error',
  at: preparation.partPlace('windlass', 'bearing diameter'),
  facts: { part: part.mark, bearing: lengthFact(bearing), axle: lengthFact(axle) },
});
