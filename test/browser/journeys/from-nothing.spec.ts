import { expect, type Locator, type Page, test } from '@playwright/test';
import type { Part } from '../../../src/core/circuit/part.ts';
import type { Project } from '../../../src/core/document/schema.ts';
import { field, openApp, readAt, savedProject, settled, typeInto } from './page.ts';

// Dry air of 20 °C at sea level, to three digits: a data sheet's Vas is turned into compliance with it.
const AIR = { densityKgPerM3: 1.2, soundSpeedMPerS: 343 };
const NAME = '165 mm woofer of our own';
/** As a data sheet gives them, in its units. */
const SHEET = { reOhm: 5.6, fsHz: 40, qms: 5, qes: 0.4, vasL: 28, sdCm2: 137 };

const begin = async (page: Page, start: RegExp): Promise<void> => {
  await page.getByRole('button', { name: 'New', exact: true }).click();
  const starts = page.getByRole('dialog', { name: 'Begin with' });
  await starts.getByRole('button', { name: start }).click();
  await expect(starts).toBeHidden();
  await settled(page);
};
/** A number of the data sheet, by its symbol. */
const entry = (symbol: string): RegExp => new RegExp(`^${symbol}, .* of ${NAME}$`);
const undo = (page: Page): Promise<void> => page.getByRole('button', { name: /^Undo/ }).click();
const partsOf = (project: Project, kind: Part['kind']): Part[] =>
  project.network.parts.filter((part) => part.kind === kind);

/** Empties a value where it stands. */
async function clear(page: Page, name: string | RegExp): Promise<void> {
  await field(page, name).press('Enter');
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.press('Delete');
  await page.keyboard.press('Enter');
}

/** Puts a textbook section before a speaker, with one number of its own. */
async function putSection(page: Page, speakerId: string, kind: 'low-pass' | 'high-pass', corner: string) {
  const opener = page.getByRole('button', { name: 'textbook sections' });
  await opener.click();
  const panel = page.getByRole('region', { name: 'Textbook sections' });
  await panel.getByLabel('before').selectOption(speakerId);
  await panel.getByLabel('section', { exact: true }).selectOption(kind);
  await panel.getByLabel('family').selectOption('linkwitz-riley');
  await panel.getByLabel('slope').selectOption('2');
  await typeInto(page, `corner of the ${kind}`, corner);
  await expect(panel).toContainText('Source: S. H. Linkwitz, JAES 24 (1), 1976');
  await expect(panel).toContainText('The load is a pure resistance');
  await panel.getByRole('checkbox', { name: /^nearest values/ }).uncheck();
  await panel.getByRole('button', { name: /^put it before/ }).click();
  // It stays for the next section, and says what went in.
  await expect(panel.getByRole('status')).toContainText(/ put before /);
  await opener.click();
  await expect(panel).toBeHidden();
}

