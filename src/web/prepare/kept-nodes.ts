import type { VNode } from 'preact';
import { useRef } from 'preact/hooks';

/** Gives the node of a place as it was made, unless what it shows has changed. */
export type KeptNodes = (place: string, shows: unknown, make: () => VNode) => VNode;

/**
 * Nodes of a long list, each made anew only where what it shows has changed: the page passes over the
 * others, and typing in one of many fields costs what one field costs.
 */
export function useKeptNodes(): KeptNodes {
  const made = useRef(new Map<string, { readonly written: string; readonly node: VNode }>());
  return (place, shows, make) => {
    const written = JSON.stringify(shows);
    const last = made.current.get(place);
    if (last?.written === written) return last.node;
    const node = make();
    made.current.set(place, { written, node });
    return node;
  };
}
