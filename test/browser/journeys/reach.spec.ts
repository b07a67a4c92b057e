import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Locator, type Page, test } from '@playwright/test';
import type { Project } from '../../../src/core/document/schema.ts';
import { dropFile, field, openApp, readAt, savedBy, settled, typeInto } from './page.ts';

const capacitor = (project: Project): number => {
  const part = project.network.parts.find(({ id }) => id === 'C1');
  return part?.kind === 'capacitor' ? part.farad : Number.NaN;
};
const tweeter = (project: Project) => project.enclosure.mounts.find(({ partId }) => partId === 'LS3')!;

test('the main job without a pointer', async ({ page }) => {
  const faults = await openApp(page);
  const saved = (): Promise<Project> => savedBy(page, () => page.keyboard.press('ControlOrMeta+s'));
  const c1 = field(page, 'C1 capacitance');

  await test.step('Tab comes to a part value; the arrow keys step it along E12', async () => {
    await tabTo(page, c1);
    const steps = [47, 56, 68];
    for (const microfarad of steps) {
      await page.keyboard.press('ArrowUp');
      await expect(c1).toHaveAttribute('aria-valuetext', new RegExp(`^${microfarad}(\\.0+)?\\s*µF$`));
    }
    await page.keyboard.press('ArrowDown');
    expect(capacitor(await saved())).toBeCloseTo(56e-6, 12);
  });

  await test.step('Enter opens it, a value with its unit is typed; Escape leaves the next one as it was', async () => {
    await page.keyboard.press('Enter');
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type('0.033 mF');
    await page.keyboard.press('Enter');
    await expect(c1).toHaveAttribute('aria-valuetext', /^33(\.0+)?\s*µF$/);
    await expect(c1).toBeFocused();
    await page.keyboard.press('Enter');
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type('1 uF');
    await page.keyboard.press('Escape');
    await expect(c1).toBeFocused();
    await expect(c1).toHaveAttribute('aria-valuetext', /^33(\.0+)?\s*µF$/);
    await page.keyboard.press('Enter');
    await page.keyboard.press('ArrowUp');
    await expect(c1).toHaveAttribute('aria-valuetext', /^39(\.0+)?\s*µF$/);
    await page.keyboard.press('Escape');
    expect(capacitor(await saved())).toBeCloseTo(33e-6, 12);
  });

  await test.step('undo and redo by keys', async () => {
    await page.keyboard.press('ControlOrMeta+z');
    expect(capacitor(await saved())).toBeCloseTo(56e-6, 12);
    await page.keyboard.press('ControlOrMeta+Shift+z');
    expect(capacitor(await saved())).toBeCloseTo(33e-6, 12);
    await page.keyboard.press('ControlOrMeta+z');
    await page.keyboard.press('ControlOrMeta+y');
    expect(capacitor(await saved())).toBeCloseTo(33e-6, 12);
  });

  await test.step('a driver is moved by the arrow keys', async () => {
    const before = tweeter(await saved());
    await tabTo(page, page.getByRole('button', { name: /^LS3, 28 mm dome tweeter, .*arrow keys move it/ }));
    for (let press = 0; press < 3; press++) await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Shift+ArrowDown');
    const after = tweeter(await saved());
    expect(after.xM - before.xM).toBeCloseTo(0.003, 9);
    expect(after.yM - before.yM).toBeCloseTo(-0.01, 9);
  });

  const cursor = page.getByRole('slider', { name: /^Level at the listening point.*: frequency to read$/ });
  const sumRead = async (): Promise<string> =>
    /sum [-−]?[\d.]+ dB/.exec((await cursor.getAttribute('aria-valuetext')) ?? '')?.[0] ?? '';
  await test.step('a frequency is read by the arrow keys, and said', async () => {
    await tabTo(page, cursor);
    await page.keyboard.press('ArrowRight');
    await expect(cursor).toHaveAttribute('aria-valuenow', String(Math.round(1000 * 2 ** (1 / 12))));
    await page.keyboard.press('PageUp');
    await page.keyboard.press('PageUp');
    await expect(cursor).toHaveAttribute('aria-valuenow', String(Math.round(4000 * 2 ** (1 / 12))));
    await expect.poll(sumRead).toMatch(/^sum \d+\.\d dB$/);
  });

  await test.step('the listening angle is typed and the reading follows', async () => {
    const onAxis = await sumRead();
    await tabTo(page, field(page, /^Horizontal listening angle/));
    await page.keyboard.type('30');
    await page.keyboard.press('Enter');
    expect((await saved()).listening.horizontalDeg).toBe(30);
    await expect.poll(sumRead).not.toBe(onAxis);
  });

  await test.step('a frequency is typed', async () => {
    const box = page.getByRole('textbox', { name: /^read at/ });
    await tabTo(page, box);
    await page.keyboard.type('3 kHz');
    await page.keyboard.press('Enter');
    await expect(cursor).toHaveAttribute('aria-valuenow', '3000');
  });

  await test.step('large type by its key', async () => {
    const large = page.getByRole('button', { name: 'Large', exact: true });
    const typePx = () => c1.evaluate((element) => Number.parseFloat(getComputedStyle(element).fontSize));
    const before = await typePx();
    await tabTo(page, c1);
    await page.keyboard.press('l');
    await expect(large).toHaveAttribute('aria-pressed', 'true');
    await expect.poll(typePx).toBeGreaterThan(before * 1.15);
    await page.keyboard.press('l');
    await expect.poll(typePx).toBe(before);
  });
  expect(faults).toEqual([]);
});

