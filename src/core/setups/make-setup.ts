import type { Filled } from '../description/fields.ts';
import { choiceIn, isYesIn, measuredIn } from '../description/filled.ts';
import type { Part } from '../description/part.ts';
import type { WorkingLine } from '../description/working.ts';
import type { Diagnostic, Place } from '../diagnostics/diagnostic.ts';
import { marksOfCounter, marksOfRuler } from '../instruments/counters.ts';
import { springScaleOf } from '../instruments/spring-scale.ts';
import { springScaleFaults } from '../instruments/spring-scale-faults.ts';
import type { Machine, Preparation, Station } from '../machines/machine.ts';
import { loadOf, noLoad } from '../parts/weight.ts';
import { type Metres, type MetresPerSecondSquared, type Radians, radians } from '../quantities/brands.ts';
import { exactly, type Measured } from '../uncertainty/measured.ts';
import { atBest } from '../uncertainty/propagate.ts';
import type { Watched, WayOfReading } from './prediction.ts';
import type { Hang, Reader, Setup } from './setup.ts';

/** A setup as the files give it: the machine's own preparation, and what every setup has. */
export interface SetupDescription {
  readonly table: string;
  readonly mark: string;
  readonly machine: Machine;
  readonly preparation: Preparation;
  readonly load: Part | null;
  readonly scale: Part | null;
  /** Place of one of the scale's own fields in the kit file. */
  readonly scalePlace: (field: string) => Place;
  readonly ruler: Part | null;
  readonly counter: Part | null;
  /** The setup's general fields (`read`, `scale hangs`, ...). */
  readonly fields: Filled;
  readonly gravity: Measured<MetresPerSecondSquared>;
  readonly gravityWorking: readonly WorkingLine[];
  readonly reader: Reader;
  readonly partner: string | null;
}

/** A setup that can be predicted, or why the apparatus can't be put together like this. */
export function makeSetup(description: SetupDescription): {
  readonly setup: Setup | null;
  readonly diagnostics: readonly Diagnostic[];
} {
  const { machine, preparation, fields } = description;
  const made = machine.make(preparation);
  if (made.station === null) return { setup: null, diagnostics: made.diagnostics };
  const watched = (choiceIn(fields, 'watch') ?? 'pull') as Watched;
  const drawn = drawnHang(machine, made.station);
  const hang = hangOf(fields) ?? drawn ?? 'hook down';
  const setup: Setup = {
    table: description.table,
    mark: description.mark,
    machine,
    station: made.station,
    load: description.load === null ? noLoad : loadOf(description.load.fields),
    gravity: description.gravity,
    gravityWorking: description.gravityWorking,
    watched,
    way: (choiceIn(fields, 'read') ?? 'raise') as WayOfReading,
    scale: description.scale === null ? null : springScaleOf(description.scale),
    hang,
    zeroed: (choiceIn(fields, 'zeroed') ?? 'hook down') as Setup['zeroed'],
    tapped: isYesIn(fields, 'tapped'),
    handCarries: isYesIn(fields, 'hand carries the scale'),
    marks:
      watched === 'turns'
        ? marksOfCounter(description.counter)
        : watched === 'travel'
          ? marksOfRuler(description.ruler)
          : null,
    lift: measuredIn<Metres>(fields, 'lift') ?? null,
    reader: description.reader,
    partner: description.partner,
    isExtra: isYesIn(fields, 'more to find'),
    place: preparation.place,
  };
  const faults =
    description.scale === null ? [] : springScaleFaults(description.scale, description.scalePlace);
  const diagnostics = [...made.diagnostics, ...faults, ...hangDiagnostics(setup, drawn)];
  return { setup: faults.length > 0 ? null : setup, diagnostics };
}

function hangOf(fields: Filled): Hang | undefined {
  const angle = measuredIn<Radians>(fields, 'scale angle');
  if (angle !== undefined) return { angle };
  return choiceIn(fields, 'scale hangs') as Hang | undefined;
}

/** How the scale must hang by the geometry: a pull down needs a scale that hangs upside down. */
function drawnHang(machine: Machine, station: Station): Hang | undefined {
  const effort = machine.drawing(station, atBest).shapes.find((shape) => shape.shape === 'effort');
  if (effort?.shape !== 'effort') return undefined;
  const upright = Math.abs(Math.sin(effort.direction)) > 1 - 1e-9;
  if (upright || (effort.scale !== 'hook down' && effort.scale !== 'upside down')) return effort.scale;
  // The hook points against the pull: its angle from straight down is that of the pull from straight up.
  return { angle: exactly(radians(Math.acos(Math.sin(effort.direction)))) };
}

/** Said one way and drawn the other: nobody can pull down with a scale that hangs hook down. */
function hangDiagnostics(setup: Setup, drawn: Hang | undefined): readonly Diagnostic[] {
  const upright: readonly (Hang | undefined)[] = ['hook down', 'upside down'];
  const { hang } = setup;
  if (setup.scale === null || typeof hang === 'object' || drawn === undefined || hang === drawn) return [];
  if (!upright.includes(hang) || !upright.includes(drawn)) return [];
  return [
    {
      code: 'scale-hangs-against-the-pull',
      severity: 'warning',
      at: setup.place('scale hangs'),
      facts: { hangs: hang, pull: drawn === 'upside down' ? 'down' : 'up' },
    },
  ];
}
