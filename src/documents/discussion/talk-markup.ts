import { element, escapeText } from '../markup.ts';
import type { TalkPart } from './talk-page.ts';

/** A part of a page as markup: figures, tables and lines look alike on every page that stands alone. */
export function talkMarkup(part: TalkPart): string {
  switch (part.part) {
    case 'line':
      return element('p', {}, escapeText(part.text));
    case 'figure':
      return element('figure', {}, `<figcaption>${escapeText(part.caption)}</figcaption>${part.svg}`);
    case 'table':
      return [
        `<div class="wide" tabindex="0" role="group" aria-label="${escapeText(part.head.join(', '))}"><table class="talk"><thead><tr>`,
        ...part.head.map((each) => element('th', { scope: 'col' }, escapeText(each))),
        '</tr></thead><tbody>',
        ...part.rows.map(([first = '', ...rest]) =>
          [
            '<tr>',
            element('th', { scope: 'row' }, escapeText(first)),
            ...rest.map((each) => element('td', {}, escapeText(each))),
            '</tr>',
          ].join(''),
        ),
        '</tbody></table></div>',
      ].join('');
  }
}
