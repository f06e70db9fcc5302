import type { Drawing } from '../core/description/drawing.ts';
import { dimensionIn, measuredIn } from '../core/description/filled.ts';
import type { Part } from '../core/description/part.ts';
import type { Step } from '../core/description/step.ts';
import type { Prepared, PreparedSetup, PreparedTable } from '../core/prepare.ts';
import type { Prediction } from '../core/setups/prediction.ts';
import type { Hang, Setup } from '../core/setups/setup.ts';
import { shiftOf } from '../core/setups/shown.ts';
import { atBest } from '../core/uncertainty/propagate.ts';
import type {
  FigureSheet,
  HangSheet,
  LoadSheet,
  ScaleSheet,
  SetupSheet,
  Sheet,
  TableSheet,
} from './pages/sheet.ts';

/** From what core prepared to what pages print: drawings, steps and cautions beside each prediction. */
export function sheetOf(prepared: Prepared): Sheet {
  return {
    kit: prepared.kit === null ? '' : `${prepared.kit.name} (${prepared.kit.serial})`,
    activity: prepared.activity?.title ?? '',
    activityTitled: { title: prepared.activity?.title ?? '', titles: prepared.activity?.titles ?? {} },
    visit: prepared.visit?.date ?? null,
    tables: prepared.tables.map(tableSheet),
  };
}

const tableSheet = (table: PreparedTable): TableSheet => ({
  mark: table.mark,
  title: table.title,
  titled: { title: table.title, titles: table.titles },
  machine: table.machine,
  setups: table.setups.map(setupSheet),
});

/** One setup as pages, key and explanation print it. */
export function setupSheet({ setup, prediction, load, shows }: PreparedSetup): SetupSheet {
  return {
    mark: setup.mark,
    figures: figuresOf(setup, load, Math.max(0, prediction.pull?.value ?? 0)),
    steps: setup.machine.steps(setup.station, isFelt(setup)),
    reads: readsOf(setup, prediction),
    cautions: setup.machine.cautions(setup.station, isFelt(setup)),
    prediction,
    load: load === null ? null : loadSheet(load),
    scale: setup.scale === null || setup.watched !== 'pull' ? null : scaleSheet(setup, setup.scale),
    partner: setup.partner,
    shows: shows?.text ?? null,
    showsWords: shows,
  };
}

/** Judged by the hand alone: no scale is hooked on. */
export const isFelt = ({ watched }: Setup): boolean => watched === 'ease';

/** The machine's own words for the way of reading, where it has some; else the general ones. */
function readsOf({ machine, station }: Setup, { watched, way }: Prediction): readonly Step[] {
  if (watched !== 'pull') return [{ key: `watched.${watched}.instruction`, facts: {} }];
  return machine.reading?.(station, way) ?? [{ key: `way.${way}.instruction`, facts: {} }];
}

/** The machine's geometry, in one picture or in one a stage. */
function figuresOf(setup: Setup, load: Part | null, pull: number): readonly FigureSheet[] {
  const { machine, station } = setup;
  const several = machine.figures?.(station, atBest, isFelt(setup)) ?? [
    { title: null, drawing: machine.drawing(station, atBest, isFelt(setup)) },
  ];
  return several.map(({ title, drawing }) => ({ title, drawing: named(drawing, setup, load, pull) }));
}

/** With the load's own name and the pull as long as it is strong. */
function named(drawing: Drawing, setup: Setup, load: Part | null, pull: number): Drawing {
  const { shapes } = drawing;
  const hang = typeof setup.hang === 'object' ? null : setup.hang;
  return {
    ...drawing,
    shapes: shapes.map((shape) => {
      if (shape.shape === 'effort')
        return { ...shape, newtons: pull, ...(hang === null ? {} : { scale: hang }) };
      if (shape.shape !== 'load' || load === null) return shape;
      const { label, mass } = loadSheet(load);
      return { ...shape, label, ...(mass === null ? {} : { mass }) };
    }),
  };
}

function loadSheet(load: Part): LoadSheet {
  const of = measuredIn(load.fields, 'of')?.value ?? null;
  const isMass = dimensionIn(load.fields, 'of') === 'mass';
  return { label: load.mark, mass: isMass ? of : null, weight: isMass ? null : of };
}

const scaleSheet = (setup: Setup, scale: NonNullable<Setup['scale']>): ScaleSheet => ({
  label: scale.mark,
  hangs: hangSheet(setup.hang),
  zeroed: setup.zeroed === 'in place' ? 'in place' : hangSheet(setup.zeroed),
  graduations: scale.graduations,
  range: scale.range,
  stop: scale.stop,
  showsLess: shiftOf(setup, scale, atBest),
});

const hangSheet = (hang: Hang): HangSheet => (typeof hang === 'object' ? { angle: hang.angle.value } : hang);
