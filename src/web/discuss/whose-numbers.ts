import type { SourceText } from '../../core/files/source-text.ts';
import type { PreparationFiles } from '../../core/prepare.ts';
import type { RehearsalOptions } from '../../core/rehearse.ts';
import type { TalkMatter } from '../../store/wire.ts';
import { ask } from '../device/ask.ts';
import type { DeviceStore } from '../device/device-store.ts';
import { withBench } from '../engine/bench-texts.ts';
import { isFile, isTexts } from '../engine/kept-texts.ts';
import type { Texts } from '../engine/prepare-wire.ts';
import type { TalkOf } from '../engine/talk-wire.ts';
import { demoTexts } from '../prepare/demo-texts.ts';

/** Whose numbers are talked about: a file's, those of a class that never was, or those of a visit at the server. */
export type Numbers =
  | { readonly kind: 'readings'; readonly file: SourceText }
  | { readonly kind: 'rehearsal'; readonly asked: Partial<RehearsalOptions> }
  /** `tablets`: whether those of its groups follow the wall. */
  | { readonly kind: 'visit'; readonly visit: string; readonly tablets?: boolean };

/** What the page is told to talk about; kept in the browser. */
export interface Chosen {
  readonly texts: Texts;
  readonly numbers: Numbers;
  readonly names: boolean;
}

const FIRST: Numbers = { kind: 'rehearsal', asked: { seed: 1 } };

/** What was chosen here last; else what was prepared in this browser, else the demo. */
export async function keptChoice(own: DeviceStore, ofPrepare: () => Promise<unknown>): Promise<Chosen> {
  const kept = (await own.note('chosen')) as Partial<Chosen> | undefined;
  if (isTexts(kept?.texts) && isNumbers(kept.numbers))
    return { texts: kept.texts, numbers: kept.numbers, names: kept.names === true };
  const prepared = await ofPrepare();
  return { texts: isTexts(prepared) ? prepared : demoTexts, numbers: FIRST, names: false };
}

const isNumbers = (kept: Partial<Numbers> | undefined): kept is Numbers => {
  if (kept?.kind === 'readings') return isFile(kept.file);
  if (kept?.kind === 'rehearsal') return typeof kept.asked === 'object';
  return kept?.kind === 'visit' && typeof kept.visit === 'string';
};

/** What the engine is given; `null` where the server doesn't give it. */
export async function matterOf({
  texts,
  numbers,
}: Chosen): Promise<{ readonly files: PreparationFiles; readonly of: TalkOf } | null> {
  switch (numbers.kind) {
    case 'readings':
      return { files: withBench(texts), of: { kind: 'class', readings: numbers.file, trials: [] } };
    case 'rehearsal':
      return { files: withBench(texts), of: numbers };
    case 'visit': {
      const answer = await ask<TalkMatter>(`/api/teacher/visits/${encodeURIComponent(numbers.visit)}/talk`);
      if (answer.kind !== 'answer') return null;
      const { files, readings, trials } = answer.body;
      return { files, of: { kind: 'class', readings, trials } };
    }
  }
}

/** The visit that an address asks for: a link from the teacher's page. */
export const visitIn = (hash: string): string | null => /^#visit=([\w-]+)$/.exec(hash)?.[1] ?? null;
