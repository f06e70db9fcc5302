import type { Row } from './source.ts';

/** A usual caution: its sentence stands under `key`. Local rules and licensed practice come first. */
export interface CautionRow extends Row {
  readonly key: string;
}

const caution = (name: string, source: string, provenance: Row['provenance']): CautionRow => ({
  name,
  key: `caution.${name.replace(/ /g, '-')}`,
  source,
  provenance,
});

const PHYSICS_NOTE = 'a UK school physics department note';
const OUTREACH_NOTE = 'Institute of Physics, safety note for primary outreach';

export const cautionRows: readonly CautionRow[] = [
  caution('eye protection', `US 29 CFR 1910.133; ${PHYSICS_NOTE}`, 'read'),
  caution('falling loads', PHYSICS_NOTE, 'read'),
  caution('strings across walkways', PHYSICS_NOTE, 'read'),
  caution('small pupils and strong scales', OUTREACH_NOTE, 'read'),
  caution('fingers', OUTREACH_NOTE, 'read'),
  caution('hammers and mallets', 'US 29 CFR 1910.242, hand tools (from memory)', 'memory'),
  caution('elastic cords', 'guidance of a school science association (from memory)', 'memory'),
  caution('heavy load moves', 'practice of rigging manuals (from memory)', 'memory'),
  caution('lift limits', 'NIOSH 94-110; UK Health and Safety Executive', 'read'),
];

/**
 * The caution behind a sentence key.
 *
 * @example cautionRow('caution.falling-loads')?.provenance // => 'read'
 */
export const cautionRow = (key: string): CautionRow | undefined => cautionRows.find((row) => row.key === key);
