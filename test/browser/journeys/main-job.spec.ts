import { expect, test } from '@playwright/test';
import type { Simulation as Spice } from 'eecircuit-engine';
import type { Project } from '../../../src/core/document/schema.ts';
import { impedanceByNgspice, levelByNgspice } from './ngspiceSpeaker.ts';
import { dragBy, dropFile, field, openApp, readAt, savedProject, settled, typeInto } from './page.ts';

const FREQUENCIES_HZ = [60, 450, 3000];

test('the whole job: from the demo to a changed, measured and saved loudspeaker', async ({ page }) => {
  test.setTimeout(180_000);
  const { Simulation } = await import('eecircuit-engine');
  const spice: Spice = new Simulation();
  await spice.start();
  const faults = await openApp(page);

  /** What the screen reads agrees with ngspice within its last shown digit. */
  const agrees = async (): Promise<Project> => {
    const project = await savedProject(page);
    for (const hz of FREQUENCIES_HZ) {
      const shown = await readAt(page, 'response-sum', hz);
      const computed = await levelByNgspice(spice, project, hz);
      expect(
        Math.abs(shown.value - computed),
        `${hz} Hz, C1 ${capacitor(project)} F: shown ${shown.value}, ngspice ${computed}`,
      ).toBeLessThanOrEqual(10 ** -shown.digits);
      expect(shown.digits).toBeGreaterThan(0);
    }
    return project;
  };
  const capacitor = (project: Project): number => {
    const part = project.network.parts.find((p) => p.id === 'C1')!;
    return part.kind === 'capacitor' ? part.farad : Number.NaN;
  };

  await test.step('the demo opens as computed', async () => {
    expect((await agrees()).name).toBe('Reading room three-way');
  });
  await test.step('the low-pass capacitor is typed, as an expression', async () => {
    await typeInto(page, 'C1 capacitance', '2 * 22 uF + 3 uF');
    await expect(field(page, 'C1 capacitance')).toHaveText(/47\s*µF/);
    expect(capacitor(await agrees())).toBeCloseTo(47e-6, 12);
  });
  await test.step('it is stepped by arrow key along the series', async () => {
    await field(page, 'C1 capacitance').focus();
    await page.keyboard.press('ArrowUp');
    expect(capacitor(await agrees())).toBeCloseTo(56e-6, 12);
  });
  await test.step('it is dragged, as one step', async () => {
    await dragBy(page, field(page, 'C1 capacitance'), -60, 0);
    const farad = capacitor(await agrees());
    expect(farad).toBeLessThan(50e-6);
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(capacitor(await savedProject(page))).toBeCloseTo(56e-6, 12);
    await page.getByRole('button', { name: 'Redo' }).click();
    expect(capacitor(await savedProject(page))).toBe(farad);
  });

  await test.step('the port is shortened and the dip between the impedance peaks follows the tuning', async () => {
    const tuning = async (): Promise<number> =>
      Number.parseFloat((await page.getByTestId('key-tuning:low').textContent()) ?? '');
    // Between the twin peaks; coils in series with the woofer pull the dip below the tuning, by the same share throughout.
    const dip = async (around: number, ohmAt: (hz: number) => Promise<number>): Promise<number> => {
      let least = { hz: 0, ohm: Number.POSITIVE_INFINITY };
      for (let share = 0.78; share <= 1.1; share += 0.01) {
        const hz = Number((around * share).toFixed(2));
        const ohm = await ohmAt(hz);
        if (ohm < least.ohm) least = { hz, ohm };
      }
      return least.hz;
    };
    const shown = async (hz: number): Promise<number> => (await readAt(page, 'load-ohm:V1', hz)).value;
    const before = await tuning();
    const dipBefore = await dip(before, shown);
    await typeInto(page, 'Length of port P1', '180 mm');
    await expect.poll(tuning).toBeGreaterThan(before * 1.1);
    const after = await tuning();
    const dipAfter = await dip(after, shown);
    const project = await savedProject(page);
    const bySpice = await dip(after, (hz) => impedanceByNgspice(spice, project, hz));
    expect(Math.abs(dipAfter / bySpice - 1)).toBeLessThan(0.025);
    expect(Math.abs(dipAfter / dipBefore / (after / before) - 1)).toBeLessThan(0.03);
    await agrees();
  });

  await test.step('a driver is dragged and the sum moves', async () => {
    const before = await readAt(page, 'response-sum', 3000);
    await dragBy(page, page.getByRole('button', { name: /^LS3, 28 mm dome tweeter, in the middle/ }), 12, 0);
    const project = await agrees();
    expect(project.enclosure.mounts.find((m) => m.partId === 'LS3')!.xM).toBeGreaterThan(0.01);
    expect((await readAt(page, 'response-sum', 3000)).value).not.toBe(before.value);
  });

  await test.step('a measured response is dropped, its question answered, and lies over the prediction', async () => {
    await dropFile(page, 'reading-room/right-response-0.4m.txt');
    const panel = page.getByTestId('curve-panel');
    await expect(panel).toContainText('240 points');
    await panel.getByTestId('curve-owner').selectOption({ label: 'the whole speaker, right' });
    await panel.getByLabel('measured at').fill('0.4');
    await panel.getByRole('button', { name: 'Take it in' }).click();
    await expect(panel).toBeHidden();
    const { curves } = await savedProject(page);
    expect(curves).toHaveLength(1);
    expect(curves[0]).toMatchObject({ belongsTo: { kind: 'speaker', channel: 'right' }, taken: { distanceM: 0.4 } });
    const reading = page.getByTestId('readings-response');
    await readAt(page, 'response-sum', 1000);
    await expect(reading).toContainText(/right/);
  });

  await test.step('undo twice takes back curve and place', async () => {
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'Undo' }).click();
    const project = await savedProject(page);
    expect(project.curves).toHaveLength(0);
    expect(project.enclosure.mounts.find((m) => m.partId === 'LS3')!.xM).toBe(0);
    expect(project.enclosure.ports[0]!.lengthM).toBeCloseTo(0.18, 9);
  });

  await test.step('the page is reloaded and the work is there', async () => {
    const before = await savedProject(page);
    await settled(page);
    await page.reload();
    await settled(page);
    expect(await savedProject(page)).toEqual(before);
  });
  expect(faults).toEqual([]);
});
