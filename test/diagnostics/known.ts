import { vocabularyOf } from '../../src/core/files/vocabulary.ts';
import { ruler, turnCounter } from '../../src/core/instruments/counters.ts';
import { springScale } from '../../src/core/instruments/spring-scale-fields.ts';
import { lever } from '../../src/core/machines/lever/index.ts';
import { windlass } from '../../src/core/machines/windlass/index.ts';
import { line } from '../../src/core/parts/line.ts';
import { weight } from '../../src/core/parts/weight.ts';

export const knownWords = vocabularyOf(
  [lever, windlass, { name: 'compound', partKinds: [], slots: {}, fields: {} }],
  [weight, springScale, ruler, turnCounter, line],
);
