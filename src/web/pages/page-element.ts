/** Where a page is put, emptied of what stood there. */
export function pageElement(): Element {
  const found = document.getElementById('page');
  if (found === null) throw new Error('the page has no place for what it shows');
  return found;
}

/** Before a visit says which: the browser's own, where it is one of ours. */
export const pageLanguage = (): string => {
  const language = navigator.language.startsWith('es') ? 'es' : 'en';
  document.documentElement.lang = language;
  return language;
};

/** Only where the browser allows it: over plain http it has no service worker at all. */
export function keepForOffline(): void {
  if (!('serviceWorker' in navigator)) return;
  navigator.serviceWorker.register('/service-worker.js').catch(() => undefined);
}
