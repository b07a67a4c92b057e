import { expect, type Locator, type Page, test } from '@playwright/test';
import type { Project } from '../../../src/core/document/schema.ts';
import { field, openApp, readAt, savedProject, typeInto } from './page.ts';

const NAME = 'Shelf driver (invented)';
const sumAt = async (page: Page, hz: number): Promise<number> => (await readAt(page, 'response-sum', hz)).value;
const button = (page: Page, name: string | RegExp): Locator =>
  page.getByRole('button', typeof name === 'string' ? { name, exact: true } : { name });
const problems = (page: Page): Locator => page.getByTestId('problems');
const sheet = (page: Page): Locator => page.getByRole('region', { name: /^Data sheet of/ });
const speakers = (project: Project): string[] =>
  project.network.parts.filter((part) => part.kind === 'speaker').map((part) => part.id);

/** A number of the data sheet, by its symbol. */
const entry = (symbol: string): RegExp => new RegExp(`^${symbol}, .*of ${NAME.replace(/[()]/g, '\\$&')}$`);

/** New, from the list of beginnings. */
async function beginEmpty(page: Page): Promise<Project> {
  await button(page, 'New').click();
  await page
    .getByRole('dialog', { name: 'Begin with' })
    .getByRole('button', { name: /^Empty project/ })
    .click();
  await expect(page.getByRole('textbox', { name: 'Name of the project' })).toHaveValue('New loudspeaker');
  return savedProject(page);
}

/** Takes back one step after another until nothing is left to take back. */
async function undoAll(page: Page): Promise<number> {
  const undo = button(page, /^Undo/);
  let steps = 0;
  for (; await undo.isEnabled(); steps++) {
    if (steps > 60) throw new Error('Undoing does not come to an end.');
    await undo.click();
  }
  return steps;
}

/** Opens, by keyboard, what can be done with a part. */
async function openPart(page: Page, id: string): Promise<Locator> {
  // Drivers on the cabinet are called by their part too; only those of the circuit say where they are joined.
  await button(page, new RegExp(`^${id}, .*(from|plus at) `)).press('Enter');
  const dialog = page.getByRole('dialog', { name: new RegExp(`^${id}, `) });
  await expect(dialog).toBeVisible();
  return dialog;
}

test('a newcomer enters a driver from its data sheet, and is told where its numbers disagree', async ({ page }) => {
  const faults = await openApp(page);
  const first = await savedProject(page);
  const empty = await beginEmpty(page);

  await test.step('the empty project has one driver, one amplifier, no part between them', async () => {
    expect(empty.network.parts.map((part) => part.kind)).toEqual(['amplifier', 'speaker']);
    expect(empty.enclosure.ports).toHaveLength(0);
    expect(empty.curves).toHaveLength(0);
  });
  const before = await sumAt(page, 1000);

  await test.step('its numbers are typed from a data sheet', async () => {
    await button(page, /^Edit the data sheet of/).click();
    await sheet(page).getByRole('textbox', { name: 'Name of the driver' }).fill(NAME);
    await page.keyboard.press('Enter');
    for (const [symbol, text] of [
      ['Re', '5.6'],
      ['Le', '0.3 mH'],
      ['fs', '55 Hz'],
      ['Qms', '4'],
      ['Qes', '0.5'],
      ['Vas', '12 L'],
      ['Sd', '85 cm²'],
      ['Xmax', '4 mm'],
    ] as const) {
      await typeInto(page, entry(symbol), text);
    }
    await expect(field(page, entry('Xmax'))).toHaveText(/4(\.0+)?\s*mm/);
    const { name, entered } = (await savedProject(page)).drivers[0]!;
    expect(name).toBe(NAME);
    const wanted = { reOhm: 5.6, leH: 3e-4, fsHz: 55, qms: 4, qes: 0.5, vasM3: 0.012, sdM2: 0.0085, xmaxM: 0.004 };
    for (const [key, value] of Object.entries(wanted)) {
      expect(entered[key as keyof typeof wanted], key).toBeCloseTo(value, 12);
    }
    expect(await sumAt(page, 1000)).not.toBe(before);
  });
  await test.step('Qts follows from Qms and Qes: 4 · 0.5 / 4.5', async () => {
    await expect(field(page, entry('Qts'))).toHaveText(/0\.444.*derived/);
    await expect(sheet(page)).not.toContainText('the latter is used');
  });
  const agreed = await sumAt(page, 60);

  await test.step('a Qts that contradicts them is said with both numbers, and does not move the picture', async () => {
    await typeInto(page, entry('Qts'), '0.6');
    const said = new RegExp(`Driver ${NAME.replace(/[()]/g, '\\$&')} has Qts = 0\\.6\\d*, but .*give 0\\.444`);
    await expect(sheet(page)).toContainText(said);
    await expect(page.getByTestId('findings')).toContainText(/Qts = 0\.6\d*, but .*give 0\.444/);
    expect(await sumAt(page, 60)).toBe(agreed);
  });
  await test.step('emptied, the field derives again and the contradiction is gone', async () => {
    await typeInto(page, entry('Qts'), ' ');
    await expect(field(page, entry('Qts'))).toHaveText(/0\.444.*derived/);
    await expect(sheet(page)).not.toContainText('the latter is used');
  });
  await test.step('all of it undone is the first document', async () => {
    expect(await undoAll(page)).toBe(12);
    expect(await savedProject(page)).toEqual(first);
  });
  expect(faults).toEqual([]);
});