/** Goes on by Tab until something has the focus; fails when a whole round of the page does not come to it. */
async function tabTo(page: Page, wanted: Locator): Promise<void> {
  const element = await wanted.elementHandle();
  for (let press = 0; press < 250; press++) {
    if (await page.evaluate((sought) => document.activeElement === sought, element)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab does not come to ${wanted}.`);
}

for (const colorScheme of ['light', 'dark'] as const) {
  for (const [width, height] of [
    [1440, 900],
    [390, 844],
  ] as const) {
    test.describe(`${colorScheme} at ${width} × ${height}`, () => {
      test.use({ colorScheme, viewport: { width, height } });
      test('axe finds nothing', async ({ page }) => {
        const faults = await openApp(page);
        await expect(page.getByRole('table', { name: /^Level at the listening point/ })).toBeAttached();
        expect(await axeFindings(page), 'as it opens').toEqual([]);
        await page.getByRole('button', { name: 'circuit as text' }).click();
        // On a narrow screen the seldom used buttons stand under one.
        if (width < 1000) await page.getByRole('button', { name: 'More', exact: true }).click();
        await page.getByRole('button', { name: 'Settings' }).click();
        await expect(page.getByRole('dialog', { name: 'Settings' })).toBeVisible();
        expect(await axeFindings(page), 'with panels open').toEqual([]);
        expect(faults).toEqual([]);
      });
    });
  }
}

for (const [width, height] of [
  [1440, 900],
  [1024, 768],
  [390, 844],
] as const) {
  test.describe(`large type at ${width} × ${height}`, () => {
    test.use({ viewport: { width, height } });
    test('axe finds nothing, and nothing runs off the side', async ({ page }) => {
      await openApp(page);
      await page.keyboard.press('l');
      await expect(page.locator(':root[data-large]')).toBeAttached();
      expect(await axeFindings(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(
        0,
      );
    });
  });
}

test('at 1440 pixels the key figures stand in one line, and at 1280 the drawing fits its column', async ({ page }) => {
  await openApp(page);
  const tops = await page
    .locator('.key-item')
    .evaluateAll((items) => items.map((item) => Math.round(item.getBoundingClientRect().top)));
  expect(tops.length).toBeGreaterThanOrEqual(8);
  expect(new Set(tops).size).toBe(1);
  await page.setViewportSize({ width: 1280, height: 800 });
  const spare = (): Promise<number> =>
    page.locator('.lanes-scroller').evaluate((scroller) => scroller.clientWidth - scroller.scrollWidth);
  await expect.poll(spare).toBe(0);
});

/** What axe has against the page, targets below 24 px included: rule, selector and the reason. */
async function axeFindings(page: Page): Promise<string[]> {
  const { violations, passes } = await new AxeBuilder({ page })
    .options({ rules: { 'target-size': { enabled: true } } })
    .analyze();
  // A run that has not looked at targets and colours proves nothing.
  expect(passes.map(({ id }) => id)).toEqual(expect.arrayContaining(['target-size', 'color-contrast']));
  return violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id} | ${node.target.join(' ')} | ${[...node.any, ...node.all, ...node.none][0]?.message}`),
  );
}

const MIME: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.json': 'application/json',
  '.map': 'application/json',
  '.webmanifest': 'application/manifest+json',
};

