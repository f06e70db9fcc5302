import { Box, Circle, RevoluteJoint, Settings, Vec2, World } from 'planck';

// Contacts may sink this far; as it comes the engine lets them sink half a centimetre.
Settings.linearSlop = 1e-5;

const STEP = 1 / 240;
const GRAVITY = 9.80665;

/** A lever as rigid bodies: places from the pin, kg and N. */
export interface LeverBodies {
  readonly load: number;
  readonly loadMass: number;
  readonly pull: number;
  readonly barMass: number;
  readonly barCentre: number;
  /** A scale that hangs upside down by its hook from the place of the pull. */
  readonly scaleMass?: number;
  /** The load rests on a table, as it does before anybody pulls. */
  readonly onTable?: true;
}

/**
 * Puts the bar on a pin without friction, hangs the load from it, pulls with a steady force at the
 * place of the pull (positive up) and lets it go. Answers the bar's angle, radians anticlockwise, after
 * a while.
 */
export function letGo(bodies: LeverBodies, force: number, seconds = 0.25): number {
  const world = new World({ gravity: Vec2(0, -GRAVITY) });
  const ground = world.createBody();
  const bar = world.createBody({ type: 'dynamic', position: Vec2(0, 0) });
  bar.createFixture(new Box(1, 0.01), { density: 1, filterMaskBits: 0 });
  bar.setMassData({
    mass: bodies.barMass,
    center: Vec2(bodies.barCentre, 0),
    I: bodies.barMass * (1 / 3 + bodies.barCentre ** 2),
  });
  world.createJoint(new RevoluteJoint({}, ground, bar, Vec2(0, 0)));
  hang(world, bar, bodies.load, bodies.loadMass);
  if (bodies.scaleMass !== undefined) hang(world, bar, bodies.pull, bodies.scaleMass);
  if (bodies.onTable) {
    // The table's top touches the weight from below, and nothing else.
    ground.createFixture(new Box(0.2, 0.02, Vec2(bodies.load, -HANGS - RADIUS - 0.02)), { friction: 0 });
  }
  for (let time = 0; time < seconds; time += STEP) {
    bar.applyForce(Vec2(0, force), bar.getWorldPoint(Vec2(bodies.pull, 0)), true);
    world.step(STEP, 200, 40);
  }
  return bar.getAngle();
}

const HANGS = 0.3;
const RADIUS = 0.05;

/** A weight on a hook: a body pinned to the bar above its centre, so that it stays upright. */
function hang(world: World, bar: ReturnType<World['createBody']>, place: number, mass: number): void {
  const weight = world.createBody({ type: 'dynamic', position: Vec2(place, -HANGS) });
  weight.createFixture(new Circle(RADIUS), { density: 1, friction: 0 });
  weight.setMassData({ mass, center: Vec2(0, 0), I: mass * RADIUS ** 2 });
  world.createJoint(new RevoluteJoint({}, bar, weight, Vec2(place, 0)));
}
