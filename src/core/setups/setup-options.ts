import type { Field, FilledValue } from '../description/fields.ts';
import type { KitPart } from '../kit/kit.ts';
import { machineNamed } from '../machines/list.ts';
import type { Machine } from '../machines/machine.ts';
import { toSi, unitNamed } from '../quantities/unit.ts';
import { makeSetup, type SetupDescription } from './make-setup.ts';
import { setupFields } from './setup-fields.ts';
import { marksIn, type Option, type Spot, textAt, textOf, valueAt, withOption } from './spot.ts';

/** What a length or an angle may be multiplied by: common practice, no source. */
const FACTORS: readonly number[] = [1 / 2, 2 / 3, 4 / 5, 5 / 4, 3 / 2, 2];
/** A count may go up or down by so many. */
const COUNTS = 3;
/** Distances along a bar without holes, m: every 5 cm, or every 2 in: common practice, no source. */
const METRIC_STEP = 0.05;
const INCH_STEP = 0.0508;
/** No hole has this number: the maker's refusal tells how many there are. */
const NO_HOLE = 1_000_000;

/** Setup fields that the search sets; what else a setup says is not about how it reads. */
const SET: readonly string[] = ['read', 'scale hangs', 'zeroed', 'tapped', 'hand carries the scale'];
/**
 * What a choice of the setup may become. The peak before it starts is not offered: its scatter is not that
 * of a steady reading. A scale hangs as the pull goes, up or down, and its zero is best set as it hangs.
 */
const CHOICES: Readonly<Record<string, readonly string[]>> = {
  read: ['raise', 'lower', 'held'],
  'scale hangs': ['hook down', 'upside down'],
  zeroed: ['in place'],
};

/**
 * Everything that could stand at one spot of a setup instead, from the descriptions of the fields, the holes
 * and pins that the parts themselves have, and the parts that are free. Lists spots by their order in the
 * activity's words.
 */
export function optionsFor(
  description: SetupDescription,
  free: readonly KitPart[],
): readonly (readonly Option[])[] {
  return spotsOf(description)
    .map((spot) => optionsAt(description, spot, free))
    .filter((options) => options.length > 0);
}

/** Every spot of a setup, filled or not. */
export function spotsOf({ machine, preparation }: SetupDescription): readonly Spot[] {
  const ofMachine = (of: Machine | undefined, stage: number | null): readonly Spot[] => [
    ...Object.keys(of?.slots ?? {}).map((name): Spot => ({ kind: 'part', name, stage })),
    ...Object.keys(of?.fields ?? {}).map((name): Spot => ({ kind: 'machine field', name, stage })),
  ];
  return [
    ...ofMachine(machine, null),
    ...(preparation.stages ?? []).flatMap((stage, n) => ofMachine(machineNamed(stage.machine), n)),
    { kind: 'part', name: 'load', stage: null },
    { kind: 'part', name: 'scale', stage: null },
    ...Object.keys(setupFields).map((name): Spot => ({ kind: 'setup field', name, stage: null })),
  ];
}

function optionsAt(description: SetupDescription, spot: Spot, free: readonly KitPart[]): readonly Option[] {
  const now = textAt(description, spot);
  const found = spot.kind === 'part' ? partsAt(description, spot, free) : fieldsAt(description, spot);
  return found.filter(({ text }) => text !== now);
}

/** Other parts of the kinds that a filled slot takes; an empty one stays empty. */
function partsAt(description: SetupDescription, spot: Spot, free: readonly KitPart[]): readonly Option[] {
  const stands = valueAt(description, spot)?.part;
  return stands === undefined ? [] : partsFor(description, spot, free, [stands.kind]);
}

/** Every part that is free for a slot of the machine in which nothing stands. */
export const fillings = (description: SetupDescription, free: readonly KitPart[]): readonly Option[] =>
  spotsOf(description)
    .filter((spot) => spot.kind === 'part' && valueAt(description, spot) === null)
    .flatMap((spot) => partsFor(description, spot, free, []));

/** Parts of the kinds that a slot takes; `otherwise`: where the machine doesn't say which. */
function partsFor(
  description: SetupDescription,
  spot: Spot,
  free: readonly KitPart[],
  otherwise: readonly string[],
): readonly Option[] {
  const machine = machineAt(description, spot.stage);
  const kinds = machine?.slots[spot.name]?.kinds ?? otherwise;
  const used = marksIn(description);
  const machines = [description.machine.name, machine?.name ?? ''];
  return free
    .filter(
      ({ kind, mark, fits }) =>
        kinds.includes(kind) &&
        !used.includes(mark) &&
        (fits === null || fits.some((name) => machines.includes(name))),
    )
    .map(({ mark, kind, fields }) => ({ spot, value: { part: { mark, kind, fields } }, text: mark }));
}

