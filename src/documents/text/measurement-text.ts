import type { Measurement } from '../../core/calibration/candidate.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { unknownName } from '../sentences/unknown-name.ts';

/** A short measurement as somebody would be asked for it. */
export function measurementText(language: Language, measurement: Measurement): string {
  const say = (key: string, facts = {}) => sentence(language, `measure.${key}`, facts);
  switch (measurement.kind) {
    case 'reading': {
      const { setup, way, watched, times } = measurement;
      const key = watched === 'pull' ? 'reading' : 'watched';
      return say(times > 1 ? `${key}.times` : key, { setup, times, way: sentence(language, `way.${way}`) });
    }
    case 'hung load':
    case 'turn over':
      return say(measurement.kind, { ...measurement });
    case 'weigh':
      return say('weigh', { part: measurement.part });
    case 'ruler':
      return say('ruler', { what: unknownName(language, `${measurement.part}/${measurement.field}`) });
  }
}
