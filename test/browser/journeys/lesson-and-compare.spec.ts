import { expect, type Locator, type Page, test } from '@playwright/test';
import type { Project } from '../../../src/core/document/schema.ts';
import { dragBy, field, openApp, plot, readAt, savedProject, settled, typeInto } from './page.ts';

/** The written name of a curve in a plot; it is drawn beside the curve, out of reach of assistive means. */
const curveName = (picture: Locator, name: string | RegExp): Locator =>
  picture.locator('text[data-label]').filter({ hasText: name });

const R4_OHM = 2.7;

const ohmOf = (project: Project, id: string): number => {
  const part = project.network.parts.find((candidate) => candidate.id === id);
  if (part?.kind !== 'resistor') throw new Error(`${id} is no resistor.`);
  return part.ohm;
};

test('the port lesson: the large handle moves the tuning, and the impedance follows', async ({ page }) => {
  const faults = await openApp(page);
  await page.getByRole('button', { name: 'New', exact: true }).click();
  const starts = page.getByRole('dialog', { name: 'Begin with' });
  await starts.getByRole('button', { name: /^One box, one port/ }).click();
  await expect(starts).toBeHidden();
  await settled(page);

  const lesson = page.getByRole('region', { name: 'Port tuning' });
  const handle = lesson.getByRole('slider', { name: 'Port length' });
  const tunedTo = async (): Promise<number> =>
    Number.parseFloat((await lesson.getByRole('status').textContent()) ?? 'nothing');
  const ohmAt = async (hz: number): Promise<number> => (await readAt(page, 'load-ohm:V1', hz)).value;

  /** The least impedance within 15 % of the shown tuning, a true dip with a peak on either side, lies at the tuning. */
  const dipLiesAtTuning = async (): Promise<number> => {
    const tuning = await tunedTo();
    const readings: { readonly hz: number; readonly ohm: number }[] = [];
    for (let permille = 850; permille <= 1150; permille += 5) {
      const hz = Number(((tuning * permille) / 1000).toFixed(2));
      readings.push({ hz, ohm: await ohmAt(hz) });
    }
    const ohm = Math.min(...readings.map((reading) => reading.ohm));
    // The bottom is flat over the last digit that the plot reads: its middle is the dip.
    const bottom = readings.filter((reading) => reading.ohm === ohm);
    const dipHz = (bottom[0]!.hz + bottom.at(-1)!.hz) / 2;
    const [below, above] = await peaksAround(dipHz);
    expect(below, `peak below the dip of ${ohm} Ω`).toBeGreaterThan(1.5 * ohm);
    expect(above, `peak above the dip of ${ohm} Ω`).toBeGreaterThan(1.5 * ohm);
    expect(Math.abs(dipHz / tuning - 1), `dip at ${dipHz} Hz, tuned to ${tuning} Hz`).toBeLessThanOrEqual(0.03);
    return tuning;
  };
  const peaksAround = async (dipHz: number): Promise<readonly [number, number]> => {
    const greatest = async (from: number, to: number): Promise<number> => {
      let ohm = 0;
      for (let step = 0; step <= 12; step++)
        ohm = Math.max(ohm, await ohmAt(Number((dipHz * (from + ((to - from) * step) / 12)).toFixed(2))));
      return ohm;
    };
    return [await greatest(0.45, 0.9), await greatest(1.1, 2.4)];
  };

  const opened =
    await test.step('it opens with the port length as the large handle and the dip at the tuning', async () => {
      await expect(handle).toBeVisible();
      await expect(handle).toHaveAttribute('aria-valuetext', /120\s*mm/);
      const box = (await handle.boundingBox())!;
      expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(44);
      return await dipLiesAtTuning();
    });

  await test.step('cone, port, sum, impedance and excursion are in view', async () => {
    const heard = plot(page, /^Level at the listening point/);
    await expect(curveName(heard, /cone$/)).toBeVisible();
    await expect(curveName(heard, /^port$/)).toBeVisible();
    await expect(curveName(heard, /^sum$/)).toBeVisible();
    await expect(page.getByRole('img', { name: /^Impedance that the amplifier sees/ })).toBeInViewport({ ratio: 1 });
    await expect(page.getByRole('img', { name: /^Excursion of each cone/ })).toBeInViewport({ ratio: 1 });
    await expect(page.getByRole('img', { name: /^Level at the listening point/ })).toBeInViewport({ ratio: 1 });
  });

  const byKey = await test.step('arrow keys shorten the port and the tuning rises', async () => {
    await handle.focus();
    for (let press = 0; press < 4; press++) await page.keyboard.press('Shift+ArrowLeft');
    await expect(handle).toHaveAttribute('aria-valuetext', /80\s*mm/);
    await expect.poll(tunedTo).toBeGreaterThan(opened * 1.1);
    await expect(lesson.getByText('a shorter port tunes higher.')).toBeVisible();
    return await dipLiesAtTuning();
  });

  await test.step('the pointer lengthens it, as one step, and the tuning falls', async () => {
    const before = (await savedProject(page)).enclosure.ports[0]!.lengthM;
    await dragBy(page, handle, 150, 0);
    await expect.poll(tunedTo).toBeLessThan(byKey * 0.9);
    expect((await savedProject(page)).enclosure.ports[0]!.lengthM).toBeGreaterThan(before + 0.03);
    await dipLiesAtTuning();
    await page.getByRole('button', { name: /^Undo/ }).click();
    expect((await savedProject(page)).enclosure.ports[0]!.lengthM).toBe(before);
  });
  expect(faults).toEqual([]);
});