test('a newcomer adds a way, gives it a textbook section, and takes it away again', async ({ page }) => {
  const faults = await openApp(page);
  const first = await savedProject(page);
  const empty = await beginEmpty(page);
  const alone = await sumAt(page, 2000);
  const added = await test.step('a tweeter comes straight on the amplifier', async () => {
    await button(page, 'add a way').click();
    await page.getByRole('region', { name: 'Add a way' }).getByRole('button', { name: 'tweeter', exact: true }).click();
    await expect.poll(async () => speakers(await savedProject(page)).length).toBe(2);
    const now = await savedProject(page);
    expect(now.drivers.map((driver) => driver.role).sort()).toEqual(['full-range', 'tweeter']);
    expect(await sumAt(page, 2000)).not.toBe(alone);
    return now;
  });
  const tweeter = speakers(added).find((id) => !speakers(empty).includes(id))!;
  const bare = await sumAt(page, 500);

  await test.step('a textbook high-pass before it moves the sum far below its corner', async () => {
    await button(page, 'textbook sections').click();
    const panel = page.getByRole('region', { name: 'Textbook sections' });
    await panel.getByLabel('before').selectOption(tweeter);
    await panel.getByLabel('section', { exact: true }).selectOption({ label: 'high-pass' });
    await panel.getByLabel('family').selectOption({ label: 'Butterworth' });
    await panel.getByLabel('slope').selectOption({ label: 'order 2' });
    await expect(panel).toContainText('Source:');
    await panel.getByRole('button', { name: /^put it before/ }).click();
    await expect(panel.getByRole('status')).toContainText(/ put before tweeter/);
    await button(page, 'textbook sections').click();
    await expect(panel).toHaveCount(0);
    const { parts } = (await savedProject(page)).network;
    expect(parts.map((part) => part.kind).sort()).toEqual(['amplifier', 'capacitor', 'inductor', 'speaker', 'speaker']);
    expect(await sumAt(page, 500)).not.toBe(bare);
  });
  await test.step('the way is removed with its section, and the first way plays as before', async () => {
    const { drivers } = await savedProject(page);
    const name = drivers.find((driver) => driver.role === 'tweeter')!.name;
    await button(page, `Edit the data sheet of ${name}`).click();
    await page
      .getByRole('region', { name: `Data sheet of ${name}` })
      .getByRole('button', { name: 'remove this way' })
      .click();
    await expect.poll(async () => speakers(await savedProject(page))).toEqual(speakers(empty));
    const now = await savedProject(page);
    expect(now.network.parts.map((part) => part.id).sort()).toEqual(['LS1', 'V1']);
    expect(await sumAt(page, 2000)).toBe(alone);
  });
  await test.step('the last way stays', async () => {
    const open = page.getByRole('region', { name: /^Data sheet of 120 mm/ });
    await button(page, /^Edit the data sheet of 120 mm/).click();
    await open.getByRole('button', { name: 'remove this way' }).click();
    await expect(open.getByRole('alert')).toContainText(/LS1 is the only speaker/);
  });
  await test.step('all of it undone is the first document', async () => {
    expect(await undoAll(page)).toBe(4);
    expect(await savedProject(page)).toEqual(first);
  });
  expect(faults).toEqual([]);
});

