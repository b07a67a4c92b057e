import { frequencyText } from './frequencyText.ts';
import type { PlotFrame } from './PlotPainter.ts';

/**
 * Writes what changes with every edit and every movement of the cursor straight into the elements that React has rendered:
 * where names stand, where the cursor is, what the curves read there. Elements of an older structure are skipped.
 */
export function writeFrame(root: HTMLElement, cursor: HTMLElement | null, frame: PlotFrame): void {
  const places = new Map(frame.labels.map((label) => [label.id, label]));
  for (const element of root.querySelectorAll<SVGElement>('[data-label]')) {
    const place = places.get(element.dataset.label ?? '');
    element.setAttribute('visibility', place ? 'visible' : 'hidden');
    if (place) element.setAttribute('transform', `translate(${place.x.toFixed(1)} ${place.y.toFixed(1)})`);
  }
  const { cursorHz, structure } = frame;
  const line = root.querySelector('[data-part="cursor"]');
  line?.setAttribute('visibility', cursorHz === null ? 'hidden' : 'visible');
  if (cursorHz !== null) {
    const x = structure.x.toPx(cursorHz).toFixed(1);
    line?.setAttribute('x1', x);
    line?.setAttribute('x2', x);
  }
  const heading = cursorHz === null ? '' : `${frequencyText(cursorHz)}:`;
  const frequency = root.querySelector('[data-part="frequency"]');
  if (frequency && frequency.textContent !== heading) frequency.textContent = heading;
  const texts = new Map(frame.readings.map((reading) => [reading.id, reading.text]));
  for (const element of root.querySelectorAll<HTMLElement>('[data-reading]')) {
    const text = texts.get(element.dataset.reading ?? '');
    element.hidden = text === undefined;
    const value = element.querySelector('[data-part="value"]');
    if (value && text !== undefined && value.textContent !== text) value.textContent = text;
  }
  if (!cursor) return;
  const spoken = frame.readings.map((reading) => `${reading.name} ${reading.text}`).join(', ');
  cursor.setAttribute('aria-valuenow', String(Math.round(cursorHz ?? 1000)));
  cursor.setAttribute('aria-valuetext', cursorHz === null ? 'no frequency chosen' : `${heading} ${spoken}`);
}
