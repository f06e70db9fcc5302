import { toString as drawn } from 'qrcode';

/** An address as a QR code, to be pointed at with a phone. */
export const doorPicture = (address: string): Promise<string> =>
  drawn(address, { type: 'svg', errorCorrectionLevel: 'M', margin: 4 });

/** The same for a terminal, in half blocks: black on white where it has colours, bare blocks elsewhere. */
export const doorInTerminal = async (address: string, isColoured: boolean): Promise<string> =>
  isColoured
    ? drawn(address, { type: 'terminal', small: true, errorCorrectionLevel: 'L' })
    : drawn(address, { type: 'utf8', errorCorrectionLevel: 'L' });
