import { type Metres, metres } from '../quantities/brands.ts';
import { toSi } from '../quantities/unit.ts';
import { type Provenance, type Range, type Row, rowNamed } from './source.ts';

/**
 * What rolling costs on some floor: the rolling arm b, a length that is divided by the wheel's
 * radius, or a coefficient that is already a share of the load. A row has one of the two. The long
 * arms of rubber are from wheels of trolleys; on a wheel of a few centimetres they are too large.
 */
export interface RollingKind extends Row {
  readonly wheel: string;
  readonly floor: string;
  readonly arm?: Range<Metres>;
  readonly coefficient?: Range;
}

const BANK = 'an engineering formula bank (Lust), table 7.22';
const SHOP = 'an old public shop table';
const WEB = 'an engineering web table of rolling resistance';
const HSE = 'guidance of the UK Health and Safety Executive on pushing and pulling';

const arm = (
  name: string,
  [wheel, floor]: readonly [string, string],
  [low, high]: Range,
  unit: 'mm' | 'in',
  source: string,
): RollingKind => ({
  name,
  wheel,
  floor,
  arm: [metres(toSi(low, unit)), metres(toSi(high, unit))],
  source,
  provenance: 'read',
});

const share = (
  name: string,
  [wheel, floor]: readonly [string, string],
  coefficient: Range,
  source: string,
  provenance: Provenance,
  note?: string,
): RollingKind => ({
  name,
  wheel,
  floor,
  coefficient,
  source,
  provenance,
  ...(note === undefined ? {} : { note }),
});

export const rollingKinds: readonly RollingKind[] = [
  arm('steel wheel on steel', ['steel', 'steel'], [0.5, 0.5], 'mm', BANK),
  arm('wood on steel, roller conveyor', ['steel', 'wood'], [1.2, 1.2], 'mm', BANK),
  arm('plastic on steel', ['plastic', 'steel'], [2, 2], 'mm', BANK),
  arm('hard rubber on steel', ['hard rubber', 'steel'], [7, 7], 'mm', BANK),
  arm('plastic on concrete', ['plastic', 'concrete'], [5, 5], 'mm', BANK),
  arm('hard rubber on concrete', ['hard rubber', 'concrete'], [10, 20], 'mm', BANK),
  arm('medium rubber on concrete', ['medium rubber', 'concrete'], [15, 35], 'mm', BANK),
  arm('iron on iron', ['iron', 'iron'], [0.02, 0.02], 'in', SHOP),
  arm('wood on wood', ['wood', 'wood'], [0.06, 0.06], 'in', SHOP),
  arm('iron on wood', ['iron', 'wood'], [0.22, 0.22], 'in', SHOP),
  share('steel wheel on rail', ['steel', 'rail'], [0.002, 0.003], WEB, 'read'),
  share('rubber tyre on concrete', ['rubber tyre', 'concrete'], [0.01, 0.02], WEB, 'read'),
  share(
    'pneumatic tyre on hard road',
    ['pneumatic tyre', 'hard road'],
    [0.008, 0.015],
    'usual handbook figures, from memory',
    'memory',
  ),
  share(
    'cart with hard tyres on a good floor',
    ['hard tyre', 'good floor'],
    [0.01, 0.03],
    `${HSE} (2 percent); the range from memory`,
    'memory',
    'only 0.02 was read',
  ),
  share('cart on a rough floor', ['hard tyre', 'rough or uneven floor'], [0.05, 0.1], HSE, 'read'),
];

/** What flanged wheels add at the rim, as a share of the load. */
export const rimFriction: Row & { readonly coefficient: Range } = {
  name: 'rim friction of flanged wheels',
  coefficient: [0.003, 0.005],
  source: WEB,
  provenance: 'read',
  note: 'the table also lists 0.002 for side rollers',
};

/**
 * Rolling by name, or nothing where no source is at hand.
 *
 * @example rollingKind('steel wheel on steel')?.arm // => [0.0005, 0.0005]
 */
export const rollingKind = (name: string): RollingKind | undefined => rowNamed(rollingKinds, name);
