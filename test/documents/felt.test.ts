import { describe, expect, it } from 'vitest';
import { machineNamed, machines } from '../../src/core/machines/list.ts';
import type { Station } from '../../src/core/machines/machine.ts';
import { predict } from '../../src/core/setups/predict.ts';
import { atBest } from '../../src/core/uncertainty/propagate.ts';
import { paintDrawing } from '../../src/documents/drawing/paint-drawing.ts';
import { setupSheet } from '../../src/documents/prepare.ts';
import { type Language, languageTags } from '../../src/documents/sentences/language.ts';
import { sentence } from '../../src/documents/sentences/sentence.ts';
import { atRest } from '../../src/documents/sheets/drawing-figure.ts';
import { everyStation } from '../stations/every-machine.ts';
import { setupOf } from '../stations/setup.ts';

/** A spring scale by any of its names and parts. */
const SPRING_SCALE: Readonly<Record<Language, RegExp>> = {
  en: /\bscale\b|\bring\b|\bpointer\b/i,
  es: /dinam[oó]metro|\banilla\b|\bindicador\b/i,
};
/** What every drawing says of the scale that it is drawn to. */
const DRAWN_TO = /drawn to scale|not to scale|escala|scale \d+ : [\d.]+|Scale [\d.]+ : [\d.]+/gi;

const machineOf = (station: Station) => {
  const machine = machineNamed(station.machine);
  if (machine === undefined) throw new Error(station.machine);
  return machine;
};

/** All that a card says and shows of a setup: what is done, what is put back, what to take care of, the pictures. */
function saidOf(station: Station, watched: 'ease' | 'pull', language: Language): readonly string[] {
  const machine = machineOf(station);
  const isFelt = watched === 'ease';
  const setup = setupOf(machine, station, { watched, ...(isFelt ? { scale: null } : {}) });
  const sheet = setupSheet({
    setup,
    prediction: predict(setup),
    load: null,
    shows: null,
    parts: [],
    isExtra: false,
  });
  const start = (machine.start?.(station, atBest) ?? []).map(atRest);
  const pictures = [...sheet.figures.map(({ drawing }) => drawing), ...start].map((drawing) =>
    paintDrawing(drawing, {
      language,
      what: '',
      width: 110,
      height: 80,
      load: null,
      scaleEnds: isFelt ? null : ['0', '5'],
    })
      .replace(/<style[\s\S]*?<\/style>/g, '')
      .replace(/<[^>]*>/g, ' ')
      .replace(DRAWN_TO, ''),
  );
  return [
    ...[...sheet.steps, ...sheet.reads, ...machine.reset(station, isFelt), ...sheet.cautions].map(
      ({ key, facts }) => sentence(language, key, facts),
    ),
    ...pictures,
  ];
}

describe('a setup that is judged by the hand', () => {
  it('is looked at for every machine', () => {
    expect(new Set(everyStation.map(({ machine }) => machine))).toEqual(
      new Set(machines.map(({ name }) => name)),
    );
  });

  it.each(languageTags)('names no spring scale in steps, start state and drawing: %s', (language) => {
    for (const station of everyStation)
      for (const text of saidOf(station, 'ease', language))
        expect(text, `${station.machine}: ${text}`).not.toMatch(SPRING_SCALE[language]);
  });

  it.each(languageTags)(
    'names it where one is pulled, so that its absence tells something: %s',
    (language) => {
      for (const station of everyStation) {
        if (machineOf(station).tally?.(station, atBest) !== undefined && 'turns' in station) continue;
        expect(saidOf(station, 'pull', language).join(' '), station.machine).toMatch(SPRING_SCALE[language]);
      }
    },
  );

  it('shows the wedge pushed where its step says push, and pulled where it says pull', () => {
    for (const station of everyStation.filter(({ machine }) => machine === 'wedge')) {
      const felt = saidOf(station, 'ease', 'en').join(' ');
      const pulled = saidOf(station, 'pull', 'en').join(' ');
      expect(felt).toMatch(/\bpush\b/);
      expect(felt).not.toMatch(/\bpull\b/);
      expect(pulled).toMatch(/\bpull\b/);
      expect(pulled).not.toMatch(/\bpush\b/);
    }
  });
});
