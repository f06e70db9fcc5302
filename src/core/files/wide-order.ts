/** UTF-16 by its mark; without one by its zero bytes, every second one where letters are Latin. */
export function wideOrder(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  const start = bytes.subarray(0, 400);
  const zeros = (from: number): number => start.filter((byte, n) => n % 2 === from && byte === 0).length;
  const many = start.length * 0.3;
  if (start.length < 4) return null;
  if (zeros(1) > many && zeros(0) === 0) return 'utf-16le';
  return zeros(0) > many && zeros(1) === 0 ? 'utf-16be' : null;
}
