import type { Saying } from '../text/saying.ts';
import type { Block } from './block.ts';

/** A saying as blocks: a heading over a list, or lines for themselves. */
export const sayingBlocks = ({ about, heading, lines, foot }: Saying): readonly Block[] => [
  ...(heading === null
    ? lines.map(
        (text, n): Block => ({
          block: 'text',
          text,
          ...(about === 'sure' && n === 0 ? { tone: 'strong' as const } : {}),
        }),
      )
    : [{ block: 'text', text: heading, tone: 'strong' } as const, { block: 'list', items: lines } as const]),
  ...(foot === null ? [] : [{ block: 'text', text: foot } as const]),
];
