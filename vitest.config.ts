import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['src/**/*.test.ts', 'test/**/*.test.ts'],
    environment: 'node',
    // A test that never asserts is a fault, whatever its title says.
    expect: { requireAssertions: true },
    // Packing and installing starts several processes; everything else is done within a second.
    testTimeout: 20_000,
  },
});
