import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['src/**/*.test.ts', 'test/**/*.test.ts'],
    environment: 'node',
    // A test that never asserts is a fault, whatever its title says.
    expect: { requireAssertions: true },
    // Packing and installing starts several processes; everything else is done within a second.
    // Setting nine tables' paper takes a quiet machine 6 s; a busy one may take its time.
    testTimeout: 60_000,
    // Without this one of two processors stands idle.
    maxWorkers: '100%',
  },
});
