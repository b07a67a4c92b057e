import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { dragBy, field, openApp, savedProject, typeInto } from './page.ts';

const button = (page: Page, name: string | RegExp): Locator =>
  page.getByRole('button', typeof name === 'string' ? { name, exact: true } : { name });
const panels = (page: Page): Locator => page.getByRole('region', { name: 'Parts of the cabinet' });
const chip = (page: Page, name: RegExp): Locator =>
  panels(page).locator('.enclosure-chips').getByRole('button', { name });
const readout = (page: Page): Locator => page.getByTestId('map-readout');
/** The excursion bar of the only way, as the number of millimetres that it shows. */
const excursionMm = async (page: Page): Promise<number> => {
  const text = await page
    .locator('.limit-bar', { hasText: /^excursion/ })
    .locator('.limit-bar-amount')
    .textContent();
  return Number.parseFloat((text ?? '').replace(/^\D*/, ''));
};
const tunedHz = async (page: Page): Promise<number> =>
  Number(/tuned to ([\d.]+) Hz/i.exec((await panels(page).textContent()) ?? '')?.[1]);

async function beginEmpty(page: Page) {
  await button(page, 'New').click();
  await page
    .getByRole('dialog', { name: 'Begin with' })
    .getByRole('button', { name: /^Empty project/ })
    .click();
  await expect(page.getByRole('textbox', { name: 'Name of the project' })).toHaveValue('New loudspeaker');
  return savedProject(page);
}