test('from an empty project to a two-way, and a way taken out again', async ({ page }) => {
  const faults = await openApp(page);
  const demo = await savedProject(page);

  await test.step('a new project begins with one invented driver in a sealed box, and one undo away from the demo', async () => {
    await begin(page, /^Empty project/);
    expect((await savedProject(page)).name).toBe('New loudspeaker');
    await undo(page);
    expect(await savedProject(page)).toEqual(demo);
    await page.getByRole('button', { name: 'Redo' }).click();
    const project = await savedProject(page);
    expect(project.drivers).toHaveLength(1);
    expect(project.drivers[0]!.name).toContain('invented');
  });

  const sheet = page.getByRole('region', { name: /^Data sheet of/ });
  await test.step('the driver gets a name and the numbers of a data sheet, in its own units', async () => {
    await page.getByRole('button', { name: /^Edit the data sheet of/ }).click();
    const name = sheet.getByRole('textbox', { name: 'Name of the driver' });
    await name.fill(NAME);
    await name.press('Enter');
    await sheet.getByLabel(`Role of ${NAME}`).selectOption('woofer');
    await typeInto(page, entry('Re'), `${SHEET.reOhm}`);
    await typeInto(page, entry('Le'), '0.6 mH');
    await typeInto(page, entry('fs'), `${SHEET.fsHz} Hz`);
    await typeInto(page, entry('Qms'), `${SHEET.qms}`);
    await typeInto(page, entry('Qes'), `${SHEET.qes}`);
    await typeInto(page, entry('Vas'), `${SHEET.vasL} L`);
    await typeInto(page, entry('Sd'), `${SHEET.sdCm2} cm^2`);
    await typeInto(page, entry('Xmax'), '5 mm');
    await typeInto(page, `outer diameter of ${NAME}`, '6 1/2 in');
    await typeInto(page, `Displacement of ${NAME}`, '0.9 L');
    const { entered, outerDiameterM } = (await savedProject(page)).drivers[0]!;
    expect(entered).toMatchObject({ reOhm: 5.6, fsHz: 40, qms: 5, qes: 0.4, xmaxM: 0.005 });
    expect(entered.leH).toBeCloseTo(0.6e-3, 12);
    expect(entered.vasM3).toBeCloseTo(0.028, 12);
    expect(entered.sdM2).toBeCloseTo(0.0137, 12);
    expect(outerDiameterM).toBeCloseTo(0.1651, 12);
  });

  await test.step('Qts, sensitivity, moving mass and Qtc follow as the textbook has them', async () => {
    const qts = (SHEET.qms * SHEET.qes) / (SHEET.qms + SHEET.qes);
    // R. H. Small, JAES 20 (5), 1972: reference efficiency; 112.1 dB is 1 W of sound in half space at 1 m.
    const efficiency =
      (4 * Math.PI ** 2 * SHEET.fsHz ** 3 * SHEET.vasL * 1e-3) / (AIR.soundSpeedMPerS ** 3 * SHEET.qes);
    const levelDb = 112.1 + 10 * Math.log10((efficiency * 2.83 ** 2) / SHEET.reOhm);
    const card = page.getByRole('article', { name: new RegExp(NAME) });
    await expect(card).toContainText(new RegExp(`fs 40(\\.0)?\\sHz · Qts ${qts.toFixed(2)} `));
    await expect(card).toContainText(`${levelDb.toFixed(0)} dB`);
    const mass = (await field(page, entry('Mms')).textContent()) ?? '';
    expect(mass).toMatch(/\sg derived$/);
    expect(Math.abs(Number.parseFloat(mass) / massG() - 1), mass).toBeLessThan(0.01);
    // R. H. Small, JAES 20 (10), 1972: Qtc / Qts = √(1 + Vas / Vb).
    const { enclosure } = await savedProject(page);
    const inside = [enclosure.widthM, enclosure.heightM, enclosure.depthM].map((m) => m - 2 * enclosure.panelM);
    const boxL = inside.reduce((product, m) => product * m, 1000) - 0.9;
    const qtc = qts * Math.sqrt(1 + SHEET.vasL / boxL);
    await expect(page.getByTestId('key-qtc:chamber-1')).toHaveText(qtc.toFixed(2));
  });

  await test.step('a mass that contradicts the others is said with both numbers, in the sheet and in the strip', async () => {
    await typeInto(page, entry('Mms'), '22 g');
    const other = ((SHEET.vasL * massG()) / 22).toPrecision(3);
    const said = new RegExp(`Vas = 28\\sL, but Sd, fs, Mms give ${other.slice(0, -1)}\\d\\sL`);
    await expect(sheet.getByRole('listitem').filter({ hasText: said })).toBeVisible();
    await expect(page.getByRole('region', { name: 'Findings' }).getByText(said)).toBeVisible();
    await clear(page, entry('Mms'));
    await expect(sheet.getByText(said)).toBeHidden();
    await expect(page.getByRole('region', { name: 'Findings' }).getByText(said)).toBeHidden();
  });

  await test.step('a number too few is said with what would complete it; the last good picture stays', async () => {
    const before = await readAt(page, 'response-sum', 1000);
    await clear(page, entry('Vas'));
    const said = page.getByRole('alert').filter({ hasText: 'the last good picture stays' });
    await expect(said).toContainText(/is not fully known: .*Enter one more of these: Mms, Bl, Cms, Vas, Rms\./);
    expect(await readAt(page, 'response-sum', 1000)).toEqual(before);
    await typeInto(page, entry('Vas'), '1 ft^3');
    await expect(said).toBeHidden();
    expect((await savedProject(page)).drivers[0]!.entered.vasM3).toBeCloseTo(0.3048 ** 3, 9);
    await typeInto(page, entry('Vas'), '28 L');
  });

  const oneWay =
    await test.step('a low-pass is put before the woofer: the textbook values as ordinary parts', async () => {
      await putSection(page, 'LS1', 'low-pass', '2 kHz');
      const project = await savedProject(page);
      const omega = 2 * Math.PI * 2000;
      // S. H. Linkwitz, JAES 24 (1), 1976: Q = 1/2, so that L = 2R/ω and C = 1/(2Rω).
      expect(partsOf(project, 'inductor')).toMatchObject([{ henry: expect.closeTo((2 * SHEET.reOhm) / omega, 9) }]);
      expect(partsOf(project, 'capacitor')).toMatchObject([
        { farad: expect.closeTo(1 / (2 * SHEET.reOhm * omega), 11) },
      ]);
      expect(ends(project, 'L1')).toEqual(['in', ends(project, 'LS1')[0]]);
      expect(ends(project, 'C1')).toEqual(ends(project, 'LS1'));
      await expect(page.getByRole('article')).toHaveCount(1);
      return project;
    });

  await test.step('a tweeter is added with its own section; both ways are heard', async () => {
    await page.getByRole('button', { name: 'add a way' }).click();
    await page.getByRole('region', { name: 'Add a way' }).getByRole('button', { name: 'tweeter', exact: true }).click();
    await expect(page.getByRole('article')).toHaveCount(2);
    await putSection(page, 'LS2', 'high-pass', '2 kHz');
    const project = await savedProject(page);
    const [speaker] = project.network.parts.filter((part) => part.id === 'LS2');
    const series = partsOf(project, 'capacitor').find((part) => part.nodes[0] === 'in')!;
    expect(series.nodes[1]).toBe(speaker!.nodes[0]);
    // The invented tweeter has a coil of 4.8 Ω.
    expect(series).toMatchObject({ farad: expect.closeTo(1 / (2 * 4.8 * 2 * Math.PI * 2000), 11) });
    const below = [await readAt(page, 'response-cone:LS1', 300), await readAt(page, 'response-cone:LS2', 300)] as const;
    const above = [await readAt(page, 'response-cone:LS1', 9e3), await readAt(page, 'response-cone:LS2', 9e3)] as const;
    expect(below[0].value).toBeGreaterThan(below[1].value + 10);
    expect(above[1].value).toBeGreaterThan(above[0].value + 10);
  });

  await test.step('the tweeter is taken out again, with its place and all that fed it', async () => {
    await page.getByRole('button', { name: /^Edit the data sheet of 28 mm dome tweeter/ }).click();
    await sheet.getByRole('button', { name: 'remove this way' }).click();
    await expect(page.getByRole('article')).toHaveCount(1);
    const { network, drivers, enclosure } = await savedProject(page);
    expect({ network, drivers, enclosure }).toEqual({
      network: oneWay.network,
      drivers: oneWay.drivers,
      // The woofer made room for the tweeter above it and stays there: 320 − 10 − 100 − 10 − 165/2 = 117.5 mm, to a millimetre.
      enclosure: { ...oneWay.enclosure, mounts: [{ ...oneWay.enclosure.mounts[0]!, yM: 0.117 }] },
    });
  });
  expect(faults).toEqual([]);
});

