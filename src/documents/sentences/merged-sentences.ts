/** All sentences of a language in one list. Two for one key would hide each other by the order: refused. */
export function mergedSentences(
  language: string,
  ...lists: readonly Readonly<Record<string, string>>[]
): Readonly<Record<string, string>> {
  const all: Record<string, string> = {};
  for (const list of lists)
    for (const [key, text] of Object.entries(list)) {
      if (Object.hasOwn(all, key) && all[key] !== text)
        throw new RangeError(`two ${language} sentences for "${key}"`);
      all[key] = text;
    }
  return all;
}
