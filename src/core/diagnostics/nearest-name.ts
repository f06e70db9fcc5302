/** Lives with the units, which come first in the order of modules and ask it too. */
export { nearestName } from '../quantities/nearest-name.ts';
