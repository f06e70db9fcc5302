import { setupNamed } from '../../core/review.ts';
import { classStrip, type DotOnStrip } from '../strip/class-strip.ts';
import { PICTURE_WIDTH, type TalkPart, type TalkWords } from './talk-page.ts';

/** The scale leaves room for its unit beside it. */
const STRIP_LENGTH = PICTURE_WIDTH - 12;

/** A setup's strip with all dots of the class; a group's label stands there only where groups may be named. */
export function classDots(
  { language, prepared, judged, discussion }: TalkWords,
  mark: string,
  caption: string,
  hideGood: boolean,
): readonly TalkPart[] {
  const at = setupNamed(prepared, mark);
  if (at === null) return [];
  const dots = judged.flatMap((each): readonly DotOnStrip[] => {
    const { judgement } = each;
    const label = discussion.names ? judgement.reading.group : '';
    return each.at.setup.mark === mark ? [{ judgement, label }] : [];
  });
  const svg = classStrip(at, dots, {
    language,
    name: `talk strip ${mark}${hideGood ? '' : ' good'}`,
    length: STRIP_LENGTH,
    hideGood,
  });
  return svg === null ? [] : [{ part: 'figure', caption, svg }];
}
