// The physics of the simulated classes, written anew from the textbook equations: nothing here is
// shared with the program. `up` is +1 while the load is raised and -1 while it comes back. SI.

export const G0 = 9.80665;

/** Gravity at a latitude and height: Somigliana's formula with WGS 84, free air. */
export function gravityAt(latitude, height) {
  const s2 = Math.sin(latitude) ** 2;
  const ellipsoid = (9.7803253359 * (1 + 0.00193185265241 * s2)) / Math.sqrt(1 - 0.00669437999014 * s2);
  return ellipsoid - 3.086e-6 * height;
}

/**
 * Moments about the pin of a lever: the load and the bar against the effort and the pin's rubbing
 * mu |R| r. `pullsDown` where the effort is on the other side; the pin then carries all three.
 */
export function leverEffort({ load, bar, loadArm, barArm, effortArm, mu, pinRadius, pullsDown }, up) {
  const moment = load * loadArm + bar * barArm;
  let effort = moment / effortArm;
  for (let n = 0; n < 60; n += 1) {
    const pin = Math.abs(load + bar + (pullsDown ? effort : -effort));
    effort = (moment + up * mu * pin * pinRadius) / effortArm;
  }
  return effort;
}

/** A load of weight W on a slope, rubbing by mu (or rolling by C): the string leans by d off the slope. */
export const slopeEffort = ({ weight, angle, mu, lean = 0 }, up) =>
  (weight * (Math.sin(angle) + up * mu * Math.cos(angle))) / (Math.cos(lean) + up * mu * Math.sin(lean));

/** What rolling costs, as a share of the load: axle in its hub and the rolling arm, both over the wheel. */
export const rollingShare = ({ axleMu, axleDiameter, wheelDiameter, arm }) =>
  (axleMu * axleDiameter) / wheelDiameter + arm / (wheelDiameter / 2);

/**
 * A tackle from the hand to its end: every sheave takes c + s x the mean of its two tensions. The
 * tensions are linear in the pull F, so two trials give the pull at which the parts carry the load.
 */
export function tackleEffort({ load, parts, offFixed, share, drag }, up) {
  const carried = (pull) => {
    let tension = pull;
    let sum = offFixed ? 0 : tension;
    for (let n = offFixed ? 0 : 1; n < parts; n += 1) {
      tension =
        up > 0
          ? (tension * (1 - share / 2) - drag) / (1 + share / 2)
          : (tension * (1 + share / 2) + drag) / (1 - share / 2);
      sum += tension;
    }
    return sum;
  };
  const none = carried(0);
  return (load - none) / (carried(1) - none);
}

/** Wheel and axle, line measured to its middle; the bearing carries load, drum and pull as vectors. */
export function windlassEffort(at, up) {
  const { load, drum, axle, wheel, axleLine, wheelLine, layers, mu, bearing, pullIs } = at;
  const small = axle + axleLine / 2 + layers * axleLine * Math.sin(Math.PI / 3);
  const large = wheel + wheelLine / 2;
  let effort = (load * small) / large;
  for (let n = 0; n < 60; n += 1) {
    const down = load + drum + (pullIs === 'down' ? effort : pullIs === 'up' ? -effort : 0);
    const carried = Math.hypot(down, pullIs === 'level' ? effort : 0);
    effort = (load * small + up * mu * carried * bearing) / large;
  }
  return effort;
}

/** A splitting wedge pushed `advance` between planks that cords hold together. */
export function splittingPush({ length, thickness, advance, preTension, stiffness, mu, weight, baseMu }, up) {
  const half = Math.atan(thickness / 2 / length);
  const side = preTension + stiffness * 2 * advance * Math.tan(half);
  return 2 * side * Math.tan(half + up * Math.atan(mu)) + up * baseMu * weight;
}

/** Travel of a screw after some turns from a start that is `gap` short of touching. */
export const travelAfter = ({ lead, gap }, turns) => lead * turns - gap;
export const turnsFor = ({ lead, gap }, travel) => (travel + gap) / lead;