test('from an empty project to a vented box on the map, a slot that fits, a high-pass, a passive radiator', async ({
  page,
}) => {
  test.slow();
  const faults = await openApp(page);
  const empty = await beginEmpty(page);
  /** What the document was before each step, for undoing them one by one. */
  const was = [empty];
  const step = async () => was.push(await savedProject(page));
  await typeInto(page, /^Drive at every amplifier channel/, '5 V');
  await step();

  await test.step('the flat alignment of the map does not fit: said, with a way to it', async () => {
    await chip(page, /^Chamber 1$/).click();
    await panels(page).getByText('Alignments: volume against tuning').click();
    await expect(readout(page)).toContainText('sealed');
    await panels(page).getByText('Published boxes for this driver').click();
    await panels(page).getByRole('button', { name: 'C4', exact: true }).click();
    await expect(panels(page).getByRole('status')).toContainText(/would have to be [\d.]+ L gross/);
    await panels(page)
      .getByRole('button', { name: /^make the cabinet [\d.]+ mm deep$/ })
      .press('Enter');
    await expect(readout(page)).toContainText(/Present box: 14.\d L tuned to 5\d(\.\d)? Hz/);
    const { depthM, ports } = (await savedProject(page)).enclosure;
    expect(depthM).toBeGreaterThan(empty.enclosure.depthM);
    expect(ports).toHaveLength(1);
    await step();
  });

  await test.step('a larger cabinet gives the dot room; dragged, it moves the bars with it, as one step', async () => {
    await typeInto(page, 'Outside height', '420 mm');
    await step();
    // The chamber's top stays on the cabinet's, so that the dot can be drawn towards less volume.
    const dot = page.getByRole('slider', { name: /^Box: left and right/ });
    await dot.evaluate((element) => element.scrollIntoView({ block: 'center' }));
    const at = (await dot.boundingBox())!;
    const bar = (name: RegExp) =>
      page.locator('.limit-bar', { hasText: name }).locator('.limit-bar-amount').textContent();
    const bars = async () => [await bar(/^excursion/), await bar(/^port air/)];
    const seen = [await bars()];
    const middle = { x: at.x + at.width / 2, y: at.y + at.height / 2 };
    await page.mouse.move(middle.x, middle.y);
    await page.mouse.down();
    for (const k of [1, 2, 3]) {
      const before = seen.at(-1)!.join();
      await page.mouse.move(middle.x - 4 * k, middle.y + 26 * k, { steps: 3 });
      await expect.poll(async () => (await bars()).join()).not.toBe(before);
      seen.push(await bars());
    }
    // While the dot is still held: lower tuning, less travel at 20 Hz.
    const travels = seen.map(([travel]) => Number.parseFloat(travel!.replace(/^\D*/, '')));
    expect(travels.at(-1)!).toBeLessThan(travels[0]!);
    expect(seen.at(-1)![1]).not.toBe(seen[0]![1]);
    const lowest = seen.at(-1)!.join();
    await page.mouse.move(middle.x - 4, middle.y + 8, { steps: 3 });
    await expect.poll(async () => (await bars()).join()).not.toBe(lowest);
    await page.mouse.up();
    await step();
  });

  await test.step('by keyboard the same dot goes one step at a time', async () => {
    const dot = page.getByRole('slider', { name: /^Box: left and right/ });
    const before = await tunedHz(page);
    await dot.focus();
    await page.keyboard.press('ArrowUp');
    await expect.poll(() => tunedHz(page)).toBeGreaterThan(before);
    await step();
  });
  const tuned = await tunedHz(page);

  await test.step('its port becomes a slot that fits', async () => {
    await chip(page, /^port/).click();
    await panels(page)
      .getByRole('combobox', { name: /^Shape of port/ })
      .selectOption('slot');
    await step();
    await typeInto(page, /^width of port/, '100 mm');
    await step();
    await typeInto(page, /^height of port/, '15 mm');
    await step();
    await typeInto(page, /^Wished tuning of port/, `${Math.round(tuned)} Hz`);
    await panels(page).getByRole('button', { name: 'use that length' }).click();
    await expect.poll(() => tunedHz(page)).toBeCloseTo(Math.round(tuned), 0);
    const facts = panels(page).getByRole('list', { name: /^What port/ });
    await expect(facts).toContainText(/Fits( tightly)?: [\d.]+ mm free behind its inner end/);
    await expect(facts).toContainText(/Cut 5 mm too short it tunes to [\d.]+ Hz/);
    await step();
  });

  await test.step('axe finds nothing in the panels', async () => {
    for (const name of [/^Chamber 1$/, /^full-range$/, /^port/]) {
      await chip(page, name).click();
      const folded = panels(page).locator('details:not([open]) > summary');
      // The map, when it has come, has a fold of its own.
      await expect(async () => {
        if ((await folded.count()) > 0) await folded.first().click();
        await expect(folded).toHaveCount(0, { timeout: 500 });
      }).toPass();
      const { violations } = await new AxeBuilder({ page }).include('.enclosure-panels').analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    }
  });

  await test.step('a high-pass at 80 Hz lowers the excursion', async () => {
    const before = await excursionMm(page);
    await button(page, /^V1, .*(from|plus at) /).press('Enter');
    const sheet = page.getByRole('dialog', { name: /^V1, / });
    await sheet.getByRole('combobox', { name: 'Active high-pass before V1' }).selectOption('butterworth 4');
    await expect(field(page, 'Corner of the active high-pass before V1')).toHaveText(/80\s*Hz/);
    await expect.poll(() => excursionMm(page)).toBeLessThan(0.7 * before);
    await page.keyboard.press('Escape');
    await step();
  });

  await test.step('a passive radiator takes the port’s place at the same tuning', async () => {
    await chip(page, /^full-range$/).click();
    await panels(page).getByText('Make it another kind of box').click();
    await panels(page).getByRole('button', { name: 'Make full-range passive radiator' }).click();
    await chip(page, /^Passive radiator 1$/).click();
    await expect(panels(page)).toContainText(/Tuned to [\d.]+ Hz.*notch at [\d.]+ Hz/);
    expect((await tunedHz(page)) / Math.round(tuned)).toBeCloseTo(1, 1);
    const { ports, passiveRadiators } = (await savedProject(page)).enclosure;
    expect([ports.length, passiveRadiators.length]).toEqual([0, 1]);
    await expect(page.locator('.limit-bar', { hasText: /^radiator/ })).toBeVisible();
    await step();
  });

  await test.step('undo takes each step back', async () => {
    for (let k = was.length - 2; k >= 0; k--) {
      await button(page, /^Undo/).click();
      expect(await savedProject(page), `step ${k + 1}`).toEqual(was[k]);
    }
  });
  expect(faults).toEqual([]);
});

test('band-pass, isobaric pair and open baffle in one step each, and back', async ({ page }) => {
  const faults = await openApp(page);
  const empty = await beginEmpty(page);
  for (const [name, made] of [
    ['band-pass', /Front chamber/],
    ['isobaric', /Coupling chamber/],
    ['open baffle', /^full-range$/],
  ] as const) {
    await chip(page, /^full-range/).click();
    await panels(page).getByText('Make it another kind of box').click();
    await panels(page)
      .getByRole('button', { name: `Make full-range ${name}` })
      .click();
    await expect(chip(page, made)).toBeVisible();
    await expect(page.getByTestId('problems')).toBeHidden();
    await button(page, /^Undo/).click();
    expect(await savedProject(page), name).toEqual(empty);
    await chip(page, /^full-range/).click();
  }
  expect(faults).toEqual([]);
});

test('on a phone the map is moved by a finger’s drag', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  const faults = await openApp(page);
  await chip(page, /^woofer chamber$/).click();
  await panels(page).getByText('Alignments: volume against tuning').click();
  const dot = page.getByRole('slider', { name: /^Box: left and right/ });
  const before = await tunedHz(page);
  await dragBy(page, dot, -20, -30);
  await expect.poll(() => tunedHz(page)).toBeGreaterThan(before);
  const overflow = () =>
    page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(await overflow()).toBe(0);
  expect(faults).toEqual([]);
});