test("a newcomer's slips are said with their place, and the last good picture stays", async ({ page }) => {
  const faults = await openApp(page);
  const first = await savedProject(page);
  await beginEmpty(page);
  const good = await sumAt(page, 1000);

  await test.step('a negative volume is refused where it is typed', async () => {
    await page
      .getByRole('region', { name: 'Parts of the cabinet' })
      .getByRole('button', { name: 'Chamber 1', exact: true })
      .click();
    await page.getByLabel('Volume of Chamber 1').selectOption({ label: 'as stated' });
    const stated = await savedProject(page);
    const same = await sumAt(page, 1000);
    await typeInto(page, 'Gross volume of Chamber 1', '-5 L');
    const editor = page.getByRole('textbox', { name: 'Gross volume of Chamber 1' });
    await expect(editor).toHaveAttribute('aria-invalid', 'true');
    await expect(editor).toHaveAccessibleDescription(/gross volume of .*−5(\.0+)?\sL; it must be above 0/);
    expect(await sumAt(page, 1000)).toBe(same);
    await page.keyboard.press('Escape');
    expect(await savedProject(page)).toEqual(stated);
  });
  await test.step('braces that leave less than no air are said with their chamber', async () => {
    const same = await sumAt(page, 1000);
    await typeInto(page, 'Volume of braces in Chamber 1', '20 L');
    await expect(problems(page)).toContainText(/Chamber .*has no air left: \d.* L less 20/);
    await expect(problems(page)).toContainText('the last good picture stays');
    await expect(problems(page).getByRole('button', { name: 'show Chamber 1' })).toBeVisible();
    expect(await sumAt(page, 1000)).toBe(same);
    await button(page, /^Undo/).click();
    await button(page, /^Undo/).click();
    await expect(problems(page)).toHaveCount(0);
    expect(await sumAt(page, 1000)).toBe(good);
  });
  await test.step('parts whose ends are moved off the circuit float, and are said by name', async () => {
    await (await openPart(page, 'LS1')).getByRole('button', { name: 'Insert in series before: coil' }).click();
    await (await openPart(page, 'LS1')).getByRole('button', { name: 'Insert in series before: resistor' }).click();
    const { parts } = (await savedProject(page)).network;
    const coil = parts.find((part) => part.kind === 'inductor')!;
    const resistor = parts.find((part) => part.kind === 'resistor')!;
    expect(coil.nodes[0]).toBe('in');
    expect(coil.nodes[1]).toBe(resistor.nodes[0]);
    const speaker = await openPart(page, 'LS1');
    await speaker.getByLabel('LS1: plus end at node').selectOption('in');
    await speaker.getByRole('button', { name: 'Close' }).click();
    await expect(problems(page)).toHaveCount(0);
    const last = await sumAt(page, 1000);
    const loose = await openPart(page, coil.id);
    await loose.getByLabel(`${coil.id}: first end at node`).selectOption(resistor.nodes[1]);
    await expect(problems(page)).toContainText(
      new RegExp(`Node .* at (${coil.id}|${resistor.id}) has no path to the return`),
    );
    expect(await sumAt(page, 1000)).toBe(last);
    await page.keyboard.press('Escape');
    for (let k = 0; k < 4; k++) await button(page, /^Undo/).click();
    await expect(problems(page)).toHaveCount(0);
    expect(await sumAt(page, 1000)).toBe(good);
  });
  await test.step('a jumper across the amplifier is said by name', async () => {
    const before = await savedProject(page);
    const amplifier = await openPart(page, 'V1');
    await amplifier.getByRole('button', { name: 'Add across: link' }).click();
    await expect(amplifier.getByRole('alert')).toContainText(
      /would short the amplifier V1: both its terminals would be joined/,
    );
    await expect(amplifier.getByRole('alert')).toContainText(/can be damaged/);
    expect(await savedProject(page)).toEqual(before);
    expect(await sumAt(page, 1000)).toBe(good);
    await page.keyboard.press('Escape');
  });
  await test.step('all of it undone is the first document', async () => {
    expect(await undoAll(page)).toBe(1);
    expect(await savedProject(page)).toEqual(first);
  });
  expect(faults).toEqual([]);
});
