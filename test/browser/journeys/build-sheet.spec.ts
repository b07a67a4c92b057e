import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Locator, type Page, test } from '@playwright/test';
import { openApp, savedBy, savedProject, settled, typeInto } from './page.ts';

const row = (page: Page, table: string, name: string | RegExp): Locator =>
  page.getByRole('table', { name: table }).getByRole('row', { name });

/** Net air of the woofer's chamber as the sheet's table says it, litres. */
async function netLitres(page: Page): Promise<number> {
  const text = await row(page, 'Volumes of the chambers', /^woofer chamber/)
    .getByRole('cell')
    .last()
    .textContent();
  return Number.parseFloat(text ?? 'nothing');
}

/** The document as Ctrl+S saves it, which works in the sheet too. */
const savedBySheet = (page: Page) => savedBy(page, () => page.keyboard.press('ControlOrMeta+s'));

/** Opens the sheet and waits until the search for a layout, in its worker, has ended. */
async function openSheet(page: Page): Promise<void> {
  const button = page.getByRole('button', { name: 'Build sheet' });
  await button.focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Build sheet' })).toBeFocused();
  await laidOut(page);
}
async function laidOut(page: Page): Promise<void> {
  await expect(page.locator('.sheet-groups')).not.toHaveAttribute('data-stale');
  await expect(page.getByText(/No layout needs fewer: proved|not proved the least/).first()).toBeVisible();
}

test('a panel is made thicker: cut list, air and boards follow, and undo takes it back', async ({ page }) => {
  const faults = await openApp(page);
  await openSheet(page);
  await expect(page.getByRole('spinbutton', { name: 'Outside width' })).toBeHidden();
  const before = await test.step('the list has the sizes of the demonstration', async () => {
    await expect(row(page, 'Cut list', /left side and right side/)).toContainText('940');
    await expect(row(page, 'Holes', /^woofer/)).toContainText('front');
    await expect(page.getByRole('img', { name: /^board 1 of \d/ })).toBeVisible();
    return netLitres(page);
  });

  await test.step('a thicker front takes its own thickness of air', async () => {
    await typeInto(page, 'Thickness of the front', '18 + 7');
    await expect(row(page, 'Cut list', /\bfront\b(?!.*back)/)).toContainText('25');
    // Inner width times height of the chamber times 7 mm: what the front takes, whatever else stands in it.
    await expect.poll(() => netLitres(page)).toBeLessThan(before);
    const { widthM, panelM, chambers } = (await savedBySheet(page)).enclosure;
    const { volume } = chambers.find(({ name }) => name === 'woofer chamber')!;
    if (volume.kind !== 'geometry') throw new Error('The chamber of the demonstration has no bounds.');
    const takenLitres = 1000 * (widthM - 2 * panelM) * (volume.topM - volume.bottomM) * 0.007;
    // The slot port begins behind the front: of its space so much less lies in the chamber.
    const port = 1000 * 0.2 * (0.024 + 0.018) * 0.007;
    expect(before - (await netLitres(page))).toBeCloseTo(takenLitres - port, 2);
    await laidOut(page);
    await expect(page.getByRole('region', { name: 'Boards of 25 mm' })).toContainText('1 board');
  });

  await test.step('undo by its key, in the sheet', async () => {
    await page.keyboard.press('ControlOrMeta+z');
    await expect.poll(() => netLitres(page)).toBe(before);
    await expect(page.getByRole('region', { name: 'Boards of 25 mm' })).toBeHidden();
    await page.keyboard.press('ControlOrMeta+Shift+z');
    await expect.poll(() => netLitres(page)).toBeLessThan(before);
  });

  await test.step('Escape goes back to the workbench, which has the edit', async () => {
    await page.keyboard.press('Escape');
    await settled(page);
    await expect(page.getByRole('button', { name: 'Build sheet' })).toBeFocused();
    expect((await savedProject(page)).enclosure.wood.frontM).toBeCloseTo(0.025, 12);
  });
  expect(faults).toEqual([]);
});

test('on paper there is the sheet alone, black on white, no row or board torn', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  const faults = await openApp(page);
  await openSheet(page);
  await page.locator('.sheet-cuts > summary').first().click();
  const chrome = [
    page.getByRole('button', { name: 'Print', exact: true }),
    page.getByRole('button', { name: 'Back to the workbench' }),
    page.getByRole('complementary', { name: 'How it is made' }),
    page.getByText(/^Other proportions for/),
  ];
  for (const piece of chrome) await expect(piece).toBeVisible();
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  for (const piece of chrome) await expect(piece).toBeHidden();
  await expect(page.locator('.app')).toBeHidden();
  for (const table of ['Cut list', 'Holes', 'Volumes of the chambers'])
    await expect(page.getByRole('table', { name: table })).toBeVisible();
  await expect(page.getByRole('table', { name: /^Cuts of board 1/ })).toBeVisible();
  await expect(page.getByText(/harms the lungs/)).toBeVisible();
  const styles = await page.evaluate(() => {
    const of = (selector: string) => getComputedStyle(document.querySelector(selector)!);
    return {
      ink: of('.build-paper').color,
      paper: of('.build-paper').backgroundColor,
      row: of('.build-table tbody tr').breakInside,
      board: of('.sheet-drawing').breakInside,
    };
  });
  expect(styles).toEqual({ ink: 'rgb(0, 0, 0)', paper: 'rgb(255, 255, 255)', row: 'avoid', board: 'avoid' });
  for (const format of ['A4', 'Letter']) {
    const pages = (await page.pdf({ format })).toString('latin1').match(/\/Type \/Page\b(?!s)/g) ?? [];
    expect(pages.length, format).toBeGreaterThanOrEqual(2);
    expect(pages.length, format).toBeLessThanOrEqual(6);
  }
  expect(faults).toEqual([]);
});

for (const [width, height] of [
  [1440, 900],
  [390, 844],
] as const) {
  test(`the build sheet at ${width} × ${height} is reachable, readable and without faults of access`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await openApp(page);
    await openSheet(page);
    const folded = page.locator('.build-group:not([open]) > summary');
    while ((await folded.count()) > 0) await folded.first().click();
    await page.locator('.sheet-cuts > summary').first().click();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
    expect(await page.evaluate(tooSmall)).toEqual([]);
  });
}

/** Text below 11 px, and targets below 24 px, on the sheet. */
function tooSmall(): string[] {
  const shown = [...document.querySelectorAll<HTMLElement>('.build *')].filter((element) => element.checkVisibility());
  const typePx = (element: Element): number => {
    const svg = element instanceof SVGElement ? element.ownerSVGElement : null;
    const scale = svg === null ? 1 : svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
    return Number.parseFloat(getComputedStyle(element).fontSize) * scale;
  };
  const hasText = (element: Element) =>
    [...element.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim());
  const text = shown.filter((element) => hasText(element) && typePx(element) < 11);
  const targets = shown
    .filter((element) => element.matches('button, select, input, summary, [role=spinbutton]'))
    .filter((element) => {
      const { width, height } = element.getBoundingClientRect();
      return width < 24 || height < 24;
    });
  return [...text, ...targets].map((element) => `${element.tagName} ${element.textContent?.slice(0, 40)}`);
}
