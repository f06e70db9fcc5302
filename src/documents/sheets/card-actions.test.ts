import { expect, test } from 'vitest';
import { changesFrom, type Done } from './card-actions.ts';

const done = (mark: string, taken: number, ...actions: readonly string[]): Done => ({ mark, taken, actions });
const first = done('A', 1, 'Take the cart.', 'Set the prop.', 'Load it.', 'Hook on.', 'Pull.');

test('only what differs from the setup that it is like is told', () => {
  const now = done('B', 1, 'Take the cart.', 'Set the prop higher.', 'Load it.', 'Hook on.', 'Pull.');
  expect(changesFrom([first], now, first)).toEqual({
    like: 'A',
    changes: [{ number: 2, text: 'Set the prop higher.' }],
    reminds: false,
  });
});

test('what the setup just before did otherwise is said again, or it would stay', () => {
  const before = done('B', 1, 'Take the cart.', 'Set the prop higher.', 'Load it.', 'Hook on.', 'Pull.');
  const now = done('C', 1, 'Take the cart.', 'Set the prop.', 'Load it.', 'Hook on.', 'Hold still.');
  expect(changesFrom([first], now, before)).toEqual({
    like: 'A',
    changes: [
      { number: 2, text: 'Set the prop.' },
      { number: 5, text: 'Hold still.' },
    ],
    reminds: true,
  });
});

test('where much was otherwise before, only what is taken is said again', () => {
  const before = done('B', 1, 'Take the block.', 'Set the prop.', 'Load the block.', 'Hook it on.', 'Drag.');
  const now = done('C', 1, 'Take the cart.', 'Set the prop higher.', 'Load it.', 'Hook on.', 'Pull.');
  expect(changesFrom([first], now, before)?.changes.map(({ number }) => number)).toEqual([1, 2]);
});

test('a setup that differs in more than three steps is told as a whole', () => {
  const now = done('D', 1, 'Take the block.', 'Set it low.', 'Load the block.', 'Hook it on.', 'Pull.');
  expect(changesFrom([first], now, first)).toBeNull();
});
