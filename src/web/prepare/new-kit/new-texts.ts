import type { Texts } from '../../engine/prepare-wire.ts';

/** Three files in which nothing is answered yet, under names that belong together. */
export const newTexts = (stem: string): Texts => {
  const [kit, activity, visit] = namesOf(stem);
  return {
    kit: { name: kit, text: 'handspike: kit 1\n' },
    activity: { name: activity, text: 'handspike: activity 1\n' },
    visit: { name: visit, text: `handspike: visit 1\nkit: ${kit}\nactivity: ${activity}\n` },
  };
};

export const namesOf = (stem: string): readonly [kit: string, activity: string, visit: string] => [
  `${stem}.kit.yaml`,
  `${stem}.activity.yaml`,
  `${stem}.visit.yaml`,
];

/** The short name that the kit file bears, and the other two with it. */
export const stemOf = (texts: Texts): string => texts.kit.name.replace(/(\.kit)?\.ya?ml$/, '');

/** A name as every disk takes it and as a file says it without quotes. */
export const asStem = (written: string): string =>
  written
    .trim()
    .toLowerCase()
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '');

/** The same files under another short name; the visit names them as they are then called. */
export function renamed(texts: Texts, stem: string): Texts {
  const [kit, activity, visit] = namesOf(stem);
  const text = texts.visit.text
    .split('\n')
    .map((line) =>
      line === `kit: ${texts.kit.name}`
        ? `kit: ${kit}`
        : line === `activity: ${texts.activity.name}`
          ? `activity: ${activity}`
          : line,
    )
    .join('\n');
  return {
    ...texts,
    kit: { ...texts.kit, name: kit },
    activity: { ...texts.activity, name: activity },
    visit: { name: visit, text },
  };
}
