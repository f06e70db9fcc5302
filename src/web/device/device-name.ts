const LETTERS = 'abcdefghijkmnpqrstuvwxyz23456789';

/**
 * A name for this device, made of chance: thirty-two letters, five bits each.
 *
 * @example deviceName(new Uint8Array([0, 1, 33])) // => 'abb'
 */
export const deviceName = (bytes: Uint8Array): string =>
  [...bytes].map((byte) => LETTERS[byte % LETTERS.length]).join('');

/** `randomUUID` is missing where the page came over plain http; this is there everywhere. */
export const newDeviceName = (): string => deviceName(crypto.getRandomValues(new Uint8Array(24)));
