import { expect, test } from 'vitest';
import { boathouse, setupNamed } from '../../../test/documents/boathouse.ts';
import { unknownUnit } from './unknown-unit.ts';

const sheet = boathouse();
const lever = setupNamed(sheet, 'L1');
const row = (unknown: string, origin: 'stated' | 'assumed' = 'stated') =>
  ({ unknown, origin, sensitivity: 1, u: 1, contribution: 1, share: 1 }) as const;

test('the unit of an unknown is that of its field, wherever a stage, a start or a number stands with it', () => {
  expect(unknownUnit(row('oak/mass'), lever)).toBe('kg');
  expect(unknownUnit(row('D1/stage 2 fulcrum at'), lever)).toBe('m');
  expect(unknownUnit(row('slipway/pin heights 3'), lever)).toBe('m');
  expect(unknownUnit(row('keel/faces at the start'), lever)).toBe('1');
  expect(unknownUnit(row('cords/stiffness'), lever)).toBe('N/m');
  expect(unknownUnit(row('capstan/axle line'), lever)).toBe('m');
  expect(unknownUnit(row('place/latitude'), lever)).toBe('rad');
});

test('the unit of a sourced kind is that of its table', () => {
  expect(unknownUnit(row('kind:friction/wood on wood'), lever)).toBe('1');
  expect(unknownUnit(row('kind:rolling/wood on wood'), lever)).toBe('m');
  expect(unknownUnit(row('kind:rolling/cart on a rough floor'), lever)).toBe('1');
  expect(unknownUnit(row('kind:sheave/small pulley on a plain pin/constant'), lever)).toBe('N');
  expect(unknownUnit(row('kind:sheave/small pulley on a plain pin/share'), lever)).toBe('1');
});

test('a load that was written as a weight is in newtons, a moving part that nobody weighed is a share', () => {
  expect(unknownUnit(row('brass/of'), lever)).toBe('kg');
  expect(unknownUnit(row('brass/of'), { ...lever, load: { label: 'brass', mass: null, weight: 5 } })).toBe(
    'N',
  );
  expect(unknownUnit(row('amber/moving part'), lever)).toBe('kg');
  expect(unknownUnit(row('amber/moving part', 'assumed'), lever)).toBe('1');
});

test('what belongs to the reading has the unit of what is read', () => {
  expect(unknownUnit(row('reading/hand scatter'), lever)).toBe('N');
  expect(unknownUnit(row('reading/hand scatter'), setupNamed(sheet, 'J1'))).toBe('turns');
  expect(unknownUnit(row('reading/tube friction'), lever)).toBe('1');
});
