import { measuredIn } from '../description/filled.ts';
import type { Part, PartKind } from '../description/part.ts';
import { type Metres, metres } from '../quantities/brands.ts';
import { between, type Measured } from '../uncertainty/measured.ts';

/** String or thin cord as it lies about in a school; common practice, no source. */
const USUAL_THICKNESS = [metres(0.001), metres(0.002)] as const;

/** A line, string or cord. Its thickness matters where it winds on a drum. */
export const line: PartKind = {
  kind: 'line',
  meaning: 'part.line',
  fields: {
    thickness: {
      type: 'quantity',
      dimensions: ['length'],
      least: 0,
      meaning: 'line.field.thickness',
      example: '2 mm',
    },
  },
};

/** Thickness of a line; `mark` names the unknown where nothing is said of it. */
export const thicknessOf = (part: Part | undefined, mark: string): Measured<Metres> =>
  (part === undefined ? undefined : measuredIn<Metres>(part.fields, 'thickness')) ??
  between(`${part?.mark ?? mark}/thickness`, ...USUAL_THICKNESS, 'assumed', 'common practice, no source');
