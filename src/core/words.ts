import { type Vocabulary, vocabularyOf } from './files/vocabulary.ts';
import { ruler, turnCounter } from './instruments/counters.ts';
import { springScale } from './instruments/spring-scale-fields.ts';
import { machines } from './machines/list.ts';
import { parts } from './parts/list.ts';

/** Every word that a kit, an activity or a visit may use, from the machines and parts that there are. */
export const vocabulary: Vocabulary = vocabularyOf(machines, [...parts, springScale, ruler, turnCounter]);
