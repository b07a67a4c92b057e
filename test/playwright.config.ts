import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import { CHROMIUM_ARGS, chromiumPath } from '../.ci/find-chromium.mjs';

const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

// The workers load this file too and must find the same port: the first to load it leaves it in the environment.
process.env.CONEWRIGHT_PREVIEW_PORT ??= spawnSync(process.execPath, [at('../.ci/free-port.mjs')], {
  encoding: 'utf8',
}).stdout.trim();
const port = process.env.CONEWRIGHT_PREVIEW_PORT;

/** Journeys walk through the real build (`npm run build` first), as a person with a browser would. */
export default defineConfig({
  testDir: at('./browser/journeys'),
  outputDir: at('../node_modules/.cache/playwright'),
  fullyParallel: true,
  forbidOnly: true,
  workers: 2,
  retries: 0,
  timeout: 60_000,
  reporter: process.env.PLAYWRIGHT_JSON_OUTPUT_FILE ? [['list'], ['json']] : [['list']],
  use: {
    baseURL: `http://127.0.0.1:${port}/`,
    viewport: { width: 1440, height: 900 },
    launchOptions: { executablePath: chromiumPath() ?? 'chromium', args: CHROMIUM_ARGS },
  },
  webServer: {
    command: `"${process.execPath}" node_modules/vite/bin/vite.js preview --host 127.0.0.1 --port ${port} --strictPort`,
    cwd: at('..'),
    url: `http://127.0.0.1:${port}/`,
    reuseExistingServer: false,
  },
});