/** The folder `dist` behind a plain file server, below a path and nowhere else. */
async function serveDist(
  path: string,
): Promise<{ readonly address: string; readonly missed: string[]; stop(): Promise<void> }> {
  const dist = new URL('../../../dist/', import.meta.url);
  const missed: string[] = [];
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://127.0.0.1');
    try {
      if (!pathname.startsWith(path)) throw new Error('Outside the path.');
      const file = new URL(`./${pathname.slice(path.length) || 'index.html'}`, dist);
      const content = await readFile(file);
      response.writeHead(200, { 'content-type': MIME[extname(file.pathname)] ?? 'application/octet-stream' });
      response.end(content);
    } catch {
      missed.push(pathname);
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}${path}`,
    missed,
    stop: () =>
      new Promise<void>((closed) => {
        server.close(() => closed());
        server.closeAllConnections();
      }),
  };
}

/** Whether the first picture was painted: its mark is set, and the canvas holds more than one colour. */
async function firstPicture(page: Page): Promise<void> {
  expect(await page.evaluate(() => performance.getEntriesByName('conewright:first-picture').length)).toBe(1);
  const colours = await page.getByRole('img', { name: /^Level at the listening point/ }).evaluate((element) => {
    const canvas = element as HTMLCanvasElement;
    const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
    return new Set(new Uint32Array(data.buffer)).size;
  });
  expect(colours).toBeGreaterThan(3);
}

test.describe('served from a folder', () => {
  let site: Awaited<ReturnType<typeof serveDist>>;
  test.beforeEach(async () => {
    site = await serveDist('/some/where/below/');
  });
  test.afterEach(() => site.stop());

  test('a plain file server below a path is enough', async ({ page }) => {
    const failed: string[] = [];
    page.on('requestfailed', (request) => failed.push(request.url()));
    page.on('response', (response) => {
      if (response.status() >= 400) failed.push(`${response.status()} ${response.url()}`);
    });
    const faults = await openApp(page, '', site.address);
    await firstPicture(page);
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await typeInto(page, 'C1 capacitance', '2 * 22 uF + 3 uF');
    await expect(field(page, 'C1 capacitance')).toHaveText(/47\s*µF/);
    expect({ failed, missed: site.missed, faults }).toEqual({ failed: [], missed: [], faults: [] });
  });

  test('without the server it works after a reload', async ({ page, context }) => {
    const faults = await openApp(page, '', site.address);
    await typeInto(page, 'R4 resistance', '4.7');
    await expect(field(page, 'R4 resistance')).toHaveText(/4\.7\s*Ω/);
    await settled(page);
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await site.stop();
    await context.setOffline(true);
    expect(
      await page.evaluate(() =>
        fetch('./not-kept')
          .then(() => 'answered')
          .catch(() => 'no answer'),
      ),
    ).toBe('no answer');
    faults.length = 0; // The browser logs the failed request above.
    await page.reload();
    await settled(page);
    await firstPicture(page);
    await expect(field(page, 'R4 resistance')).toHaveText(/4\.7\s*Ω/);
    // What is fetched only when asked for: arithmetic, another demonstration, the parts' panels.
    const before = await readAt(page, 'response-sum', 60);
    await typeInto(page, 'C1 capacitance', '2 * 47 uF + 6 uF');
    await expect(field(page, 'C1 capacitance')).toHaveText(/100\s*µF/);
    await expect.poll(async () => (await readAt(page, 'response-sum', 60)).value).not.toBe(before.value);
    await page.getByRole('button', { name: 'New', exact: true }).click();
    await page.getByRole('button', { name: /^Kitchen shelf two-way/ }).click();
    await expect(page.getByRole('textbox', { name: 'Name of the project' })).toHaveValue('Kitchen shelf two-way');
    expect(faults).toEqual([]);
  });
});

test('nothing is asked for elsewhere, no console error, no breach of the content policy', async ({
  page,
  context,
  baseURL,
}) => {
  const elsewhere: string[] = [];
  context.on('request', (request) => {
    const url = new URL(request.url());
    if (url.protocol.startsWith('http') && url.origin !== new URL(baseURL!).origin) elsewhere.push(request.url());
  });
  const breaches: string[] = [];
  await page.exposeFunction('noteBreach', (text: string) => breaches.push(text));
  await page.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) => {
      (window as unknown as { noteBreach(text: string): void }).noteBreach(`${violatedDirective} ${blockedURI}`);
    });
  });
  const faults = await openApp(page);
  expect(await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content')).toContain(
    "default-src 'none'",
  );
  for (const words of ['textbook sections', 'circuit as text', 'add a way', 'node names'])
    await page.getByRole('button', { name: words, exact: true }).click();
  for (const question of ['What moves', 'When it arrives', 'What the amplifier sees'])
    await page.getByRole('button', { name: question, exact: true }).click();
  for (const panel of ['Compare', 'Settings', 'Keys']) {
    await page.getByRole('button', { name: panel, exact: true }).click();
    await page.keyboard.press('Escape');
  }
  await page.getByRole('button', { name: 'why?' }).first().click();
  await page.keyboard.press('Escape');
  await typeInto(page, 'C1 capacitance', '2 * 22 uF + 3 uF');
  await expect(field(page, 'C1 capacitance')).toHaveText(/47\s*µF/);
  await dropFile(page, 'reading-room/mid-impedance.txt');
  await expect(page.getByRole('button', { name: 'Take it in' })).toBeVisible();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  expect({ elsewhere, breaches, faults }).toEqual({ elsewhere: [], breaches: [], faults: [] });

  // The watch itself: a style that the policy forbids is noticed.
  await page.evaluate(() => {
    const style = document.createElement('style');
    style.textContent = 'body { color: red }';
    document.head.append(style);
  });
  await expect.poll(() => breaches.length).toBe(1);
});
