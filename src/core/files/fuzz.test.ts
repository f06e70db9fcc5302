import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { springScale } from '../instruments/spring-scale-fields.ts';
import { lever } from '../machines/lever/index.ts';
import { weight } from '../parts/weight.ts';
import { readActivityFile } from './activity-file.ts';
import { readKitFile } from './kit-file.ts';
import { locate } from './locate.ts';
import { resolve } from './resolve.ts';
import type { SourceText } from './source-text.ts';
import { readVisitFile } from './visit-file.ts';
import { vocabularyOf } from './vocabulary.ts';

const vocabulary = vocabularyOf(
  [lever, { name: 'compound', partKinds: [], slots: {}, fields: {} }],
  [weight, springScale],
);

/** Pieces that files are made of, and pieces that break them. */
const piece = fc.oneof(
  fc.constantFrom(
    ...['handspike: kit 1', 'handspike: activity 1', 'handspike: visit 1', 'decimal: comma', 'parts:'],
    ...[
      'tables:',
      'roles:',
      'setups:',
      'stages:',
      'measured:',
      'missing:',
      'place:',
      '  oak:',
      '    part: bar',
    ],
    ...[
      '    part: weight',
      '    of: 200 g',
      '    length: 60 cm',
      '    pin friction: 0.2, starting',
      'gravity: 9.81',
    ],
    ...[
      '  - table: a',
      '    machine: lever',
      '    machine: compound',
      '      - setup: L1',
      '      bar: bar of 3',
    ],
    ...[
      '        load at: hole 3',
      '        pull at: 3',
      '  lever:',
      '    load: oak',
      '  - oak',
      '__proto__: 1',
    ],
    ...[
      '\t',
      ': ',
      '- ',
      '? ',
      '*a',
      '&a ',
      '!t ',
      '<<: ',
      '---',
      '...',
      '%YAML 1.1',
      '|',
      '>',
      '{',
      '}',
      '[',
      ']',
    ],
    ...['"', "'", '#', ',', '\r', '\u0000', '\ufeff', '\ud800', '½', '−', '±', '..', '1e999 g'],
  ),
  fc.string({ unit: 'binary', maxLength: 8 }),
);
const text = fc
  .array(fc.tuple(piece, fc.constantFrom('\n', '\n', '\n', ' ', '')), { maxLength: 40 })
  .map((pieces) => pieces.flat().join(''));

/** Everything that can be asked about three texts; returns how many findings have no place. */
function everything(kitText: string, activityText: string, visitText: string): number {
  const file = (name: string, body: string): SourceText => ({ name, text: body });
  const kit = readKitFile(file('k', kitText), vocabulary);
  const activity = readActivityFile(file('a', activityText), vocabulary);
  const visit = readVisitFile(file('v', visitText));
  const resolved =
    kit.kit && activity.activity ? resolve(kit.kit, activity.activity, visit.visit, vocabulary) : null;
  const sources = [kit.source, activity.source, visit.source];
  return [kit, activity, visit, resolved]
    .flatMap((each) => each?.diagnostics ?? [])
    .filter((diagnostic) => locate(sources, diagnostic.at) === null).length;
}

describe('any text at all', () => {
  it('is read without a fall, and every finding has a line', () => {
    fc.assert(
      fc.property(text, text, text, (a, b, c) => {
        expect(
          everything(`handspike: kit 1\n${a}`, `handspike: activity 1\n${b}`, `handspike: visit 1\n${c}`),
        ).toBe(0);
        expect(everything(a, b, c)).toBe(0);
      }),
      { seed: 20260512, numRuns: 400 },
    );
  });

  it('is read without a fall when a sound file is cut anywhere', () => {
    const sound =
      'handspike: kit 1\nserial: "a"\nparts:\n  oak: {part: bar, length: 60 cm}\nmeasured:\n  - {date: 2026-01-01, part: oak, what: length, found: 61 cm}\n';
    for (let at = 0; at <= sound.length; at += 1)
      expect(everything(sound.slice(0, at), sound.slice(at), '')).toBe(0);
  });
});
