import { Box, Edge, Vec2, World } from 'planck';
import { expect, test } from 'vitest';
import { slipAngle } from '../../src/core/statics/slope.ts';
import { balanceUnder, planeOf } from '../stations/incline.ts';
import { baseOf } from '../stations/ride.ts';

const GRAVITY = 9.80665;
const STEP = 1 / 240;
const SECONDS = 4;

/**
 * A rigid-body engine from the registry as a second witness: a flat block on a plane, the plane kept
 * level and gravity turned by the slope, pulled along the plane by a steady force. It knows nothing of
 * our law; friction of a contact is the geometric mean of both bodies' coefficients.
 * Returns how far the block has moved up the plane after it had time to come to rest.
 */
function movedUp(angle: number, mu: number, pull: number, mass: number): number {
  const world = new World({
    gravity: new Vec2(-GRAVITY * Math.sin(angle), -GRAVITY * Math.cos(angle)),
    allowSleep: false,
  });
  world
    .createBody()
    .createFixture({ shape: new Edge(new Vec2(-100, 0), new Vec2(100, 0)), friction: mu, restitution: 0 });
  // Flat, so that it slides before it tips; it starts on the plane and settles before it is pulled.
  const [halfLength, halfHeight] = [0.5, 0.05];
  const block = world.createBody({ type: 'dynamic', position: new Vec2(0, halfHeight + 0.01) });
  const density = mass / (4 * halfLength * halfHeight);
  block.createFixture({ shape: new Box(halfLength, halfHeight), density, friction: mu, restitution: 0 });
  // Held along the plane exactly while it settles, so that it begins at rest.
  const settle = mass * GRAVITY * Math.sin(angle);
  let start = 0;
  for (let n = 0; n < (SECONDS + 1) / STEP; n += 1) {
    const settled = n * STEP >= 1;
    if (n * STEP < 1) start = block.getPosition().x;
    block.applyForceToCenter(new Vec2(settled ? pull : settle, 0), true);
    world.step(STEP, 8, 3);
  }
  return block.getPosition().x - start;
}

/** What an accelerating block covers in the time is centimetres and more at one percent beyond the limit. */
const MOVED = 0.02;
const cases = [
  { degrees: 10, mu: 0.4 },
  { degrees: 20, mu: 0.3 },
  { degrees: 30, mu: 0.25 },
  { degrees: 35, mu: 0.6 },
];

for (const { degrees, mu } of cases)
  test(`a block on ${degrees} degrees with friction ${mu} starts up within 1 percent of the law's pull`, () => {
    const angle = (degrees * Math.PI) / 180;
    const mass = 1;
    const limit = balanceUnder(planeOf({ angle }, baseOf({ mu, deadMass: mass })), 0).effort;
    expect(Math.abs(movedUp(angle, mu, limit * 0.99, mass))).toBeLessThan(MOVED);
    expect(movedUp(angle, mu, limit * 1.01, mass)).toBeGreaterThan(MOVED);
  });

for (const { degrees, mu } of cases.filter((each) => Math.tan((each.degrees * Math.PI) / 180) > each.mu))
  test(`a block on ${degrees} degrees with friction ${mu} comes back where the law says, within 1 percent of the raising pull`, () => {
    const angle = (degrees * Math.PI) / 180;
    const mass = 1;
    const station = planeOf({ angle }, baseOf({ mu, deadMass: mass }));
    const limit = balanceUnder(station, 0, 'lower').effort;
    // The slip limit is a difference of two large forces, so the percent is of the larger one.
    const percent = 0.01 * balanceUnder(station, 0).effort;
    expect(Math.abs(movedUp(angle, mu, limit + percent, mass))).toBeLessThan(MOVED);
    expect(movedUp(angle, mu, limit - percent, mass)).toBeLessThan(-MOVED);
  });

for (const mu of [0.2, 0.35, 0.5])
  test(`an unpulled block with friction ${mu} slides down within 1 percent of tan a = mu`, () => {
    const at = (tangent: number) => movedUp(Math.atan(tangent), mu, 0, 1);
    const tangent = Math.tan(slipAngle(mu));
    expect(Math.abs(at(tangent * 0.99))).toBeLessThan(MOVED);
    expect(at(tangent * 1.01)).toBeLessThan(-MOVED);
  });