/** Moving mass that fs, Vas and Sd give: 1 / (ω² Cms), Cms = Vas / (ρ c² Sd²). */
function massG(): number {
  const cms = (SHEET.vasL * 1e-3) / (AIR.densityKgPerM3 * AIR.soundSpeedMPerS ** 2 * (SHEET.sdCm2 * 1e-4) ** 2);
  return 1000 / ((2 * Math.PI * SHEET.fsHz) ** 2 * cms);
}

const ends = (project: Project, id: string): readonly string[] => {
  const found = project.network.parts.find((part) => part.id === id);
  if (found === undefined) throw new Error(`There is no ${id}.`);
  return found.nodes;
};

test('what cannot be built or solved is said where it was done, and the last good picture stays', async ({ page }) => {
  const faults = await openApp(page);
  await begin(page, /^Empty project/);
  const before = await savedProject(page);
  const sum = async (): Promise<number> => (await readAt(page, 'response-sum', 1000)).value;
  const shown = await sum();
  const problems = page.getByRole('alert').filter({ hasText: 'This cannot be computed; the last good picture stays' });
  const sameAsBefore = async (): Promise<void> => {
    await expect(problems).toBeHidden();
    expect(await savedProject(page)).toEqual(before);
    expect(await sum()).toBe(shown);
  };
  /** Refused: sentence beside the field, nothing changed, what was typed stays until Escape. */
  const isRefused = async (name: string, typed: string, said: RegExp): Promise<void> => {
    await typeInto(page, name, typed);
    const editor = page.getByRole('textbox', { name });
    await expect(editor).toHaveAttribute('aria-invalid', 'true');
    await expect(editor).toHaveValue(typed);
    await expect(page.getByRole('alert').filter({ hasText: said }).first()).toBeVisible();
    await page.keyboard.press('Escape');
    await expect(editor).toBeHidden();
    await sameAsBefore();
  };

  await page
    .getByRole('region', { name: 'Parts of the cabinet' })
    .getByRole('button', { name: 'Chamber 1', exact: true })
    .click();
  await test.step('numbers that no box can have', async () => {
    await isRefused('Volume of braces in Chamber 1', '-1 L', /volume of braces.*Chamber 1.*−1(\.0)?\sL.*at least 0\sL/);
    await isRefused('Outside width', '30 mm', /Two panels of 18\smm leave no room inside a cabinet of 30\smm/);
    await isRefused('Outside width', '1/0', /“1\/0” does not give a number.*division by zero/);
    await isRefused('Outside width', '200 Hz', /“200 Hz” is a frequency, but this field takes a length/);
  });

  await page.getByRole('button', { name: 'circuit as text' }).click();
  const panel = page.getByRole('region', { name: 'Circuit as text' });
  const text = panel.getByRole('textbox', { name: /^One part a line/ });
  const circuit = await text.inputValue();
  const use = async (content: string): Promise<void> => {
    await text.fill(content);
    await panel.getByRole('button', { name: 'use this circuit' }).click();
  };
  const isRefusedAsText = async (content: string, said: RegExp): Promise<void> => {
    await use(content);
    await expect(panel.getByRole('listitem').filter({ hasText: said })).toBeVisible();
    await expect(text).toHaveValue(content);
    await sameAsBefore();
    await panel.getByRole('button', { name: 'back to the present one' }).click();
    await expect(text).toHaveValue(circuit);
  };

  await test.step('a floating part, by its node and name; undone by one step', async () => {
    await use(`${circuit}\nR9 lost alone 10`);
    await expect(problems).toContainText(/Node (lost|alone) at R9 has no path to the return.*take R9 out/);
    expect(await sum()).toBe(shown);
    await undo(page);
    await sameAsBefore();
  });
  await test.step('a short across the amplifier, as a link or as a resistor of 0 Ω', async () => {
    await isRefusedAsText(`${circuit}\nJ1 in 0`, /short the amplifier V1.*can be damaged/);
    await isRefusedAsText(`${circuit}\nR9 in 0 0`, /short the amplifier V1.*can be damaged/);
  });
  await test.step('circuits that have no solution or no source', async () => {
    await isRefusedAsText(`${circuit}\nR9 in in 10`, /Both ends of R9.*node “in”/);
    await isRefusedAsText(`${circuit}\nV2 in 0`, /join the outputs of the amplifiers V1 and V2/);
    await isRefusedAsText(
      'R9 a b 10\nLS1 b 0 driver-1',
      /The circuit has no amplifier\. Add one between the input node/,
    );
    await isRefusedAsText('V1 in 0\nR9 in 0 10', /The circuit has no speaker.*Add at least one/);
  });
  await test.step('the circuit goes on as it was', async () => {
    await typeInto(page, 'Drive', '5 V');
    await expect.poll(sum).not.toBe(shown);
    expect((await savedProject(page)).chain.driveV).toBe(5);
  });
  expect(faults).toEqual([]);
});

test('the parts list is copied as it is bought', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const faults = await openApp(page);
  const project = await savedProject(page);
  await page.getByRole('button', { name: 'circuit as text' }).click();
  const panel: Locator = page.getByRole('region', { name: 'Circuit as text' });
  await panel.getByRole('button', { name: 'copy the parts list' }).click();
  await expect(panel.getByRole('status')).toHaveText('Parts list copied.');
  const list = await page.evaluate(() => navigator.clipboard.readText());
  const rows = list
    .trim()
    .split('\n')
    .map((line) => line.split('\t'));
  const bought = project.network.parts.filter((part) => part.kind !== 'amplifier').map((part) => part.id);
  expect(
    rows
      .slice(1)
      .map(([name]) => name)
      .sort(),
  ).toEqual(bought.sort());
  expect(rows.find(([name]) => name === 'L1')?.slice(1, 4)).toEqual([
    'coil',
    expect.stringMatching(/^3\.9\smH$/),
    expect.stringMatching(/^DCR 0\.18\sΩ, core tan δ 0\.01$/),
  ]);
  expect(faults).toEqual([]);
});
