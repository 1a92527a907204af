import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 30_000,
    hookTimeout: 60_000,
    // Two cores: more workers would only wait for each other.
    maxWorkers: 2,
    reporters: ['default', ['json', { outputFile: '.data/test-run.json' }]],
  },
})
