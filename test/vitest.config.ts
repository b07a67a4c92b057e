import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { CHROMIUM_ARGS, chromiumPath } from '../.ci/find-chromium.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));

// Only where component tests run is a browser needed: without one the Node tests still load this file.
const executablePath = chromiumPath() ?? 'chromium';

// `npm run check` leaves the slow tests to `npm test`.
const quick = process.env.CONEWRIGHT_QUICK === '1';

// Ends a test that hangs; a loaded machine must not fail one that is only slow.
const patience = { testTimeout: 60_000, hookTimeout: 120_000 };

// Separate from vite.config.ts, so that the offline and content-policy plugins stay out of the tests.
export default defineConfig({
  root,
  test: {
    projects: [
      {
        root,
        test: {
          name: 'node',
          environment: 'node',
          ...patience,
          include: ['test/**/*.test.ts', 'demo-data/**/*.test.ts'],
          exclude: ['test/browser/**', 'node_modules/**', ...(quick ? ['**/*.slow.test.ts'] : [])],
        },
      },
      {
        root,
        plugins: [react()],
        worker: { format: 'es' },
        // Every bare import of the app and of its tests: one discovered late reloads the page in mid-run.
        optimizeDeps: {
          include: [
            'react',
            'react-dom',
            'react-dom/client',
            'react/jsx-runtime',
            'react/jsx-dev-runtime',
            'zustand',
            'zustand/shallow',
            'zustand/vanilla',
            'zustand/middleware',
            'zustand/react/shallow',
            'zundo',
            'idb',
            'zod',
            'd3-scale',
            'd3-shape',
            'mathjs',
            '@testing-library/react',
            '@testing-library/user-event',
            '@testing-library/jest-dom/vitest',
          ],
        },
        test: {
          name: 'browser',
          setupFiles: ['test/browser/cleanUp.ts'],
          ...patience,
          include: ['test/browser/components/**/*.test.{ts,tsx}'],
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            provider: playwright({ launchOptions: { executablePath, args: CHROMIUM_ARGS } }),
            instances: [{ browser: 'chromium' }],
          },
        },
      },
    ],
  },
});
