import { readFileSync } from 'node:fs';
import { expect, type Locator, type Page } from '@playwright/test';
import type { Project } from '../../../src/core/document/schema.ts';

/** Opens the app and waits for its first picture; console errors and requests elsewhere are gathered in the returned list. */
export async function openApp(page: Page, hash = '', address = './'): Promise<string[]> {
  const faults: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('request', (request) => {
    const url = new URL(request.url());
    if (url.protocol.startsWith('http') && url.hostname !== '127.0.0.1') faults.push(`asked ${url.hostname}`);
  });
  await page.goto(`${address}${hash}`);
  await settled(page);
  return faults;
}

/** The picture stands, the lanes are there, the work is saved. */
export async function settled(page: Page): Promise<void> {
  await expect(page.getByTestId('storage')).toHaveText(/saved/i);
  await expect(page.getByRole('spinbutton', { name: 'Outside width' })).toBeVisible();
}

/** The document as the app saves it as a file when asked to. */
export async function savedBy(page: Page, ask: () => Promise<void>): Promise<Project> {
  const download = page.waitForEvent('download');
  await ask();
  return JSON.parse(readFileSync(await (await download).path(), 'utf8')) as Project;
}

/** The document as the app itself saves it as a file. */
export const savedProject = (page: Page): Promise<Project> =>
  savedBy(page, () => page.getByRole('button', { name: 'Save', exact: true }).click());

export const field = (page: Page, name: string | RegExp): Locator => page.getByRole('spinbutton', { name });

/** The plot whose picture has this name. */
export const plot = (page: Page, name: string | RegExp): Locator =>
  page.getByRole('figure').filter({ has: page.getByRole('img', { name }) });

/** Opens a value where it stands, types, and presses Enter. */
export async function typeInto(page: Page, name: string | RegExp, text: string): Promise<void> {
  const value = field(page, name);
  await value.focus();
  await value.press('Enter');
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

/** Reads a curve at a frequency from the plot's own readout, as the number it shows. */
export async function readAt(page: Page, curve: string, hz: number): Promise<{ value: number; digits: number }> {
  const box = page.getByTestId('read-at');
  await box.fill(String(hz));
  await box.press('Enter');
  // The plots write their readings with the next picture.
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  const text = (await page.getByTestId(`reading-${curve}`).textContent()) ?? '';
  const number = /[-−]?\d+(?:\.(\d+))?/.exec(text);
  if (number === null) throw new Error(`No number in “${text}”.`);
  return { value: Number(number[0].replace('−', '-')), digits: number[1]?.length ?? 0 };
}

/** Presses at the middle of something, moves by pixels in steps, lets go. */
export async function dragBy(page: Page, what: Locator, dx: number, dy: number): Promise<void> {
  // To the middle, since bars lie over the page's edges.
  await what.evaluate((element) => element.scrollIntoView({ block: 'center' }));
  const box = await what.boundingBox();
  if (box === null) throw new Error('Nothing to drag is in sight.');
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + dx / 2, y + dy / 2, { steps: 3 });
  await page.mouse.move(x + dx, y + dy, { steps: 3 });
  await page.mouse.up();
}

/** Drops a file of the demo data on the page. */
export async function dropFile(page: Page, path: string, text?: string): Promise<void> {
  const content = text ?? readFileSync(new URL(`../../../demo-data/${path}`, import.meta.url), 'utf8');
  const transfer = await page.evaluateHandle(
    ([body, name]) => {
      const data = new DataTransfer();
      data.items.add(new File([body!], name!, { type: 'text/plain' }));
      return data;
    },
    [content, path.split('/').at(-1)!],
  );
  await page.dispatchEvent('body', 'drop', { dataTransfer: transfer });
}