test('states kept and compared, a reversed mid found', async ({ page }) => {
  const faults = await openApp(page);
  const heard = plot(page, /^Level at the listening point/);
  const keep = page.getByRole('button', { name: 'Keep this' });
  const openCompare = async (): Promise<Locator> => {
    await page.getByRole('button', { name: /^Compare/ }).click();
    const panel = page.getByRole('dialog', { name: 'What differs from the kept states' });
    await expect(panel).toBeVisible();
    return panel;
  };
  const closePanel = async (panel: Locator): Promise<void> => {
    await page.keyboard.press('Escape');
    await expect(panel).toBeHidden();
  };

  const first = await savedProject(page);
  expect(ohmOf(first, 'R4')).toBe(R4_OHM);

  await test.step('a state is kept, R4 changed: the ghost is named and both values are listed', async () => {
    await keep.click();
    await typeInto(page, 'R4 resistance', '4.7');
    const [kept] = (await savedProject(page)).snapshots;
    await expect(curveName(heard, `kept: ${kept!.name}`)).toBeVisible();
    const now = await readAt(page, 'response-sum', 6000);
    const before = await readAt(page, `response-kept:${kept!.id}`, 6000);
    expect(before.value).toBeGreaterThan(now.value);
    const panel = await openCompare();
    const rows = panel.getByRole('region', { name: `Kept: ${kept!.name}` }).getByRole('row');
    await expect(rows).toHaveCount(2);
    await expect(rows.nth(1).getByRole('rowheader')).toHaveText(/^R4/);
    await expect(rows.nth(1).getByRole('cell')).toHaveText([/^2\.7\s*Ω$/, /^4\.7\s*Ω$/]);
    await closePanel(panel);
  });

  await test.step('a second is kept; a third is refused with the reason and the remedy', async () => {
    await keep.click();
    expect((await savedProject(page)).snapshots).toHaveLength(2);
    await typeInto(page, 'R4 resistance', '8.2');
    const before = await savedProject(page);
    await keep.click();
    await expect(page.getByRole('alert').filter({ hasText: 'Two states are kept already.' })).toContainText(
      'Drop one of them first.',
    );
    expect(await savedProject(page)).toEqual(before);
    for (const { name } of before.snapshots) await expect(curveName(heard, `kept: ${name}`)).toBeVisible();
  });

  await test.step('the first kept state is returned to, the kept ones stay', async () => {
    const panel = await openCompare();
    const kept = panel.getByRole('region', { name: /^Kept: / });
    await expect(kept).toHaveCount(2);
    await kept.first().getByRole('button', { name: 'Go back to it' }).click();
    await expect(panel).toBeHidden();
    await expect(field(page, 'R4 resistance')).toHaveText(/2\.7\s*Ω/);
    const back = await savedProject(page);
    expect(back.network).toEqual(first.network);
    expect(back.enclosure).toEqual(first.enclosure);
    expect(back.snapshots).toHaveLength(2);
    const again = await openCompare();
    await expect(again.getByText('Nothing differs: this is the present state.')).toHaveCount(1);
    await closePanel(again);
  });

  await test.step('the mid reversed through its menu is found at its crossover', async () => {
    const findings = page.getByRole('region', { name: 'Findings' });
    const fights = findings.getByRole('listitem').filter({ hasText: 'work against each other' });
    await expect(findings.getByText('No flaw found at this drive and listening place.')).toBeVisible();
    const mid = page.getByRole('button', { name: /^LS2, .*plus at / });
    await mid.focus();
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'reverse it' }).click();
    await page.keyboard.press('Escape');
    await findings.getByRole('button', { name: /^What to do/ }).click();
    const found = fights.filter({ hasText: 'LS2' });
    await expect(found.first()).toBeVisible();
    await crossesWhereFound(page, found);
    const speaker = (await savedProject(page)).network.parts.find(({ id }) => id === 'LS2')!;
    expect(speaker.nodes).toEqual([...first.network.parts.find(({ id }) => id === 'LS2')!.nodes].reverse());
  });
  expect(faults).toEqual([]);
});

