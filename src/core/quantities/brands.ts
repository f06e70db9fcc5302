/**
 * SI numbers that the compiler keeps apart. Inside the house every number is SI and carries
 * its unit in its type; units are read and printed at the edge only.
 */
export type Newtons = number & { readonly si: 'N' };
export type Kilograms = number & { readonly si: 'kg' };
export type Metres = number & { readonly si: 'm' };
export type Radians = number & { readonly si: 'rad' };
export type Seconds = number & { readonly si: 's' };
export type Joules = number & { readonly si: 'J' };
export type NewtonMetres = number & { readonly si: 'N·m' };
export type NewtonsPerMetre = number & { readonly si: 'N/m' };
export type MetresPerSecondSquared = number & { readonly si: 'm/s²' };
/** A bare ratio: friction, share, count of turns. */
export type Ratio = number & { readonly si: '1' };

export const newtons = (value: number): Newtons => value as Newtons;
export const kilograms = (value: number): Kilograms => value as Kilograms;
export const metres = (value: number): Metres => value as Metres;
export const radians = (value: number): Radians => value as Radians;
export const seconds = (value: number): Seconds => value as Seconds;
export const joules = (value: number): Joules => value as Joules;
export const newtonMetres = (value: number): NewtonMetres => value as NewtonMetres;
export const newtonsPerMetre = (value: number): NewtonsPerMetre => value as NewtonsPerMetre;
export const ratio = (value: number): Ratio => value as Ratio;
export const metresPerSecondSquared = (value: number): MetresPerSecondSquared =>
  value as MetresPerSecondSquared;
