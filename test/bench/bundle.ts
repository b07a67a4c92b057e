import { gzipSync } from 'node:zlib';
import type { Request } from '@playwright/test';
import { type BuiltApp, firstPicture, newPage } from './builtApp.ts';
import { figure, type Measured } from './figure.ts';

/**
 * JavaScript before the first picture: gzip bytes of the scripts (workers too) requested before the app sets the mark
 * `conewright:first-picture`, which it does once, when the first curve has been painted.
 */
export async function bundleFigures(app: BuiltApp): Promise<Measured> {
  const page = await newPage(app);
  const scripts: Request[] = [];
  page.on('request', (request) => {
    if (request.resourceType() === 'script' || /\.m?js(\?|$)/.test(request.url())) scripts.push(request);
  });
  await page.goto(app.address, { waitUntil: 'load' });
  const paintedAt = await firstPicture(page);
  await page.waitForLoadState('networkidle');
  const sizes = new Map<string, number>();
  for (const request of scripts) {
    const response = await request.response();
    if (response === null || request.timing().startTime > paintedAt) continue;
    sizes.set(new URL(request.url()).pathname, gzipSync(await response.body()).length);
  }
  await page.context().close();
  if (sizes.size === 0) throw new Error('No script was seen before the first picture.');
  const bytes = [...sizes.values()].reduce((sum, size) => sum + size, 0);
  return {
    figures: [figure('first-picture-kb', bytes / 1000)],
    notes: [...sizes].map(([path, size]) => `before the first picture: ${path} ${(size / 1000).toFixed(1)} kB gzip`),
  };
}
