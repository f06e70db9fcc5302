import type { ScaleSheet, SetupSheet } from '../pages/sheet.ts';
import { newtonMarks } from '../printing/reading-text.ts';
import { shiftText } from '../printing/shift-text.ts';
import { hangWords } from '../sentences/hang-words.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';

const NO_BREAK = '\u00a0';

/**
 * Why the schoolbook's figure differs: what the scale itself does to the figure where that is half a
 * graduation or more, then what the machine does.
 */
export const reasonsOf = (language: Language, { prediction, scale }: SetupSheet): readonly string[] => [
  ...(scale === null ? [] : scaleReason(language, scale)),
  ...prediction.differences.map(({ key, facts }) => sentence(language, key, facts)),
];

function scaleReason(language: Language, scale: ScaleSheet): readonly string[] {
  const { showsLess, graduations, hangs, zeroed } = scale;
  if (zeroed === 'in place' || Math.abs(showsLess) < graduations.step / 2) return [];
  return [
    sentence(language, `difference.scale-shows-${showsLess > 0 ? 'less' : 'more'}`, {
      hangs: hangWords(language, hangs),
      zeroed: hangWords(language, zeroed),
      shift: `${shiftText(language, showsLess, graduations, newtonMarks)}${NO_BREAK}N`,
    }),
  ];
}
