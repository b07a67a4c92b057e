import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    projects: [
      { test: { name: 'node', environment: 'node', include: ['test/**/*.test.ts'], exclude: ['test/browser/**'] } },
    ],
  },
});