/** Every named frequency is one where the two named drivers are equally loud, and the sum is lower than either. */
async function crossesWhereFound(page: Page, found: Locator): Promise<void> {
  for (const text of await found.allTextContents()) {
    const said = /(LS\d) and (LS\d) work against each other at ([\d.]+)\s*(k?)Hz/.exec(text);
    if (said === null) throw new Error(`No drivers and frequency in “${text}”.`);
    const hz = Number(said[3]) * (said[4] === 'k' ? 1000 : 1);
    const [first, second, sum] = [
      await readAt(page, `response-cone:${said[1]}`, hz),
      await readAt(page, `response-cone:${said[2]}`, hz),
      await readAt(page, 'response-sum', hz),
    ];
    // The shown frequency is rounded to three digits: the slopes' difference over that rounding, and the 1 dB of a crossing.
    expect(Math.abs(first.value - second.value), text).toBeLessThanOrEqual(1.5);
    expect(sum.value, text).toBeLessThan(Math.max(first.value, second.value));
  }
}

test('the circuit as text: copied, changed, refused', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const faults = await openApp(page);
  const before = await savedProject(page);
  await page.getByRole('button', { name: 'circuit as text' }).click();
  const panel = page.getByRole('region', { name: 'Circuit as text' });
  const text = panel.getByRole('textbox', { name: /^One part a line/ });
  const use = panel.getByRole('button', { name: 'use this circuit' });

  const copied = await test.step('it is copied as it stands', async () => {
    await panel.getByRole('button', { name: 'copy the circuit' }).click();
    await expect(panel.getByRole('status')).toHaveText('Circuit copied.');
    const content = await page.evaluate(() => navigator.clipboard.readText());
    expect(content).toBe(await text.inputValue());
    expect(content.trim().split('\n')).toHaveLength(before.network.parts.length);
    return content;
  });

  await test.step('one value is changed and used', async () => {
    await expect(use).toBeDisabled();
    expect(copied).toMatch(/^R4 t2 t3 2\.7\b/m);
    await text.fill(copied.replace(/^R4 t2 t3 2\.7\b/m, 'R4 t2 t3 3.9'));
    await use.click();
    await expect(field(page, 'R4 resistance')).toHaveText(/3\.9\s*Ω/);
    const after = await savedProject(page);
    expect(after.network.parts).toEqual(
      before.network.parts.map((part) => (part.id === 'R4' ? { ...part, ohm: 3.9 } : part)),
    );
  });

  await test.step('a line of nonsense is refused with its number, and what was typed stays', async () => {
    const present = await savedProject(page);
    const lines = (await text.inputValue()).trim().split('\n');
    const nonsense = 'what the woofer said';
    lines.splice(4, 0, nonsense);
    await text.fill(lines.join('\n'));
    await use.click();
    const refusals = panel.getByRole('listitem');
    await expect(refusals).toHaveCount(1);
    await expect(refusals).toContainText(`Line 5 is no part: “${nonsense}”.`);
    await expect(text).toHaveAttribute('aria-invalid', 'true');
    await expect(text).toHaveValue(lines.join('\n'));
    expect(await savedProject(page)).toEqual(present);
  });
  expect(faults).toEqual([]);
});
