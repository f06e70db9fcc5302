/** Inline styles of the drawings and what says the same without one. */
const AS_ATTRIBUTES: Readonly<Record<string, string>> = {
  'stroke:var(--brass,currentColor)': 'stroke="var(--brass,currentColor)"',
  'fill:var(--paper,none)': 'fill="var(--paper,none)"',
  'fill:currentColor': 'fill="currentColor"',
};

/**
 * Markup of ours as a piece of another page: no style element and no style attribute, which a strict page
 * refuses, and ids of its own. Letters are class `lettering`, so that a page may give them a halo of paper.
 *
 * @example fragment('<p id="care">Slowly.</p>', 'table 3') // => '<p id="table-3-care">Slowly.</p>'
 */
export const fragment = (markup: string, within: string): string => {
  const prefix = within.replace(/[^\p{L}\p{N}]+/gu, '-');
  return markup
    .replace(/<style>[\s\S]*?<\/style>/g, '')
    .replace(/ style="([^"]*)"/g, (_, styles: string) =>
      styles
        .split(';')
        .map((style) => ` ${attributeOf(style)}`)
        .join(''),
    )
    .replaceAll('<text ', '<text class="lettering" fill="currentColor" stroke="none" ')
    .replace(/ id="([^"]*)"/g, ` id="${prefix}-$1"`)
    .replace(
      / aria-labelledby="([^"]*)"/g,
      (_, ids: string) =>
        ` aria-labelledby="${ids
          .split(' ')
          .map((id) => `${prefix}-${id}`)
          .join(' ')}"`,
    );
};

/** A style that this file does not know would be lost without a word: it is refused. */
function attributeOf(style: string): string {
  const [, name, colour] = /^(fill|stroke):(#[0-9a-f]{6})$/.exec(style) ?? [];
  const attribute = colour === undefined ? AS_ATTRIBUTES[style] : `${name}="${colour}"`;
  if (attribute === undefined) throw new RangeError(`no attribute for the style "${style}"`);
  return attribute;
}
