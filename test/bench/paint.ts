import { loadavg } from 'node:os';
import { fileURLToPath } from 'node:url';
import type { Locator, Page } from '@playwright/test';
import { type BuiltApp, firstPicture, newPage } from './builtApp.ts';
import { figure, type Measured } from './figure.ts';
import { median, quantile } from './statistics.ts';

// What the app sets, so that this can be measured (and nothing else needs to be known of its insides):
// - `performance.mark('conewright:edit')` first thing in the handler of the input event that makes an edit;
// - `performance.measure('conewright:paint', { start, end })` in the first task after the frame that shows the edit:
//   from the mark to that task; edits that one frame shows together are measured from the first of them.
// Measured beside it, without the app's help: from the pointer event to the first task after the next frame in which a
// canvas was drawn into.

const DRAG_MS = 2000;
const FRAME_MS = 1000 / 60;
const SWING_PX = 40;
const SWINGS = 3;
const MOST_CANDIDATES = 80;

/** What paintRecorder.js keeps in the page. */
interface Recorder {
  recording: boolean;
  paints: number[];
  seen: number[];
  frames: number[];
}

const edits = (page: Page): Promise<number> =>
  page.evaluate(() => performance.getEntriesByName('conewright:edit').length);

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Presses, moves a little, and looks whether an edit came of it; Escape takes it back. */
async function answersToDragging(page: Page, { x, y }: Spot): Promise<boolean> {
  const before = await edits(page);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 12, y - 12, { steps: 4 });
  const answered = (await edits(page)) > before;
  await page.keyboard.press('Escape');
  await page.mouse.up();
  return answered;
}

const centreOf = async (candidate: Locator): Promise<Spot | null> => {
  const box = await candidate.boundingBox();
  if (box === null || box.width === 0 || box.x < SWING_PX || box.y < 0) return null;
  return box.y + box.height > 900 || box.x + box.width > 1440 - SWING_PX
    ? null
    : { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};

/** A value on the screen that can be dragged; a capacitor's where there is one. */
async function valueToDrag(page: Page): Promise<{ readonly spot: Spot; readonly text: string }> {
  const controls = page.locator('[role=slider], [role=spinbutton]');
  const capacitors = controls.filter({ hasText: /[µu]F\b/ });
  // The lanes come after the first picture; without a capacitor in them any value will do.
  await Promise.race([capacitors.first().waitFor(), page.waitForTimeout(5000)]);
  await page.waitForLoadState('networkidle');
  for (const candidates of [capacitors, controls]) {
    for (const candidate of (await candidates.all()).slice(0, MOST_CANDIDATES)) {
      const spot = await centreOf(candidate);
      const text = (await candidate.getAttribute('aria-label')) ?? (await candidate.textContent()) ?? '';
      if (spot !== null && (await answersToDragging(page, spot))) return { spot, text };
    }
  }
  throw new Error('No value on the screen answered to dragging with the mark conewright:edit.');
}

/** Swings the pointer about the spot for the stated time, as fast as the browser takes the events. */
async function dragFor(page: Page, { x, y }: Spot, ms: number): Promise<number> {
  await page.mouse.move(x, y);
  await page.mouse.down();
  const started = performance.now();
  let events = 0;
  for (let at = 0; at < ms; at = performance.now() - started) {
    const swing = SWING_PX * Math.sin((2 * Math.PI * SWINGS * at) / ms);
    await page.mouse.move(x + swing, y - swing);
    events += 1;
  }
  await page.mouse.up();
  return events;
}

/**
 * Edit to paint while a value is dragged for two seconds: from the input event's handler to the first task after the frame
 * that shows it, at device pixel ratio 1, 1440×900. A frame counts as dropped for each display frame of 16.7 ms that
 * passed without one.
 */
export async function paintFigures(app: BuiltApp): Promise<Measured> {
  const page = await newPage(app);
  await page.addInitScript({ path: fileURLToPath(new URL('./paintRecorder.js', import.meta.url)) });
  await page.goto(app.address);
  await firstPicture(page);
  const { spot, text } = await valueToDrag(page);
  const record = (recording: boolean): Promise<void> =>
    page.evaluate((on) => {
      (window as unknown as { conewrightBench: Recorder }).conewrightBench.recording = on;
    }, recording);
  // Once unrecorded: the first edits run code that has not been compiled yet.
  await dragFor(page, spot, DRAG_MS / 2);
  const load = loadavg()[0]!;
  await record(true);
  const events = await dragFor(page, spot, DRAG_MS);
  await page.waitForTimeout(100);
  await record(false);
  const { paints, seen, frames } = await page.evaluate(
    () => (window as unknown as { conewrightBench: Recorder }).conewrightBench,
  );
  await page.context().close();
  if (paints.length < 20) throw new Error(`Only ${paints.length} edits were measured to their picture.`);
  const gaps = frames.slice(1).map((now, i) => now - frames[i]!);
  const dropped = gaps.reduce((sum, gap) => sum + Math.max(0, Math.round(gap / FRAME_MS) - 1), 0);
  return {
    figures: [figure('paint-median-ms', median(paints)), figure('paint-p95-ms', quantile(paints, 0.95))],
    notes: [
      `edit to paint, "${text}" dragged for ${DRAG_MS / 1000} s, ${events} pointer events, ${paints.length} pictures: ` +
        `median ${median(paints).toFixed(1)} ms, p95 ${quantile(paints, 0.95).toFixed(1)} ms; machine load ${load.toFixed(2)}`,
      `dropped frames: ${dropped} of ${gaps.length + dropped}`,
      seen.length === 0
        ? 'from the pointer event to the first task after the next drawn frame: none was seen'
        : `from the pointer event to the first task after the next drawn frame: median ${median(seen).toFixed(1)} ms, ` +
          `p95 ${quantile(seen, 0.95).toFixed(1)} ms in ${seen.length}`,
    ],
  };
}
