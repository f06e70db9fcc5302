import { describe, expect, it } from 'vitest';
import { partingNotes } from './parting-notes.ts';

/** A browser's box for small texts. */
function box(): Storage {
  const texts = new Map<string, string>();
  return {
    get length() {
      return texts.size;
    },
    clear: () => texts.clear(),
    key: (n) => [...texts.keys()][n] ?? null,
    getItem: (key) => texts.get(key) ?? null,
    setItem: (key, text) => void texts.set(key, text),
    removeItem: (key) => void texts.delete(key),
  };
}

const gone = (page: EventTarget): boolean => page.dispatchEvent(new Event('pagehide'));

describe('notes on their way when a page goes', () => {
  it('are left for the next page of that name, and those that have arrived are not', () => {
    const [kept, page] = [box(), new EventTarget()];
    const notes = partingNotes('prepare', kept, page);
    notes.begin('texts', { kit: 'amber' });
    notes.begin('read by', 'A');
    notes.end('read by', 'A');
    gone(page);
    notes.begin('edits', ['hole 2']);
    const next = partingNotes('prepare', kept, new EventTarget());
    expect(next.left()).toEqual([
      { key: 'texts', value: { kit: 'amber' } },
      { key: 'edits', value: ['hole 2'] },
    ]);
    expect(partingNotes('discuss', kept, new EventTarget()).left()).toEqual([]);
  });

  it('are dropped as soon as one of that key has arrived, by whichever page, and not before', () => {
    const [kept, page] = [box(), new EventTarget()];
    const notes = partingNotes('prepare', kept, page);
    notes.begin('texts', 1);
    gone(page);
    const other = partingNotes('prepare', kept, new EventTarget());
    other.begin('texts', 2);
    expect(other.left()).toEqual([{ key: 'texts', value: 1 }]);
    other.begin('texts', 3);
    other.end('texts', 2);
    expect(other.left()).toHaveLength(1);
    other.end('texts', 3);
    expect(other.left()).toEqual([]);
  });

  it('go the long way again on a page that comes back, and a value that is none stays none', () => {
    const [kept, page] = [box(), new EventTarget()];
    const notes = partingNotes('device', kept, page);
    gone(page);
    notes.begin('pass', undefined);
    expect(notes.left()).toEqual([{ key: 'pass' }]);
    page.dispatchEvent(new Event('pageshow'));
    notes.end('pass', undefined);
    notes.begin('pass', 'p');
    expect(notes.left()).toEqual([]);
  });

  it('are lost, and nothing else is, where the browser gives no box or lets nothing be put in', () => {
    const full: Storage = {
      ...box(),
      length: 0,
      setItem: () => {
        throw new DOMException('no room', 'QuotaExceededError');
      },
    };
    for (const kept of [full, null]) {
      const page = new EventTarget();
      const notes = partingNotes('prepare', kept, page);
      notes.begin('texts', 1);
      gone(page);
      expect(notes.left()).toEqual([]);
    }
  });
});
