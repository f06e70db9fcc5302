/**
 * Text made safe between tags and inside quoted attributes, for HTML and SVG alike.
 *
 * @example escapeText('bar "A" < bar & pin') // => 'bar &quot;A&quot; &lt; bar &amp; pin'
 */
export const escapeText = (text: string): string =>
  UNSAFE.test(text)
    ? text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')
    : text;

/** Most of what a drawing writes is numbers, where there is nothing to make safe. */
const UNSAFE = /[&<>"]/;

/**
 * An element with its attributes; those without a value are left out. Content is markup already.
 *
 * @example element('text', { x: 3, y: undefined }, 'pull') // => '<text x="3">pull</text>'
 */
export function element(
  name: string,
  attributes: Readonly<Record<string, string | number | undefined>>,
  content?: string,
): string {
  let written = '';
  for (const [key, value] of Object.entries(attributes)) {
    if (value === undefined) continue;
    written += ` ${key}="${typeof value === 'number' ? value : escapeText(value)}"`;
  }
  return content === undefined ? `<${name}${written}/>` : `<${name}${written}>${content}</${name}>`;
}

/**
 * A name that can stand as an id: letters, digits and hyphens.
 *
 * @example idName('setup 1 A') // => 'setup-1-a'
 */
export const idName = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