function fieldsAt(description: SetupDescription, spot: Spot): readonly Option[] {
  const field = fieldAt(description, spot);
  const stands = valueAt(description, spot)?.filled;
  if (field === undefined) return [];
  const option = (filled: FilledValue): Option => ({ spot, value: { filled }, text: textOf({ filled }) });
  switch (field.type) {
    case 'choice':
      if (spot.name === 'scale hangs' && !isUpright(stands)) return [];
      return choicesOf(spot, field.of).map((choice) => option({ type: 'choice', choice }));
    case 'yes-no':
      return spot.kind === 'setup field' ? [true, false].map((yes) => option({ type: 'yes-no', yes })) : [];
    case 'count':
      return stands?.type === 'count'
        ? countsNear(stands.count, field.least, field.most).map((count) => option({ type: 'count', count }))
        : [];
    case 'position':
      return placesAt(description, spot, stands).map(option);
    case 'quantity':
      return stands?.type === 'quantity' && spot.kind === 'machine field'
        ? scaled(stands, field).map(option)
        : [];
    default:
      return [];
  }
}

/** Left out, it follows from the drawing whatever else is changed; level or along a slope it has no other way. */
const isUpright = (stands: FilledValue | undefined): boolean =>
  stands?.type === 'choice' && (CHOICES['scale hangs'] ?? []).includes(stands.choice);

const choicesOf = ({ kind, name }: Spot, of: readonly string[]): readonly string[] =>
  (kind === 'setup field' ? CHOICES[name] : undefined) ?? of;

function fieldAt(description: SetupDescription, spot: Spot): Field | undefined {
  if (spot.kind === 'setup field') return SET.includes(spot.name) ? setupFields[spot.name] : undefined;
  return machineAt(description, spot.stage)?.fields[spot.name];
}

const machineAt = ({ machine, preparation }: SetupDescription, stage: number | null): Machine | undefined =>
  stage === null ? machine : machineNamed(preparation.stages?.[stage]?.machine ?? '');

const countsNear = (count: number, least: number, most = Number.MAX_SAFE_INTEGER): readonly number[] =>
  Array.from({ length: 2 * COUNTS + 1 }, (_, n) => count - COUNTS + n).filter(
    (each) => each >= least && each <= most,
  );

type Quantity = Extract<FilledValue, { readonly type: 'quantity' }>;

/** Holes from the first to the last, or distances along the part. */
function placesAt(
  description: SetupDescription,
  spot: Spot,
  stands: FilledValue | undefined,
): readonly FilledValue[] {
  const refused = (filled: FilledValue) =>
    makeSetup(withOption(description, { spot, value: { filled }, text: '' })).diagnostics;
  if (stands?.type === 'hole') {
    const holes = refused({ type: 'hole', hole: NO_HOLE }).find((each) => each.code === 'no-such-hole')?.facts
      .holes;
    return Array.from({ length: typeof holes === 'number' ? holes : 0 }, (_, n) => ({
      type: 'hole',
      hole: n + 1,
    }));
  }
  if (stands?.type !== 'quantity') return [];
  const length = refused(moved(stands, NO_HOLE))
    .map(({ facts }) => facts.length)
    .find((fact) => typeof fact === 'object' && 'si' in fact);
  if (length === undefined || typeof length !== 'object' || !('si' in length)) return [];
  const step = /in|ft/.test((stands.unit ?? unitWritten(stands)).symbol) ? INCH_STEP : METRIC_STEP;
  return Array.from({ length: Math.ceil(length.si / step) - 1 }, (_, n) => moved(stands, (n + 1) * step));
}

/** A length or an angle that is set anew for each table, some factors longer and shorter. */
function scaled(stands: Quantity, field: Extract<Field, { readonly type: 'quantity' }>): readonly Quantity[] {
  const { least = Number.NEGATIVE_INFINITY, most = Number.POSITIVE_INFINITY, above } = field;
  return FACTORS.map((factor) => moved(stands, stands.measured.value * factor, 2)).filter(
    ({ measured: { value } }) => value >= least && value <= most && (above === undefined || value > above),
  );
}

/** The same quantity at another value, as well known as before, in the digits that it is written with. */
function moved(stands: Quantity, si: number, digits = 4): Quantity {
  const { symbol, si: unitSi } = stands.unit ?? unitWritten(stands);
  const decimals = /\d[.,](\d+)/.exec(stands.written)?.[1]?.length ?? 0;
  const number = Number((si / unitSi).toPrecision(digits));
  const text = decimals > 0 ? number.toFixed(decimals) : String(number);
  const value = Number(text) * unitSi;
  return { ...stands, measured: { ...stands.measured, value }, written: `${text} ${symbol}`.trim() };
}

/** A place on a bar keeps only what was written: its last unit is the one to go on with. */
function unitWritten({ written, dimension }: Quantity): { readonly symbol: string; readonly si: number } {
  const symbol = /([^\d\s.,/±]+)\s*$/.exec(written)?.[1] ?? '';
  const unit = symbol === '' ? undefined : unitNamed(symbol);
  if (unit !== undefined && unit.dimension === dimension) return { symbol, si: toSi(1, symbol) };
  return dimension === 'length' ? { symbol: 'cm', si: 0.01 } : { symbol: '', si: 1 };
}
