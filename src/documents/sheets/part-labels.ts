import type { KitPart } from '../../core/kit/kit.ts';
import type { Block } from './block.ts';
import { fitsText, kindName, type Playing, playingOf, sizesOf } from './kit-parts.ts';
import { kitSheet } from './kit-sheet.ts';
import type { PaperJob, SheetKind } from './paper-job.ts';
import { sayIn } from './say.ts';

/** Three tags across either paper, millimetres. */
const TAG = { width: 60, height: 34 };

/** A tag for every part: its mark, what it is, what it fits, which role it plays and where it lives. */
export const partLabels: SheetKind = {
  name: 'labels',
  of: 'kit',
  build: (job) => {
    const { kit } = job.prepared;
    const language = job.languages.key;
    const say = sayIn(language);
    if (kit === null) return [];
    const playing = playingOf(job);
    const played = new Set(kit.parts.filter(({ mark }) => playing.has(mark)).map(({ kind }) => kind));
    const tags = kit.parts.map((part) =>
      label(job, part, playing.get(part.mark) ?? [], kit.serial, played.has(part.kind)),
    );
    return [
      kitSheet(job, language, {
        name: 'part-labels',
        title: say('sheet.labels'),
        blocks: [
          { block: 'title', text: say('sheet.labels'), about: say('sheet.labels.about'), facts: [] },
          { block: 'tags', ...TAG, tags },
        ],
      }),
    ];
  },
};

function label(
  { prepared, languages }: PaperJob,
  part: KitPart,
  playing: readonly Playing[],
  serial: string,
  isKindPlayed: boolean,
): readonly Block[] {
  const language = languages.key;
  const say = sayIn(language);
  const sizes = sizesOf(language, part);
  const what = [kindName(language, part.kind), ...sizes].join(', ');
  const roles = playing.map(({ table, role }) => say('sheet.labels.plays', { table, role }));
  // A part that waits in its box may stand in for one of its kind: "fits no table" would deny it.
  const mayStandIn = isKindPlayed && roles.length === 0 && !part.isFaulty;
  const tables = prepared.activity?.tables ?? [];
  const lines = [
    fitsText(language, part, tables, mayStandIn),
    ...(roles.length === 0 ? [] : [roles.join('; ')]),
    ...(mayStandIn ? [say('sheet.labels.stands-in', { kind: kindName(language, part.kind) })] : []),
    ...(part.isSpare ? [say('sheet.spare')] : []),
    say('sheet.labels.kit', { serial }),
    ...(part.box === null ? [] : [say('sheet.box', { box: part.box })]),
  ];
  return [
    { block: 'text', text: part.mark, tone: 'headline' },
    { block: 'text', text: what },
    ...lines.map((text): Block => ({ block: 'text', text, tone: 'small' })),
  ];
}
