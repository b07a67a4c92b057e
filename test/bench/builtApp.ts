import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from '@playwright/test';
import { build, preview } from 'vite';
import { CHROMIUM_ARGS, findOrInstallChromium } from '../../.ci/find-chromium.mjs';

export interface BuiltApp {
  readonly address: string;
  readonly folder: string;
  readonly browser: Browser;
  close(): Promise<void>;
}

const root = fileURLToPath(new URL('../..', import.meta.url));
const configFile = `${root}vite.config.ts`;

/** Builds the app as it ships, serves it on a free local port and starts Chromium. */
export async function openBuiltApp(): Promise<BuiltApp> {
  const folder = `${root}node_modules/.cache/bench/dist`;
  await build({ configFile, root, logLevel: 'error', build: { outDir: folder, emptyOutDir: true } });
  const server = await preview({
    configFile,
    root,
    logLevel: 'error',
    build: { outDir: folder },
    preview: { host: '127.0.0.1', port: 0, strictPort: false },
  });
  const bound = server.httpServer.address();
  if (bound === null || typeof bound === 'string') throw new Error('The built app could not be served.');
  const browser = await chromium.launch({ executablePath: findOrInstallChromium(), args: CHROMIUM_ARGS });
  return {
    address: `http://127.0.0.1:${bound.port}/`,
    folder,
    browser,
    close: async () => {
      await browser.close();
      await server.close();
    },
  };
}

/** A page as the figures are stated for: 1440×900 at device pixel ratio 1, a new profile, no service worker. */
export async function newPage({ browser }: BuiltApp): Promise<Page> {
  const context = await browser.newContext({
    viewport: { width: 1440, height: 900 },
    deviceScaleFactor: 1,
    serviceWorkers: 'block',
  });
  return context.newPage();
}

/** Waits for the app's mark of the first painted curve. */
export async function firstPicture(page: Page): Promise<number> {
  const painted = (): boolean => performance.getEntriesByName('conewright:first-picture').length > 0;
  await page.waitForFunction(painted, undefined, { timeout: 20_000 }).catch(() => {
    throw new Error('within 20 s the page painted no curve (it set no mark conewright:first-picture)');
  });
  return page.evaluate(
    () => performance.timeOrigin + performance.getEntriesByName('conewright:first-picture')[0]!.startTime,
  );
}
