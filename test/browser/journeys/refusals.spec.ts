import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import type { Project } from '../../../src/core/document/schema.ts';
import { dropFile, field, openApp, readAt, savedProject, settled, typeInto } from './page.ts';

const demoText = readFileSync(
  new URL('../../../demo-data/reading-room/reading-room.conewright.json', import.meta.url),
  'utf8',
);
const demo = (): Project => JSON.parse(demoText) as Project;
const dropProject = (page: Page, project: object): Promise<void> =>
  dropFile(page, 'changed.conewright.json', JSON.stringify(project));
const sumAt1k = async (page: Page): Promise<number> => (await readAt(page, 'response-sum', 1000)).value;

test('what cannot be computed is said with its place and remedy, and the last good picture stays', async ({ page }) => {
  const faults = await openApp(page);
  const before = await sumAt1k(page);
  const said = page.getByTestId('problems');

  await test.step('a chamber without air', async () => {
    const project = demo();
    project.enclosure.chambers[0]!.bracesM3 = 0.2;
    await dropProject(page, project);
    await expect(said).toContainText(/no air left/);
    await expect(said).toContainText(/larger|out of it/);
    expect(await sumAt1k(page)).toBe(before);
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect(said).toHaveCount(0);
  });
  await test.step('a part that floats, by its node', async () => {
    const project = demo();
    const parts = project.network.parts.map((p) => (p.id === 'R1' ? { ...p, nodes: ['nowhere', 'lost'] } : p));
    await dropProject(page, { ...project, network: { parts } });
    await expect(said).toContainText('Node nowhere at R1 has no path to the return');
    expect(await sumAt1k(page)).toBe(before);
    await page.getByRole('button', { name: /^Undo/ }).click();
  });
  await test.step('a short across the amplifier', async () => {
    const project = demo();
    const parts = [...project.network.parts, { id: 'J9', kind: 'jumper', nodes: ['in', '0'], note: '' }];
    const amplifiers = project.chain.amplifiers.map((a) => ({ ...a, outputResistanceOhm: 0, cableOhm: 0 }));
    await dropProject(page, { ...project, network: { parts }, chain: { ...project.chain, amplifiers } });
    await expect(said).toContainText('Amplifier V1 is shorted at node in, by way of J9.');
    expect(await sumAt1k(page)).toBe(before);
    await page.getByRole('button', { name: /^Undo/ }).click();
    expect(await sumAt1k(page)).toBe(before);
  });
  await test.step('a data sheet that contradicts itself, with both numbers', async () => {
    const project = demo();
    const drivers = project.drivers.map((d) => (d.id === 'woofer' ? { ...d, entered: { ...d.entered, qts: 0.6 } } : d));
    await dropProject(page, { ...project, drivers });
    await expect(page.getByTestId('findings')).toContainText(/0\.6/);
    await expect(page.getByTestId('findings')).toContainText(/0\.36/);
    await page.getByRole('button', { name: /^Undo/ }).click();
  });
  await test.step('a number that is none', async () => {
    const value = field(page, 'C1 capacitance');
    await value.focus();
    await value.press('Enter');
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.type('47 mH');
    await page.keyboard.press('Enter');
    const editor = page.getByRole('textbox', { name: 'C1 capacitance' });
    await expect(editor).toHaveAttribute('aria-invalid', 'true');
    await expect(editor).toHaveValue('47 mH');
    await page.keyboard.press('Escape');
    await expect(value).toHaveText(/39\s*µF/);
  });
  expect(faults).toEqual([]);
});

test('files that cannot be read are refused, and nothing is lost', async ({ page }) => {
  const faults = await openApp(page);
  await typeInto(page, 'C1 capacitance', '47u');
  const before = await savedProject(page);
  const refusal = page.getByTestId('refusal');
  for (const [name, text, words] of [
    ['newer.conewright.json', JSON.stringify({ ...demo(), version: 99 }), /newer|version/i],
    ['cut.conewright.json', demoText.slice(0, 3000), /no well-formed project: line \d+ cannot be read/],
    ['field.conewright.json', demoText.replace('"heightM": 0.94', '"heightM": -0.94'), /height/i],
    ['notes.txt', 'dear diary\nnothing measured today\n', /line|number|column/i],
  ] as const) {
    await dropFile(page, name, text);
    await expect(refusal).toContainText(words);
    expect(await savedProject(page)).toEqual(before);
  }
  expect(faults).toEqual([]);
});

test('work survives the killing of its tab', async ({ context }) => {
  // Another page keeps the browser's window, and with it its storage, alive.
  const second = await context.newPage();
  const first = await context.newPage();
  await openApp(first);
  await typeInto(first, 'R4 resistance', '3.3');
  await settled(first);
  await expect(field(first, 'R4 resistance')).toHaveText(/3\.3/);
  const before = await savedProject(first);
  await expect(first.getByTestId('storage')).toHaveText(/saved/i);
  const session = await context.newCDPSession(first);
  // The tab goes without being asked: no handler of the page runs.
  const crashed = first.waitForEvent('crash');
  session.send('Page.crash').catch(() => undefined);
  await crashed;
  await openApp(second);
  await expect(field(second, 'R4 resistance')).toHaveText(/3\.3/);
  expect(await savedProject(second)).toEqual(before);
});
