import { createHash, randomBytes } from 'node:crypto';

/** Bytes that nobody can foresee. */
export type Chance = (bytes: number) => Uint8Array;

export const systemChance: Chance = (bytes) => randomBytes(bytes);

/** 128 bits, in letters that may stand in an address and in a cookie. */
export const newSecret = (chance: Chance): string => Buffer.from(chance(16)).toString('base64url');

/**
 * What is kept of a secret: who reads the file can't enter with it. A secret of 128 bits needs no salt
 * and no slow hash: there is nothing to try.
 */
export const hashOf = (secret: string): string => createHash('sha256').update(secret).digest('base64url');
