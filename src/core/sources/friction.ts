import { type Provenance, type Range, type Row, rowNamed } from './source.ts';

/** Dry friction between two surfaces: a range where sources differ, never its middle. */
export interface FrictionKind extends Row {
  /** While it slides. */
  readonly moving: Range;
  /** At the moment it starts. */
  readonly starting: Range;
  /** Starting over moving, for when only the moving friction was measured; never below 1. */
  readonly ratio: Range;
}

const BANK = 'an engineering formula bank (Lust), table 7.21';
const OPENSTAX = 'OpenStax College Physics and University Physics, tables of friction';
const BOTH = `${BANK}; ${OPENSTAX}`;
const WEB = 'unnamed public web tables, weak';
const HANDBOOK = 'usual handbook figures, from memory';

function kind(
  name: string,
  starting: Range,
  moving: Range,
  source: string,
  provenance: Provenance,
  note?: string,
): FrictionKind {
  const ratio = ratioOf(starting, moving);
  return { name, moving, starting, ratio, source, provenance, ...(note === undefined ? {} : { note }) };
}

/**
 * Range of starting over moving friction: low end to low end and high end to high end, since a
 * surface at the low end of one is at the low end of the other; below 1 makes no sense. Our own rule.
 *
 * @example ratioOf([0.4, 0.75], [0.25, 0.5]) // => [1.5, 1.6]
 */
export function ratioOf(starting: Range, moving: Range): Range {
  const ends = [starting[0] / moving[0], starting[1] / moving[1]];
  return [Math.max(1, Math.min(...ends)), Math.max(1, ...ends)];
}

/** Friction by kind: (name, starting, moving, source). Dry unless the name says otherwise. */
export const frictionKinds: readonly FrictionKind[] = [
  kind('wood on wood', [0.4, 0.75], [0.3, 0.5], BOTH, 'read'),
  kind('wood on steel', [0.45, 0.75], [0.3, 0.6], BOTH, 'read'),
  kind('steel on steel', [0.12, 0.6], [0.08, 0.5], BOTH, 'read'),
  kind('oiled steel on steel', [0.05, 0.05], [0.03, 0.03], OPENSTAX, 'read'),
  kind('steel on plastic', [0.2, 0.45], [0.18, 0.35], BANK, 'read'),
  kind('rubber on dry concrete', [1, 1], [0.7, 0.7], OPENSTAX, 'read'),
  kind('rubber on wet concrete', [0.5, 0.7], [0.3, 0.5], OPENSTAX, 'read', 'the two books differ'),
  kind('shoes on wood', [0.9, 0.9], [0.7, 0.7], OPENSTAX, 'read'),
  kind('shoes on ice', [0.1, 0.1], [0.05, 0.05], OPENSTAX, 'read'),
  kind('PTFE on steel', [0.04, 0.04], [0.04, 0.04], OPENSTAX, 'read'),
  kind('waxed wood on wet snow', [0.14, 0.14], [0.1, 0.1], OPENSTAX, 'read'),
  kind(
    'steel on ice',
    [0.04, 0.4],
    [0.02, 0.02],
    OPENSTAX,
    'read',
    'one book prints 0.4, two print 0.04: the first is most likely a slip',
  ),
  kind(
    'wood on laminate',
    [0.2, 0.4],
    [0.15, 0.35],
    WEB,
    'memory',
    'felt or plastic foot; starting was read, moving is from memory',
  ),
  kind('rope on wood post', [0.3, 0.5], [0.25, 0.4], HANDBOOK, 'memory'),
  kind('rope on polished steel post', [0.1, 0.25], [0.1, 0.2], HANDBOOK, 'memory'),
];

/**
 * Friction of two surfaces by name, or nothing where no source is at hand.
 *
 * @example frictionKind('wood on wood')?.moving // => [0.3, 0.5]
 */
export const frictionKind = (name: string): FrictionKind | undefined => rowNamed(frictionKinds, name);
